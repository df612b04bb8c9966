// In: references of a step. Out: the records behind them and what they are made of; nothing for what cannot be read.
#include "bench/step_world.h"

#include <algorithm>
#include <optional>

namespace benchleaf::bench {

namespace {

/// The record of this kind, or nullptr; the map of the knowledge base names its type.
template <typename List>
const typename List::mapped_type* record_in(const StepWorld& world, const List& list, model::Kind kind,
                                            std::string_view reference) {
  const model::Record* record = world.base.find(reference);
  if (record == nullptr || record->kind != kind) return nullptr;
  const auto found = list.find(record->id);
  return found == list.end() ? nullptr : &found->second;
}

/// `Isopropyl alcohol` inside a sentence; a word of capitals (`FEPA P`) stays as it is.
std::string inside_sentence(std::string text) {
  const auto is_capital = [&text](std::size_t at) { return at < text.size() && text[at] >= 'A' && text[at] <= 'Z'; };
  if (is_capital(0) && !is_capital(1)) text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

}  // namespace

const model::Chemistry* chemistry_named(const StepWorld& world, std::string_view reference) {
  return record_in(world, world.base.chemistries, model::Kind::chemistry, reference);
}

const model::Abrasive* abrasive_named(const StepWorld& world, std::string_view reference) {
  return record_in(world, world.base.abrasives, model::Kind::abrasive, reference);
}

const model::Residue* residue_named(const StepWorld& world, std::string_view reference) {
  return record_in(world, world.base.residues, model::Kind::residue, reference);
}

const model::Part* part_named(const StepWorld& world, std::string_view reference) {
  return record_in(world, world.base.parts, model::Kind::part, reference);
}

const model::Tool* tool_named(const StepWorld& world, std::string_view reference) {
  return record_in(world, world.base.tools, model::Kind::tool, reference);
}

std::string words_for(const StepWorld& world, std::string_view reference) {
  const model::Record* record = world.base.find(reference);
  if (record == nullptr) return std::string(reference);
  return record->title.empty() ? record->id : inside_sentence(record->title);
}

std::vector<std::string> substances_of(const StepWorld& world, std::string_view reference) {
  std::vector<std::string> found;
  if (const model::Chemistry* chemistry = chemistry_named(world, reference)) {
    for (const auto& one : chemistry->made_of) found.push_back(one.substance);
  } else if (const model::Residue* residue = residue_named(world, reference)) {
    for (const auto& one : residue->made_of) found.push_back(one.substance);
  }
  return found;
}

std::vector<std::string> materials_of(const StepWorld& world, std::string_view reference) {
  const model::Record* record = world.base.find(reference);
  if (record == nullptr) return {};
  if (record->kind == model::Kind::material) return {record->reference()};
  const model::Part* part = part_named(world, reference);
  if (part == nullptr || !part->usable("made-of")) return {};
  return part->made_of;
}

std::optional<FlashPoint> flash_point_of(const StepWorld& world, const model::Chemistry& chemistry) {
  if (chemistry.flash_point) {
    const auto stated = chemistry.flash_point->in(base::Unit::degree_celsius);
    if (stated) return FlashPoint{stated->low, chemistry.reference()};
    if (chemistry.flash_point->form == base::QuantityForm::none) return std::nullopt;
  }
  if (chemistry.family != "solvent") return std::nullopt;  // a little alcohol in water does not give its flash point
  std::optional<FlashPoint> lowest;
  for (const auto& one : chemistry.made_of) {
    const auto found = world.base.substances.find(one.substance.substr(one.substance.find('/') + 1));
    if (found == world.base.substances.end() || !found->second.flash_point) continue;
    const auto stated = found->second.flash_point->in(base::Unit::degree_celsius);
    if (stated && (!lowest || stated->low < lowest->celsius)) lowest = FlashPoint{stated->low, found->second.reference()};
  }
  return lowest;
}

std::string ground_of(const model::Record& record, std::string_view path) {
  const model::Basis* basis = record.basis_for(path);
  if (basis == nullptr) return "no basis stated";
  const std::string trust(model::trust_name(basis->trust));
  if (basis->source.empty()) return "trust " + trust + ", no source";
  return basis->source + (basis->where.empty() ? std::string() : ", " + basis->where) + ", trust " + trust;
}

}  // namespace benchleaf::bench
