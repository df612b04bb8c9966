#pragma once

#include <memory>
#include <string>
#include <vector>

#include "model/book.h"

namespace benchleaf::model {

/// Labels as they lie on their sheet, in millimetres, places counted along the rows from 0.
struct LabelGrid {
  std::string name;   ///< `70x37`
  std::string paper;  ///< a4, letter
  int columns = 0;
  int rows = 0;
  double width_mm = 0;  ///< of a label
  double height_mm = 0;
  double left_mm = 0;  ///< corner of the first label
  double top_mm = 0;
  double across_mm = 0;  ///< from one label to the next
  double down_mm = 0;

  int count() const { return columns * rows; }
  /// Top left corner of a label on its sheet.
  Mm corner(int place) const { return {left_mm + place % columns * across_mm, top_mm + place / columns * down_mm}; }
};

/// Room within the edges of a label.
struct LabelRoom {
  double width_mm = 0;
  double height_mm = 0;
};

/// How far inside its edges a label is printed, the same for all of a sheet: feeds run out of true, and no printer reaches the
/// edge of the paper.
struct LabelInset {
  double side_mm = 0;
  double end_mm = 0;
};
LabelInset inset_of(const LabelGrid& grid);
LabelRoom room_of(const LabelGrid& grid);

/// Least type of a label: letters 1.2 mm high without ascenders, as Regulation (EC) No 1272/2008, annex I, 1.2.1.5, as amended
/// in 2024, asks of bottles up to half a litre; recalled, not re-read.
inline constexpr double kLeastLabelPt = 6.5;
inline constexpr double kMostLabelPt = 11;
inline constexpr double kLabelStepPt = 0.25;  ///< between two sizes that are tried

/// One label. Words are set as large as they fit.
struct Label {
  std::string title;  ///< `393 SR754W`: what it is called in a message
  Runs head;
  double head_scale = 1.3;                ///< size of the head by that of the words
  std::vector<Runs> lines;                ///< beside the drawing, then over the whole width
  std::vector<Runs> brief;                ///< the same in brief, where they have no room; empty: nothing may be left out
  std::vector<Runs> foot;                 ///< over the whole width
  std::shared_ptr<const Drawing> beside;  ///< at the right, never scaled; or nullptr
  std::shared_ptr<const Drawing> below;   ///< above the foot, never scaled; or nullptr
};

/// Labels to be printed on sheets of one grid.
struct LabelSheets {
  std::string title;
  std::string language = "en-GB";
  std::string iso_date;
  LabelGrid grid;
  int first = 0;          ///< place of the first label; those before it are used up
  bool outlines = false;  ///< draw the edges of all labels, to try a printer on plain paper
  std::vector<Label> labels;
};

}  // namespace benchleaf::model
