#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "read/pattern.h"

namespace benchleaf::read {

/// A parsed regular expression, the step between its text and its automaton.
struct PatternTree {
  enum class Type { empty, take, at_start, at_end, sequence, choice, repeat };
  Type type = Type::empty;
  std::vector<Pattern::Range> ranges;  ///< of take
  std::vector<PatternTree> parts;      ///< of sequence and choice; the one part of repeat
  int least = 0;                       ///< of repeat
  int most = 0;                        ///< of repeat; kNoLimit for none
};
inline constexpr int kNoLimit = -1;
/// The largest count that braces may ask for.
inline constexpr int kMostRepeats = 1000;

/// Text to tree, or nothing and the reason in `error`.
std::optional<PatternTree> parse_pattern(std::string_view source, std::string& error);

}  // namespace benchleaf::read
