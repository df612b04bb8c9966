#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::read {

/// A regular expression of the shapes: literals, `.`, classes, \d \w \s and their opposites, ^ and $, groups,
/// alternation, * + ? {m} {m,} {m,n}. Matching takes time linear in the text and no recursion, whatever the pattern.
class Pattern {
 public:
  /// The pattern, or nothing and the reason in `error`: what was found and at which place, counted from 1.
  static std::optional<Pattern> compile(std::string_view source, std::string& error);

  /// Whether the pattern matches somewhere in `text`, as JSON Schema asks (it is not anchored by itself).
  bool found_in(std::string_view text) const;
  const std::string& source() const { return source_; }

  /// Code points from `first` to `last`, both included.
  struct Range {
    char32_t first = 0;
    char32_t last = 0;
  };
  /// One instruction of the automaton. `next` and `other` are places in the program.
  struct Instruction {
    enum class Op { match, take, split, at_start, at_end };
    Op op = Op::match;
    int next = 0;
    int other = 0;
    std::vector<Range> ranges;  ///< of `take`; already turned round where the class was negated
  };

 private:
  std::string source_;
  std::vector<Instruction> program_;
};

}  // namespace benchleaf::read
