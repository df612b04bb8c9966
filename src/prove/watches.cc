// Rules about a watch on the bench and the lists of its drawer: what was found in it fits what it is said to be.

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "base/ascii.h"
#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Kind;
using model::Record;
using model::Watch;
using report::Rule;

template <typename List, typename Value>
bool holds(const List& list, const Value& value) {
  return std::find(list.begin(), list.end(), value) != list.end();
}

/// A field of a watch that does not fit another record, with a note there.
void does_not_fit(const Proof& proof, const Watch& watch, const std::string& path, std::string message, const Record& other,
                  std::string_view other_path) {
  if (!watch.usable(path) || !other.usable(other_path)) return;
  proof.findings
      .add(Rule::watch_fits, watch.span_of(path), std::move(message), "one of the two is wrong: look at the watch again")
      .notes.push_back({other.span_of(other_path), "so " + other.reference()});
}

std::string item(const char* list, std::size_t i) { return std::string(list) + "." + std::to_string(i); }

bool same_size(const Proof& proof, const model::RecordRef& cell, const model::RecordRef& other) {
  const auto& peers = proof.derived.relations.same_size(cell);
  return cell == other || std::any_of(peers.begin(), peers.end(), [&](const auto& peer) { return peer.cell == other; });
}

void check_module(const Proof& proof, const Watch& watch) {
  const auto* record = record_of(proof, Kind::module, watch.module);
  if (record == nullptr) return;
  const auto& module = proof.base.modules.at(record->id);
  for (std::size_t i = 0; i < watch.cells_found.size(); ++i) {
    const auto& found = watch.cells_found[i];
    const bool fits =
        std::any_of(module.cells.begin(), module.cells.end(), [&](const auto& own) { return same_size(proof, found, own); });
    if (fits || record_of(proof, Kind::cell, found) == nullptr) continue;
    does_not_fit(proof, watch, item("cells-found", i), "found " + found + ", which has not the size of a cell of " + module.id,
                 module, "cells");
  }
  for (std::size_t i = 0; i < watch.inside.size(); ++i) {
    const auto& part = watch.inside[i];
    if (proof.base.find(part) == nullptr || !part.is(Kind::part) || holds(module.parts, part)) continue;
    does_not_fit(proof, watch, item("inside", i), "found " + part + ", which is no part of " + module.id, module, "parts");
  }
  for (std::size_t i = 0; i < watch.symptoms.size(); ++i) {
    const auto* symptom = record_of(proof, Kind::symptom, watch.symptoms[i]);
    if (symptom == nullptr || holds(proof.base.symptoms.at(symptom->id).shown_by, module.display)) continue;
    does_not_fit(proof, watch, item("symptoms", i),
                 "found " + symptom->id + ", which a display of kind " + word_of(module.display) + " does not show", *symptom,
                 "shown-by");
  }
}

/// A crust comes from a cell of its kind; one that was there before may have left it, which the record then says.
void check_residues(const Proof& proof, const Watch& watch) {
  for (std::size_t i = 0; i < watch.residues.size(); ++i) {
    const auto* record = record_of(proof, Kind::residue, watch.residues[i]);
    if (record == nullptr || watch.cells_found.empty()) continue;
    const auto& residue = proof.base.residues.at(record->id);
    bool known = residue.left_by.empty();
    for (const auto& found : watch.cells_found) {
      const auto* cell = record_of(proof, Kind::cell, found);
      known = known || cell == nullptr || holds(residue.left_by, proof.base.cells.at(cell->id).system);
    }
    if (!known)
      does_not_fit(proof, watch, item("residues", i), "found " + residue.id + ", which no cell found here leaves", residue,
                   "left-by");
  }
}

/// A measure of the watch between two ends of a series, each in millimetres.
void check_measure(const Proof& proof, const Watch& watch, const char* path, const std::optional<base::Quantity>& measured,
                   double low, double high, const Record& series, const char* series_path) {
  const auto value = stated_value(watch, path, measured, Unit::millimetre);
  if (!value || (*value >= base::tidy(low) && *value <= base::tidy(high))) return;
  does_not_fit(proof, watch, path,
               "found " + shown(measured) + ", but " + series.id + " goes from " + shown(low, Unit::millimetre) + " to " +
                   shown(high, Unit::millimetre),
               series, series_path);
}

