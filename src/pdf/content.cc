// In: the items of a page, each with its structure element. Out: the content stream; what belongs to an element stands in a
// marked-content sequence with a number of its own, everything else is an artifact, as ISO 14289-1, 7.1 asks.
#include "pdf/content.h"

#include <algorithm>
#include <cstddef>
#include <string_view>

#include "page/packed.h"
#include "pdf/painter.h"
#include "pdf/roles.h"

namespace benchleaf::pdf {

namespace {

/// Opens and closes the marked-content sequences of one page.
class Marker {
 public:
  Marker(const page::Document& document, int page, std::string& out, std::vector<Piece>& pieces)
      : document_(document), page_(page), out_(out), pieces_(pieces) {}

  void open(page::TagId tag) {
    if (tag == page::kLayoutArtifact) {
      out_ += "/Artifact BMC\n";
    } else if (tag == page::kPaginationArtifact) {
      out_ += "/Artifact<</Type/Pagination>>BDC\n";
    } else {
      append_name(out_, role_name(document_.tags.at(static_cast<std::size_t>(tag)).role));
      out_ += "<</MCID ";
      append_integer(out_, next_id_);
      out_ += ">>BDC\n";
      pieces_.push_back({tag, page_, next_id_++});
    }
  }

  void close() { out_ += "EMC\n"; }

 private:
  const page::Document& document_;
  const int page_;
  std::string& out_;
  std::vector<Piece>& pieces_;
  int next_id_ = 0;
};

using Items = std::vector<const page::Item*>;

Items::const_iterator at(const Items& items, std::size_t place) { return items.begin() + static_cast<std::ptrdiff_t>(place); }

/// Behind the last of the items from `first` on that belong to one element.
std::size_t end_of_stretch(const Items& items, std::size_t first) {
  std::size_t last = first + 1;
  while (last < items.size() && items.at(last)->tag == items.at(first)->tag) ++last;
  return last;
}

bool is_text(const page::Item& item) { return !std::holds_alternative<page::PathItem>(item.what); }

}  // namespace

bool is_blank(const page::Item& item) {
  if (const page::TextItem* text = std::get_if<page::TextItem>(&item.what)) return text->glyphs.empty();
  if (std::holds_alternative<page::SignItem>(item.what)) return false;
  const page::PathItem& path = std::get<page::PathItem>(item.what);
  return path.segments.empty() || (!path.fill && !path.stroke);
}

std::string write_content(const page::Document& document, int page, const FontBook& book, std::vector<Piece>& pieces) {
  const page::Page& source = document.pages.at(static_cast<std::size_t>(page));
  const std::vector<page::Item> items = page::items_of(source);
  std::string out;
  Painter painter(book, source.height, out);
  Marker marker(document, page, out, pieces);
  Items seen;
  for (const page::Item& item : items) {
    if (!is_blank(item)) seen.push_back(&item);
  }
  for (std::size_t first = 0; first < seen.size();) {
    const std::size_t last = end_of_stretch(seen, first);
    const bool words = std::all_of(at(seen, first), at(seen, last), [](const page::Item* item) { return is_text(*item); });
    // Marks of words stand within one text object, so that a line goes on over them.
    if (words) {
      painter.stay_in_text();
    } else {
      painter.end_text();
    }
    marker.open(seen.at(first)->tag);
    for (; first < last; ++first) painter.draw(*seen.at(first));
    if (words) {
      painter.stay_in_text();
    } else {
      painter.end_text();
    }
    marker.close();
  }
  painter.end_text();
  return out;
}

}  // namespace benchleaf::pdf
