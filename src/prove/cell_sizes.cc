// Rules about the size of a cell: stated millimetres against the digits of the designation, and against the published table
// of sizes. Digits are cut off, not rounded: 2.05 mm is 20.

#include <cmath>
#include <cstddef>
#include <optional>
#include <string>

#include "base/number.h"
#include "base/quantity.h"
#include "prove/cell_facts.h"
#include "prove/checks.h"

namespace benchleaf::prove {
namespace {

using model::Cell;
using report::Rule;

/// Published lists of one size differ by up to this much: 2.05 and 2.1, 2.65 and 2.7.
constexpr double kListsDiffer = 0.1;

std::optional<double> millimetres(const Cell& cell, const char* path, const std::optional<base::Quantity>& quantity) {
  if (!quantity || !cell.usable(path) || !quantity->has_value()) return std::nullopt;
  return quantity->value_in(base::Unit::millimetre);
}

std::string shown(const std::optional<base::Quantity>& quantity) { return base::terminal(*quantity); }

/// The row of the size table that this cell's short size names, or nullptr: R48 for SR754W and for SR48.
const model::CellSizeLimit* size_row(const Proof& proof, const Cell& cell) {
  constexpr std::size_t kSizeLength = 3;
  const model::Fact* short_form = decoded_fact(proof, cell, "short-form");
  const bool is_short = decoded_fact(proof, cell, "long-form") != nullptr;
  if (short_form == nullptr && !is_short) return nullptr;
  const std::string name = is_short ? cell.designation : short_form->printed;
  return proof.tables.cell_size_limit(name.substr(name.find('R'), kSizeLength));
}

const model::PublishedTable::Row* published_row(const Proof& proof, const model::CellSizeLimit& limit) {
  const model::PublishedTable* table = proof.tables.find("cell-size-limits");
  if (table == nullptr) return nullptr;
  for (const auto& row : table->rows) {
    if (row.key == limit.size) return &row;
  }
  return nullptr;
}

/// Who says otherwise: the record's own conflict, or the row of the published table.
void cite_disagreement(const Proof& proof, const Cell& cell, const char* field, report::Finding& finding) {
  if (const model::Conflict* conflict = conflict_about(cell, field)) {
    finding.notes.push_back({conflict->span, "the record says that " + conflict->source + " has " + conflict->says});
  }
  const model::CellSizeLimit* limit = size_row(proof, cell);
  const auto* row = limit == nullptr ? nullptr : published_row(proof, *limit);
  if (row == nullptr) return;
  finding.notes.push_back(
      {row->span, "table cell-size-limits gives " + base::terminal(limit->height_max) + " for " + limit->size});
}

/// One measure against the published table; a disagreement that the record states itself is known and no finding.
void compare_with_table(const Proof& proof, const Cell& cell, const char* path, const std::optional<base::Quantity>& stated,
                        const base::Quantity& published, const model::CellSizeLimit& limit) {
  const auto found = millimetres(cell, path, stated);
  const auto expected = published.value_in(base::Unit::millimetre);
  if (!found || !expected || base::tidy(*found) == base::tidy(*expected) || conflict_about(cell, path) != nullptr) return;
  auto& finding = proof.findings.add(Rule::cell_size_table, cell.span_of(path),
                                     "found " + shown(stated) + ", but the published table gives " + base::terminal(published) +
                                         " as the largest for " + limit.size,
                                     "correct it, or state the disagreement under conflicts:");
  if (const auto* row = published_row(proof, limit)) finding.notes.push_back({row->span, limit.origin.source});
}

}  // namespace

void check_diameter_code(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const auto stated = millimetres(cell, "size.diameter", cell.size.diameter);
    const model::Fact* decoded = decoded_fact(proof, cell, "diameter");
    if (!stated || decoded == nullptr || !decoded->value || is_stack(proof, cell)) continue;
    if (std::floor(base::tidy(*stated)) == std::floor(base::tidy(*decoded->value))) continue;
    proof.findings.add(Rule::cell_diameter_code, cell.span_of("size.diameter"),
                       "found a diameter of " + shown(cell.size.diameter) + ", but the code in " + cell.designation +
                           " stands for " + base::to_terminal(decoded->printed),
                       "one of the two is wrong: measure the cell");
  }
}

void check_height_digits(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const auto stated = millimetres(cell, "size.height", cell.size.height);
    const model::Fact* decoded = decoded_fact(proof, cell, "height");
    if (!stated || decoded == nullptr || !decoded->low || !decoded->high || is_stack(proof, cell)) continue;
    const double height = base::tidy(*stated);
    if (height >= *decoded->low && height < *decoded->high) continue;
    const double bound = height < *decoded->low ? *decoded->low : *decoded->high;
    const bool lists_differ = std::abs(std::lround((height - bound) * 1000.0)) <= std::lround(kListsDiffer * 1000.0);
    const std::string message = "found a height of " + shown(cell.size.height) + ", but the digits in " + cell.designation +
                                " stand for " + base::to_terminal(decoded->printed);
    if (lists_differ) {
      auto& finding = proof.findings.add(Rule::cell_height_lists, cell.span_of("size.height"),
                                         message + "; published lists differ by as much",
                                         "follow the height that the digits allow, and keep the other under conflicts:");
      cite_disagreement(proof, cell, "size.height", finding);
    } else {
      proof.findings.add(Rule::cell_height_digits, cell.span_of("size.height"), message,
                         "one of the two is wrong: measure the cell");
    }
  }
}

void check_size_table(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    if (decoded_fact(proof, cell, "height") == nullptr || is_stack(proof, cell)) continue;
    const model::CellSizeLimit* limit = size_row(proof, cell);
    if (limit == nullptr) continue;
    compare_with_table(proof, cell, "size.diameter", cell.size.diameter, limit->diameter_max, *limit);
    compare_with_table(proof, cell, "size.height", cell.size.height, limit->height_max, *limit);
  }
}

}  // namespace benchleaf::prove
