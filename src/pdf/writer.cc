// In: the display list, the fonts it was set with and a colour profile. Out: the bytes of one PDF file.
#include "pdf/writer.h"

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#ifdef __GLIBC__
#include <malloc.h>
#endif

#include "base/sha256.h"
#include "page/packed.h"
#include "pdf/bookmarks.h"
#include "pdf/claims.h"
#include "pdf/content.h"
#include "pdf/deflate.h"
#include "pdf/destinations.h"
#include "pdf/display_check.h"
#include "pdf/file_output.h"
#include "pdf/fonts.h"
#include "pdf/glyph_texts.h"
#include "pdf/haru_file.h"
#include "pdf/links.h"
#include "pdf/metadata.h"
#include "pdf/page_labels.h"
#include "pdf/sign_font.h"
#include "pdf/structure.h"
#include "pdf/tree.h"

namespace benchleaf::pdf {

namespace {

// PDF Reference, third edition, appendix C, which ISO 19005-1 makes binding.
constexpr std::size_t kLongestArray = 8191;
constexpr int kLargestObject = 8'388'607;

constexpr std::size_t kIdDigits = 32;

// What these come to in the file, by the handbook: so much is set aside for it at once.
constexpr std::size_t kElementBytes = 120;
constexpr std::size_t kLinkBytes = 200;

ObjectNumber add_resources(const std::vector<FontCodes>& fonts, ObjectNumber sign_font, HaruFile& file) {
  std::string entries = "/Font <<";
  if (sign_font != 0) {
    append_name(entries, kSignFontName);
    entries += ' ';
    append_reference(entries, sign_font);
    entries += ' ';
  }
  for (std::size_t i = 0; i < fonts.size(); ++i) {
    if (fonts.at(i).object == 0) continue;
    append_name(entries, font_name(static_cast<page::FontIndex>(i)));
    entries += ' ';
    append_reference(entries, fonts.at(i).object);
    entries += ' ';
  }
  return file.add_dictionary(entries + ">>");
}

/// The pages as objects with their content, and what of it belongs to the structure.
struct PageObjects {
  std::vector<ObjectNumber> pages;
  std::vector<Piece> pieces;
  std::string id;  ///< the file's, from the content of the pages
};

/// The items of the pages lay scattered over the heap: what they leave is given back, so that the file can take its place.
void give_memory_back() {
#ifdef __GLIBC__
  malloc_trim(0);
#endif
}

/// The items of a page are let go once it is written.
PageObjects add_pages(page::Document& document, const FontBook& book, HaruFile& file) {
  PageObjects objects;
  base::Sha256 digest;
  for (std::size_t i = 0; i < document.pages.size(); ++i) {
    const std::string content = write_content(document, static_cast<int>(i), book, objects.pieces);
    digest.add(content);
    objects.pages.push_back(file.add_page(deflated(content)));
    page::drop_items(document.pages.at(i));
  }
  give_memory_back();
  objects.id = digest.finish().substr(0, kIdDigits);
  return objects;
}

std::string inset_box(const page::Page& page, page::Length by) {
  std::string box;
  append_box(box, {by, by, page.width - by, page.height - by}, page.height);
  return box;
}

/// What all pages have in common stands once, at the root of their tree.
std::string page_tree_entries(const page::Page& usual, ObjectNumber resources) {
  std::string entries = "/MediaBox" + inset_box(usual, 0) + "/Resources ";
  append_reference(entries, resources);
  return entries;
}

/// What a page has of its own. The trimmed page is the whole one unless crop marks stand round it.
std::string page_entries(const page::Page& page, const page::Page& usual, int index, const Links& links) {
  std::string entries;
  if (page.width != usual.width || page.height != usual.height) entries += "/MediaBox" + inset_box(page, 0);
  const auto inset = [&page](page::Length by) { return inset_box(page, by); };
  if (page.trim > 0) entries += "/TrimBox" + inset(page.trim) + "/BleedBox" + inset(page.bleed);
  entries += "/Tabs/S/StructParents ";
  append_integer(entries, index);
  links.append_annotations(entries, index);
  return entries;
}

struct CatalogParts {
  ObjectNumber structure = 0;
  ObjectNumber labels = 0;
  ObjectNumber destinations = 0;  ///< 0 for none
  ObjectNumber metadata = 0;
  ObjectNumber output_intent = 0;
};

/// The upper edge of a lying page is its long one, so that it is turned over the short edge.
std::string_view duplex_entry(const page::Document& document) {
  if (document.duplex == page::Duplex::one_side) return " /Duplex /Simplex";
  if (document.duplex != page::Duplex::top_to_top || document.pages.size() < 2) return {};
  const page::Page& first = document.pages.front();
  return first.width > first.height ? " /Duplex /DuplexFlipShortEdge" : " /Duplex /DuplexFlipLongEdge";
}

std::string catalog_entries(const page::Document& document, const CatalogParts& parts) {
  std::string entries = "/MarkInfo <</Marked true>> /ViewerPreferences <</DisplayDocTitle true /PrintScaling /None";
  entries += duplex_entry(document);
  entries += ">> /Lang ";
  append_text(entries, document.language);
  const auto append = [&entries](std::string_view key, ObjectNumber number, std::string_view close) {
    if (number == 0) return;
    entries += key;
    append_reference(entries, number);
    entries += close;
  };
  append(" /StructTreeRoot ", parts.structure, "");
  append(" /PageLabels ", parts.labels, "");
  append(" /Names <</Dests ", parts.destinations, ">>");
  append(" /Metadata ", parts.metadata, "");
  append(" /OutputIntents [", parts.output_intent, "]");
  return document.bookmarks.empty() ? entries : entries + " /PageMode /UseOutlines";
}

ObjectNumber add_output_intent(const IccProfile& profile, HaruFile& file) {
  const ObjectNumber stream = file.add_stream("/N 3", profile.bytes, HaruFile::Packing::flate);
  std::string entries = "/Type /OutputIntent /S /GTS_PDFA1 /OutputConditionIdentifier (sRGB) /Info (sRGB) /DestOutputProfile ";
  append_reference(entries, stream);
  return file.add_dictionary(std::move(entries));
}

void check_limits(const page::Document& document, const Structure& structure, const std::vector<Piece>& pieces, ObjectNumber next,
                  report::Findings& findings) {
  if (structure.most_kids() > kLongestArray) {
    findings.add(report::Rule::pdf_limit, {},
                 "an element has " + std::to_string(structure.most_kids()) + " children; PDF 1.4 allows 8191",
                 "part the table or list");
  }
  for (const Piece& piece : pieces) {
    if (static_cast<std::size_t>(piece.id) != kLongestArray) continue;
    findings.add(
        report::Rule::pdf_limit, {},
        "page " + document.pages.at(static_cast<std::size_t>(piece.page)).label + " has more than 8191 stretches of content");
  }
  if (next - 1 > kLargestObject)
    findings.add(report::Rule::pdf_limit, {}, "the file has more than 8,388,607 objects", "bind fewer records");
}

}  // namespace

std::string write_pdf(page::Document document, const page::FontSet& fonts, const IccProfile& profile,
                      report::Findings& findings) {
  if (!check_display_list(document, fonts, findings)) return {};
  check_claims(document, profile.bytes, findings);

  // libharu's part: fonts, pages, bookmarks, metadata.
  HaruFile file;
  if (!file.error().empty()) {
    findings.add(report::Rule::pdf_library, {}, "no PDF was written: " + file.error());
    return {};
  }
  Shown shown = gather_shown(document, fonts.size());
  FontBook book{fonts, std::move(shown.texts), {}};
  book.codes = embed_fonts(fonts, book.texts, file, findings);
  const ObjectNumber resources = add_resources(book.codes, add_sign_font(shown.signs, book, file), file);
  ListNumbering numbering = list_numbering(document);
  const PageObjects objects = add_pages(document, book, file);
  add_bookmarks(document, file);
  CatalogParts parts;
  parts.metadata = file.add_stream("/Type /Metadata /Subtype /XML", xmp_packet(document), HaruFile::Packing::none);
  parts.output_intent = add_output_intent(profile, file);

  // Ours, numbered behind it: structure, links, page labels, destinations. Elements are named most often: they get the
  // shortest numbers.
  Links links(document);
  parts.structure = file.next_number();
  Structure structure(document, objects.pieces, objects.pages, links, std::move(numbering), parts.structure);
  links.number_from(structure.next_number());
  const std::vector<LabelRange> ranges = label_ranges(document.pages);
  parts.labels = links.next_number();
  const ObjectNumber behind_labels = parts.labels + tree_objects(ranges.size());
  if (!document.destinations.empty()) parts.destinations = behind_labels;

  const page::Page& usual = document.pages.back();
  for (std::size_t i = 0; i < objects.pages.size(); ++i) {
    file.set_entries(objects.pages.at(i), page_entries(document.pages.at(i), usual, static_cast<int>(i), links));
  }
  file.set_entries(file.page_tree(), page_tree_entries(usual, resources));
  file.set_entries(file.catalog(), catalog_entries(document, parts));
  file.set_entries(file.info(), info_entries(document));

  FileOutput out;
  out.reserve(document.tags.size() * kElementBytes + links.all().size() * kLinkBytes,
              behind_labels + destination_objects(document));
  file.write(out);
  structure.write(out);
  links.write(out);
  write_page_labels(out, parts.labels, ranges);
  write_destinations(out, behind_labels, document, objects.pages);
  check_limits(document, structure, objects.pieces, behind_labels + destination_objects(document), findings);
  if (!file.error().empty()) {
    findings.add(report::Rule::pdf_library, {}, "no PDF was written: " + file.error());
    return {};
  }
  return out.finish({file.catalog(), file.info(), objects.id});
}

}  // namespace benchleaf::pdf
