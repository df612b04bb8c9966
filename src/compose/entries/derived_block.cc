// In: what a page asks for in a fenced block `bench`. Out: the blocks, made from records, tables and facts.
#include <optional>
#include <utility>
#include <variant>

#include "compose/entries/block_fault.h"
#include "compose/entries/book.h"
#include "compose/entries/paper_lists.h"
#include "compose/entries/picture_table.h"
#include "compose/entries/prose.h"
#include "compose/entry_maker.h"
#include "compose/figures/figure_table.h"
#include "compose/figures/reckoned_table.h"
#include "compose/figures/size_rows.h"
#include "model/request_words.h"
#include "model/signs.h"

namespace benchleaf::compose {

namespace {

using model::word_of;

model::Table published_table(const Desk& desk, const model::PublishedTable& published) {
  model::Table table;
  table.name = "published-" + published.name;
  table.caption = {model::text_run(published.title)};
  for (const auto& head : published.columns) {
    using Align = model::Column::Align;
    table.columns.push_back(column(head.title, head.quantity.empty() ? Align::left : Align::decimal, head.name == published.key));
  }
  table.columns.push_back(sign_column());
  for (const auto& row : published.rows) {
    model::TableRow made;
    for (const auto& head : published.columns) {
      const model::Fact* fact = desk.derived.facts.find("table/" + published.name + "#" + row.key + "." + head.name);
      const auto text = row.cells.find(head.name);
      if (fact != nullptr)
        made.cells.push_back(cell({model::fact_run(*fact)}));
      else
        made.cells.push_back(cell(text == row.cells.end() ? std::string() : text->second));
    }
    made.cells.push_back(cell(Line(desk).sign({row.trust, false}).take()));
    table.rows.push_back(std::move(made));
  }
  return without_empty_columns(std::move(table));
}

/// `1.65 mm  337 SR416SW silver oxide, low`: all cells of one size.
void say_family(const Desk& desk, Line& line, const derive::SizeFamily& family) {
  const model::Cell& first = *desk.cell(family.cells.front());
  line.fact(first, "size.height", {}, model::Style::bold).say("\u00A0").sign(desk.sign(first, "size.height")).say("  ");
  bool starts = true;
  for (const std::string& reference : family.cells) {
    const model::Cell* one = desk.cell(reference);
    if (one == nullptr) continue;
    line.say(starts ? "" : "; ").link(reference).say(" " + plain_words(one->system));
    if (one->drain == model::Drain::low || one->drain == model::Drain::high) line.say(", " + word_of(one->drain));
    starts = false;
  }
}

/// Every size on file.
model::Table size_finder(const Desk& desk) {
  model::Table table;
  table.name = "size-finder";
  table.columns = {column("diameter", model::Column::Align::left, true), column("height and cells")};
  table.rows = size_rows(desk, model::Style::plain, say_family);
  return table;
}

/// One block, or nothing where the request names what is not there.
std::optional<model::Block> made_block(const Desk& desk, const model::Page& page, const model::DerivedRequest& request) {
  const std::string show = word_of(request.body, "show");
  if (show == "trust-signs") return trust_legend();
  if (show == "size-finder") return desk.on_paper() ? cells_by_number(desk) : model::Block{size_finder(desk)};
  if (show == "published-table") {
    const model::PublishedTable* table = desk.tables.find(word_of(request.body, "table"));
    if (table != nullptr) return model::Block{published_table(desk, *table)};
  }
  if (show == "pictures") {
    if (auto table = picture_table(request)) return model::Block{std::move(*table)};
  }
  if (auto table = figure_table(desk, page, request)) return model::Block{std::move(*table)};
  if (auto table = reckoned_table(desk, page, request)) return model::Block{std::move(*table)};
  if (show == "message") {
    const std::string name = word_of(request.body, "record");
    const model::RecordRef whole(name);
    const auto* caution = desk.records.find<model::Caution>(whole.kind() ? whole : model::RecordRef(model::Kind::caution, name));
    if (caution != nullptr) return model::Block{message_of(desk, *caution, MessagePlace::head)};
  }
  return std::nullopt;
}

}  // namespace

model::Blocks derived_blocks(const Desk& desk, const model::Page& page, const model::DerivedRequest& request) {
  auto fault = block_fault(desk, page, request);
  if (!fault) {
    if (auto block = made_block(desk, page, request)) return {std::move(*block)};
    fault = unmade_block(request, [&](const auto& part) { return made_block(desk, page, part).has_value(); });
  }
  desk.findings.add(report::Rule::compose_request, fault->where, fault->message, fault->hint);
  return {};
}

void check_blocks(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
                  report::Findings& findings) {
  const Uses uses(records);
  const Desk screen{records, tables, derived, uses, findings};
  report::Findings again;  // what paper would say once more
  const Desk paper{records, tables, derived, uses, again, Medium::paper};
  for (const auto& [id, page] : records.pages) {
    for (const auto& part : page.parts) {
      const auto* request = std::get_if<model::DerivedRequest>(&part);
      if (request != nullptr && !derived_blocks(screen, page, *request).empty()) derived_blocks(paper, page, *request);
    }
  }
  findings.append(std::move(again));
}

model::Block trust_legend() {
  using model::Trust;
  model::Table table;
  table.name = "trust-signs";
  table.columns = {column("sign"), column("says", model::Column::Align::left, true)};
  for (const Trust trust : {Trust::standard, Trust::handbook, Trust::dataset, Trust::trade, Trust::memory, Trust::invented}) {
    table.rows.push_back({{cell({model::trust_run(trust, false)}), cell(std::string(model::trust_legend(trust)))}, {}});
  }
  table.rows.push_back({{cell({model::trust_run(Trust::memory, true)}), cell(std::string(model::derived_legend()))}, {}});
  return {std::move(table)};
}

}  // namespace benchleaf::compose
