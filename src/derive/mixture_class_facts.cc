// In: what liquids are made of. Out: their classes as mixture-class makes them, a fact an output. A liquid of which a classed
// part has no stated strength gives none, since its sum would be a guess; so does an aerosol, which has rules of its own.

#include <optional>
#include <string>
#include <utility>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/calculator.h"
#include "derive/fact_of_output.h"
#include "derive/makers.h"
#include "derive/mixture_inputs.h"

namespace benchleaf::derive {
namespace {

using model::Chemistry;

/// Parts that count and what they are read from.
struct Parts {
  std::string text;  ///< `acetic-acid:5 %, ...` as the calculator takes it
  model::Trust trust = model::Trust::given;
  std::string fact;
};

std::optional<std::string> percent_text(const base::Quantity& strength) {
  if (strength.unit == base::Unit::mole_per_litre || !strength.has_value()) return std::nullopt;
  const auto figure = [](double value) { return base::shortest_text(base::tidy(value)); };
  const bool range = strength.stated.low < strength.stated.high;
  return range ? figure(strength.stated.low) + " to " + figure(strength.stated.high) : figure(strength.stated.nominal);
}

bool has_classes(const model::KnowledgeBase& base, const model::RecordRef& substance) {
  const auto* found = base.find<model::Substance>(substance);
  return found != nullptr && (!found->classes.empty() || !found->usable("classes"));
}

std::optional<Parts> parts_of(const Chemistry& liquid, const model::KnowledgeBase& base, const model::FactBase& facts) {
  if (liquid.form == model::LiquidForm::aerosol || !liquid.usable("made-of")) return std::nullopt;
  Parts parts;
  for (std::size_t i = 0; i < liquid.made_of.size(); ++i) {
    const auto& part = liquid.made_of[i];
    if (!has_classes(base, part.substance)) {
      if (base.find(part.substance) == nullptr) return std::nullopt;
      continue;
    }
    const auto percent = part.strength ? percent_text(*part.strength) : std::nullopt;
    if (!percent) return std::nullopt;
    const std::string id = liquid.reference() + "#made-of." + std::to_string(i) + ".strength";
    const model::Fact* fact = facts.find(id);
    if (fact != nullptr) parts.trust = model::weaker(parts.trust, fact->trust);
    if (fact != nullptr && parts.fact.empty()) parts.fact = id;
    parts.text += (parts.text.empty() ? "" : ", ") + part.substance.id() + ":" + *percent;
  }
  if (parts.text.empty()) return std::nullopt;
  return parts;
}

void give(bench::Inputs& inputs, const char* name, const Chemistry& liquid, const char* path,
          const std::optional<base::Quantity>& quantity, const model::FactBase& facts) {
  const bool stated = quantity && (quantity->has_value() || quantity->form == base::QuantityForm::none);
  const model::Fact* fact = facts.find(liquid.reference() + "#" + path);
  if (!stated || fact == nullptr) return;
  inputs.emplace(name, bench::Given{quantity->written, fact->trust, fact->id});
}

}  // namespace

std::optional<bench::Inputs> mixture_inputs(const Chemistry& liquid, const model::KnowledgeBase& base,
                                            const model::FactBase& facts) {
  const auto parts = parts_of(liquid, base, facts);
  if (!parts) return std::nullopt;
  bench::Inputs inputs = {{"part", {parts->text, parts->trust, parts->fact}}};
  give(inputs, "ph", liquid, "ph", liquid.ph, facts);
  give(inputs, "flash", liquid, "flash-point", liquid.flash_point, facts);
  give(inputs, "boiling", liquid, "boiling-point", liquid.boiling_point, facts);
  return inputs;
}

void make_mixture_class_facts(Making& making) {
  for (const auto& [id, liquid] : making.base.chemistries) {
    const auto inputs = mixture_inputs(liquid, making.base, making.facts);
    if (!inputs) continue;
    bench::Result result = bench::reckon("mixture-class", *inputs, {making.tables, making.facts});
    for (auto& output : result.outputs)
      making.facts.add(fact_of_output(std::move(output), liquid.reference(), result.calculator));
  }
}

}  // namespace benchleaf::derive
