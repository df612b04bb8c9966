#pragma once

#include <string>
#include <string_view>

#include "bench/step_world.h"

namespace benchleaf::bench {

/// What a liquid or an abrasive does to a material; what no record states is not known.
enum class Effect { ok, with_care, never, not_known };

std::string_view effect_words(Effect effect);

struct Compatibility {
  Effect effect = Effect::not_known;
  bool readable = true;                    ///< false where the line that would say it cannot be read
  const model::Record* agent = nullptr;    ///< the liquid or abrasive
  const model::OnMaterial* row = nullptr;  ///< the line that says it, or nullptr
  std::string path;                        ///< of that line
};

/// The pair of `chemistry/ID` or `abrasive/ID` and `material/ID`.
Compatibility compatibility(const StepWorld& world, const model::RecordRef& agent, const model::RecordRef& material);

}  // namespace benchleaf::bench
