// In: records, tables, facts. Out: the book: cover notes, a chapter for each of the handbook's, the index.
#include "compose/entries/book.h"

#include <algorithm>

#include "bench/calculator.h"
#include "compose/entries/chapter.h"
#include "compose/entries/cover_notes.h"
#include "compose/entries/index.h"
#include "compose/entry_maker.h"
#include "compose/figures/measure_pictures.h"
#include "compose/imprint.h"
#include "compose/search/search.h"
#include "ticket/form.h"

namespace benchleaf::compose {

namespace {

model::Chapter index_chapter(const Desk& desk, int number) {
  model::Chapter chapter;
  chapter.number = number;
  chapter.id = "index";
  chapter.title = "Index";
  chapter.tab = "Index";
  chapter.door.thing = "Any number or name";
  chapter.door.line = {model::text_run("Everything that has an entry, by every name it goes by.")};
  chapter.blocks.push_back(heading_block(1, "Index", "chapter/index"));
  chapter.blocks.push_back({make_index_list(desk)});
  return chapter;
}

std::vector<model::CalculatorSheet> calculator_sheets() {
  std::vector<model::CalculatorSheet> sheets;
  for (const bench::Calculator& calculator : bench::calculators()) {
    model::CalculatorSheet sheet{std::string(calculator.name), std::string(calculator.does), {}};
    for (const bench::InputInfo& input : calculator.inputs)
      sheet.inputs.push_back({std::string(input.name), std::string(input.what), std::string(input.example), input.required,
                              input_picture(calculator.name, input.name)});
    sheets.push_back(std::move(sheet));
  }
  std::sort(sheets.begin(), sheets.end(), [](const auto& one, const auto& other) { return one.name < other.name; });
  return sheets;
}

}  // namespace

model::Book make_book(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
                      report::Findings& findings) {
  const Uses uses(records);
  const Desk desk{records, tables, derived, uses, findings};
  const model::Handbook& handbook = records.handbook;
  model::Book book;
  book.title = handbook.title;
  book.subtitle = handbook.subtitle;
  book.edition = handbook.edition;
  book.date = printed_date(handbook.date);
  book.iso_date = iso_date(handbook);
  book.language = handbook.language;
  book.standing_line = handbook.standing_line;
  for (const model::Overlay& overlay : records.overlays) book.imprints.push_back(overlay.imprint);
  book.cover_notes = cover_notes(desk);
  int last = 0;
  for (const model::Handbook::Chapter& chapter : handbook.chapters) {
    book.chapters.push_back(make_chapter(desk, chapter));
    last = std::max(last, chapter.number);
  }
  book.chapters.push_back(index_chapter(desk, last + 1));
  book.calculators = calculator_sheets();
  book.ticket_form = ticket_form(records);
  book.search = make_search_list(records, tables, derived);
  return book;
}

}  // namespace benchleaf::compose
