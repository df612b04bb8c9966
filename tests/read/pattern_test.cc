// Checks of the pattern matcher. Outside source: the meaning of each construct in ECMA-262, section 22.2 (Regular
// Expression Objects); the examples are small enough to be read off by eye.

#include "support/catch.h"

#include <string>

#include "read/pattern.h"

using benchleaf::read::Pattern;

namespace {

bool matches(std::string_view pattern, std::string_view text) {
  std::string error;
  auto compiled = Pattern::compile(pattern, error);
  INFO(pattern << ": " << error);
  REQUIRE(compiled);
  return compiled->found_in(text);
}

std::string refusal(std::string_view pattern) {
  std::string error;
  CHECK_FALSE(Pattern::compile(pattern, error));
  return error;
}

}  // namespace

TEST_CASE("patterns match where ECMA-262 says so") {
  struct Row {
    std::string pattern, text;
    bool expected;
  };
  const std::vector<Row> rows = {
      {"b", "abc", true},
      {"^b", "abc", false},
      {"c$", "abc", true},
      {"b$", "abc", false},
      {"", "", true},
      {"^$", "", true},
      {"^$", "a", false},
      {"a.c", "abc", true},
      {"a.c", "a\nc", false},
      {"^(a|bc)+$", "abcabc", true},
      {"^(a|bc)+$", "abcb", false},
      {"^a*$", "aaa", true},
      {"^a{2}$", "aa", true},
      {"^a{2}$", "aaa", false},
      {"^a{2,}$", "aaaa", true},
      {"^a{2,3}$", "aaaa", false},
      {"^a{0,2}b$", "b", true},
      {"^[0-9]{2,5}$", "754", true},
      {"^[^0-9]+$", "abc", true},
      {"^[^0-9]+$", "ab1", false},
      {"^\\d+$", "٣", false},
      {"^\\w+$", "a_9", true},
      {"^\\w+$", "é", false},
      {"^\\s$", "\xC2\xA0", true},
      {"^\\S$", "x", true},
      {"^[\\w-]+$", "a-b", true},
      {"^[a\\]]+$", "]a", true},
      {"^\\u00e9$", "é", true},
      {"^.$", "é", true},
      {"^(?:ab)?c$", "c", true},
      {"^a+?$", "aaa", true},
      {"^\\$[a-z]+$", "$slot", true},
      {"^(|a)b$", "b", true},
      {"^[A-Z#]{0,4}[0-9]{1,5}$", "#1200", true},
      {"^[0-9]{0,2}[A-Z]{0,2}R[0-9]{2,5}[A-Z]{0,3}$", "SR754W", true},
      {"^[0-9]{0,2}[A-Z]{0,2}R[0-9]{2,5}[A-Z]{0,3}$", "sr754w", false},
  };
  for (const Row& row : rows) {
    DYNAMIC_SECTION(row.pattern << " on " << row.text) { CHECK(matches(row.pattern, row.text) == row.expected); }
  }
}

TEST_CASE("what is outside the subset is refused with its place") {
  CHECK(refusal("a(?=b)") == "look-around, a named group or a flag at place 4");
  CHECK(refusal("(?<n>a)") == "look-around, a named group or a flag at place 3");
  CHECK(refusal("(a)\\1") == "an escape that is not in the subset at place 5");
  CHECK(refusal("\\bword") == "an escape that is not in the subset at place 2");
  CHECK(refusal("(a") == "a group that is not closed at place 3");
  CHECK(refusal("a)") == "a closing bracket without an opening one at place 2");
  CHECK(refusal("[a") == "a class that is not closed at place 3");
  CHECK(refusal("*a") == "a repeat of nothing at place 1");
  CHECK(refusal("a**") == "a repeat of a repeat at place 3");
  CHECK(refusal("a{3,2}") == "braces whose second number is the smaller at place 7");
  CHECK(refusal("a{,2}") == "braces without a number at place 3");
  CHECK(refusal("a{1001}") == "a repeat of more than 1000 at place 7");
  CHECK(refusal("[z-a]") == "a range whose ends stand the wrong way round at place 5");
  CHECK(refusal("\\p{L}") == "an escape that is not in the subset at place 2");
  CHECK(refusal("((a{1000}){1000}){1000}") == "repeats that make the pattern too large");
  CHECK(refusal(std::string(60, '(') + std::string(60, ')')).find("groups nested too deep") == 0);
}

TEST_CASE("a pattern that makes backtracking matchers explode takes one pass") {
  // (a*)*b on a's alone is the textbook case: 2^n ways for a matcher that backtracks
  CHECK_FALSE(matches("^(a*)*b$", std::string(100000, 'a')));
  CHECK_FALSE(matches("^(a|a)*b$", std::string(100000, 'a')));
  // the length at which std::regex of g++ 12 runs out of stack
  CHECK(matches("^[a-z0-9-]+$", std::string(200000, 'x')));
}
