// In: a block of a page that asks a calculator. Out: the table of its answers, each the fact that derive has made of it.
#include "compose/figures/reckoned_table.h"

#include <string>
#include <utility>

#include "bench/print_rule.h"
#include "compose/entry_maker.h"
#include "compose/figures/figure_table.h"
#include "derive/page_answers.h"

namespace benchleaf::compose {

namespace {

using model::Kind;

/// A record that a row of answers names, else the words as they are.
model::Runs question_words(const Desk& desk, const std::string& words) {
  for (const Kind kind : {Kind::residue, Kind::substance, Kind::chemistry, Kind::cell}) {
    const model::RecordRef reference(kind, words);
    if (desk.records.find(reference) != nullptr) return Line(desk).link(reference).take();
  }
  return {model::text_run(words)};
}

model::Column answer_column(const derive::PageAnswers& asked, const std::string& output, const model::Fact* first) {
  const bench::OutputInfo* rule = bench::print_rule(asked.calculator, output);
  const bool figure = first != nullptr && !first->unit.empty();
  return column(rule == nullptr ? output : std::string(rule->label),
                figure ? model::Column::Align::decimal : model::Column::Align::left);
}

/// What a calculator says to the rows of a page, each answer a fact with its unit; nothing where one is refused.
std::optional<model::Table> table_of(const Desk& desk, const model::Page& page, const derive::PageAnswers& asked) {
  const auto fact_of = [&](const derive::PageQuestion& row, const std::string& output) {
    return desk.derived.facts.find(asked.fact_id(page.reference(), row, output));
  };
  model::Table table;
  table.name = "reckoned-" + asked.calculator;
  for (const auto& key : asked.keys) table.columns.push_back(column(key, model::Column::Align::left, table.columns.empty()));
  for (const auto& output : asked.columns)
    table.columns.push_back(answer_column(asked, output, fact_of(asked.rows.front(), output)));
  table.columns.push_back(sign_column());
  for (const auto& row : asked.rows) {
    model::TableRow made;
    model::Trust trust = model::Trust::given;
    for (const auto& words : row.values) made.cells.push_back(cell(question_words(desk, words)));
    for (const auto& output : asked.columns) {
      const model::Fact* fact = fact_of(row, output);
      if (fact == nullptr) return std::nullopt;
      made.cells.push_back(cell({model::fact_run(*fact)}));
      trust = model::weaker(trust, fact->trust);
    }
    made.cells.push_back(cell({model::trust_run(trust, true)}));
    table.rows.push_back(std::move(made));
  }
  return table;
}

}  // namespace

std::optional<model::Table> reckoned_table(const Desk& desk, const model::Page& page, const model::DerivedRequest& request) {
  if (is_drawn(request)) return std::nullopt;
  const auto asked = derive::read_page_answers(request.body);
  return asked ? table_of(desk, page, *asked) : std::nullopt;
}

}  // namespace benchleaf::compose
