// In: cautions, grades, and what a chart record says in words. Out: their panels.
#include <algorithm>
#include <utility>

#include "compose/charts/panels.h"
#include "compose/entry_maker.h"
#include "compose/line.h"

namespace benchleaf::compose {

namespace {

/// What is to be done at once; `Swallowed: hospital at once.` says what for as a key, since the strip is read in a hurry.
const std::string& at_once(const model::Caution& caution) {
  return !caution.in_short.empty() ? caution.in_short : !caution.first_aid.empty() ? caution.first_aid : caution.avoid;
}

/// What to do stands first, what harms after it.
model::Message hurt_message(const Desk& desk, const model::Caution& caution) {
  model::Message message = message_of(desk, caution);
  message.signs.clear();
  message.sign_titles.clear();
  const std::string& words = at_once(caution);
  const std::size_t key = words.find(": ");
  message.hazard = {model::text_run(key == std::string::npos ? caution.title : words.substr(0, key), model::Style::look_up)};
  message.avoid = {model::text_run(words.substr(key == std::string::npos ? 0 : key + 2) + " " + caution.hazard)};
  if (caution.call) message.write_on = "Call";
  return message;
}

model::Paragraph plain(model::Runs runs) {
  model::Paragraph paragraph;
  paragraph.runs = std::move(runs);
  return paragraph;
}

}  // namespace

PanelBlocks hurt_messages(const Desk& desk, const Wanted& wanted) {
  model::Messages row;
  for (const model::RecordRef& reference : wanted.records) {
    if (const auto* caution = desk.records.find<model::Caution>(reference)) row.messages.push_back(hurt_message(desk, *caution));
  }
  if (row.messages.empty()) return {};
  return {std::move(row)};
}

PanelBlocks word_rows(const Desk&, const Wanted& wanted) {
  model::Table table;
  table.columns = {column({}, model::Column::Align::left, true), column({})};
  for (const model::Chart::Row& row : wanted.rows) {
    table.rows.push_back({{cell({model::text_run(row.key, model::Style::look_up)}), cell({model::text_run(row.words)})}, {}});
  }
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

PanelBlocks words_only(const Desk&, const Wanted& wanted) {
  if (wanted.words.empty()) return {};
  return {plain({model::text_run(wanted.words, model::Style::look_up)})};
}

PanelBlocks picture_row(const Desk&, const Wanted& wanted) {
  model::Pictures row;
  for (const model::Chart::Picture& picture : wanted.pictures) {
    auto drawing = bench_picture(picture.name);
    if (drawing) row.pictures.push_back({std::move(drawing), {model::text_run(picture.words, model::Style::bold)}});
  }
  if (row.pictures.empty()) return {};
  return {std::move(row)};
}

PanelBlocks abrasive_grades(const Desk& desk, const Wanted& wanted) {
  model::Table table;
  table.columns = {column("scale", model::Column::Align::left, true), column("grades, with the middle of their grain")};
  for (const model::Abrasive* scale : wanted_records(desk, wanted, desk.records.abrasives)) {
    Line line(desk);
    for (std::size_t i = 0; i < scale->grades.size(); ++i) {
      const std::string path = "grades." + std::to_string(i) + ".median";
      if (desk.fact(*scale, path) == nullptr) continue;
      line.say(line.empty() ? "" : "\u2002 ").say(scale->grades[i].grade, model::Style::bold).fact(*scale, path, "\u00A0");
    }
    if (line.empty()) continue;
    table.rows.push_back({{cell({model::text_run(scale->scale, model::Style::look_up)}), cell(line.take())}, {}});
  }
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

}  // namespace benchleaf::compose
