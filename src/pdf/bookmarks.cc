// In: bookmarks with levels. Out: outline items of the file.
#include "pdf/bookmarks.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>

namespace benchleaf::pdf {

void add_bookmarks(const page::Document& document, HaruFile& file) {
  std::vector<ObjectNumber> above;  // the last item of each level so far
  for (const page::Bookmark& bookmark : document.bookmarks) {
    const std::size_t depth = static_cast<std::size_t>(std::max(bookmark.level, 1)) - 1;
    if (depth < above.size()) above.resize(depth);
    std::string entries = "/Title ";
    append_text(entries, bookmark.title);
    if (document.destinations.count(bookmark.target) > 0) {
      entries += " /Dest ";
      append_bytes(entries, bookmark.target);
    }
    above.push_back(file.add_outline(above.empty() ? 0 : above.back(), std::move(entries)));
  }
}

}  // namespace benchleaf::pdf
