// The sample book: chapters, doors, cover notes.
#include "html/sample_book.h"

#include <cstdio>

namespace benchleaf::html_tests {

namespace {

using namespace model;

Block paragraph(Runs runs, Paragraph::Role role = Paragraph::Role::body) { return {Paragraph{std::move(runs), role}}; }
Block heading(int level, const std::string& text, const std::string& anchor = {}) {
  return {Heading{level, {text_run(text)}, anchor}};
}
std::shared_ptr<const Block> shared(Block block) { return std::make_shared<const Block>(std::move(block)); }

std::string decimal(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", value);
  return text;
}

Run fact(const std::string& id, const std::string& printed, Style style = Style::plain) {
  Fact made;
  made.id = id;
  made.printed = printed;
  return fact_run(made, style);
}

Run verdict(Verdict mark, const std::string& text) {
  Run run = text_run(text);
  run.kind = Run::Kind::verdict;
  run.verdict = mark;
  return run;
}

TableCell cell(Runs runs) { return {std::move(runs), nullptr}; }

Column column(const std::string& head, Column::Align align = Column::Align::left, bool row_head = false) {
  Column made;
  if (!head.empty()) made.head = {text_run(head)};
  made.align = align;
  made.row_head = row_head;
  return made;
}

Message swallowing() {
  Message message;
  message.word = Message::Word::warning;
  message.hazard = {text_run("A swallowed cell can burn the gullet within two hours.")};
  message.avoid = {text_run("Go to hospital at once. Lock cells away and tape both faces of a spent one.")};
  message.signs = {"M055", "P036"};
  message.sign_titles = {"Keep out of the reach of children", "No children allowed"};
  message.record = "caution/swallowed-cell";
  return message;
}

Table in_its_place(const std::string& other) {
  Table table;
  table.name = "cell-places";
  table.columns = {column("cell", Column::Align::left, true), column("verdict"), column("why"), column("")};
  table.rows = {{{cell({link_run(other, "cell/sample-" + other)}), cell({verdict(Verdict::with_limits, "with limits")}),
                  cell({text_run("Same size, low drain: it sags under a lamp, an alarm or an LED display.")}),
                  cell({trust_run(Trust::memory, false)})},
                 ""},
                {{cell({text_run("AG99 LR9954")}), cell({verdict(Verdict::use, "use")}),
                  cell({text_run("Same size, OTHER system: falls from 1.5\u2009V to 1.0\u2009V as it empties.")}),
                  cell({trust_run(Trust::trade, false)})},
                 ""},
                {{cell({text_run("zinc-air")}), cell({verdict(Verdict::never, "never")}),
                  cell({text_run("Needs air; a sealed case starves it.")}), cell({trust_run(Trust::trade, true)})},
                 ""}};
  return table;
}

Table run_time(const std::string& record) {
  Table table;
  table.name = "cell-life";
  table.caption = {text_run("Run time")};
  table.columns = {column("module", Column::Align::left, true), column("load", Column::Align::decimal),
                   column("years", Column::Align::decimal), column("0 to 8"), column("")};
  struct Line {
    const char* module;
    const char* load;
    double low, high;
  };
  for (const Line& line :
       {Line{"LCD, no lamp", "2.0\u2009\u00B5A", 2.6, 4.4}, Line{"Stepping hands", "2.35\u2009\u00B5A", 2.3, 14.2},
        Line{"LED, 20 looks a day", "13.7\u2009\u00B5A", 0.4, 0.8}}) {
    TableCell bar;
    bar.drawing = std::make_shared<const Drawing>(interval_bar(line.low, std::min(line.high, 8.0)));
    table.rows.push_back({{cell({text_run(line.module)}), cell({text_run(line.load)}),
                           cell({fact(record + "#cell-life." + line.module, decimal(line.low) + " to " + decimal(line.high))}),
                           bar, cell({trust_run(Trust::memory, true)})},
                          ""});
  }
  return table;
}

Entry cell_entry(int number, double diameter, double height) {
  Entry entry;
  entry.rank = Entry::Rank::key;
  const std::string name = std::to_string(number);
  entry.anchor = "cell/sample-" + name;
  entry.key = {fact(entry.anchor + "#trade-number", name)};
  entry.second = {fact(entry.anchor + "#designation", "SR9" + name + "W")};
  entry.aliases = {fact(entry.anchor + "#size.diameter", decimal(diameter), Style::bold), text_run(" \u00D7 ", Style::bold),
                   fact(entry.anchor + "#size.height", decimal(height) + "\u2009mm", Style::bold), text_run(" SR" + name)};
  entry.running_key = name;
  entry.drawing = std::make_shared<const Drawing>(cell_drawing(diameter, height, entry.anchor));
  entry.margin = {
      {{text_run("size")}, Trust::memory, false, {}},
      {{text_run("capacity "), fact(entry.anchor + "#capacity", "80\u2009mAh", Style::bold)},
       Trust::trade,
       false,
       {text_run("load not stated")}},
      {{text_run("voltage "), fact(entry.anchor + "#nominal", "1.55\u2009V", Style::bold)}, Trust::handbook, false, {}}};
  entry.blocks = {
      shared(heading(2, "In its place")),
      shared({in_its_place(std::to_string(number == 101 ? 102 : 101))}),
      shared(heading(2, "Run time")),
      shared({run_time(entry.anchor)}),
      shared(paragraph(
          {text_run("From 2 to 10\u2009% lost a year. LED modules take two in series: replace both, same type and date.")},
          Paragraph::Role::note)),
      shared({swallowing()})};
  return entry;
}

Door door(const std::string& thing, Runs line) {
  Door made;
  made.thing = thing;
  made.line = std::move(line);
  return made;
}

Chapter plain_chapter(int number, const std::string& id, const std::string& title, const std::string& lead) {
  Chapter chapter;
  chapter.number = number;
  chapter.id = id;
  chapter.title = title;
  chapter.tab = title;
  chapter.blocks = {heading(1, title, "page/" + id), paragraph({text_run(lead)}, Paragraph::Role::lead),
                    heading(2, "Order of work", "page/" + id + "#order"),
                    paragraph({text_run("Look first, then measure, then touch.")})};
  return chapter;
}

}  // namespace

Chapter cells_chapter() {
  Chapter chapter =
      plain_chapter(1, "cells", "Cells", "Sorted by diameter, then by height, because the number on a cell may be worn off.");
  chapter.door =
      door("A number on a cell", {text_run("Read the system first, then the number. "), link_run("101", "cell/sample-101"),
                                  text_run(" "), link_run("160", "cell/sample-160")});
  int number = 101;
  for (int group = 0; group < 10; ++group) {
    const double diameter = 4.8 + 1.9 * group;
    chapter.blocks.push_back(heading(2, decimal(diameter) + "\u2009mm", "page/cells#d" + std::to_string(group)));
    for (int i = 0; i < 6; ++i, ++number) chapter.blocks.push_back({cell_entry(number, diameter, 1.2 + 0.7 * i)});
  }
  return chapter;
}

Chapter methods_chapter() {
  Chapter chapter = plain_chapter(9, "methods", "Methods", "Steps that were held against the records of what they touch.");
  Entry entry;
  entry.anchor = "procedure/clear-crust";
  entry.key = {text_run("Clear an alkaline crust from a contact")};
  entry.aliases = {text_run("ten minutes, gloves and glasses on")};
  Message danger = swallowing(), caution = swallowing(), notice = swallowing();
  danger.word = Message::Word::danger;
  danger.hazard = {text_run("Never neutralise on a person.")};
  danger.avoid = {text_run("Eye or skin: running water at once, for 15 to 20 minutes, then a doctor.")};
  danger.signs = {"W023", "E011"};
  danger.sign_titles = {"Corrosive substance", "Eyewash station"};
  caution.word = Message::Word::caution;
  caution.signs.clear();
  caution.hazard = {text_run("The crust is caustic.")};
  caution.avoid = {text_run("Keep it wet and off the skin.")};
  caution.length = Message::Length::brief;
  caution.harm_in_brief = {text_run("It burns.")};
  caution.avoid_in_brief = {text_run("Keep it wet.")};
  notice.word = Message::Word::notice;
  notice.hazard = {text_run("Vinegar lifts thin gold at worn edges.")};
  notice.avoid = {text_run("Seconds, then rinse.")};
  notice.signs.clear();
  Run blank;
  blank.kind = Run::Kind::blank;
  blank.blank_mm = 30;
  entry.blocks = {
      shared(paragraph({text_run("Inside the case: ", Style::accent), text_run("polariser, printed plate.")},
                       Paragraph::Role::dense)),
      shared({danger}),
      shared({Step{1,
                   {text_run("Take the cell out, turn the module face down, lift the crust with a barely damp swab.")},
                   {text_run("on", Style::bold), text_run(" copper-alloy contact "), text_run("with", Style::bold),
                    text_run(" distilled water")}}}),
      shared({caution}),
      shared({Step{2,
                   {text_run("Touch what is left with a swab damp with vinegar until it stops fizzing. Swabs used: "), blank},
                   {text_run("meets", Style::bold), text_run(" potassium carbonate crust")}}}),
      shared({Step{3, {text_run("Wipe three times, then dry.")}, {}}}),
      shared({notice}),
      shared({List{true,
                   {{paragraph({text_run("First look.")})},
                    {paragraph({text_run("Second look.")}), {List{false, {{paragraph({text_run("inside a list")})}}}}}}}}),
      shared(heading(3, "Chemistry")),
      shared(paragraph({text_run("CO"), text_run("2", Style::subscript), text_run(" leaves; "),
                        text_run("V = n / c", Style::code), text_run(", "), text_run("slowly", Style::italic), text_run(".")}))};
  chapter.blocks.push_back({entry});
  return chapter;
}

Chapter tables_chapter() {
  Chapter chapter = plain_chapter(11, "tables", "Tables", "Published tables, each row with its source.");
  Table table;
  table.name = "sizes";
  table.caption = {text_run("Gasket sizes of a made-up series")};
  table.columns = {column("size", Column::Align::decimal, true)};
  for (const char* head : {"inside", "section", "outside", "stretch", "squeeze", "groove", "gland", "seat"})
    table.columns.push_back(column(std::string(head) + ", mm", Column::Align::decimal));
  table.columns.push_back(column(""));
  for (int i = 0; i < 24; ++i) {
    TableRow row;
    row.anchor = "table/sizes#r" + std::to_string(i);
    row.cells.push_back(cell({text_run(std::to_string(8 + i))}));
    for (int j = 0; j < 8; ++j)
      row.cells.push_back(cell({fact(row.anchor + ".c" + std::to_string(j), decimal(0.8 + i * 3.7 + j))}));
    row.cells.push_back(cell({trust_run(i % 3 == 0 ? Trust::standard : Trust::dataset, false)}));
    table.rows.push_back(row);
  }
  chapter.blocks.push_back({table});
  chapter.blocks.push_back(paragraph({text_run("See "), link_run("row eight", "table/sizes#r8"), text_run(", "),
                                      link_run("its capacity", "cell/sample-101#capacity"), text_run(" and "),
                                      link_run("a record that is not there", "cell/missing"), text_run(".")}));
  return chapter;
}

Chapter terms_chapter() {
  Chapter chapter = plain_chapter(10, "words", "Words", "Words of the trade as this book uses them.");
  for (const char* word : {"gasket", "module", "movement", "crust", "seat"}) {
    Entry entry;
    entry.rank = Entry::Rank::small;
    entry.anchor = std::string("term/") + word;
    entry.key = {text_run(word)};
    entry.blocks = {shared(paragraph({text_run("What the word means at the bench, in one sentence, with "),
                                      link_run("a link", "term/crust"), text_run(".")}))};
    chapter.blocks.push_back({entry});
  }
  return chapter;
}

Chapter index_chapter() {
  Chapter chapter;
  chapter.number = 12;
  chapter.id = "index";
  chapter.title = "Index";
  chapter.tab = "Index";
  IndexList index;
  for (int number = 101; number <= 160; ++number)
    index.entries.push_back({std::to_string(number), std::to_string(number), {"cell/sample-" + std::to_string(number)}, ""});
  index.entries.push_back({"alkali", "alkali", {}, "crust"});
  index.entries.push_back({"crust", "crust", {"term/crust"}, ""});
  index.entries.push_back({"crust, clearing", "crust clearing", {"procedure/clear-crust"}, ""});
  index.entries.push_back({"gasket", "gasket", {"term/gasket", "table/sizes#r3"}, ""});
  index.entries.push_back({"\u00B5A, reading of", "~", {"page/cells"}, ""});
  chapter.blocks = {{index}};
  return chapter;
}

Book sample_book() {
  Book book;
  book.title = "Sample bench handbook";
  book.subtitle = "Cells, gaskets, crystals and liquids for the watch on your bench, worked out from records";
  book.edition = "1";
  book.date = "November 2026";
  book.iso_date = "2026-11-01";
  book.standing_line = "Says nothing about water resistance.";
  book.cover_notes = {paragraph({text_run("Who answers for what: nobody answers for a made-up book.")}), heading(2, "Parts")};
  book.chapters = {cells_chapter(),
                   plain_chapter(2, "gaskets", "Gaskets", "Measure the seat, not the gasket."),
                   plain_chapter(3, "crystals", "Crystals", "Acrylic, mineral or sapphire; scratched or cracked."),
                   plain_chapter(4, "liquids", "Liquids", "What it must never touch or meet."),
                   plain_chapter(5, "leaks", "Leaks", "Colour and place first."),
                   plain_chapter(6, "abrasives", "Abrasives", "Where to start and where to stop."),
                   plain_chapter(7, "cases", "Cases", "Backs, bars and gold."),
                   plain_chapter(8, "displays", "Displays", "From what you see to what to test."),
                   methods_chapter(),
                   terms_chapter(),
                   tables_chapter(),
                   index_chapter()};
  return book;
}

}  // namespace benchleaf::html_tests
