#pragma once

#include <optional>
#include <string>
#include <vector>

#include "page/display.h"
#include "pdf/content.h"
#include "pdf/text_shower.h"

namespace benchleaf::pdf {

/// Writes the operators that draw items, leaving out what the graphics state already says.
class Painter {
 public:
  Painter(const FontBook& book, page::Length page_height, std::string& out);

  void draw(const page::Item& item);
  /// Makes ready for the mark of content that is only text, or of any content: a mark that is opened within a text object
  /// must be closed within it.
  void stay_in_text();
  void end_text();

 private:
  void draw_text(const page::TextItem& text);
  void draw_path(const page::PathItem& path);
  void append_segment(const page::PathSegment& segment);
  void append_point(page::Point point);
  void set_fill(page::Color color);
  void set_stroke(const page::PathItem& path);

  const page::Length height_;
  std::string& out_;
  TextShower text_;
  std::optional<page::Color> fill_;
  std::optional<page::Color> stroke_;
  page::Length width_ = page::kPt;  ///< the line width that a page begins with
  std::vector<page::Length> dash_;
};

}  // namespace benchleaf::pdf
