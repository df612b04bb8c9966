#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bench/ask.h"
#include "bench/items.h"
#include "standards/cell_limits.h"

namespace benchleaf::bench {

/// The place that a cell is wanted for.
struct Wanted {
  std::string cell;                                 ///< `cell/ID` where it was named
  Amount diameter, height;                          ///< mm
  std::optional<standards::MeasuredCell> measured;  ///< on an old cell, which swells and carries crust
  std::vector<std::string> systems;                 ///< that the watch may have been made for
  Amount voltage;                                   ///< what those systems were told by, where a voltage was given
  int in_series = 1;
  bool low_drain = false;
  bool high_drain = false;
};

/// A cell with what the ranking and the sentence need.
struct Candidate {
  CellItem item;
  std::string reason;   ///< size, system, and why the verdict is so
  std::string why;      ///< why the verdict is so
  int rank = 0;         ///< 0 is best
  int size_rank = 0;    ///< its part of the size
  int wanted_rank = 0;  ///< place of its system among those wanted
  double misfit = 0;    ///< mm
  Amount rests_on;
};

/// Cells of the handbook that go into the place, best first; those that must never go in come last.
std::vector<Candidate> find_candidates(Ask& ask, const Wanted& wanted);

/// The place of a cell that the inputs or a relation name, filled from its record; a fault of `cell` where it states no size.
Wanted place_of_cell(Ask& ask, const std::string& cell);

/// Each of `others` in the place of `cell`, in their order: the verdicts that cell-swap gives them.
std::vector<Candidate> judge_in_place(const std::string& cell, const std::vector<std::string>& others, const Context& context);

/// The verdict on a cell in a place in words: `with care`; `does not fit` for none.
std::string place_words(Code verdict);

/// Whether cells of more than one voltage would be let into the place: then nothing may be used before the voltage is known.
bool voltages_differ(const std::vector<Candidate>& found);

/// Cells in a stack by its designation, 1 for a single one or a text that is none.
int cells_in_series(const std::string& designation);

}  // namespace benchleaf::bench
