// The calculators against figures from outside: outside_vectors.txt names the source of each.

#include "support/catch.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <map>
#include <set>
#include <string>

#include "base/outside_tool.h"
#include "bench/bar.h"
#include "bench/print_rule.h"
#include "bench/vectors.h"

using namespace benchleaf;

namespace {

constexpr const char* kVectors = "tests/bench/outside_vectors.txt";
constexpr std::size_t kLeast = 80;

/// What GNU units makes of `EXPRESSION -> UNIT`.
double asked_of_units(const std::string& question) {
  const auto parts = test::split(question, " -> ");
  REQUIRE(parts.size() == 2);
  const auto lines = base::lines_of("LC_ALL=C units -t -d 15 -- '" + parts[0] + "' '" + parts[1] + "'");
  INFO(question);
  REQUIRE(lines.size() == 1);
  return std::stod(lines.front());
}

bool is_number(const std::string& text) { return !text.empty() && text.find_first_not_of("-.0123456789") == std::string::npos; }

/// The last place that an output is printed with.
double print_step(const std::string& calculator, const bench::Output& output) {
  const bench::OutputInfo* rule = bench::print_rule(calculator, output.name);
  REQUIRE(rule != nullptr);
  const bool large = rule->from > 0 && std::abs(*output.value) >= rule->from;
  return std::pow(10.0, -(large ? rule->decimals_from : rule->decimals));
}

void check_words(const bench::Output& output, std::string expected) {
  std::string printed = base::to_terminal(output.printed);
  if (!expected.empty() && expected.back() == '*') {
    expected.pop_back();
    printed = printed.substr(0, expected.size());
  }
  CHECK(printed == expected);
}

}  // namespace

TEST_CASE("every calculator agrees with figures from outside") {
  const auto vectors = test::read_vectors(kVectors);
  CHECK(vectors.size() >= kLeast);
  std::set<std::string> asked;
  for (const auto& vector : vectors) {
    INFO(vector.request << " " << vector.output << " by " << vector.source);
    const auto result = test::workshop().ask(vector.request);
    asked.insert(result.calculator);
    REQUIRE_FALSE(result.refusal);
    const bench::Output* output = result.find(vector.output);
    REQUIRE(output != nullptr);
    const bool by_units = vector.expected.rfind("units ", 0) == 0;
    if (!by_units && !is_number(vector.expected)) {
      check_words(*output, vector.expected);
      continue;
    }
    const double expected = by_units ? asked_of_units(vector.expected.substr(6)) : std::stod(vector.expected);
    REQUIRE(output->value);
    CHECK(std::abs(*output->value - expected) <= vector.tolerance * std::abs(expected) + 1e-12);
  }
  for (const auto& calculator : bench::calculators()) {
    INFO(calculator.name);
    CHECK(asked.count(std::string(calculator.name)) == 1);
  }
}

/// Random calls against an oracle that reckons by other means (tests/bench/oracle.py).
std::map<std::string, test::OracleTally> test::ask_oracle() {
  const auto vectors = test::vectors_of(base::lines_of("python3 tests/bench/oracle.py"));
  std::map<std::string, OracleTally> tallies;
  std::map<std::string, std::set<std::string>> asked;
  for (const auto& vector : vectors) {
    INFO(vector.request << " " << vector.output << " by " << vector.source);
    const auto result = test::workshop().ask(vector.request);
    if (result.refusal && result.refusal->input == "thickness") continue;  // beyond thin-plate theory
    INFO((result.refusal ? result.refusal->reason : std::string()));
    REQUIRE_FALSE(result.refusal);
    const bench::Output* output = result.find(vector.output);
    REQUIRE(output != nullptr);
    OracleTally& tally = tallies[result.calculator];
    if (asked[result.calculator].insert(vector.request).second) ++tally.calls;
    ++tally.figures;
    if (std::isalpha(static_cast<unsigned char>(vector.expected.front())) != 0) {
      check_words(*output, vector.expected);
      continue;
    }
    REQUIRE(output->value);
    const double expected = std::stod(vector.expected);
    const double off = std::abs(*output->value - expected);
    const double step = print_step(result.calculator, *output);
    CHECK(off <= vector.tolerance * std::abs(expected) + 1e-9);
    CHECK(off <= step);
    tally.worst = std::max(tally.worst, off / step);
  }
  return tallies;
}

TEST_CASE("each vector asks something else and names where its figure comes from") {
  std::set<std::string> questions;
  for (const auto& vector : test::read_vectors(kVectors)) {
    INFO(vector.request << " " << vector.output);
    CHECK(questions.insert(vector.request + " | " + vector.output).second);
    CHECK(vector.source.size() > 5);
  }
  CHECK(questions.size() >= kLeast);
}
