#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/unit.h"
#include "model/node.h"
#include "report/finding.h"

namespace benchleaf::read {

/// Why a text is not the quantity that a shape asks for, and where in it.
struct QuantityFinding {
  report::Rule rule;
  base::Span where;
  std::string message;
  std::string hint;
};

/// Whether a text node is a quantity of one of the dimensions, or a word for none. Nothing where it is.
std::optional<QuantityFinding> check_quantity(const model::Node& node, const std::vector<base::Dimension>& dimensions);

}  // namespace benchleaf::read
