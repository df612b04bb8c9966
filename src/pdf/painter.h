#pragma once

#include <optional>
#include <string>
#include <vector>

#include "page/display.h"
#include "pdf/content.h"

namespace benchleaf::pdf {

/// Writes the operators that draw items, leaving out what the graphics state already says.
class Painter {
 public:
  Painter(const FontBook& book, page::Length page_height, std::string& out);

  void draw(const page::Item& item);
  /// Ends a text object, which must not reach across a change of marked content.
  void end_text();

 private:
  void draw_text(const page::TextItem& text);
  void draw_path(const page::PathItem& path);
  void append_segment(const page::PathSegment& segment);
  void append_point(page::Point point);
  void set_fill(page::Color color);
  void set_stroke(const page::PathItem& path);
  void set_font(page::FontIndex font, page::Length size);
  void set_matrix(const page::TextItem& text);

  const FontBook& book_;
  const page::Length height_;
  std::string& out_;
  bool in_text_ = false;
  std::optional<page::Color> fill_;
  std::optional<page::Color> stroke_;
  page::Length width_ = page::kPt;  ///< the line width that a page begins with
  std::vector<page::Length> dash_;
  page::FontIndex font_ = -1;
  page::Length size_ = 0;
};

}  // namespace benchleaf::pdf
