#pragma once

#include <span>

#include "prove/proof.h"

namespace benchleaf::prove {

/// Holds what is stated against the tables and against what was derived. Nothing is worked out here; every rule passes over
/// fields that could not be read.
void prove(const model::KnowledgeBase& base, const model::Tables& tables, const derive::Derived& derived,
           report::Findings& findings);

/// The checks that `prove` runs, in its order. Each stands for itself, so that any of them can be run alone.
std::span<const Check> all_checks();

}  // namespace benchleaf::prove
