#pragma once

#include <string>
#include <variant>
#include <vector>

#include "base/quantity.h"
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

/// The quantity in a text node, of one of the dimensions or a word for none, else why it is none.
std::variant<base::Quantity, QuantityFinding> read_quantity(const model::Node& node,
                                                            const std::vector<base::Dimension>& dimensions);

}  // namespace benchleaf::read
