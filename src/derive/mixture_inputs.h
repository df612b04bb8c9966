#pragma once

#include <optional>

#include "bench/calculator.h"
#include "model/knowledge_base.h"

namespace benchleaf::derive {

/// What mixture-class is asked about a liquid; nothing where a classed part has no stated strength, since its sum would be a
/// guess, and for an aerosol, which has rules of its own.
std::optional<bench::Inputs> mixture_inputs(const model::Chemistry& liquid, const model::KnowledgeBase& base,
                                            const model::FactBase& facts);

}  // namespace benchleaf::derive
