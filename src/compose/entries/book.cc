// In: records, tables, facts. Out: the book: cover notes, a chapter for each of the handbook's, the index.
#include "compose/entries/book.h"

#include <algorithm>
#include <utility>

#include "bench/calculator.h"
#include "compose/entries/chapter.h"
#include "compose/entries/cover_notes.h"
#include "compose/entries/index.h"
#include "compose/entry_maker.h"
#include "compose/figures/measure_pictures.h"
#include "compose/imprint.h"
#include "compose/index_order.h"
#include "ticket/form.h"

namespace benchleaf::compose {

namespace {

/// On paper, where cells have a table of their own, there may be nothing left to find: then there is no index.
void add_index(const Desk& desk, int number, model::Book& book) {
  model::IndexList list = make_index_list(desk);
  if (desk.on_paper() && list.entries.empty()) return;
  model::Chapter chapter;
  chapter.number = number;
  chapter.id = "index";
  chapter.title = "Index";
  chapter.tab = "Index";
  chapter.door.thing = "Any number or name";
  chapter.door.line = {model::text_run("Everything that has an entry, by every name it goes by.")};
  chapter.blocks.push_back(heading_block(1, "Index", "chapter/index"));
  chapter.blocks.push_back({std::move(list)});
  book.chapters.push_back(std::move(chapter));
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

/// In the order of their titles, as the list of sources has them.
SourceNumbers source_numbers(const model::KnowledgeBase& records) {
  std::vector<const model::Source*> ordered;
  for (const auto& [id, source] : records.sources) ordered.push_back(&source);
  std::stable_sort(ordered.begin(), ordered.end(), [](const auto* one, const auto* other) {
    return one->title == other->title ? one->id < other->id : index_before(one->title, other->title);
  });
  SourceNumbers numbers;
  for (const model::Source* source : ordered) numbers.emplace(source->reference(), static_cast<int>(numbers.size()) + 1);
  return numbers;
}

/// The chapters in their order. Paper has its index at the end of part A, for who prints no more than that, under the number
/// that handbook.yaml leaves free there.
void add_chapters(const Desk& desk, model::Book& book) {
  int last = 0;
  bool indexed = false;
  for (const model::Handbook::Chapter& chapter : desk.records.handbook.chapters) {
    if (desk.on_paper() && chapter.part == "screen") continue;
    if (desk.on_paper() && chapter.part == "B" && !indexed) {
      indexed = true;
      add_index(desk, last + 1, book);
    }
    book.chapters.push_back(make_chapter(desk, chapter));
    last = std::max(last, chapter.number);
  }
  if (!indexed) add_index(desk, last + 1, book);
}

}  // namespace

model::Book make_book(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
                      Medium medium, report::Findings& findings) {
  const Uses uses(records);
  const SourceNumbers numbers = source_numbers(records);
  const Desk desk{records, tables, derived, uses, findings, medium, &numbers};
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
  add_chapters(desk, book);
  book.calculators = calculator_sheets();
  book.ticket_form = ticket::ticket_form(records);
  return book;
}

}  // namespace benchleaf::compose
