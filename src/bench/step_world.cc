// In: references of a step. Out: the records behind them and what they are made of; nothing for what cannot be read.
#include "bench/step_world.h"

#include <algorithm>
#include <optional>

namespace benchleaf::bench {

namespace {

/// `Isopropyl alcohol` inside a sentence; a word of capitals (`FEPA P`) stays as it is.
std::string inside_sentence(std::string text) {
  const auto is_capital = [&text](std::size_t at) { return at < text.size() && text[at] >= 'A' && text[at] <= 'Z'; };
  if (is_capital(0) && !is_capital(1)) text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

}  // namespace

const model::Chemistry* chemistry_named(const StepWorld& world, const model::RecordRef& reference) {
  return world.base.find<model::Chemistry>(reference);
}

const model::Abrasive* abrasive_named(const StepWorld& world, const model::RecordRef& reference) {
  return world.base.find<model::Abrasive>(reference);
}

const model::Residue* residue_named(const StepWorld& world, const model::RecordRef& reference) {
  return world.base.find<model::Residue>(reference);
}

const model::Part* part_named(const StepWorld& world, const model::RecordRef& reference) {
  return world.base.find<model::Part>(reference);
}

const model::Tool* tool_named(const StepWorld& world, const model::RecordRef& reference) {
  return world.base.find<model::Tool>(reference);
}

std::string words_for(const StepWorld& world, const model::RecordRef& reference) {
  const model::Record* record = world.base.find(reference);
  if (record == nullptr) return reference;
  return record->title.empty() ? record->id : inside_sentence(record->title);
}

model::References substances_of(const StepWorld& world, const model::RecordRef& reference) {
  model::References found;
  if (const model::Chemistry* chemistry = chemistry_named(world, reference)) {
    for (const auto& one : chemistry->made_of) found.push_back(one.substance);
  } else if (const model::Residue* residue = residue_named(world, reference)) {
    for (const auto& one : residue->made_of) found.push_back(one.substance);
  }
  return found;
}

model::References materials_of(const StepWorld& world, const model::RecordRef& reference) {
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
  if (chemistry.family != model::LiquidFamily::solvent)
    return std::nullopt;  // a little alcohol in water does not give its flash point
  std::optional<FlashPoint> lowest;
  for (const auto& one : chemistry.made_of) {
    const auto* found = world.base.find<model::Substance>(one.substance);
    if (found == nullptr || !found->flash_point) continue;
    const auto stated = found->flash_point->in(base::Unit::degree_celsius);
    if (stated && (!lowest || stated->low < lowest->celsius)) lowest = FlashPoint{stated->low, found->reference()};
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
