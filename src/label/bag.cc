// In: a record of what lies in bags and drawers. Out: its label, with what is laid on it drawn at true size.
#include <utility>

#include "base/number.h"
#include "compose/figures/cell_drawing.h"
#include "compose/imprint.h"
#include "label/parts.h"
#include "label/series_figure.h"

namespace benchleaf::label {

namespace {

using model::Runs;
using model::Style;

constexpr double kKeyScale = 2.4;
constexpr double kMostBeside = 0.58;  // of the room: the rest is for words
constexpr double kBlankMm = 18;

/// The largest of plan and section, plan, section that has room.
std::shared_ptr<const model::Drawing> cell_figure(const compose::Desk& desk, const model::Cell& cell,
                                                  const model::LabelRoom& room) {
  const model::Fact* across = desk.fact(cell, "size.diameter");
  const auto fits = [&room](const auto& drawing) {
    return drawing != nullptr && drawing->height_mm <= room.height_mm && drawing->width_mm <= room.width_mm * kMostBeside;
  };
  for (auto drawing : {compose::cell_views(desk, cell), across == nullptr ? nullptr : compose::cell_outline(*across, 0.3),
                       compose::cell_section(desk, cell)}) {
    if (fits(drawing)) return drawing;
  }
  return nullptr;
}

std::string joined(const std::vector<std::string>& words, const char* between) {
  std::string text;
  for (const std::string& word : words) {
    if (!word.empty()) text += (text.empty() ? "" : between) + word;
  }
  return text;
}

std::string in_mm(const std::vector<std::string>& figures) {
  const std::string text = joined(figures, "\u00A0\u00D7\u00A0");
  return text.empty() ? text : text + std::string(base::kThinSpace) + "mm";
}

/// When it was made and bought, and where it is kept.
void add_life(const Thing& thing, model::Label& label) {
  if (!thing.made.empty()) label.lines.push_back(dated("Made", thing.made));
  label.lines.push_back(dated("Bought", thing.date));
  if (!thing.place.empty()) label.lines.push_back(line_of(thing.place));
}

std::string system_words(const compose::Desk& desk, const model::Cell& cell) {
  const model::CellSystem* system = desk.tables.cell_system_by_id(cell.system);
  return system == nullptr ? compose::plain_words(cell.system) : system->name;
}

model::Label titled(const std::string& title) {
  model::Label label;
  label.title = title;
  label.head = line_of(title);
  return label;
}

/// A size as the head of a label, or a blank for it.
Runs size_head(const std::string& what, const std::string& size) {
  if (!size.empty()) return line_of(size);
  Runs head = line_of(what + "\u00A0");
  model::Run blank;
  blank.kind = model::Run::Kind::blank;
  blank.blank_mm = kBlankMm;
  head.push_back(blank);
  head.push_back(model::text_run("\u00A0mm"));
  return head;
}

}  // namespace

Runs dated(std::string word, const std::string& date) {
  if (!date.empty()) return line_of(std::move(word) + " " + compose::printed_date(date));
  Runs runs = line_of(std::move(word) + "\u00A0");
  model::Run blank;
  blank.kind = model::Run::Kind::blank;
  blank.blank_mm = kBlankMm;
  runs.push_back(blank);
  return runs;
}

Runs line_of(std::string words, Style style) { return {model::text_run(std::move(words), style)}; }

std::string figure_mm(const std::optional<base::Quantity>& quantity) {
  const auto value = quantity && quantity->has_value() ? quantity->value_in(base::Unit::millimetre) : std::nullopt;
  return value ? base::paper_number(base::shortest_text(base::tidy(*value))) : std::string();
}

model::Label cell_bag(const compose::Desk& desk, const model::Cell& cell, const Thing& thing, const model::LabelRoom& room) {
  model::Label label = titled(desk.name(cell.reference()));
  const std::string& key = compose::cell_key(cell);
  label.head = line_of(key);
  label.head_scale = key.size() > 5 ? 1.6 : kKeyScale;
  if (key != cell.designation) label.lines.push_back(line_of(cell.designation, Style::bold));
  label.lines.push_back(line_of(in_mm({figure_mm(cell.size.diameter), figure_mm(cell.size.height)}), Style::bold));
  const bool drained = cell.drain == model::Drain::low || cell.drain == model::Drain::high;
  const model::Fact* nominal = desk.fact(cell, "nominal");
  label.lines.push_back(line_of(joined({nominal == nullptr ? std::string() : nominal->printed, system_words(desk, cell),
                                        drained ? word_of(cell.drain) + " drain" : std::string()},
                                       ", ")));
  add_life(thing, label);
  label.beside = cell_figure(desk, cell, room);
  return label;
}

model::Label gasket_bag(const compose::Desk& desk, const model::Gasket& series, const Thing& thing,
                        const model::LabelRoom& room) {
  const std::string inside = figure_mm(thing.size);
  model::Label label = titled(series.title + (inside.empty() ? "" : " " + inside));
  const std::vector<std::string> section = series.profile == model::Profile::round
                                               ? std::vector{figure_mm(series.section)}
                                               : std::vector{figure_mm(series.wall), figure_mm(series.height)};
  label.head = size_head("Inside", inside.empty() ? inside
                                                  : in_mm({inside, section.front(),
                                                           section.back() == section.front() ? std::string() : section.back()}));
  label.head_scale = inside.empty() ? 1.3 : 1.9;
  label.lines.push_back(line_of(series.title, Style::bold));
  label.lines.push_back(line_of((series.profile == model::Profile::round ? "Inside × section" : "Inside × wall × height") +
                                (series.material.empty() ? std::string() : ", " + desk.name(series.material))));
  add_life(thing, label);
  add_figures(gasket_section(series), thing.size, room, label);
  return label;
}

model::Label crystal_bag(const compose::Desk& desk, const model::Crystal& crystal, const Thing& thing,
                         const model::LabelRoom& room) {
  const std::string size = figure_mm(thing.size);
  model::Label label = titled(crystal.title + (size.empty() ? "" : " " + size));
  const bool round = crystal.form == model::CrystalForm::round_domed || crystal.form == model::CrystalForm::round_flat;
  label.head = size_head("Size", size.empty() ? size : in_mm({size}));
  label.head_scale = size.empty() ? 1.3 : 1.9;
  label.lines.push_back(line_of(crystal.title, Style::bold));
  if (!crystal.material.empty()) label.lines.push_back(line_of(desk.name(crystal.material)));
  Runs thickness = size_head("Thickness", {});
  label.lines.push_back(std::move(thickness));
  add_life(thing, label);
  if (round) add_figures(nullptr, thing.size, room, label);
  return label;
}

model::Label abrasive_bag(const compose::Desk& desk, const model::Abrasive& abrasive, const Thing& thing) {
  model::Label label = titled(thing.grade.empty() ? abrasive.title : thing.grade + " " + abrasive.title);
  if (!thing.grade.empty()) {
    label.head = line_of(thing.grade);
    label.head_scale = kKeyScale;
    label.lines.push_back(line_of(abrasive.title, Style::bold));
  }
  for (std::size_t i = 0; i < abrasive.grades.size(); ++i) {
    const model::Fact* median = desk.fact(abrasive, "grades." + std::to_string(i) + ".median");
    if (abrasive.grades[i].grade == thing.grade && median != nullptr)
      label.lines.push_back(line_of("Median grain " + median->printed));
  }
  add_life(thing, label);
  return label;
}

model::Label donor_bag(const compose::Desk& desk, const model::Watch& watch) {
  model::Label label = titled(watch.title);
  if (!watch.number.empty()) {
    label.head = line_of(watch.number);
    label.head_scale = kKeyScale;
    label.lines.push_back(line_of(watch.title, Style::bold));
  }
  Runs donor = line_of("Donor watch", Style::bold);
  if (!watch.module.empty()) donor.push_back(model::text_run(": " + desk.name(watch.module)));
  label.lines.push_back(std::move(donor));
  Runs out;
  model::Run tick;
  tick.kind = model::Run::Kind::tick;
  out.push_back(tick);
  out.push_back(model::text_run(" cell taken out"));
  label.lines.push_back(std::move(out));
  label.lines.push_back(dated("Parts taken:", {}));
  return label;
}

model::Label plain_bag(const compose::Desk& desk, const model::Record& record, const Thing& thing) {
  model::Label label = titled(compose::sentence_case(desk.name(record.reference())));
  add_life(thing, label);
  return label;
}

Made label_of(const compose::Desk& desk, const Thing& thing, const model::LabelRoom& room) {
  const model::Record* record = desk.records.find(thing.record);
  if (record == nullptr) return Refused{"nothing on file is called " + thing.record, {}, false};
  switch (record->kind) {
    case model::Kind::cell: return cell_bag(desk, static_cast<const model::Cell&>(*record), thing, room);
    case model::Kind::chemistry: return bottle_of(desk, static_cast<const model::Chemistry&>(*record), thing, room);
    case model::Kind::gasket: return gasket_bag(desk, static_cast<const model::Gasket&>(*record), thing, room);
    case model::Kind::crystal: return crystal_bag(desk, static_cast<const model::Crystal&>(*record), thing, room);
    case model::Kind::abrasive: return abrasive_bag(desk, static_cast<const model::Abrasive&>(*record), thing);
    case model::Kind::watch: return donor_bag(desk, static_cast<const model::Watch&>(*record));
    default: return plain_bag(desk, *record, thing);
  }
}

}  // namespace benchleaf::label
