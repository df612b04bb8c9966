// In: the areas of the pages that can be clicked. Out: link annotations to named destinations, each known to the parent tree
// by a key of its own (ISO 14289-1, 7.18).
#include "pdf/links.h"

namespace benchleaf::pdf {

bool is_link(const page::Document& document, const page::LinkArea& area) {
  return area.tag >= 0 && document.tags.at(static_cast<std::size_t>(area.tag)).role == page::Role::link &&
         document.destinations.count(area.target) > 0;
}

Links::Links(const page::Document& document, const std::vector<ObjectNumber>& pages, ObjectNumber first)
    : document_(document), pages_(pages) {
  for (std::size_t page = 0; page < document.pages.size(); ++page) {
    page_begin_.push_back(links_.size());
    for (const page::LinkArea& area : document.pages.at(page).links) {
      if (is_link(document, area)) links_.push_back({static_cast<int>(page), &area, first + static_cast<int>(links_.size())});
    }
  }
  page_begin_.push_back(links_.size());
}

void Links::append_annotations(std::string& out, int page) const {
  const std::size_t begin = page_begin_.at(static_cast<std::size_t>(page));
  const std::size_t end = page_begin_.at(static_cast<std::size_t>(page) + 1);
  if (begin == end) return;
  out += " /Annots [";
  for (std::size_t i = begin; i < end; ++i) {
    if (i > begin) out += ' ';
    append_reference(out, links_.at(i).object);
  }
  out += ']';
}

void Links::write(FileOutput& out) const {
  int key = first_key();
  for (const Link& link : links_) {
    out.begin(link.object);
    std::string& bytes = out.bytes();
    bytes += "<</Type /Annot /Subtype /Link /Rect ";
    append_box(bytes, link.area->box, document_.pages.at(static_cast<std::size_t>(link.page)).height);
    bytes += " /Border [0 0 0] /F 4 /P ";  // 4: it may be printed, which PDF/A asks of all annotations
    append_reference(bytes, pages_.at(static_cast<std::size_t>(link.page)));
    bytes += " /Dest ";
    append_bytes(bytes, link.area->target);
    bytes += " /Contents ";
    append_text(bytes, link.area->words);
    bytes += " /StructParent ";
    append_integer(bytes, key++);
    bytes += ">>";
    out.end();
  }
}

}  // namespace benchleaf::pdf
