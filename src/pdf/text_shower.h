#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "page/display.h"
#include "pdf/fonts.h"
#include "pdf/glyph_texts.h"

namespace benchleaf::pdf {

/// Writes the glyphs of one text item as TJ operators, each glyph within 0.005 pt of where the pages want it. Colour, font
/// and text matrix are set before.
class TextShower {
 public:
  TextShower(const page::TextItem& item, const FontCodes& codes, const FontTexts& texts, int units_per_em, std::string& out);
  void show();

 private:
  void show_cluster(const Cluster& cluster);
  void show_glyph(const page::Glyph& glyph);
  void move_to(std::int64_t wanted);
  void set_rise(std::int64_t rise);
  void open_array();
  void close_array();
  void close_hex();

  const page::TextItem& item_;
  const FontCodes& codes_;
  const FontTexts& texts_;
  const std::int64_t units_per_em_;
  const std::int64_t step_;  ///< of corrections
  std::string& out_;

  // Positions along the line, in 1/1,000,000 of the type size unless said otherwise.
  std::int64_t units_ = 0;  ///< wanted, the part in font units
  std::int64_t extra_ = 0;  ///< wanted, the part in 1/1000 pt
  std::int64_t pen_ = 0;    ///< where a reader of the file is
  std::int64_t rise_ = 0;   ///< 1/1000 pt
  bool in_array_ = false;
  bool in_hex_ = false;
};

}  // namespace benchleaf::pdf
