// In: the items of a page, each with its structure element. Out: the content stream; what belongs to an element stands in a
// marked-content sequence with a number of its own, everything else is an artifact, as ISO 14289-1, 7.1 asks.
#include "pdf/content.h"

#include <string_view>

#include "pdf/painter.h"
#include "pdf/roles.h"

namespace benchleaf::pdf {

namespace {

/// Opens and closes the marked-content sequences of one page.
class Marker {
 public:
  Marker(const page::Document& document, int page, std::string& out, std::vector<Piece>& pieces)
      : document_(document), page_(page), out_(out), pieces_(pieces) {}

  bool is_open_for(page::TagId tag) const { return open_ && tag == tag_; }

  void open(page::TagId tag) {
    open_ = true;
    tag_ = tag;
    if (tag == page::kLayoutArtifact) {
      out_ += "/Artifact BMC\n";
    } else if (tag == page::kPaginationArtifact) {
      out_ += "/Artifact <</Type /Pagination>> BDC\n";
    } else {
      append_name(out_, role_name(document_.tags.at(static_cast<std::size_t>(tag)).role));
      out_ += " <</MCID ";
      append_integer(out_, next_id_);
      out_ += ">> BDC\n";
      pieces_.push_back({tag, page_, next_id_++});
    }
  }

  void close() {
    if (open_) out_ += "EMC\n";
    open_ = false;
  }

 private:
  const page::Document& document_;
  const int page_;
  std::string& out_;
  std::vector<Piece>& pieces_;
  bool open_ = false;
  page::TagId tag_ = page::kLayoutArtifact;
  int next_id_ = 0;
};

}  // namespace

bool is_blank(const page::Item& item) {
  if (const page::TextItem* text = std::get_if<page::TextItem>(&item.what)) return text->glyphs.empty();
  const page::PathItem& path = std::get<page::PathItem>(item.what);
  return path.segments.empty() || (!path.fill && !path.stroke);
}

std::string write_content(const page::Document& document, int page, const FontBook& book, std::vector<Piece>& pieces) {
  const page::Page& source = document.pages.at(static_cast<std::size_t>(page));
  std::string out;
  Painter painter(book, source.height, out);
  Marker marker(document, page, out, pieces);
  for (const page::Item& item : source.items) {
    if (is_blank(item)) continue;
    if (!marker.is_open_for(item.tag)) {
      painter.end_text();
      marker.close();
      marker.open(item.tag);
    }
    painter.draw(item);
  }
  painter.end_text();
  marker.close();
  return out;
}

}  // namespace benchleaf::pdf
