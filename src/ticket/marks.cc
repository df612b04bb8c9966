// In: a watch and the records. Out: the marks that conditions ask for.
#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

#include "ticket/context.h"

namespace benchleaf::ticket {

namespace {

/// A word of a closed field of the watch record to its mark; `otherwise` where it is empty.
void add_word(Marks& marks, std::string_view trait, const std::string& word, Mark otherwise) {
  const auto mark = model::mark_named(trait, word);
  marks.insert(word.empty() || !mark ? otherwise : *mark);
}

std::optional<Mark> system_mark(std::string_view system) {
  static constexpr std::array<std::pair<std::string_view, Mark>, 7> kSystems = {
      {{"silver-oxide", Mark::system_silver},
       {"alkaline", Mark::system_alkaline},
       {"lithium-manganese", Mark::system_lithium},
       {"lithium-carbon-monofluoride", Mark::system_lithium},
       {"mercuric-oxide", Mark::system_mercury},
       {"mercuric-oxide-manganese", Mark::system_mercury},
       {"zinc-air", Mark::system_zinc_air}}};
  for (const auto& [word, mark] : kSystems) {
    if (word == system) return mark;
  }
  return std::nullopt;
}

bool is_lithium_word(const std::string& system) { return system_mark(system) == Mark::system_lithium; }

void add_cell(const Context& context, Marks& marks) {
  const model::Watch& watch = context.watch;
  const model::Module* module = context.module();
  const int wells = context.wells();
  marks.insert(wells == 0 ? Mark::wells_unknown : wells > 1 ? Mark::wells_several : Mark::wells_one);
  for (const RecordRef& cell : watch.cells_found) {
    const model::Cell* found = context.desk.cell(cell);
    if (const auto mark = found == nullptr ? std::nullopt : system_mark(found->system)) marks.insert(*mark);
  }
  if (watch.cells_found.empty()) marks.insert(Mark::system_unknown);
  const bool measured = watch.cell_size && is_known(watch.cell_size->diameter) && is_known(watch.cell_size->height);
  if (!watch.cells_found.empty())
    marks.insert(Mark::cell_found);
  else if (measured)
    marks.insert(Mark::cell_measured);
  else
    marks.insert(module != nullptr && module->cells.size() == 1 ? Mark::cell_by_module : Mark::cell_unknown);
}

/// The year of a leak against the year from which cells of its system hold no mercury.
Mark leak_of_system(const Context& context, const std::string& system) {
  const model::MercuryFree* free = context.desk.tables.mercury_free_from(system);
  const std::string bought = context.watch.crust ? context.watch.crust->bought : std::string();
  const bool young = free != nullptr && !bought.empty() && std::atoi(bought.c_str()) > free->year;
  if (!young) return Mark::leak_old;
  if (system_mark(system) == Mark::system_alkaline) return Mark::leak_young_alkaline;
  return system_mark(system) == Mark::system_silver ? Mark::leak_young_silver : Mark::leak_old;
}

/// The one system of the cells that were found and may have left a residue, or empty.
std::string system_of_leak(const Context& context, const model::Residue& residue) {
  std::vector<std::string> systems;
  for (const RecordRef& cell : context.watch.cells_found) {
    const model::Cell* found = context.desk.cell(cell);
    if (found != nullptr && (residue.left_by.empty() || has(residue.left_by, found->system))) add_once(systems, found->system);
  }
  return systems.size() == 1 ? systems.front() : std::string();
}

void add_leak(const Context& context, Marks& marks) {
  const model::Watch& watch = context.watch;
  if (watch.residues.empty() && !watch.crust) return void(marks.insert(Mark::leak_unchecked));
  std::set<Mark> leaks;
  for (const RecordRef& reference : context.residues()) {
    const auto* residue = context.desk.records.find<model::Residue>(reference);
    if (residue == nullptr || (residue->left_by.empty() && residue->side != model::Side::alkaline)) continue;
    const auto& systems = residue->left_by;
    const bool lithium = !systems.empty() && std::all_of(systems.begin(), systems.end(), is_lithium_word);
    leaks.insert(lithium ? Mark::leak_lithium : leak_of_system(context, system_of_leak(context, *residue)));
  }
  // one leak that may hold mercury makes all of them so
  if (leaks.count(Mark::leak_old) > 0) leaks.erase(Mark::leak_young_alkaline), leaks.erase(Mark::leak_young_silver);
  const bool guessed = watch.residues.empty();
  if (guessed && leaks.size() > 1 && leaks.count(Mark::leak_lithium) > 0) leaks = {Mark::leak_lithium_or_other};
  // a crust that is none on record is not known to be harmless
  const bool seen = watch.crust && watch.crust->colour != "none" && !watch.crust->colour.empty();
  if (leaks.empty()) leaks.insert(guessed && seen ? Mark::leak_old : Mark::leak_none);
  marks.insert(leaks.begin(), leaks.end());
}

void add_crystal(const Context& context, Marks& marks) {
  const auto* material = context.desk.records.find<model::Material>(context.crystal_material());
  marks.insert(material == nullptr                                  ? Mark::crystal_unknown
               : material->family == model::MaterialFamily::plastic ? Mark::crystal_acrylic
                                                                    : Mark::crystal_glass);
  add_word(marks, "print", context.watch.print, Mark::print_unknown);
}

/// no, light, motion: by the watch, else by its module.
std::string charges_of(const Context& context) {
  if (!context.watch.charges.empty() || context.module() == nullptr) return context.watch.charges;
  const std::string& charging = context.module()->charging;
  return charging == "none" ? "no" : charging;
}

void add_pushers(const model::Watch& watch, Marks& marks) {
  if (!watch.pushers) return void(marks.insert(Mark::pushers_unknown));
  if (watch.pushers->missing > 0) marks.insert(Mark::pushers_missing);
  if (watch.pushers->stuck > 0) marks.insert(Mark::pushers_stuck);
  if (watch.pushers->missing == 0 && watch.pushers->stuck == 0) marks.insert(Mark::pushers_working);
}

void add_lacks(const Context& context, Marks& marks) {
  const model::Watch& watch = context.watch;
  const auto lacks = [&marks](bool lacking, Mark mark) {
    if (lacking) marks.insert(mark);
  };
  const auto& size = watch.crystal_size;
  const bool paint = std::any_of(watch.inside.begin(), watch.inside.end(),
                                 [&context](const RecordRef& part) { return context.has_role(part, "lume"); });
  lacks(watch.number.empty(), Mark::lacks_number);
  lacks(watch.found.empty(), Mark::lacks_found);
  lacks(watch.symptoms.empty(), Mark::lacks_symptoms);
  lacks(watch.module.empty(), Mark::lacks_module);
  lacks(watch.back.empty(), Mark::lacks_back);
  lacks(!watch.case_metal || watch.case_metal->metal.empty(), Mark::lacks_metal);
  lacks(!watch.case_metal || watch.case_metal->surface.empty(), Mark::lacks_surface);
  lacks(!watch.case_metal || watch.case_metal->mark.empty(), Mark::lacks_gold_mark);
  lacks(watch.lume.empty() && !paint, Mark::lacks_lume);
  lacks(!is_known(watch.lug_width), Mark::lacks_lug_width);
  lacks(watch.cells_found.empty() && !watch.cell_size, Mark::lacks_cell);
  lacks(watch.residues.empty() && !watch.crust, Mark::lacks_crust);
  lacks(watch.residues.empty() && watch.crust && watch.crust->colour != "none", Mark::lacks_residue);
  lacks(watch.inside.empty(), Mark::lacks_inside);
  lacks(context.crystal_material().empty(), Mark::lacks_crystal);
  lacks(!size || !is_known(size->diameter), Mark::lacks_crystal_width);
  lacks(!size || !is_known(size->thickness), Mark::lacks_crystal_thickness);
  lacks(!is_known(watch.scratch) && watch.nail.empty(), Mark::lacks_scratch);
  lacks(context.series().empty(), Mark::lacks_gasket);
  lacks(!is_known(watch.gasket_seat), Mark::lacks_seat);
  lacks(watch.jobs.empty(), Mark::lacks_jobs);
  // paint that somebody noted is paint of which nobody knows the age
  if (watch.lume.empty()) marks.insert(paint ? Mark::lume_some : Mark::lume_unknown);
}

bool names_one(const References& wanted, const References& there) {
  return std::any_of(wanted.begin(), wanted.end(), [&there](const RecordRef& one) { return has(there, one); });
}

}  // namespace

Marks marks_of(const Context& context) {
  const model::Watch& watch = context.watch;
  Marks marks;
  marks.insert(watch.jobs.empty() ? Mark::jobs_open : Mark::jobs_named);
  add_word(marks, "back", watch.back, Mark::back_unknown);
  add_word(marks, "display", context.display(), Mark::display_unknown);
  const auto much = context.draws_much();
  marks.insert(!much ? Mark::lamp_unknown : *much ? Mark::lamp_some : Mark::lamp_none);
  add_cell(context, marks);
  add_leak(context, marks);
  add_crystal(context, marks);
  add_pushers(watch, marks);
  if (!watch.lume.empty()) add_word(marks, "lume", watch.lume, Mark::lume_unknown);
  marks.insert(context.series().empty() ? Mark::gasket_unknown : Mark::gasket_known);
  marks.insert(is_known(watch.gasket_seat) ? Mark::seat_known : Mark::seat_unknown);
  add_word(marks, "charges", charges_of(context), Mark::charges_unknown);
  if (watch.wishes.empty()) marks.insert(Mark::wish_unknown);
  for (const std::string& wish : watch.wishes) add_word(marks, "wish", wish, Mark::wish_unknown);
  marks.insert(watch.visits.empty() ? Mark::visits_none : Mark::visits_some);
  marks.insert(Mark::bars_in);
  add_lacks(context, marks);
  return marks;
}

void set_mark(Marks& marks, Mark mark) {
  for (auto at = marks.begin(); at != marks.end();)
    at = model::mark_trait(*at) == model::mark_trait(mark) ? marks.erase(at) : std::next(at);
  marks.insert(mark);
}

bool holds(const Context& context, const Marks& marks, const model::Condition& condition) {
  for (const auto& asked : condition.traits) {
    const auto there = [&marks](Mark mark) { return marks.count(mark) > 0; };
    if (std::none_of(asked.any_of.begin(), asked.any_of.end(), there)) return false;
  }
  const auto& metal = context.watch.case_metal;
  if (!condition.surface.empty() && (!metal || !has(condition.surface, metal->surface))) return false;
  if (!condition.residue.empty() && !names_one(condition.residue, context.residues())) return false;
  return condition.symptom.empty() || names_one(condition.symptom, context.watch.symptoms);
}

bool any_holds(const Context& context, const Marks& marks, const std::vector<model::Condition>& conditions, bool otherwise) {
  if (conditions.empty()) return otherwise;
  return std::any_of(conditions.begin(), conditions.end(),
                     [&](const model::Condition& one) { return holds(context, marks, one); });
}

}  // namespace benchleaf::ticket
