#pragma once

#include <array>
#include <string_view>

namespace benchleaf::model {

/// A paper that outputs are set on, upright.
struct PaperSize {
  std::string_view name;   ///< as records and options name it
  std::string_view title;  ///< as the book prints it
  double width_mm = 0;
  double height_mm = 0;
  bool small = false;     ///< of the size of a letter: charts on it may have other sides than on the large ones
  std::string_view book;  ///< the paper of the handbook whose pages its charts name
};

/// ISO 216 and ANSI/ASME Y14.1. The handbook comes on the small ones, charts on all.
inline constexpr std::array<PaperSize, 4> kPaperSizes = {{{"a4", "A4", 210, 297, true, "a4"},
                                                          {"letter", "Letter", 215.9, 279.4, true, "letter"},
                                                          {"a3", "A3", 297, 420, false, "a4"},
                                                          {"tabloid", "Tabloid", 279.4, 431.8, false, "letter"}}};

/// The paper of that name, or nullptr.
constexpr const PaperSize* paper_size(std::string_view name) {
  for (const PaperSize& paper : kPaperSizes) {
    if (paper.name == name) return &paper;
  }
  return nullptr;
}

}  // namespace benchleaf::model
