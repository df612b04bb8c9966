// Rules about how a figure is written: in the unit of its field, and between ends that every part of a watch keeps to.

#include <optional>
#include <string>
#include <string_view>

#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Quantity;
using model::PublishedTable;
using model::Record;
using report::Rule;

/// Whether ` or ` parts the name of this unit off a list of units.
bool lists(std::string_view units, std::string_view unit) {
  constexpr std::string_view kOr = " or ";
  while (true) {
    const std::size_t end = units.find(kOr);
    if (units.substr(0, end) == unit) return true;
    if (end == std::string_view::npos) return false;
    units.remove_prefix(end + kOr.size());
  }
}

std::string unit_name(const Quantity& quantity) {
  const auto symbol = base::unit_info(quantity.unit).symbol;
  return symbol.empty() ? "plain number" : std::string(symbol);
}

/// Whether a bound of the table lies on the wrong side of a figure.
bool beyond(const Quantity& found, const PublishedTable::Row& row, const char* column, bool least) {
  const auto bound = quantity_in(standards::cell_text(row, column));
  const auto value = bound ? found.in(bound->unit) : std::nullopt;
  if (!value) return false;
  const double end = base::tidy(bound->stated.nominal);
  return least ? base::tidy(value->low) < end : base::tidy(value->high) > end;
}

void check_figure(const Proof& proof, const Record& record, const std::string& path, const PublishedTable::Row& row) {
  const model::Node* node = record.root.at_path(path);
  const auto found = record.usable(path) ? quantity_in(node) : std::nullopt;
  if (!found) return;
  const std::string& units = standards::cell_text(row, "units");
  if (!lists(units, unit_name(*found))) {
    proof.findings
        .add(Rule::figure_unit, record.span_of(path),
             "found " + base::terminal(*found) + ", but this field is written in " + units, "convert it, or correct the unit")
        .notes.push_back({row.span, "table written-figures"});
  } else if (beyond(*found, row, "least", true) || beyond(*found, row, "most", false)) {
    const std::string& least = standards::cell_text(row, "least");
    const std::string& most = standards::cell_text(row, "most");
    proof.findings
        .add(Rule::figure_bounds, record.span_of(path), "found " + base::terminal(*found) + ", outside " + least + " and " + most,
             "read the figure, its point and its unit again")
        .notes.push_back({row.span, "table written-figures"});
  }
}

}  // namespace

void check_written_figures(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    const std::string front = std::string(model::kind_name(record->kind)) + ".";
    for (const std::string& path : record->quantity_paths) {
      const auto* row = standards::row_of(proof.tables, "written-figures", front + field_of(path));
      if (row != nullptr) check_figure(proof, *record, path, *row);
    }
  }
}

}  // namespace benchleaf::prove
