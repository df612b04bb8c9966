// In: the display list, the fonts it was set with and a colour profile. Out: the bytes of one PDF file.
#include "pdf/writer.h"

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "base/sha256.h"
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
#include "pdf/structure.h"
#include "pdf/tree.h"

namespace benchleaf::pdf {

namespace {

// PDF Reference, third edition, appendix C, which ISO 19005-1 makes binding.
constexpr std::size_t kLongestArray = 8191;
constexpr int kLargestObject = 8'388'607;

constexpr std::size_t kIdDigits = 32;

ObjectNumber add_resources(const std::vector<FontCodes>& fonts, HaruFile& file) {
  std::string entries = "/Font <<";
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

PageObjects add_pages(const page::Document& document, const FontBook& book, HaruFile& file) {
  PageObjects objects;
  base::Sha256 digest;
  for (std::size_t i = 0; i < document.pages.size(); ++i) {
    const std::string content = write_content(document, static_cast<int>(i), book, objects.pieces);
    digest.add(content);
    objects.pages.push_back(file.add_page(deflated(content)));
  }
  objects.id = digest.finish().substr(0, kIdDigits);
  return objects;
}

std::string page_entries(const page::Page& page, int index, ObjectNumber resources, const Links& links) {
  const auto inset = [&page](page::Length by) {
    std::string box;
    append_box(box, {by, by, page.width - by, page.height - by}, page.height);
    return box;
  };
  std::string entries = "/MediaBox " + inset(0) + " /TrimBox " + inset(page.trim);
  if (page.trim > 0) entries += " /BleedBox " + inset(page.bleed);
  entries += " /Resources ";
  append_reference(entries, resources);
  entries += " /Tabs /S /StructParents ";
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

std::string catalog_entries(const page::Document& document, const CatalogParts& parts) {
  std::string entries = "/MarkInfo <</Marked true>> /ViewerPreferences <</DisplayDocTitle true /PrintScaling /None>> /Lang ";
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

std::string write_pdf(const page::Document& document, const page::FontSet& fonts, const IccProfile& profile,
                      report::Findings& findings) {
  if (!check_display_list(document, fonts, findings)) return {};
  check_claims(document, profile.bytes, findings);

  // libharu's part: fonts, pages, bookmarks, metadata.
  HaruFile file;
  if (!file.error().empty()) {
    findings.add(report::Rule::pdf_library, {}, "no PDF was written: " + file.error());
    return {};
  }
  FontBook book{fonts, gather_texts(document, fonts.size()), {}};
  book.codes = embed_fonts(fonts, book.texts, file, findings);
  const ObjectNumber resources = add_resources(book.codes, file);
  const PageObjects objects = add_pages(document, book, file);
  add_bookmarks(document, file);
  CatalogParts parts;
  parts.metadata = file.add_stream("/Type /Metadata /Subtype /XML", xmp_packet(document), HaruFile::Packing::none);
  parts.output_intent = add_output_intent(profile, file);

  // Ours, numbered behind it: links, structure, destinations, page labels.
  const Links links(document, objects.pages, file.next_number());
  parts.structure = file.next_number() + static_cast<int>(links.all().size());
  Structure structure(document, objects.pieces, objects.pages, links, parts.structure);
  const std::vector<LabelRange> ranges = label_ranges(document.pages);
  parts.labels = structure.next_number();
  const ObjectNumber behind_labels = parts.labels + tree_objects(ranges.size());
  if (!document.destinations.empty()) parts.destinations = behind_labels;

  for (std::size_t i = 0; i < objects.pages.size(); ++i) {
    file.set_entries(objects.pages.at(i), page_entries(document.pages.at(i), static_cast<int>(i), resources, links));
  }
  file.set_entries(file.catalog(), catalog_entries(document, parts));
  file.set_entries(file.info(), info_entries(document));

  FileOutput out;
  file.write(out);
  links.write(out);
  structure.write(out);
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
