// Rules that hold a cell against the other cells: one size code is one size, a charge that fits its volume, a partner.

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "base/number.h"
#include "derive/relations.h"
#include "prove/cell_facts.h"
#include "prove/published_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Cell;
using report::Rule;

std::optional<double> diameter_of(const Cell& cell) {
  return stated_value(cell, "size.diameter", cell.size.diameter, Unit::millimetre);
}
std::optional<double> height_of(const Cell& cell) {
  return stated_value(cell, "size.height", cell.size.height, Unit::millimetre);
}

/// The size digits of a cell, short forms opened: `754` for SR754W, SR48 and LR754; or empty.
std::string size_digits(const Proof& proof, const Cell& cell) {
  const model::Fact* long_form = decoded_fact(proof, cell, "long-form");
  const std::string& name = long_form == nullptr ? cell.designation : long_form->printed;
  if (decoded_fact(proof, cell, "height") == nullptr || is_stack(proof, cell)) return {};
  const std::size_t from = name.find('R') + 1;
  return name.substr(from, name.find_first_not_of("0123456789", from) - from);
}

using Measure = std::optional<double> (*)(const Cell&);

/// The first of the cells that state what most of them state, or nullptr.
const Cell* usual_cell(const std::vector<const Cell*>& cells, Measure measure) {
  std::map<double, std::pair<int, const Cell*>> votes;
  for (const Cell* cell : cells) {
    if (const auto value = measure(*cell)) ++votes.emplace(*value, std::pair(0, cell)).first->second.first;
  }
  const Cell* usual = nullptr;
  int most = 0;
  for (const auto& [value, vote] : votes) {
    if (vote.first > most) usual = vote.second;
    most = std::max(most, vote.first);
  }
  return usual;
}

void compare(const Proof& proof, const std::vector<const Cell*>& cells, const char* path, Measure measure) {
  const Cell* usual = usual_cell(cells, measure);
  for (const Cell* cell : cells) {
    const auto own = measure(*cell);
    if (!own || usual == nullptr || own == measure(*usual) || has_conflict(*cell, path)) continue;
    proof.findings
        .add(Rule::cell_family, cell->span_of(path),
             "found " + shown(*own, Unit::millimetre) + ", but other cells of this size code have " +
                 shown(*measure(*usual), Unit::millimetre),
             "one of the two is wrong, or the disagreement belongs under conflicts:")
        .notes.push_back({usual->span_of(path), "so " + usual->reference()});
  }
}

/// A charge in mAh a cubic millimetre, by the outside of the cell.
std::optional<double> density_of(const Cell& cell) {
  constexpr double kPi = 3.14159265358979;
  const auto diameter = diameter_of(cell), height = height_of(cell);
  if (!diameter || !height || *diameter <= 0 || *height <= 0 || !cell.capacity) return std::nullopt;
  const auto charge = stated_value(cell, "capacity.value", cell.capacity->value, Unit::milliampere_hour);
  if (!charge || *charge <= 0) return std::nullopt;
  return *charge / (kPi / 4 * *diameter * *diameter * *height);
}

double middle(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

}  // namespace

void check_cell_families(const Proof& proof) {
  std::map<std::string, std::vector<const Cell*>> families;
  for (const auto& [id, cell] : proof.base.cells) {
    const std::string digits = size_digits(proof, cell);
    if (!digits.empty()) families[digits].push_back(&cell);
  }
  for (const auto& [digits, cells] : families) {
    compare(proof, cells, "size.diameter", diameter_of);
    compare(proof, cells, "size.height", height_of);
  }
}

void check_capacities(const Proof& proof) {
  constexpr double kFar = 2.5;
  constexpr std::size_t kEnough = 5;
  std::map<std::string, std::vector<double>> by_system;
  for (const auto& [id, cell] : proof.base.cells) {
    if (const auto density = density_of(cell)) by_system[cell.system].push_back(*density);
  }
  std::map<std::string, double> usual_of;
  for (const auto& [system, values] : by_system) {
    if (values.size() >= kEnough) usual_of[system] = middle(values);
  }
  for (const auto& [id, cell] : proof.base.cells) {
    const auto density = density_of(cell);
    const auto found = usual_of.find(cell.system);
    if (!density || !cell.usable("system") || found == usual_of.end()) continue;
    const double usual = found->second;
    if (*density <= usual * kFar && *density >= usual / kFar) continue;
    proof.findings.add(Rule::cell_capacity, cell.span_of("capacity.value"),
                       "found " + shown(cell.capacity->value) + ", " + base::fixed_text(*density / usual, 1) +
                           " times what cells of this system hold for their size",
                       "read the figure and its unit again");
  }
}

void check_cells_are_flat(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const auto diameter = diameter_of(cell), height = height_of(cell);
    if (!diameter || !height || *height < *diameter || is_stack(proof, cell)) continue;
    proof.findings
        .add(Rule::cell_flat, cell.span_of("size.height"),
             "found a height of " + shown(cell.size.height) + " and a diameter of " + shown(cell.size.diameter),
             "exchange the two, or correct one")
        .notes.push_back({cell.span_of("size.diameter"), "the diameter"});
  }
}

void check_cells_have_partners(const Proof& proof) {
  if (!is_whole_book(proof)) return;
  for (const auto& [id, cell] : proof.base.cells) {
    const bool sized = diameter_of(cell) && height_of(cell) && !is_stack(proof, cell);
    if (!sized || cell.status == model::CellStatus::withdrawn || !proof.derived.relations.same_size(cell.reference()).empty())
      continue;
    proof.findings.add(Rule::coverage_cell, cell.span_of("designation"), "no other cell has the size of " + cell.designation,
                       "add the cell that takes its place, if there is one");
  }
}

}  // namespace benchleaf::prove
