#pragma once

#include "model/drawing.h"
#include "page/display.h"
#include "page/text/fonts.h"

namespace benchleaf::page {

// Sizes of a chart, which is read at 60 cm. The look-up keys grow with the words.
/// Words and figures: 16 minutes of arc of capital height.
inline constexpr double kFloorPt = 11.2;
/// Trade numbers beside words: 18 pt at the floor.
inline constexpr double kNumberScale = 18 / kFloorPt;
/// Other look-up keys: 14 pt at the floor, 20 minutes of arc.
inline constexpr double kLookUpScale = 14 / kFloorPt;
/// What is read from close by: 9.5 pt at the floor.
inline constexpr double kCaptionScale = 9.5 / kFloorPt;

/// One way of setting words: the faces for plain, bold and slanted words, and the measures.
struct Look {
  Face plain = Face::text;
  Face bold = Face::text_bold;
  Face italic = Face::text_italic;
  Face bold_italic = Face::text_bold_italic;
  double size_pt = 9.5;
  double leading_pt = 13;
  Color color;
  double tracking_pt = 0;
  enum class Flush { left, justified, right, centre } flush = Flush::left;
  bool hyphens = false;

  Length size() const { return static_cast<Length>(size_pt * kPt); }
  Length leading() const { return static_cast<Length>(leading_pt * kPt); }
};

/// The uses of type in the book; sizes in points are the design's.
namespace look {
Look body();        ///< prose at full measure, justified
Look entry_body();  ///< prose beside a key, ragged
Look lead();
Look dense();
Look note();
Look entry_key();  ///< 27 pt number
Look sheet_key();  ///< 36 pt number of a ticket's front sheet
Look page_title();
Look short_title();
Look second_name();
Look alias();
Look section_head();
Look sub_head();
Look run_in();
Look table_cell();
Look table_head();
Look page_reference(double size_pt);
Look step_number();
Look step_proof();
Look message_word();
Look message_text();
Look source_key();
Look large_step();
Look large_step_number();
Look step();
Look see();
Look strip_word();
Look strip_text();
Look small_head();
Look running_head();
Look running_chapter();
Look folio();
Look folio_line();
Look tab_number();
Look tab_name();
Look legend();
Look index_entry();
Look contents_chapter();
Look contents_line();
Look cover_title();
Look cover_line();
}  // namespace look

/// The same look, all words bold.
Look bold_of(Look look);
/// The same look in another colour.
Look in_color(Look look, Color color);

/// The print palette of a colour token.
Color print_color(model::Ink ink);

}  // namespace benchleaf::page
