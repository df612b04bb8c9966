#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "model/book.h"

namespace benchleaf::html {

/// As wide as a digit, and as a point; put where one is missing, they are no part of the words.
inline constexpr std::string_view kFigureSpace = "\xE2\x80\x87";
inline constexpr std::string_view kPunctuationSpace = "\xE2\x80\x88";

/// Digits of a number before and after its point; a sign in front counts as a digit, since figures and signs are equally
/// wide. `from` is where it starts in its text.
struct Figures {
  std::size_t from = 0;
  std::size_t to = 0;
  int whole = 0;
  int fraction = 0;
};

/// The first two numbers of a text; a number that is part of a word (`SR41`) is none.
std::vector<Figures> find_figures(std::string_view text);

/// The widest first and second number of a column, and what is missing from a cell to align with them.
class DecimalColumn {
 public:
  void widen(const model::Runs& cell);
  /// The cell with figure spaces where digits are missing, so that the points of all cells stand under each other when
  /// they are set flush left with tabular figures.
  model::Runs padded(const model::Runs& cell) const;

 private:
  std::array<Figures, 2> widest_{};
};

}  // namespace benchleaf::html
