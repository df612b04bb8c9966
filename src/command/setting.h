#pragma once

#include <memory>
#include <optional>
#include <string>

#include "command/font_files.h"
#include "model/book.h"
#include "model/leaflet.h"
#include "page/display.h"
#include "page/sheet/set_sheets.h"
#include "page/text/fonts.h"
#include "page/text/hyphenator.h"
#include "report/finding.h"

namespace benchleaf::command {

/// Open fonts and hyphenation, ready to set a book on any paper.
struct TypeCase {
  FontBytes bytes;
  page::FontSet fonts;
  page::Hyphenator hyphenator;
};

/// Reads and opens what setting needs; nothing, with findings, where a font is missing or unusable.
std::optional<TypeCase> open_type_case(const read::FontList& list, report::Findings& findings);

/// Sets a book on the paper of that name (`a4`, `letter`).
page::Document set_on(const model::Book& book, const std::string& paper, const TypeCase& type, report::Findings& findings);

/// Sets a ticket on the paper of that name (`a4`, `letter`).
page::Document set_leaflet_on(const model::Leaflet& leaflet, const std::string& paper, const TypeCase& type,
                              report::Findings& findings);

/// Sets a chart on the paper of that name (`a4`, `letter`, `a3`, `tabloid`).
page::SheetDocument set_chart_on(const model::SheetSet& chart, const std::string& paper, const TypeCase& type,
                                 report::Findings& findings);
/// A card cut to A5, with the paper turned as more of them lie on it.
page::SheetDocument set_cards_on(const model::SheetSet& card, const std::string& paper, const TypeCase& type,
                                 report::Findings& findings);

}  // namespace benchleaf::command
