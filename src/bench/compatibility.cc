// In: a liquid or an abrasive and a material. Out: the verdict with the line that gives it; `not known` where none does.
#include "bench/compatibility.h"

#include "model/signs.h"

namespace benchleaf::bench {

namespace {

Effect effect_of(model::Verdict verdict) {
  switch (verdict) {
    case model::Verdict::use: return Effect::ok;
    case model::Verdict::with_limits: return Effect::with_care;
    case model::Verdict::never: return Effect::never;
  }
  return Effect::never;
}

Compatibility line_about(const model::Record& agent, const std::vector<model::OnMaterial>& rows,
                         const model::RecordRef& material) {
  Compatibility found;
  found.agent = &agent;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (rows[i].material != material) continue;
    found.row = &rows[i];
    found.path = "on-materials." + std::to_string(i);
    found.readable = agent.usable(found.path);
    found.effect = effect_of(rows[i].verdict);
    return found;
  }
  // A line that could not be read may be the one about this material.
  found.readable = agent.usable("on-materials");
  return found;
}

}  // namespace

std::string_view effect_words(Effect effect) {
  switch (effect) {
    case Effect::ok: return model::verdict_words(model::Verdict::use);
    case Effect::with_care: return model::verdict_words(model::Verdict::with_limits);
    case Effect::never: return model::verdict_words(model::Verdict::never);
    case Effect::not_known: break;
  }
  return "not known";
}

Compatibility compatibility(const StepWorld& world, const model::RecordRef& agent, const model::RecordRef& material) {
  if (const auto* chemistry = chemistry_named(world, agent)) return line_about(*chemistry, chemistry->on_materials, material);
  if (const auto* abrasive = abrasive_named(world, agent)) return line_about(*abrasive, abrasive->on_materials, material);
  Compatibility none;
  none.readable = false;
  return none;
}

}  // namespace benchleaf::bench
