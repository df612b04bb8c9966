// In: a calculator and its inputs, records and tables to choose from. Out: what its form asks.
#include "web/calculator_form.h"

#include <algorithm>
#include <string_view>

#include "bench/calculator.h"
#include "bench/json_text.h"
#include "web/choices.h"

namespace benchleaf::web {

namespace {

using Ground = PageLibrary;
using ChoicesOf = Choices (*)(const Ground&);

/// An input as the form asks for it.
struct InputWords {
  std::string_view calculator = {};
  std::string_view input = {};
  std::string_view label = {};
  std::string_view unit = {};  ///< of a plain number
  ChoicesOf choices = nullptr;
  std::string_view way = {};  ///< among inputs that stand for each other
};

Choices materials(const Ground& ground) {
  Choices choices;
  add_records(choices, ground.records.materials);
  return sorted(std::move(choices));
}

/// Those that a load can be reckoned for.
Choices strong_materials(const Ground& ground) {
  Choices choices;
  for (const auto& [id, material] : ground.records.materials) {
    if (material.root.find("strength") != nullptr) choices.push_back({id, material.title});
  }
  return sorted(std::move(choices));
}

Choices modules(const Ground& ground) {
  Choices choices;
  add_records(choices, ground.records.modules);
  return sorted(std::move(choices));
}

Choices crusts(const Ground& ground) {
  Choices choices;
  add_records(choices, ground.records.residues);
  return sorted(std::move(choices));
}

/// The cells of a column, each once, in the order of the table; `label` is a column that says more of them.
Choices column(const Ground& ground, const char* name, const char* value, const char* label) {
  Choices choices;
  const model::PublishedTable* table = ground.tables.find(name);
  if (table == nullptr) return choices;
  for (const auto& row : table->rows) {
    const auto cell = row.cells.find(value);
    if (cell == row.cells.end()) continue;
    const bool known = std::any_of(choices.begin(), choices.end(), [&](const auto& one) { return one.value == cell->second; });
    const auto words = row.cells.find(label);
    if (!known) choices.push_back({cell->second, words == row.cells.end() ? cell->second : words->second});
  }
  return choices;
}

Choices marks(const Ground& ground) { return column(ground, "plating-marks", "mark", "what"); }
Choices grades(const Ground& ground) { return column(ground, "abrasive-grades", "grade", ""); }
Choices scales(const Ground& ground) { return column(ground, "abrasive-grades", "scale", ""); }
Choices yes_no(const Ground&) { return {{"yes", "yes"}, {"no", "no"}}; }
Choices places(const Ground&) { return {{"old-cell", "the old cell"}, {"well", "the well it lies in"}}; }
Choices shapes(const Ground&) { return {{"disc", "a disc"}, {"rectangle", "a rectangle"}}; }
Choices loads(const Ground&) { return {{"thumb", "a thumb"}, {"press", "a press"}, {"splash", "a splash"}}; }
Choices edges(const Ground&) { return {{"simple", "free"}, {"clamped", "clamped"}}; }

constexpr InputWords kInputs[] = {
    {"bath-mix", "liquid", "Liquid", "", liquids},
    {"bath-mix", "ratio", "Ratio"},
    {"bath-mix", "strength", "Strength wanted", "% w/v"},
    {"bath-mix", "stock", "Strength of the bottle", "% w/v"},
    {"bath-mix", "volume", "Volume of the mixture", "mL"},
    {"cell-decode", "designation", "Designation"},
    {"cell-life", "cell", "Cell", "", cells},
    {"cell-life", "capacity", "Charge", "mAh"},
    {"cell-life", "mean", "Steady current", "µA"},
    {"cell-life", "pulse", "Current of a lamp or alarm", "mA"},
    {"cell-life", "pulse-time", "How long each time", "s"},
    {"cell-life", "per-day", "How often a day"},
    {"cell-life", "module", "Module", "", modules},
    {"cell-life", "self-discharge", "Lost by itself", "% per year"},
    {"cell-life", "margin", "Kept in reserve", "%"},
    {"cell-swap", "cell", "Cell", "", cells},
    {"cell-swap", "diameter", "Diameter", "mm"},
    {"cell-swap", "height", "Height", "mm"},
    {"cell-swap", "measured", "What was measured", "", places},
    {"cell-swap", "voltage", "Voltage on the old cell", "V"},
    {"cell-swap", "load", "Largest current", "mA"},
    {"cell-swap", "lamp", "The watch has a lamp", "", yes_no},
    {"cell-swap", "alarm", "The watch has an alarm", "", yes_no},
    {"crust-dose", "residue", "Crust", "", crusts},
    {"crust-dose", "mass", "How much of it", "mg"},
    {"crust-dose", "liquid", "Liquid", "", liquids},
    {"crust-dose", "strength", "Strength on your label", "% w/v"},
    {"crystal-size", "seat", "Bare seat in the bezel", "mm", nullptr, "the bare seat, its inside"},
    {"crystal-size", "old-crystal", "Outside of the old crystal", "mm", nullptr, "the old crystal, its outside"},
    {"crystal-size", "crystal", "Kind of crystal", "", crystals},
    {"crystal-size", "oversize", "Oversize", "mm"},
    {"crystal-size", "ring", "L gasket that holds it", "", series},
    {"crystal-size", "wall", "Wall of the L gasket", "mm"},
    {"crystal-size", "skirt", "Thickness of the rim", "mm"},
    {"crystal-size", "material", "Material", "", strong_materials},
    {"crystal-thickness", "shape", "Shape", "", shapes},
    {"crystal-thickness", "diameter", "Free span of a disc", "mm"},
    {"crystal-thickness", "width", "Short side of a rectangle", "mm"},
    {"crystal-thickness", "length", "Long side of a rectangle", "mm"},
    {"crystal-thickness", "thickness", "Thickness", "mm"},
    {"crystal-thickness", "load", "Load", "", loads},
    {"crystal-thickness", "pressure", "Pressure instead of a load", "bar"},
    {"crystal-thickness", "material", "Material", "", strong_materials},
    {"crystal-thickness", "modulus", "Stiffness", "GPa"},
    {"crystal-thickness", "poisson", "Poisson ratio"},
    {"crystal-thickness", "strength", "Strength", "MPa"},
    {"crystal-thickness", "edge", "Edge", "", edges},
    {"fog-point", "temperature", "Air when the back was closed", "°C"},
    {"fog-point", "humidity", "Humidity of that air", "%"},
    {"fog-point", "plate", "Warm plate", "°C"},
    {"fog-point", "glass", "Glass under the cold drop", "°C"},
    {"fumes", "liquid", "Liquid", "", liquids},
    {"fumes", "volume", "Volume that evaporates", "mL"},
    {"fumes", "room", "Volume of the room", "m³"},
    {"gasket-fit", "seat", "Outside of the boss", "mm", nullptr, "a boss, over its outside"},
    {"gasket-fit", "bore", "Inside of the wall", "mm", nullptr, "a bore, its inside"},
    {"gasket-fit", "face", "Inner wall of the groove", "mm", nullptr, "a groove in a face, its inner wall"},
    {"gasket-fit", "old-inside", "Inside of the old gasket", "mm", nullptr, "the old gasket, its inside"},
    {"gasket-fit", "old-outside", "Outside of the old gasket", "mm", nullptr, "the old gasket, its outside"},
    {"gasket-fit", "section", "Thickness of the gasket", "mm"},
    {"gasket-fit", "series", "Series", "", series},
    {"gasket-fit", "groove-depth", "Depth of the groove, back closed", "mm"},
    {"gasket-fit", "groove-width", "Width of the groove", "mm"},
    {"gasket-fit", "moving", "It moves: crown or button", "", yes_no},
    {"gold-margin", "layer", "Layer of gold", "µm"},
    {"gold-margin", "mark", "Mark on the case", "", marks},
    {"gold-margin", "year", "Year of the case"},
    {"gold-margin", "grade", "Grade of the paper", "", grades},
    {"gold-margin", "scale", "Scale of the paper", "", scales},
    {"gold-margin", "fineness", "Fineness of the gold"},
    {"lamp-sag", "cell", "Cell", "", cells},
    {"lamp-sag", "current", "Current of lamp, alarm or display", "mA"},
    {"lamp-sag", "module", "Module", "", modules},
    {"lamp-sag", "cells", "Cells in series"},
    {"lamp-sag", "least", "Least voltage of the module", "V"},
    {"lamp-sag", "voltage", "Open voltage", "V"},
    {"lamp-sag", "resistance", "Resistance within the cell", "ohm"},
    {"lamp-sag", "drop", "Drop of a diode", "V"},
    {"mixture-class", "part", "What is in it"},
    {"mixture-class", "ph", "pH"},
    {"mixture-class", "flash", "Flash point", "°C"},
    {"mixture-class", "boiling", "Begins to boil at", "°C"},
    {"old-gasket", "new", "Section of a new one", "mm"},
    {"old-gasket", "now", "Section of the old one", "mm"},
    {"old-gasket", "closed", "Depth of the groove, back closed", "mm"},
    {"old-gasket", "moving", "It moves: crown or button", "", yes_no},
    {"rate-drift", "ppm", "Rate", "ppm"},
    {"rate-drift", "per-day", "Rate by the day", "s/d"},
    {"rate-drift", "first", "First reading", "s"},
    {"rate-drift", "second", "Second reading", "s"},
    {"rate-drift", "days", "Between the readings", "d"},
    {"rate-drift", "from", "Date of the first reading"},
    {"rate-drift", "to", "Date of the second reading"},
    {"rate-drift", "reading-error", "Error of a reading", "s"},
    {"rate-drift", "temperature", "Temperature of the watch", "°C"},
    {"rate-drift", "wrist-hours", "Hours a day on the wrist", "h"},
    {"rate-drift", "wrist", "Temperature on the wrist", "°C"},
    {"rate-drift", "table", "Temperature on the table", "°C"},
    {"rinse", "carry-over", "Liquid that clings", "mL"},
    {"rinse", "volume", "Water of one rinse", "mL"},
    {"rinse", "times", "Rinses"},
    {"scratch-ladder", "scratch", "Depth of the scratch", "mm",
     [](const Ground&) -> Choices {
       return {{"nail-catches", "a nail catches in it"}, {"seen-only", "it is only seen"}};
     }},
    {"scratch-ladder", "thickness", "Thickness of the crystal", "mm"},
    {"scratch-ladder", "material", "Material", "", materials},
    {"scratch-ladder", "grades", "Papers at hand"},
    {"scratch-ladder", "scale", "All papers of a scale", "", scales},
    {"scratch-ladder", "diameter", "Free span", "mm"},
    {"screw-thread", "diameter", "Diameter over the crests", "mm"},
    {"screw-thread", "pitch", "Pitch", "mm"},
    {"screw-thread", "over", "Length over some crests", "mm"},
    {"screw-thread", "crests", "Crests in that length"},
    {"vapour", "liquid", "Liquid", "", liquids},
    {"vapour", "volume", "Volume that evaporates", "mL"},
    {"vapour", "room", "Volume of the room", "m³"},
    {"vapour", "air-changes", "Air changes an hour"},
    {"water-pressure", "depth", "Depth of water", "m"},
    {"water-pressure", "pressure", "Overpressure", "bar"},
};

/// Asked before inputs that stand for each other.
constexpr std::string_view kWays = "What did you measure?";

const InputWords* words_of(std::string_view calculator, std::string_view input) {
  const auto named = [&](const InputWords& row) { return row.calculator == calculator && row.input == input; };
  const auto* row = std::find_if(std::begin(kInputs), std::end(kInputs), named);
  return row == std::end(kInputs) ? nullptr : row;
}

/// An input that has no words of its own yet: `groove-depth` to `Groove depth`.
std::string as_label(std::string_view name) {
  std::string label(name);
  std::replace(label.begin(), label.end(), '-', ' ');
  if (!label.empty() && label.front() >= 'a' && label.front() <= 'z') label.front() -= 'a' - 'A';
  return label;
}

std::string_view answer_word(const InputWords& words, const Choices& choices) {
  if (words.choices == yes_no) return "yes-no";
  if (!choices.empty() && words.unit.empty()) return "one-of";
  return words.unit.empty() ? "words" : "measure";
}

void add_input(const InputWords& words, const bench::InputInfo& info, const Ground& ground, bench::JsonText& json) {
  const Choices choices = words.choices == nullptr ? Choices() : words.choices(ground);
  json.open_object().member("name", info.name);
  json.member("label", words.label.empty() ? as_label(info.name) : std::string(words.label));
  json.member("what", info.what).member("example", info.example).key("required").flag(info.required);
  json.member("unit", words.unit).member("way", words.way).member("answer", answer_word(words, choices));
  write_choices("choices", choices, json);
  json.close();
}

}  // namespace

std::string calculator_form(std::string_view name, const PageLibrary& library) {
  bench::JsonText json;
  json.open_object().member("name", name).member("ways", kWays).key("inputs").open_array();
  for (const bench::Calculator& calculator : bench::calculators()) {
    if (calculator.name != name) continue;
    for (const bench::InputInfo& info : calculator.inputs) {
      const InputWords* words = words_of(name, info.name);
      add_input(words == nullptr ? InputWords{} : *words, info, library, json);
    }
  }
  return json.close().close().done();
}

}  // namespace benchleaf::web
