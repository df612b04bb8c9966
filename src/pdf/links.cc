// In: the areas of the pages that can be clicked. Out: link annotations to named destinations, each known to the parent tree
// by a key of its own (ISO 14289-1, 7.18).
#include "pdf/links.h"

namespace benchleaf::pdf {

bool is_link(const page::Document& document, const page::LinkArea& area) {
  return area.tag >= 0 && document.tags.at(static_cast<std::size_t>(area.tag)).role == page::Role::link &&
         document.destinations.count(area.target) > 0;
}

Links::Links(const page::Document& document) : document_(document) {
  for (std::size_t page = 0; page < document.pages.size(); ++page) {
    page_begin_.push_back(links_.size());
    for (const page::LinkArea& area : document.pages.at(page).links) {
      if (is_link(document, area)) links_.push_back({static_cast<int>(page), &area});
    }
  }
  page_begin_.push_back(links_.size());
}

void Links::append_annotations(std::string& out, int page) const {
  const std::size_t begin = page_begin_.at(static_cast<std::size_t>(page));
  const std::size_t end = page_begin_.at(static_cast<std::size_t>(page) + 1);
  if (begin == end) return;
  out += "/Annots[";
  for (std::size_t i = begin; i < end; ++i) {
    if (i > begin) out += ' ';
    append_reference(out, number(i));
  }
  out += ']';
}

void Links::write(FileOutput& out) const {
  for (std::size_t i = 0; i < links_.size(); ++i) {
    const Link& link = links_.at(i);
    out.begin(number(i));
    std::string& bytes = out.bytes();
    bytes += "<</Subtype/Link/Rect";
    append_whole_box(bytes, link.area->box, document_.pages.at(static_cast<std::size_t>(link.page)).height);
    bytes += "/Border[0 0 0]/F 4/Dest";  // 4: it may be printed, which PDF/A asks of all annotations
    append_bytes(bytes, link.area->target);
    bytes += "/Contents";
    append_text(bytes, link.area->words);
    bytes += "/StructParent ";
    append_integer(bytes, first_key() + static_cast<int>(i));
    bytes += ">>";
    out.end();
  }
}

}  // namespace benchleaf::pdf
