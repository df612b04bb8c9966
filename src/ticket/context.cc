// In: a watch and the records. Out: what it is made of and what it may be: the residue by its colour, the crystal by its signs,
// the gasket's series by its section.
#include "ticket/context.h"

#include <algorithm>
#include <cmath>

#include "base/number.h"
#include "base/quantity.h"
#include "derive/demonstration.h"

namespace benchleaf::ticket {

namespace {

/// By how much an old cell may measure wider than a new one, by the table of bench rules; 0 without it.
double swelling_mm(const Context& context) {
  const model::Fact* swelling = context.desk.derived.facts.find("table/bench-rules#cell-swelling.value");
  return swelling != nullptr && swelling->unit == "mm" ? swelling->value.value_or(0) : 0;
}

/// The current from which a cell of high drain is wanted, in microampere.
double high_drain_ua(const Context& context) {
  const model::Fact* peak = context.desk.derived.facts.find("table/bench-rules#peak-high-drain.value");
  if (peak == nullptr || !peak->value) return 0;
  return peak->unit == "mA" ? *peak->value * 1000 : *peak->value;
}

/// Whether a module works at the voltage of a cell; where it does not say, it may.
bool works_at(const model::Module& module, const model::Cell& cell) {
  if (!is_known(module.supply) || !is_known(cell.nominal)) return true;
  const auto supply = module.supply->in(base::Unit::volt);
  const auto volts = cell.nominal->value_in(base::Unit::volt);
  const int wells = std::max(1, module.wiring == model::Wiring::series ? module.cell_count : 1);
  return !supply || !volts || *volts * wells <= supply->high;
}

/// Whether a cell on record of one of these systems may be the one that lay in the watch, by what was measured and by voltage.
bool may_have_been(const Context& context, const std::vector<std::string>& systems) {
  const auto& size = context.watch.cell_size;
  const auto across = size && size->diameter ? size->diameter->value_in(base::Unit::millimetre) : std::nullopt;
  const double swelling = swelling_mm(context);
  const model::Module* module = context.module();
  return std::any_of(context.desk.records.cells.begin(), context.desk.records.cells.end(), [&](const auto& one) {
    const model::Cell& cell = one.second;
    if (!has(systems, cell.system) || (module != nullptr && !works_at(*module, cell))) return false;
    if (!across) return true;
    const auto mm = cell.size.diameter ? cell.size.diameter->value_in(base::Unit::millimetre) : std::nullopt;
    // a cell may be a little narrower than its size as well, which is the largest that it may have
    return mm && base::tidy(std::fabs(*across - *mm)) <= swelling;
  });
}

/// Whether a cell that was found or measured may have left the residue.
bool may_come_from(const Context& context, const model::Residue& residue) {
  if (residue.left_by.empty()) return true;
  if (context.watch.cells_found.empty()) return may_have_been(context, residue.left_by);
  return std::any_of(context.watch.cells_found.begin(), context.watch.cells_found.end(), [&](const RecordRef& cell) {
    return context.desk.cell(cell) == nullptr || has(residue.left_by, context.desk.cell(cell)->system);
  });
}

}  // namespace

bool is_known(const std::optional<base::Quantity>& quantity) { return quantity && quantity->has_value(); }

const model::Module* Context::module() const { return desk.records.find<model::Module>(watch.module); }
const model::Crystal* Context::crystal() const { return desk.records.find<model::Crystal>(watch.crystal); }
std::string Context::display() const { return module() == nullptr ? watch.display : model::word_of(module()->display); }
int Context::wells() const { return module() != nullptr ? std::max(1, module()->cell_count) : watch.cell_count; }

std::vector<const model::Module*> Context::modules() const {
  if (module() != nullptr) return {module()};
  std::vector<const model::Module*> may_be;
  for (const auto& [id, one] : desk.records.modules) {
    const bool shows = watch.display.empty() || model::word_of(one.display) == watch.display;
    if (shows && !derive::is_demonstration(one)) may_be.push_back(&one);
  }
  return may_be;
}

std::optional<bool> Context::draws_much() const {
  if (const model::Module* own = module()) {
    if (own->lamp && *own->lamp != model::Lamp::none && *own->lamp != model::Lamp::tritium) return true;
    return std::any_of(own->loads.begin(), own->loads.end(), [this](const model::Module::Load& load) {
      const auto current = is_known(load.current) ? load.current->in(base::Unit::microampere) : std::nullopt;
      return current && high_drain_ua(*this) > 0 && current->high >= high_drain_ua(*this);
    });
  }
  if (watch.display == "hands") return false;
  return watch.display == "led" ? std::optional(true) : std::nullopt;
}

RecordRef Context::crystal_material() const {
  if (crystal() != nullptr) return crystal()->material;
  const auto& [scratches, feels] = watch.crystal_signs;
  for (const auto& [id, material] : desk.records.materials) {
    if (!material.scratches.empty() && material.scratches == scratches && material.feels == feels) return material.reference();
  }
  return {};
}

RecordRef Context::series() const {
  if (!watch.gasket.empty() || !is_known(watch.old_gasket.section)) return watch.gasket;
  const auto section = watch.old_gasket.section->value_in(base::Unit::millimetre);
  for (const auto& [id, gasket] : desk.records.gaskets) {
    if (gasket.profile != model::Profile::round || !is_known(gasket.section) || gasket.moving.value_or(false)) continue;
    if (gasket.section->value_in(base::Unit::millimetre) == section) return gasket.reference();
  }
  return {};
}

References Context::residues() const {
  if (!watch.residues.empty() || !watch.crust) return watch.residues;
  References may_be;
  const auto colour = model::word_from<model::Colour>(watch.crust->colour);
  for (const auto& [id, residue] : desk.records.residues) {
    if (colour && has(residue.colours, *colour) && may_come_from(*this, residue)) may_be.push_back(residue.reference());
  }
  return may_be;
}

bool Context::has_role(const RecordRef& part, std::string_view role) const {
  const auto* found = desk.records.find<model::Part>(part);
  return found != nullptr && found->role == role;
}

References Context::parts_of(std::string_view role) const {
  References parts;
  for (const auto& [id, part] : desk.records.parts) {
    if (part.role == role) parts.push_back(part.reference());
  }
  return parts;
}

References Context::case_materials() const {
  const RecordRef surface = watch.case_metal ? watch.case_metal->surface : RecordRef();
  const RecordRef metal = watch.case_metal ? watch.case_metal->metal : RecordRef();
  References materials;
  for (const RecordRef& part : parts_of("case")) {
    const References made_of = bench::materials_of(world(), part);
    if (surface.empty() || has(made_of, surface)) materials.push_back(part);
  }
  add_once(materials, surface);
  add_once(materials, metal);
  return materials;
}

RecordRef Context::crystal_part(const RecordRef& named) const {
  const RecordRef material = crystal_material();
  if (material.empty() || has_role(named, "loose-crystal")) return named;
  for (const RecordRef& part : parts_of("crystal")) {
    const auto* crystal_here = desk.records.find<model::Part>(part);
    const References made_of = bench::materials_of(world(), part);
    if (has(made_of, material)) return part;
    // an acrylic crystal in its case is of acrylic under stress, which has a record of its own
    const auto* own = desk.records.find<model::Material>(material);
    const auto* stressed = made_of.empty() ? nullptr : desk.records.find<model::Material>(made_of.front());
    if (crystal_here != nullptr && own != nullptr && stressed != nullptr && own->family == stressed->family) return part;
  }
  return material;
}

bench::Result ask(const Context& context, std::string_view calculator, const Words& words) {
  bench::Inputs inputs;
  for (const auto& [key, value] : words) inputs.emplace(key, bench::Given{value, model::Trust::given, {}});
  return context.judges.reckon(calculator, inputs, {context.desk.tables, context.figures});
}

}  // namespace benchleaf::ticket
