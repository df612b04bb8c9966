// In: what was seen of a watch where it is not known. Out: what it may be: the residue by its colour, the crystal by its signs,
// the gasket's series by its section, the drawer by what lies ready.
#include <algorithm>
#include <cmath>

#include "base/number.h"
#include "base/quantity.h"
#include "derive/demonstration.h"
#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

/// By how much an old cell may measure wider than a new one, by the table of bench rules; 0 without it.
double swelling_mm(const Planner& planner) {
  const model::Fact* swelling = planner.desk.derived.facts.find("table/bench-rules#cell-swelling.value");
  return swelling != nullptr && swelling->unit == "mm" ? swelling->value.value_or(0) : 0;
}

std::optional<double> mm_of(const std::optional<base::Quantity>& quantity) {
  return quantity ? quantity->value_in(base::Unit::millimetre) : std::nullopt;
}

/// Whether two lengths agree within a swelling; what is not known agrees with each.
bool agree(const std::optional<base::Quantity>& one, const std::optional<base::Quantity>& other, double within) {
  const auto length = mm_of(one);
  const auto other_length = mm_of(other);
  return !length || !other_length || base::tidy(std::fabs(*length - *other_length)) <= within;
}

/// Whether a cell has the size of one that was found, else that of the one that was measured, swollen or not.
bool is_of_size_seen(const Planner& planner, const model::Cell& cell) {
  const model::Watch& watch = planner.watch;
  for (const std::string& reference : watch.cells_found) {
    const model::Cell* found = planner.desk.cell(reference);
    if (found == nullptr) continue;
    if (agree(cell.size.diameter, found->size.diameter, 0) && agree(cell.size.height, found->size.height, 0)) return true;
  }
  if (!watch.cells_found.empty() || !watch.cell_size) return false;
  const double swelling = swelling_mm(planner);
  return agree(cell.size.diameter, watch.cell_size->diameter, swelling) &&
         agree(cell.size.height, watch.cell_size->height, swelling);
}

/// Whether a cell on record of one of these systems may be the one that was measured, swollen or not.
bool has_size_of(const Planner& planner, const std::vector<std::string>& systems) {
  const double swelling = swelling_mm(planner);
  const auto& size = planner.watch.cell_size;
  const auto across = size && size->diameter ? size->diameter->value_in(base::Unit::millimetre) : std::nullopt;
  if (!across) return true;
  return std::any_of(planner.desk.records.cells.begin(), planner.desk.records.cells.end(), [&](const auto& one) {
    const auto& diameter = one.second.size.diameter;
    const auto mm = diameter ? diameter->value_in(base::Unit::millimetre) : std::nullopt;
    // a cell may be a little narrower than its size as well, which is the largest that it may have
    return mm && holds(systems, one.second.system) && base::tidy(std::fabs(*across - *mm)) <= swelling;
  });
}

/// Whether a cell that was found or measured may have left the residue; without a cell each may.
bool may_come_from(const Planner& planner, const model::Residue& residue) {
  const auto& cells = planner.watch.cells_found;
  if (residue.left_by.empty()) return true;
  if (cells.empty()) return has_size_of(planner, residue.left_by);
  return std::any_of(cells.begin(), cells.end(), [&](const std::string& cell) {
    return planner.desk.cell(cell) == nullptr || holds(residue.left_by, planner.desk.cell(cell)->system);
  });
}

model::Stock::Item at_hand(model::RecordRef item) {
  model::Stock::Item one;
  one.item = std::move(item);
  one.count = 1;
  return one;
}

}  // namespace

model::References Planner::residues() const {
  if (!watch.residues.empty() || !watch.crust) return watch.residues;
  const auto colour = model::word_from<model::Colour>(watch.crust->colour);
  model::References may_be;
  for (const auto& [id, residue] : desk.records.residues) {
    const bool looks_so = std::find(residue.colours.begin(), residue.colours.end(), colour) != residue.colours.end();
    if (looks_so && may_come_from(*this, residue)) may_be.push_back(residue.reference());
  }
  return may_be;
}

