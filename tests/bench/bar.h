#pragma once

#include <cstddef>
#include <map>
#include <string>

namespace benchleaf::test {

/// What a calculator was asked by an oracle of its own.
struct OracleTally {
  std::size_t calls = 0, figures = 0;  ///< different requests, and figures held against the oracle
  double worst = 0;                    ///< largest disagreement, in steps of what is printed
};

/// By calculator. Each checks every figure by itself; the tallies say how many there were.
std::map<std::string, OracleTally> ask_oracle();
/// Points asked within ranges, and outputs that they were held against.
std::map<std::string, std::size_t> ask_ranges();
/// Hostile values asked, and how many of them were refused.
struct HostileTally {
  std::size_t asked = 0, refused = 0;
};
std::map<std::string, HostileTally> ask_hostile();

}  // namespace benchleaf::test
