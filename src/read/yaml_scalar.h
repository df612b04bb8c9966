#pragma once

#include <optional>
#include <string_view>

#include "model/node.h"

namespace benchleaf::read {

/// The type of a plain scalar by the core schema of YAML 1.2: yes, no, on and off are strings.
model::NodeType plain_scalar_type(std::string_view text);

/// Whether a plain scalar is a number with a zero in front (`010`), which YAML 1.1 reads as 8 and YAML 1.2 as 10.
bool has_leading_zero(std::string_view text);

/// Whether a plain scalar is a number in a form that records do not use: 0x1F, 0o17, .inf, .nan, +5, .5, 5., 1e999.
bool is_odd_number(std::string_view text);

/// Whether the text stands for nothing: `~`, `null`, `Null`, `NULL` or no text at all.
bool is_null_word(std::string_view text);

}  // namespace benchleaf::read
