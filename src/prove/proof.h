#pragma once

#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/tables.h"
#include "report/finding.h"

namespace benchleaf::prove {

/// What every rule may look at, and where it says what it found.
struct Proof {
  const model::KnowledgeBase& base;
  const model::Tables& tables;
  const derive::Derived& derived;
  report::Findings& findings;
};

using Check = void (*)(const Proof&);

}  // namespace benchleaf::prove
