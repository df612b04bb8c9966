#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "page/display.h"
#include "pdf/content.h"
#include "pdf/glyph_texts.h"

namespace benchleaf::pdf {

/// Writes text items as one text object, each glyph within 0.01 pt of where the pages want it. An item that goes on where
/// the one before ends takes no operator of its own.
class TextShower {
 public:
  TextShower(const FontBook& book, page::Length page_height, std::string& out);

  bool is_open() const { return open_; }
  /// Begins and ends the text object.
  void begin();
  void end();
  /// Leaves the array of strings, so that other operators may follow within the text object.
  void pause();
  /// The colour is set before.
  void show(const page::TextItem& item);
  void show(const page::SignItem& sign);

 private:
  void set_font(page::FontIndex font, page::Length size);
  void go_to(page::Point at, int quarter_turns);
  bool goes_on(page::Point at, int quarter_turns) const;
  void show_cluster(const Cluster& cluster);
  void show_glyph(const page::Glyph& glyph);
  void move_to(std::int64_t wanted);
  void set_rise(std::int64_t rise);
  void open_array();
  void close_string();

  const FontBook& book_;
  const page::Length page_height_;
  std::string& out_;
  bool open_ = false;
  bool in_array_ = false;
  bool in_string_ = false;

  // What a reader of the file knows by now.
  page::FontIndex font_ = -1;
  page::Length size_ = 0;
  bool upright_ = true;    ///< whether the text matrix only moves
  page::Point line_;       ///< start of the line in 1/100 pt from the bottom left corner, if upright
  std::int64_t pen_ = 0;   ///< along the line, in 1/10^9 pt; from the left edge of the page if upright, else from the item
  std::int64_t rise_ = 0;  ///< 1/1000 pt

  // The item that is shown.
  const page::TextItem* item_ = nullptr;
  std::int64_t units_per_em_ = 1;
  std::int64_t start_ = 0;  ///< of the item, as pen_
  std::int64_t units_ = 0;  ///< wanted from there, the part in font units
  std::int64_t extra_ = 0;  ///< wanted from there, the part in 1/1000 pt
};

}  // namespace benchleaf::pdf