bool Planner::may_bear_no_water() const {
  if (!watch.residues.empty()) return false;
  const model::References all = residues();
  const auto is_lithium = [this](const std::string& residue) {
    const auto found = desk.records.residues.find(id_of(residue));
    return found != desk.records.residues.end() && holds(found->second.left_by, "lithium-manganese");
  };
  return std::any_of(all.begin(), all.end(), is_lithium) && !std::all_of(all.begin(), all.end(), is_lithium);
}

std::string young_leak(const Planner& planner) {
  constexpr std::string_view kSystem = "alkaline";
  const model::MercuryFree* free = planner.desk.tables.mercury_free_from(kSystem);
  if (free == nullptr) return {};
  const model::References residues = planner.residues();
  const bool may_be = std::any_of(residues.begin(), residues.end(), [&](const std::string& residue) {
    const auto found = planner.desk.records.residues.find(Planner::id_of(residue));
    return found != planner.desk.records.residues.end() && holds(found->second.left_by, kSystem);
  });
  if (!residues.empty() && !may_be) return {};
  return "alkaline cell bought after " + std::to_string(free->year);
}

std::string Planner::crystal_material() const {
  if (crystal() != nullptr) return crystal()->material;
  const auto& [scratches, feels] = watch.crystal_signs;
  if (scratches == "soft" && feels == "warm") return "material/acrylic";
  return scratches == "hard" && feels == "cool" ? "material/mineral-glass" : std::string();
}

std::string Planner::series() const {
  if (!watch.gasket.empty() || !is_known(watch.old_gasket.section)) return watch.gasket;
  const auto section = watch.old_gasket.section->value_in(base::Unit::millimetre);
  for (const auto& [id, gasket] : desk.records.gaskets) {
    if (gasket.profile != model::Profile::round || !is_known(gasket.section) || gasket.moving.value_or(false)) continue;
    if (gasket.section->value_in(base::Unit::millimetre) == section) return gasket.reference();
  }
  return {};
}

std::string Planner::display() const { return module() == nullptr ? watch.display : word_of(module()->display); }

std::vector<const model::Module*> Planner::modules() const {
  if (module() != nullptr) return {module()};
  std::vector<const model::Module*> may_be;
  for (const auto& [id, one] : desk.records.modules) {
    const bool shows = watch.display.empty() || word_of(one.display) == watch.display;
    if (shows && !derive::is_demonstration(one)) may_be.push_back(&one);
  }
  return may_be;
}

model::References Planner::cells() const {
  if (module() == nullptr) return {};
  model::References taken;
  for (const model::RecordRef& reference : module()->cells) {
    const model::Cell* cell = desk.cell(reference);
    if (cell != nullptr && is_of_size_seen(*this, *cell)) taken.push_back(reference);
  }
  return taken.empty() ? module()->cells : taken;
}

std::optional<model::Stock> drawer_of(const model::Watch& watch) {
  if (!watch.on_hand) return std::nullopt;
  model::Stock drawer;
  for (const std::string& grade : watch.on_hand->grades) {
    drawer.items.push_back(at_hand(model::RecordRef(scale_of(grade))));
    drawer.items.back().grade = grade;
  }
  for (const model::RecordRef& liquid : watch.on_hand->liquids) drawer.items.push_back(at_hand(liquid));
  for (const auto& gasket : watch.on_hand->gaskets) {
    drawer.items.push_back(at_hand(gasket.series));
    drawer.items.back().size = gasket.inside;
  }
  return drawer;
}

std::string scale_of(const std::string& grade) {
  return grade.front() == 'P' ? "abrasive/fepa-p" : grade.front() == 'F' ? "abrasive/fepa-f" : "abrasive/jis";
}

}  // namespace benchleaf::compose
