// The list of calculators and what is said about a wrong call. House rules.

#include "support/catch.h"

#include <string>

#include "bench/calculator.h"
#include "bench/print_rule.h"
#include "model/tables.h"

using namespace benchleaf;

namespace {

bench::Result run(std::string_view name, const bench::Inputs& inputs) {
  static const model::Tables kTables;
  static const model::FactBase kFacts;
  return bench::reckon(name, inputs, {kTables, kFacts});
}

}  // namespace

TEST_CASE("an unknown calculator is refused with the nearest") {
  const auto result = run("cell-decod", {});
  REQUIRE(result.refusal);
  CHECK(result.refusal->hint == "did you mean cell-decode?");
}

TEST_CASE("an unknown input is refused with the nearest, a missing one with an example") {
  const auto unknown = run("cell-decode", {{"designaton", {"SR754W", model::Trust::given, {}}}});
  REQUIRE(unknown.refusal);
  CHECK(unknown.refusal->input == "designaton");
  CHECK(unknown.refusal->hint == "did you mean designation?");
  const auto missing = run("cell-decode", {});
  REQUIRE(missing.refusal);
  CHECK(missing.refusal->reason == "is missing: the name on the cell; for example designation=SR754W");
}

TEST_CASE("every calculator has its outputs in the table of print steps and says what it does") {
  for (const auto& calculator : bench::calculators()) {
    CHECK_FALSE(calculator.does.empty());
    CHECK(calculator.run != nullptr);
    CHECK(bench::calculators_text().find(std::string(calculator.name)) != std::string::npos);
  }
  CHECK(bench::print_rule("cell-decode", "height") != nullptr);
  CHECK(bench::print_rule("cell-decode", "colour") == nullptr);
}

TEST_CASE("a print rule rounds once, by size, and to the safe side where it says so") {
  using base::Rounding;
  using base::Trailing;
  const bench::OutputInfo dose{"o", "l", 3, Rounding::half_away, 10, 1};
  CHECK(bench::figure(dose, 0.1736) == "0.174");
  CHECK(bench::figure(dose, 9.9994) == "9.999");
  CHECK(bench::figure(dose, 12.345) == "12.3");
  const bench::OutputInfo up{"o", "l", 2, Rounding::up};
  const bench::OutputInfo down{"o", "l", 2, Rounding::down};
  CHECK(bench::figure(up, 1.231) == "1.24");
  CHECK(bench::figure(down, 1.239) == "1.23");
  CHECK(bench::figure(up, 1.23) == "1.23");
  const bench::OutputInfo volts{"o", "l", 2, Rounding::half_away, 0, 0, Trailing::cut};
  CHECK(bench::figure(volts, 3.0) == "3");
  CHECK(bench::figure(volts, 1.55) == "1.55");
}
