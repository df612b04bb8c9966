// In: what pages ask of calculators. Out: panels of the answers: tables, or a key with one figure or span for each question.
#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>
#include <variant>

#include "compose/charts/panels.h"
#include "compose/entry_maker.h"
#include "compose/figures/reckoned_table.h"

namespace benchleaf::compose {

namespace {

/// A table without its column of signs, and the weakest of these.
struct Answered {
  model::Table table;
  model::Trust weakest = model::Trust::given;
};

/// Beside the question: with more figures than a span has it is a table and no key.
constexpr std::size_t kSpan = 2;

bool is_key(const model::Table& table) { return table.columns.size() <= 1 + kSpan; }

Answered without_signs(model::Table table) {
  Answered answered{std::move(table), model::Trust::given};
  answered.table.columns.pop_back();
  for (model::TableRow& row : answered.table.rows) {
    for (const model::Run& sign : row.cells.back().runs) answered.weakest = model::weaker(answered.weakest, sign.trust);
    row.cells.pop_back();
  }
  return answered;
}

/// What the pages of a panel ask and are told, in the order of the pages.
std::vector<Answered> answers_of(const Desk& desk, const Wanted& wanted) {
  std::vector<Answered> answers;
  for (const model::RecordRef& reference : wanted.records) {
    const auto* page = desk.records.find<model::Page>(reference);
    if (page == nullptr) continue;
    for (const model::PagePart& part : page->parts) {
      const auto* request = std::get_if<model::DerivedRequest>(&part);
      auto table = request == nullptr ? std::nullopt : reckoned_table(desk, *page, *request);
      if (table) answers.push_back(without_signs(std::move(*table)));
    }
  }
  return answers;
}

/// A length without its unit, which the head of the panel says: `16` of `16 mm`.
void drop_unit(std::string& text) {
  constexpr std::string_view kUnit = "mm";
  if (!text.ends_with(kUnit)) return;
  text.resize(text.size() - kUnit.size());
  for (const std::string_view space : {"\u2009", "\u202F", "\u00A0", " "}) {
    if (text.ends_with(space)) text.resize(text.size() - space.size());
  }
}

/// What two heads begin with: `groove depth` of `groove depth, least` and `groove depth, most`.
std::string common_head(const std::string& one, const std::string& other) {
  const auto differs = std::mismatch(one.begin(), one.end(), other.begin(), other.end()).first;
  return one.substr(0, one.substr(0, static_cast<std::size_t>(differs - one.begin())).find_last_not_of(", ") + 1);
}

/// The question, to be looked up, and its figures joined by a dash; a sign in the head where they are recalled.
model::Table key_table(const Desk& desk, const Answered& answered) {
  const std::vector<model::Column>& asked = answered.table.columns;
  const std::string last = model::plain_text(asked.back().head);
  model::Table table;
  table.columns = {asked.front(), column(asked.size() > 2 ? common_head(model::plain_text(asked[1].head), last) : last)};
  if (answered.weakest == model::Trust::memory) {
    for (model::Run& run : Line(desk).say("\u2009").sign({answered.weakest, true}).take()) {
      table.columns.back().head.push_back(std::move(run));
    }
  }
  for (const model::TableRow& row : answered.table.rows) {
    model::Runs key = row.cells.front().runs;
    for (model::Run& run : key) run.style = model::Style::look_up, drop_unit(run.text);
    model::Runs figures;
    for (std::size_t i = 1; i < row.cells.size(); ++i) {
      if (i > 1) figures.push_back(model::text_run("\u2013"));
      figures.insert(figures.end(), row.cells[i].runs.begin(), row.cells[i].runs.end());
    }
    for (model::Run& run : figures) run.style = model::Style::bold, drop_unit(run.text);
    table.rows.push_back({{cell(std::move(key)), cell(std::move(figures))}, {}, true});
  }
  return table;
}

}  // namespace

/// What is asked stands large, to be looked up; the unit stands in the note of the panel.
PanelBlocks page_answers(const Desk& desk, const Wanted& wanted) {
  PanelBlocks blocks;
  for (Answered& answered : answers_of(desk, wanted)) {
    if (is_key(answered.table)) continue;
    for (model::TableRow& row : answered.table.rows) {
      for (model::TableCell& cell : row.cells) {
        for (model::Run& run : cell.runs) drop_unit(run.text);
      }
      for (model::Run& run : row.cells.front().runs) run.style = model::Style::look_up;
    }
    blocks.emplace_back(std::move(answered.table));
  }
  return blocks;
}

PanelBlocks page_key(const Desk& desk, const Wanted& wanted) {
  PanelBlocks blocks;
  for (const Answered& answered : answers_of(desk, wanted)) {
    if (is_key(answered.table)) blocks.emplace_back(key_table(desk, answered));
  }
  if (blocks.empty()) return {};
  for (model::PanelBlock& rows : word_rows(desk, wanted)) blocks.push_back(std::move(rows));
  return blocks;
}

}  // namespace benchleaf::compose
