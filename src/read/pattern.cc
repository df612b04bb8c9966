// In: a parsed regular expression and a text. Out: whether it matches somewhere.
// The automaton of Thompson (1968), run on all its states at once: one pass over the text, no backtracking.
#include "read/pattern.h"

#include <algorithm>
#include <utility>

#include "base/utf8.h"
#include "read/pattern_syntax.h"

namespace benchleaf::read {

namespace {

using Instruction = Pattern::Instruction;
constexpr std::size_t kMostInstructions = 20000;

/// Tree to program. A repeat with counts is written out, so its size is bounded here.
class Writer {
 public:
  std::vector<Instruction> write(const PatternTree& tree) {
    part(tree);
    put(Instruction::Op::match);
    return std::move(program_);
  }
  bool too_long() const { return too_long_; }

 private:
  int here() const { return static_cast<int>(program_.size()); }
  Instruction& at(int place) { return program_.at(static_cast<std::size_t>(place)); }

  int put(Instruction::Op op) {
    Instruction instruction;
    instruction.op = op;
    instruction.next = here() + 1;
    program_.push_back(std::move(instruction));
    if (program_.size() > kMostInstructions) too_long_ = true;
    return here() - 1;
  }

  void part(const PatternTree& tree) {
    if (too_long_) return;
    switch (tree.type) {
      case PatternTree::Type::empty: return;
      case PatternTree::Type::take: at(put(Instruction::Op::take)).ranges = tree.ranges; return;
      case PatternTree::Type::at_start: put(Instruction::Op::at_start); return;
      case PatternTree::Type::at_end: put(Instruction::Op::at_end); return;
      case PatternTree::Type::sequence:
        for (const PatternTree& one : tree.parts) part(one);
        return;
      case PatternTree::Type::choice: choice(tree); return;
      case PatternTree::Type::repeat: repeat(tree); return;
    }
  }

  /// split, first, jump to the end; split, second, ...: a jump is a split whose ways are the same.
  void choice(const PatternTree& tree) {
    std::vector<int> jumps;
    for (std::size_t i = 0; i < tree.parts.size(); ++i) {
      bool last = i + 1 == tree.parts.size();
      int split = last ? -1 : put(Instruction::Op::split);
      part(tree.parts.at(i));
      if (last) break;
      jumps.push_back(put(Instruction::Op::split));
      at(split).other = here();
    }
    for (int jump : jumps) at(jump).next = at(jump).other = here();
  }

  void repeat(const PatternTree& tree) {
    const PatternTree& inner = tree.parts.front();
    for (int i = 0; i < tree.least && !too_long_; ++i) part(inner);
    if (tree.most == kNoLimit) {
      int split = put(Instruction::Op::split);
      part(inner);
      int jump = put(Instruction::Op::split);
      at(jump).next = at(jump).other = split;
      at(split).other = here();
      return;
    }
    std::vector<int> splits;
    for (int i = tree.least; i < tree.most && !too_long_; ++i) {
      splits.push_back(put(Instruction::Op::split));
      part(inner);
    }
    for (int split : splits) at(split).other = here();
  }

  std::vector<Instruction> program_;
  bool too_long_ = false;
};

/// The states that the automaton is in at one place of the text.
class States {
 public:
  explicit States(std::size_t size) : stamp_(size, 0) {}

  void clear() {
    list_.clear();
    ++round_;
  }
  const std::vector<int>& list() const { return list_; }

  /// Adds a state and all that it reaches without taking a code point.
  void add(const std::vector<Instruction>& program, int state, bool at_start, bool at_end) {
    todo_.push_back(state);
    while (!todo_.empty()) {
      int one = todo_.back();
      todo_.pop_back();
      std::size_t place = static_cast<std::size_t>(one);
      if (stamp_.at(place) == round_) continue;
      stamp_.at(place) = round_;
      const Instruction& instruction = program.at(place);
      switch (instruction.op) {
        case Instruction::Op::split:
          todo_.push_back(instruction.other);
          todo_.push_back(instruction.next);
          break;
        case Instruction::Op::at_start:
          if (at_start) todo_.push_back(instruction.next);
          break;
        case Instruction::Op::at_end:
          if (at_end) todo_.push_back(instruction.next);
          break;
        case Instruction::Op::take:
        case Instruction::Op::match: list_.push_back(one); break;
      }
    }
  }

 private:
  std::vector<int> list_;
  std::vector<int> todo_;
  std::vector<unsigned> stamp_;
  unsigned round_ = 0;
};

bool takes(const Instruction& instruction, char32_t code) {
  return std::any_of(instruction.ranges.begin(), instruction.ranges.end(),
                     [code](Pattern::Range range) { return code >= range.first && code <= range.last; });
}

}  // namespace

std::optional<Pattern> Pattern::compile(std::string_view source, std::string& error) {
  std::optional<PatternTree> tree = parse_pattern(source, error);
  if (!tree) return std::nullopt;
  Writer writer;
  Pattern pattern;
  pattern.source_ = std::string(source);
  pattern.program_ = writer.write(*tree);
  if (!writer.too_long()) return pattern;
  error = "repeats that make the pattern too large";
  return std::nullopt;
}

bool Pattern::found_in(std::string_view text) const {
  const std::u32string codes = base::code_points(text);
  States now(program_.size()), next(program_.size());
  now.clear();
  for (std::size_t i = 0; i <= codes.size(); ++i) {
    now.add(program_, 0, i == 0, i == codes.size());
    next.clear();
    for (int state : now.list()) {
      const Instruction& instruction = program_.at(static_cast<std::size_t>(state));
      if (instruction.op == Instruction::Op::match) return true;
      if (i < codes.size() && takes(instruction, codes.at(i))) {
        next.add(program_, instruction.next, false, i + 1 == codes.size());
      }
    }
    std::swap(now, next);
  }
  return false;
}

}  // namespace benchleaf::read
