#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "page/display.h"

namespace benchleaf::page {

/// A box, glue or penalty of the model of Knuth and Plass, "Breaking Paragraphs into Lines", Software: Practice and
/// Experience 11 (1981). Lengths are 1/1000 pt.
struct BreakItem {
  enum class Kind { box, glue, penalty };
  Kind kind = Kind::box;
  Length width = 0;      ///< of a penalty: what a break here adds to the line that ends (a hyphen)
  Length stretch = 0;    ///< of glue
  Length shrink = 0;     ///< of glue, at most its width
  int penalty = 0;       ///< of a penalty: kForcedBreak breaks always, kNoBreak never
  bool flagged = false;  ///< of a penalty: two lines in a row that end so cost extra
  bool fill = false;     ///< of glue: takes up all that is left of a last line
  Length after = 0;      ///< of a penalty: what a break here adds to the line that begins
};

inline constexpr int kForcedBreak = -10000;
inline constexpr int kNoBreak = 10000;

struct BreakOptions {
  Length width = 0;                       ///< of every line behind `first_widths`
  std::vector<Length> first_widths = {};  ///< of the first lines
  double tolerance = 1.26;                ///< greatest adjustment ratio of a stretched line
  Length end_stretch = 0;                 ///< stretch that every line has at its end: for ragged setting
  double flagged_demerits = 3000;         ///< for two flagged breaks in a row
  double fitness_demerits = 3000;         ///< for a tight line beside a loose one
  Length short_last = 0;                  ///< a last line below this width costs extra: beyond the paper
  double short_last_demerits = 10000;
  bool emergency = false;  ///< always finds breaks; a line is then too wide only if nothing in it can be parted
};

struct BrokenLine {
  std::size_t end = 0;  ///< index of the glue or penalty at which the line ends
  double ratio = 0;     ///< adjustment ratio; below -1 where the line is too wide
};

struct Breaks {
  std::vector<BrokenLine> lines;
  double demerits = 0;  ///< the least that any set of breaks has
};

/// The breaks of least total demerits. The items end with a forced break. Nothing where no set of breaks keeps within
/// the tolerance; with `emergency` there is always a result.
std::optional<Breaks> break_lines(const std::vector<BreakItem>& items, const BreakOptions& options);

/// Index of the first item of the line that follows a break at `end`: glue and penalties behind a break vanish.
std::size_t line_start(const std::vector<BreakItem>& items, std::size_t end);
/// The same for the first line.
std::size_t first_line_start(const std::vector<BreakItem>& items);

}  // namespace benchleaf::page
