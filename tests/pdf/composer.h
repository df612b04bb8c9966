#pragma once

#include <string>
#include <string_view>

#include "page/display.h"
#include "page/text/fonts.h"

namespace benchleaf::pdf {

/// The fonts that schema/fonts.yaml names, opened from where its packages put them.
page::FontSet open_test_fonts();
/// The colour profile that schema/fonts.yaml names.
std::string read_test_profile();

/// Puts a display list together by hand, shaping with HarfBuzz as it comes, so that what the writer is held against owes
/// nothing to the setters of the book.
class Composer {
 public:
  explicit Composer(const page::FontSet& fonts);

  int add_page(std::string label);
  page::TagId add_tag(page::Role role, page::TagId parent);
  page::Tag& tag(page::TagId tag) { return document.tags.at(static_cast<std::size_t>(tag)); }
  page::Page& page(int page) { return document.pages.at(static_cast<std::size_t>(page)); }

  struct Style {
    page::Face face = page::Face::text;
    page::Length size = 10 * page::kPt;
    page::Color color;
    int quarter_turns = 0;
  };
  /// Sets one line and returns the item, which stays valid until the next one of the page.
  page::TextItem& add_text(int page, page::TagId tag, page::Point at, const std::string& text, const Style& style);
  page::TextItem& add_text(int page, page::TagId tag, page::Point at, const std::string& text);
  void add_path(int page, page::TagId tag, page::PathItem path);
  void add_rectangle(int page, page::TagId tag, const page::Box& box, page::Color fill);

  page::Document document;

 private:
  const page::FontSet& fonts_;
};

/// Where the glyphs of an item end, from where they begin, in 1/1000 pt.
double width_of(const page::TextItem& item, const page::FontSet& fonts);

}  // namespace benchleaf::pdf
