// In: a display list. Out: whether it hangs together; the stages behind rely on it and look nothing up twice.
#include "pdf/display_check.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>

#include "page/packed.h"

namespace benchleaf::pdf {

namespace {

constexpr page::Length kSmallestPage = 3 * page::kPt;  // ISO 19005-1, 6.1.12 by way of the PDF Reference, appendix C
constexpr page::Length kLargestPage = 14'400 * page::kPt;
constexpr std::uint32_t kLastGlyph = 65'534;  // maxp counts glyphs in 16 bits

class DisplayCheck {
 public:
  DisplayCheck(const page::Document& document, const page::FontSet& fonts, report::Findings& findings)
      : document_(document), fonts_(fonts), findings_(findings) {}

  bool passes() {
    check_tags();
    for (const page::Page& page : document_.pages) check_page(page);
    for (const auto& [name, place] : document_.destinations)
      expect(is_page(place.page), "the destination " + name + " is on no page");
    expect(!document_.pages.empty(), "there is no page");
    return sound_;
  }

 private:
  void expect(bool holds, const std::string& message) {
    if (holds) return;
    sound_ = false;
    findings_.add(report::Rule::pdf_display_list, {}, message);
  }

  bool is_page(int page) const { return page >= 0 && static_cast<std::size_t>(page) < document_.pages.size(); }
  bool is_tag(page::TagId tag) const { return tag >= 0 && static_cast<std::size_t>(tag) < document_.tags.size(); }

  void check_tags() {
    const bool rooted = !document_.tags.empty() && document_.tags.front().role == page::Role::document &&
                        document_.tags.front().parent == page::kLayoutArtifact;
    expect(rooted, "element 0 is no document without a parent");
    for (std::size_t i = 1; i < document_.tags.size(); ++i) {
      const page::Tag& tag = document_.tags[i];
      expect(tag.parent >= 0 && static_cast<std::size_t>(tag.parent) < i,
             "element " + std::to_string(i) + " does not stand behind its parent");
      expect(!tag.more().box || is_page(tag.more().box_page), "the box of element " + std::to_string(i) + " is on no page");
    }
  }

  void check_page(const page::Page& page) {
    const std::string where = " on page " + page.label;
    expect(
        page.width >= kSmallestPage && page.width <= kLargestPage && page.height >= kSmallestPage && page.height <= kLargestPage,
        "a size that no page may have" + where);
    page::for_each_item(page, [&](const page::Item& item) {
      expect(item.tag == page::kLayoutArtifact || item.tag == page::kPaginationArtifact || is_tag(item.tag),
             "an item of no element" + where);
      const page::TextItem* text = std::get_if<page::TextItem>(&item.what);
      if (text == nullptr) return;
      expect(text->font >= 0 && text->font < fonts_.size(), "a text in no font" + where);
      expect(text->size > 0, "a text without a size" + where);
      expect(
          std::all_of(text->glyphs.begin(), text->glyphs.end(), [](const page::Glyph& glyph) { return glyph.id <= kLastGlyph; }),
          "a glyph that no TrueType font can have" + where);
    });
    for (const page::LinkArea& area : page.links) {
      expect(area.tag == page::kLayoutArtifact || area.tag == page::kPaginationArtifact || is_tag(area.tag),
             "a link of no element" + where);
    }
  }

  const page::Document& document_;
  const page::FontSet& fonts_;
  report::Findings& findings_;
  bool sound_ = true;
};

}  // namespace

bool check_display_list(const page::Document& document, const page::FontSet& fonts, report::Findings& findings) {
  return DisplayCheck(document, fonts, findings).passes();
}

}  // namespace benchleaf::pdf
