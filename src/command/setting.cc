// In: a book and the name of a paper. Out: its pages.

#include "command/setting.h"

#include <utility>

#include "page/paper.h"
#include "page/set_book.h"
#include "page/set_leaflet.h"

namespace benchleaf::command {

std::optional<TypeCase> open_type_case(const read::FontList& list, report::Findings& findings) {
  FontBytes bytes = read_font_files(list, findings);
  page::FontSet fonts = page::FontSet::open(bytes.fonts, findings);
  page::Hyphenator hyphenator = page::Hyphenator::open(bytes.hyphenation.bytes, findings);
  if (findings.has_errors() || !fonts.complete()) return std::nullopt;
  return TypeCase{std::move(bytes), std::move(fonts), std::move(hyphenator)};
}

page::Document set_on(const model::Book& book, const std::string& paper, const TypeCase& type, report::Findings& findings) {
  return page::set_book(book, page::paper_named(paper).value(), type.fonts, &type.hyphenator, findings);
}

page::Document set_leaflet_on(const model::Leaflet& leaflet, const std::string& paper, const TypeCase& type,
                              report::Findings& findings) {
  return page::set_leaflet(leaflet, page::paper_named(paper).value(), type.fonts, &type.hyphenator, findings);
}

page::SheetDocument set_chart_on(const model::SheetSet& chart, const std::string& paper, const TypeCase& type,
                                 report::Findings& findings) {
  return page::set_sheets(chart, page::sheet_paper(paper, chart.landscape).value(), type.fonts, &type.hyphenator, findings);
}

page::SheetDocument set_cards_on(const model::SheetSet& card, const std::string& paper, const TypeCase& type,
                                 report::Findings& findings) {
  const page::SheetPaper upright = page::sheet_paper(paper, false).value();
  const page::SheetPaper lying = page::sheet_paper(paper, true).value();
  const bool more = lying.width / page::card_paper().width > upright.width / page::card_paper().width;
  return page::set_cards(card, more ? lying : upright, type.fonts, &type.hyphenator, findings);
}

}  // namespace benchleaf::command
