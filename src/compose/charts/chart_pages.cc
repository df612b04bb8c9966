// In: a chart, the pages of a book that was set. Out: the chart with the page on which the book says more.
#include "compose/charts/chart_pages.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace benchleaf::compose {

namespace {

constexpr const char* kPageHead = "page";
constexpr model::Style kPageStyle = model::Style::bold | model::Style::accent;

bool is_open(const model::Run& run) { return run.kind == model::Run::Kind::page_of; }

/// Whether a page stands there now.
bool name_page(model::Runs& runs, const PageOf& page_of, const std::string& before = {}) {
  bool named = false;
  for (model::Run& run : runs) {
    if (!is_open(run)) continue;
    const std::string page = page_of(run.target);
    named = named || !page.empty();
    if (!page.empty()) run = model::text_run(before + page, kPageStyle);
  }
  std::erase_if(runs, is_open);
  return named;
}

bool has_heads(const model::Table& table) {
  return std::any_of(table.columns.begin(), table.columns.end(), [](const auto& column) { return !column.head.empty(); });
}

/// Under a head that says so, or with the word beside each.
bool name_pages_of(model::Table& table, const PageOf& page_of) {
  const bool under_head = has_heads(table);
  bool any_named = false;
  for (std::size_t i = table.columns.size(); i-- > 0;) {
    bool any = false;
    bool named = false;
    for (model::TableRow& row : table.rows) {
      if (i >= row.cells.size() || std::none_of(row.cells[i].runs.begin(), row.cells[i].runs.end(), is_open)) continue;
      any = true;
      named = name_page(row.cells[i].runs, page_of, under_head ? "" : "p.\u00A0") || named;
    }
    if (!any) continue;
    any_named = any_named || named;
    if (named && under_head) table.columns[i].head = {model::text_run(kPageHead)};
    if (named) continue;
    table.columns.erase(table.columns.begin() + static_cast<std::ptrdiff_t>(i));
    for (model::TableRow& row : table.rows) row.cells.erase(row.cells.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return any_named;
}

bool name_pages_of(model::Panel& panel, const PageOf& page_of) {
  bool named = name_page(panel.page, page_of, std::string(kPageHead) + "\u00A0");
  for (model::PanelBlock& block : panel.blocks) {
    if (auto* table = std::get_if<model::Table>(&block)) named = name_pages_of(*table, page_of) || named;
    if (auto* matrix = std::get_if<model::Matrix>(&block)) {
      for (model::Matrix::Row& row : matrix->rows) named = name_page(row.page, page_of) || named;
    }
  }
  return named;
}

}  // namespace

model::Runs more_at(const std::string& reference) { return {model::page_run(reference)}; }

void name_pages(model::SheetSet& chart, const PageOf& page_of, const std::string& book) {
  for (model::Sheet& side : chart.sides) {
    bool named = false;
    for (model::Panel& panel : side.panels) named = name_pages_of(panel, page_of) || named;
    if (named) side.addition += (side.addition.empty() ? "" : ". ") + ("Pages: " + book);
  }
}

}  // namespace benchleaf::compose