void check_crystal(const Proof& proof, const Watch& watch) {
  const auto* record = record_of(proof, Kind::crystal, watch.crystal);
  if (record == nullptr || !watch.crystal_size) return;
  const auto& crystal = proof.base.crystals.at(record->id);
  if (crystal.sizes) {
    const auto from = stated_value(crystal, "sizes.from", crystal.sizes->from, Unit::millimetre);
    const auto to = stated_value(crystal, "sizes.to", crystal.sizes->to, Unit::millimetre);
    if (from && to)
      check_measure(proof, watch, "crystal-size.diameter", watch.crystal_size->diameter, *from, *to, crystal, "sizes");
  }
  const auto thick = crystal.thickness && crystal.usable("thickness") ? crystal.thickness->in(Unit::millimetre) : std::nullopt;
  if (!thick || !crystal.thickness->has_value()) return;
  check_measure(proof, watch, "crystal-size.thickness", watch.crystal_size->thickness, thick->low, thick->high, crystal,
                "thickness");
}

/// The seat lies outside the ring: between the holes of the series and those with the section on both sides.
void check_gasket(const Proof& proof, const Watch& watch) {
  const auto* record = record_of(proof, Kind::gasket, watch.gasket);
  if (record == nullptr) return;
  const auto& gasket = proof.base.gaskets.at(record->id);
  const auto from = stated_value(gasket, "inside.from", gasket.inside.from, Unit::millimetre);
  const auto to = stated_value(gasket, "inside.to", gasket.inside.to, Unit::millimetre);
  const auto section = stated_value(gasket, "section", gasket.section, Unit::millimetre);
  const auto wall = stated_value(gasket, "wall", gasket.wall, Unit::millimetre);
  if (!from || !to) return;
  const double beside = 2 * section.value_or(wall.value_or(0));
  check_measure(proof, watch, "gasket-seat", watch.gasket_seat, *from, *to + beside, gasket, "inside");
}

void check_case(const Proof& proof, const Watch& watch) {
  if (!watch.case_metal) return;
  const auto check = [&](const char* path, const model::RecordRef& reference, const std::vector<model::MaterialFamily>& kinds) {
    const auto* record = record_of(proof, Kind::material, reference);
    if (record == nullptr || holds(kinds, proof.base.materials.at(record->id).family)) return;
    does_not_fit(proof, watch, path, "found " + record->id + ", of which no case is made so", *record, "kind");
  };
  using Family = model::MaterialFamily;
  check("case.metal", watch.case_metal->metal, {Family::metal, Family::plastic});
  check("case.surface", watch.case_metal->surface, {Family::metal, Family::plastic, Family::plating});
  const auto* surface = record_of(proof, Kind::material, watch.case_metal->surface);
  const bool bare = surface != nullptr && proof.base.materials.at(surface->id).family != Family::plating;
  const bool both = !watch.case_metal->metal.empty() && watch.case_metal->surface != watch.case_metal->metal;
  if (bare && both && watch.usable("case")) {
    does_not_fit(proof, watch, "case.surface",
                 "found " + surface->id + " on " + watch.case_metal->metal + ", and it is no plating", *surface, "kind");
  }
}

