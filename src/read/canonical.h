#pragma once

#include <optional>
#include <string>

#include "model/node.h"

namespace benchleaf::read {

/// The value of a number node; nothing for every other node.
std::optional<double> number_of(const model::Node& node);

/// Whether a node is the truth value `true`.
bool is_true(const model::Node& node);

/// One text for all nodes that JSON Schema calls equal: 1 and 1.0 are, members in another order are, 1 and true are not.
std::string canonical(const model::Node& node);

}  // namespace benchleaf::read
