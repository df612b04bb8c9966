// In: records and the grids on file. Out: what the form for labels asks.
#include "web/label_form.h"

#include <algorithm>
#include <string_view>

#include "label/labels.h"
#include "model/paper_size.h"
#include "web/choices.h"

namespace benchleaf::web {

namespace {

using ChoicesOf = Choices (*)(const PageLibrary&);

struct FieldWords {
  std::string_view name, part, ways, label, what, example;
  std::string_view unit = {};
  bool required = false;
  ChoicesOf choices = nullptr;
};

/// With the kind, since two kinds may have one id.
Choices of_kind(model::Kind kind, Choices choices) {
  for (Choice& one : choices) one.value = model::RecordRef(kind, one.value);
  return choices;
}

Choices liquid_records(const PageLibrary& library) { return of_kind(model::Kind::chemistry, liquids(library)); }
Choices cell_records(const PageLibrary& library) { return of_kind(model::Kind::cell, cells(library)); }
Choices gasket_records(const PageLibrary& library) { return of_kind(model::Kind::gasket, series(library)); }
Choices crystal_records(const PageLibrary& library) { return of_kind(model::Kind::crystal, crystals(library)); }

template <typename List>
Choices records(model::Kind kind, const List& list) {
  Choices choices;
  add_records(choices, list);
  return of_kind(kind, std::move(choices));
}

Choices abrasives(const PageLibrary& library) { return sorted(records(model::Kind::abrasive, library.records.abrasives)); }

Choices others(const PageLibrary& library) {
  Choices all = records(model::Kind::module, library.records.modules);
  for (const Choices& more :
       {records(model::Kind::part, library.records.parts), records(model::Kind::tool, library.records.tools)})
    all.insert(all.end(), more.begin(), more.end());
  return sorted(std::move(all));
}

/// `70x37` as `70 × 37 mm, 24 on A4`.
std::string grid_words(const model::LabelGrid& grid) {
  std::string words = grid.name;
  const std::size_t times = words.find('x');
  if (times != std::string::npos) words.replace(times, 1, " \u00D7 ");
  if (words.ends_with("in"))
    words.insert(words.size() - 2, " ");
  else
    words += " mm";
  return words + ", " + std::to_string(grid.count()) + " on " + std::string(model::paper_size(grid.paper)->title);
}

Choices grids(const PageLibrary& library) {
  Choices choices;
  for (const std::string& name : label::grid_names(library.tables)) {
    const auto grid = label::read_grid(library.tables, name);
    if (const auto* one = std::get_if<model::LabelGrid>(&grid)) choices.push_back({name, grid_words(*one)});
  }
  choices.push_back({"own", "another sheet, measured"});
  return choices;
}

Choices papers(const PageLibrary&) {
  Choices choices;
  for (const model::PaperSize& paper : model::kPaperSizes) {
    if (paper.small) choices.push_back({std::string(paper.name), std::string(paper.title)});
  }
  return choices;
}

constexpr struct {
  std::string_view value, label;
} kWays[] = {{"liquid", "a bottle of a liquid on file"},
             {"mixture", "a bottle of your own mixture"},
             {"cell", "a bag of cells"},
             {"gasket", "a bag of gaskets"},
             {"crystal", "a bag of crystals"},
             {"abrasive", "papers or polish"},
             {"other", "a module, a part or a tool"}};

constexpr FieldWords kFields[] = {
    {"liquid", "thing", "liquid", "Liquid", "its strength, hazard words and diamonds are those on file", "isopropyl alcohol", "",
     true, liquid_records},
    {"name", "name", "mixture", "Name on the bottle", "what you call it", "Crust bath", "", true},
    {"part", "part", "mixture", "What is in it",
     "each substance with its percentage by mass, parted by commas; the rest is taken for water", "acetic-acid:5", "", true},
    {"ph", "ph", "mixture", "pH", "where you measured it", "2.4"},
    {"flash", "flash", "mixture", "Flash point", "its flash point, or none", "12 \u00B0C"},
    {"boiling", "boiling", "mixture", "Begins to boil at", "where it begins to boil", "82 \u00B0C"},
    {"cell", "thing", "cell", "Cell", "its number", "393", "", true, cell_records},
    {"gasket", "thing", "gasket", "Series", "the kind of gasket", "round-0-7", "", true, gasket_records},
    {"inside", "size", "gasket", "Inside", "leave empty for a line to write on", "28", "mm"},
    {"crystal", "thing", "crystal", "Kind of crystal", "what lies in the bag", "acrylic-press-fit", "", true, crystal_records},
    {"crystal-size", "size", "crystal", "Size", "leave empty for a line to write on", "26.0", "mm"},
    {"abrasive", "thing", "abrasive", "Paper or polish", "what lies in the bag", "fepa-p", "", true, abrasives},
    {"grade", "size", "abrasive", "Grade", "as it is printed on the back", "P800"},
    {"other", "thing", "other", "What lies in it", "a module, a part or a tool", "tweezers", "", true, others},
    {"filled", "date", "liquid", "Filled on", "leave empty for a line to write on", "2026-11-30"},
    {"mixed", "date", "mixture", "Mixed on", "leave empty for a line to write on", "2026-11-30"},
    {"bought", "date", "cell gasket crystal abrasive other", "Bought on", "leave empty for a line to write on", "2026-11"},
    {"copies", "copies", "", "How many alike", "1 if left empty", "4"},
    {"grid", "grid", "", "Sheet of labels", "the size of one label, and how many there are", "70x37", "", true, grids},
    {"paper", "paper", "own", "Paper", "the size of the whole sheet", "a4", "", true, papers},
    {"label", "label", "own", "One label", "width and height in millimetres, or in inches with in behind them", "50x30", "",
     true},
    {"columns", "columns", "own", "Labels in a row", "counted on the sheet", "4", "", true},
    {"rows", "rows", "own", "Rows", "counted on the sheet", "9", "", true},
    {"pitch", "pitch", "own", "From corner to corner", "across and down; leave empty where labels touch", "52.5x30"},
    {"corner", "corner", "own", "First corner", "from left and top; leave empty where they are centred", "7.2x15"},
    {"start", "start", "", "First free label", "counted along the rows; 1 if left empty", "4"},
};

void write_field(const FieldWords& field, const PageLibrary& library, bench::JsonText& json) {
  json.open_object().member("name", field.name).member("part", field.part).member("ways", field.ways);
  json.member("label", field.label).member("what", field.what).member("example", field.example).member("unit", field.unit);
  json.key("required").flag(field.required);
  write_choices("choices", field.choices == nullptr ? Choices() : field.choices(library), json);
  json.close();
}

}  // namespace

std::string label_form(const PageLibrary& library) {
  bench::JsonText json;
  Choices ways;
  for (const auto& way : kWays) ways.push_back({std::string(way.value), std::string(way.label)});
  json.open_object();
  write_choices("ways", ways, json);
  json.key("fields").open_array();
  for (const FieldWords& field : kFields) write_field(field, library, json);
  return json.close().close().done();
}

}  // namespace benchleaf::web
