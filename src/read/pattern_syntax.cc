// In: the text of a regular expression as a shape writes it. Out: its tree, or one reason why it is not in the subset.
// The subset is what ECMA 262 and every editor's schema checker read alike; look-around, back references, word
// boundaries and named groups are refused, since a linear-time matcher has no place for most of them.
#include "read/pattern_syntax.h"

#include <algorithm>
#include <utility>

#include "base/utf8.h"

namespace benchleaf::read {

namespace {

using Range = Pattern::Range;
constexpr char32_t kLastCodePoint = 0x10FFFF;
constexpr int kMostDepth = 50;

/// Ranges in order, without overlap.
std::vector<Range> tidy(std::vector<Range> ranges) {
  std::sort(ranges.begin(), ranges.end(), [](Range a, Range b) { return a.first < b.first; });
  std::vector<Range> tidied;
  for (Range range : ranges) {
    if (!tidied.empty() && range.first <= tidied.back().last + 1) {
      tidied.back().last = std::max(tidied.back().last, range.last);
    } else {
      tidied.push_back(range);
    }
  }
  return tidied;
}

std::vector<Range> all_but(std::vector<Range> ranges) {
  std::vector<Range> rest;
  char32_t from = 0;
  for (Range range : tidy(std::move(ranges))) {
    if (range.first > from) rest.push_back({from, range.first - 1});
    from = range.last + 1;
  }
  if (from <= kLastCodePoint) rest.push_back({from, kLastCodePoint});
  return rest;
}

const std::vector<Range>& digits() {
  static const std::vector<Range> kRanges = {{'0', '9'}};
  return kRanges;
}

const std::vector<Range>& word_letters() {
  static const std::vector<Range> kRanges = {{'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}};
  return kRanges;
}

/// White space and line ends of ECMA 262.
const std::vector<Range>& spaces() {
  static const std::vector<Range> kRanges = {{0x09, 0x0D},     {0x20, 0x20},     {0xA0, 0xA0},     {0x1680, 0x1680},
                                             {0x2000, 0x200A}, {0x2028, 0x2029}, {0x202F, 0x202F}, {0x205F, 0x205F},
                                             {0x3000, 0x3000}, {0xFEFF, 0xFEFF}};
  return kRanges;
}

const std::vector<Range>& line_ends() {
  static const std::vector<Range> kRanges = {{0x0A, 0x0A}, {0x0D, 0x0D}, {0x2028, 0x2029}};
  return kRanges;
}

/// Recursive descent over the code points of one pattern. The first fault ends it.
class Reader {
 public:
  explicit Reader(std::u32string text) : text_(std::move(text)) {}

  std::optional<PatternTree> read(std::string& error) {
    PatternTree tree = choice(0);
    if (error_.empty() && !at_end()) fail("a closing bracket without an opening one");
    if (error_.empty()) return tree;
    error = error_;
    return std::nullopt;
  }

 private:
  bool at_end() const { return place_ >= text_.size(); }
  char32_t peek() const { return at_end() ? U'\0' : text_.at(place_); }
  bool next_is(char32_t c) const { return !at_end() && peek() == c; }
  bool take_if(char32_t c) {
    if (!next_is(c)) return false;
    ++place_;
    return true;
  }

  void fail(const std::string& what) {
    if (error_.empty()) error_ = what + " at place " + std::to_string(place_ + 1);
    place_ = text_.size();
  }

  PatternTree choice(int depth) {
    PatternTree tree;
    if (depth > kMostDepth) {
      fail("groups nested too deep");
      return tree;
    }
    tree.type = PatternTree::Type::choice;
    do {
      tree.parts.push_back(sequence(depth));
    } while (take_if(U'|'));
    if (tree.parts.size() > 1) return tree;
    PatternTree only = std::move(tree.parts.front());
    return only;
  }

  PatternTree sequence(int depth) {
    PatternTree tree;
    tree.type = PatternTree::Type::sequence;
    while (!at_end() && peek() != U'|' && peek() != U')') tree.parts.push_back(repeated(depth));
    return tree;
  }

  PatternTree repeated(int depth) {
    PatternTree part = atom(depth);
    bool can_repeat = part.type != PatternTree::Type::at_start && part.type != PatternTree::Type::at_end;
    int least = 0, most = 0;
    if (!counts(least, most)) return part;
    if (!can_repeat) fail("a repeat of ^ or $");
    take_if(U'?');  // a lazy repeat finds the same texts
    PatternTree tree;
    tree.type = PatternTree::Type::repeat;
    tree.least = least;
    tree.most = most;
    tree.parts.push_back(std::move(part));
    if (next_is(U'*') || next_is(U'+') || next_is(U'?') || next_is(U'{')) fail("a repeat of a repeat");
    return tree;
  }

  /// Reads a repeat sign, if one stands here.
  bool counts(int& least, int& most) {
    if (take_if(U'*')) {
      most = kNoLimit;
    } else if (take_if(U'+')) {
      least = 1;
      most = kNoLimit;
    } else if (take_if(U'?')) {
      most = 1;
    } else if (take_if(U'{')) {
      braces(least, most);
    } else {
      return false;
    }
    return true;
  }

  void braces(int& least, int& most) {
    least = number();
    most = least;
    if (take_if(U',')) most = next_is(U'}') ? kNoLimit : number();
    if (!take_if(U'}')) fail("braces that are not {m}, {m,} or {m,n}");
    if (most != kNoLimit && most < least) fail("braces whose second number is the smaller");
  }

  int number() {
    int value = 0;
    bool any = false;
    while (!at_end() && peek() >= U'0' && peek() <= U'9') {
      value = value * 10 + static_cast<int>(peek() - U'0');
      ++place_;
      any = true;
      if (value > kMostRepeats) {
        fail("a repeat of more than " + std::to_string(kMostRepeats));
        return 0;
      }
    }
    if (!any) fail("braces without a number");
    return value;
  }

  PatternTree atom(int depth) {
    char32_t c = peek();
    ++place_;
    switch (c) {
      case U'^': return simple(PatternTree::Type::at_start);
      case U'$': return simple(PatternTree::Type::at_end);
      case U'.': return taking(all_but(line_ends()));
      case U'[': return char_class();
      case U'(': return group(depth);
      case U'\\': return taking(escape());
      case U'*':
      case U'+':
      case U'?':
      case U'{':
        --place_;
        fail("a repeat of nothing");
        return {};
      case U']':
      case U'}':
        --place_;
        fail("a closing bracket without an opening one");
        return {};
      default: return taking({{c, c}});
    }
  }

  static PatternTree simple(PatternTree::Type type) {
    PatternTree tree;
    tree.type = type;
    return tree;
  }

  static PatternTree taking(std::vector<Range> ranges) {
    PatternTree tree = simple(PatternTree::Type::take);
    tree.ranges = tidy(std::move(ranges));
    return tree;
  }

  PatternTree group(int depth) {
    if (take_if(U'?') && !take_if(U':')) {
      fail("look-around, a named group or a flag");
      return {};
    }
    PatternTree tree = choice(depth + 1);
    if (!take_if(U')')) fail("a group that is not closed");
    return tree;
  }

  PatternTree char_class() {
    bool negated = take_if(U'^');
    std::vector<Range> ranges;
    while (!at_end() && peek() != U']') class_part(ranges);
    if (!take_if(U']')) fail("a class that is not closed");
    if (negated) ranges = all_but(std::move(ranges));
    return taking(std::move(ranges));
  }

  void class_part(std::vector<Range>& ranges) {
    std::vector<Range> first = class_atom();
    bool range = next_is(U'-') && place_ + 1 < text_.size() && text_.at(place_ + 1) != U']';
    if (!range) {
      ranges.insert(ranges.end(), first.begin(), first.end());
      return;
    }
    ++place_;
    std::vector<Range> last = class_atom();
    if (!is_one(first) || !is_one(last)) {
      fail("a range whose end is a class");
    } else if (last.front().first < first.front().first) {
      fail("a range whose ends stand the wrong way round");
    } else {
      ranges.push_back({first.front().first, last.front().first});
    }
  }

  static bool is_one(const std::vector<Range>& ranges) {
    return ranges.size() == 1 && ranges.front().first == ranges.front().last;
  }

  std::vector<Range> class_atom() {
    char32_t c = peek();
    if (at_end()) return {};
    ++place_;
    if (c == U'\\') return escape();
    return {{c, c}};
  }

  std::vector<Range> escape() {
    if (at_end()) {
      fail("a backslash at the end");
      return {};
    }
    char32_t c = peek();
    ++place_;
    switch (c) {
      case U'd': return digits();
      case U'D': return all_but(digits());
      case U'w': return word_letters();
      case U'W': return all_but(word_letters());
      case U's': return spaces();
      case U'S': return all_but(spaces());
      case U't': return {{0x09, 0x09}};
      case U'n': return {{0x0A, 0x0A}};
      case U'v': return {{0x0B, 0x0B}};
      case U'f': return {{0x0C, 0x0C}};
      case U'r': return {{0x0D, 0x0D}};
      case U'x': return hex(2);
      case U'u': return hex(4);
      default: break;
    }
    bool is_sign = std::u32string_view(U"^$\\.*+?()[]{}|/-").find(c) != std::u32string_view::npos;
    if (is_sign) return {{c, c}};
    --place_;
    fail("an escape that is not in the subset");
    return {};
  }

  std::vector<Range> hex(int digits_wanted) {
    char32_t value = 0;
    for (int i = 0; i < digits_wanted; ++i) {
      char32_t c = peek();
      char32_t digit = c >= U'0' && c <= U'9'   ? c - U'0'
                       : c >= U'a' && c <= U'f' ? c - U'a' + 10
                       : c >= U'A' && c <= U'F' ? c - U'A' + 10
                                                : 16;
      if (at_end() || digit > 15) {
        fail("an escape with too few hexadecimal digits");
        return {};
      }
      value = value * 16 + digit;
      ++place_;
    }
    return {{value, value}};
  }

  std::u32string text_;
  std::size_t place_ = 0;
  std::string error_;
};

}  // namespace

std::optional<PatternTree> parse_pattern(std::string_view source, std::string& error) {
  return Reader(base::code_points(source)).read(error);
}

}  // namespace benchleaf::read
