// Each calculator: random calls against an oracle of its own, ranges that bound every point within, hostile values. What each
// is held against stands in oracle.py, ranges_test.cc and hostile_test.cc; `bench_test '[bar]'` prints the figures.

#include "bench/bar.h"

#include "support/catch.h"

#include <iomanip>
#include <sstream>
#include <string>

#include "bench/vectors.h"

using namespace benchleaf;

namespace {

constexpr std::size_t kCalls = 20;
constexpr std::size_t kPoints = 1000;
constexpr std::size_t kHostile = 40;

/// Their answer is words, and a range of a measure has no ends in it.
bool answers_in_words(std::string_view calculator) {
  return calculator == "cell-decode" || calculator == "cell-swap" || calculator == "screw-thread";
}

}  // namespace

TEST_CASE("every calculator: random calls, ranges and hostile values", "[bar]") {
  auto oracle = test::ask_oracle();
  auto points = test::ask_ranges();
  auto hostile = test::ask_hostile();
  std::ostringstream table;
  table << "\ncalculator         calls  figures  worst, in print steps  points in ranges  hostile  refused\n";
  for (const auto& calculator : bench::calculators()) {
    const std::string name(calculator.name);
    INFO(name);
    CHECK(oracle[name].calls >= kCalls);
    if (!answers_in_words(name)) CHECK(points[name] >= kPoints);
    CHECK(hostile[name].asked >= kHostile);
    // Of numbers a few of the values are good ones for one input or another; most must be refused.
    CHECK(hostile[name].refused * 2 > hostile[name].asked);
    table << std::left << std::setw(18) << name << std::right << std::setw(6) << oracle[name].calls << std::setw(9)
          << oracle[name].figures << std::setw(23) << std::setprecision(2) << oracle[name].worst << std::setw(18) << points[name]
          << std::setw(9) << hostile[name].asked << std::setw(9) << hostile[name].refused << "\n";
  }
  WARN(table.str());
}