/// What fills the slots of a job: each slot of its procedure once, with what it allows.
void check_job(const Proof& proof, const Watch& watch, std::size_t i) {
  const Watch::Job& job = watch.jobs[i];
  const auto* record = record_of(proof, Kind::procedure, job.procedure);
  if (record == nullptr) return;
  const auto& procedure = proof.base.procedures.at(record->id);
  const std::string path = item("jobs", i);
  for (std::size_t k = 0; k < job.fill.size(); ++k) {
    const auto slot = std::find_if(procedure.slots.begin(), procedure.slots.end(),
                                   [&](const auto& one) { return one.name == job.fill[k].slot; });
    const std::string fill = path + "." + item("fill", k);
    if (slot == procedure.slots.end()) {
      does_not_fit(proof, watch, fill + ".slot", "found the slot " + job.fill[k].slot + ", which " + procedure.id + " has not",
                   procedure, "slots");
    } else if (!holds(slot->allowed, job.fill[k].record) && proof.base.find(job.fill[k].record) != nullptr) {
      does_not_fit(proof, watch, fill + ".record",
                   "found " + job.fill[k].record + ", which the slot " + slot->name + " does not allow", procedure, "slots");
    }
  }
  for (const auto& slot : procedure.slots) {
    const bool filled = std::any_of(job.fill.begin(), job.fill.end(), [&](const auto& one) { return one.slot == slot.name; });
    if (!filled)
      does_not_fit(proof, watch, path, "nothing fills the slot " + slot.name + " of " + procedure.id, procedure, "slots");
  }
}

}  // namespace

void check_watches(const Proof& proof) {
  for (const auto& [id, watch] : proof.base.watches) {
    check_module(proof, watch);
    check_residues(proof, watch);
    check_crystal(proof, watch);
    check_gasket(proof, watch);
    check_case(proof, watch);
    for (std::size_t i = 0; i < watch.jobs.size(); ++i) check_job(proof, watch, i);
  }
}

namespace {

/// A word of the title that has the form of a number, letter for letter and digit for digit; empty where it names none.
std::string number_in(const std::string& title, const std::string& number) {
  const auto form = [](std::string_view text) {
    std::string marks;
    for (const char one : text)
      marks += base::is_digit(one) ? '0' : (one >= 'a' && one <= 'z') || (one >= 'A' && one <= 'Z') ? 'a' : one;
    return marks;
  };
  std::size_t at = 0;
  while (at < title.size()) {
    const std::size_t end = std::min(title.find_first_of(" ,;:", at), title.size());
    const std::string word = title.substr(at, end - at);
    if (form(word) == form(number)) return word;
    at = end + 1;
  }
  return {};
}

}  // namespace

void check_watch_numbers(const Proof& proof) {
  for (const auto& [id, watch] : proof.base.watches) {
    if (watch.number.empty() || !watch.usable("number") || !watch.usable("title")) continue;
    const std::string titled = number_in(watch.title, watch.number);
    if (titled.empty() || titled == watch.number) continue;
    proof.findings
        .add(Rule::watch_number, watch.span_of("number"), "found " + watch.number + ", but the title says " + watch.title,
             "correct one of the two")
        .notes.push_back({watch.span_of("title"), "the title"});
  }
}

void check_stock_sizes(const Proof& proof) {
  for (const auto& [id, stock] : proof.base.stocks) {
    for (std::size_t i = 0; i < stock.items.size(); ++i) {
      const std::string path = item("items", i) + ".size";
      const auto size = stated_value(stock, path, stock.items[i].size, Unit::millimetre);
      const auto* record = record_of(proof, Kind::gasket, stock.items[i].item);
      if (!size || record == nullptr) continue;
      const auto& inside = proof.base.gaskets.at(record->id).inside;
      const auto from = stated_value(*record, "inside.from", inside.from, Unit::millimetre);
      const auto to = stated_value(*record, "inside.to", inside.to, Unit::millimetre);
      const auto step = stated_value(*record, "inside.step", inside.step, Unit::millimetre);
      if (!from || !to || !step || *step <= 0) continue;
      const double steps = base::tidy((*size - *from) / *step);
      if (*size >= *from && *size <= *to && steps == base::tidy(static_cast<double>(static_cast<long>(steps + 0.5)))) continue;
      proof.findings
          .add(Rule::stock_size, stock.span_of(path),
               "found " + shown(stock.items[i].size) + ", a size that " + record->id + " has not",
               "correct the size or the series")
          .notes.push_back({record->span_of("inside"), "the sizes of " + record->reference()});
    }
  }
}

}  // namespace benchleaf::prove
