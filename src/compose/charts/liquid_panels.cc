// In: liquids, residues, materials and their verdicts. Out: matrices, and the key to crusts.
#include <algorithm>
#include <tuple>
#include <utility>

#include "bench/mixing.h"
#include "compose/charts/chart_pages.h"
#include "compose/charts/panels.h"
#include "compose/entry_maker.h"
#include "compose/line.h"
#include "compose/meetings.h"

namespace benchleaf::compose {

namespace {

/// `PC` says nothing to a beginner.
bool is_abbreviation(const std::string& name) {
  return std::none_of(name.begin(), name.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

/// The plain name first: `Polycarbonate, PC`.
std::string plain_name(const model::Record& record) {
  const std::string name = short_name(record);
  if (!is_abbreviation(name) || name == record.title) return sentence_case(name);
  return record.title.find(name) == std::string::npos ? record.title + ", " + name : record.title;
}

model::Runs head(const model::Record& record) { return {model::text_run(plain_name(record), model::Style::look_up)}; }

/// Records of one kind beside each other, by name within it; named ones stay in the order of the list.
template <class RecordType>
std::vector<const RecordType*> by_kind(const Wanted& wanted, std::vector<const RecordType*> records) {
  if (!wanted.records.empty()) return records;
  std::sort(records.begin(), records.end(), [](const RecordType* a, const RecordType* b) {
    return std::tie(a->family, a->title) < std::tie(b->family, b->title);
  });
  return records;
}

std::optional<model::Verdict> verdict_on(const model::Chemistry& liquid, const std::string& material) {
  for (const auto& item : liquid.on_materials) {
    if (item.material == material) return item.verdict;
  }
  return std::nullopt;
}

model::Paragraph matrix_legend(const Desk& desk, const char* care, const char* harmless) {
  model::Paragraph legend;
  Line line(desk);
  line.verdict(model::Verdict::never, "never").say(" \u2003").verdict(model::Verdict::with_limits, care);
  line.say(std::string(" \u2003\u2022\u00A0") + harmless + " \u2003empty: not known");
  legend.runs = line.take();
  return legend;
}

/// What it is told by: its colour and touch, up to the first stop of its description.
std::string first_look(const model::Residue& residue) { return residue.looks.substr(0, residue.looks.find_first_of(",;.")); }

constexpr std::string_view kWater = "H2O";

bool is_water(const Desk& desk, const model::RecordRef& reference) {
  const auto* substance = desk.records.find<model::Substance>(reference);
  return substance != nullptr && substance->formula == kWater;
}

bool holds_water(const Desk& desk, const model::Chemistry& liquid) {
  return std::any_of(liquid.made_of.begin(), liquid.made_of.end(),
                     [&](const auto& part) { return is_water(desk, part.substance); });
}

/// Water itself, and nothing in it.
bool is_plain_water(const Desk& desk, const model::Chemistry& liquid) {
  return liquid.made_of.size() == 1 && holds_water(desk, liquid);
}

/// Liquids that must never meet a residue. Where water must not, whatever holds it is said in two words.
model::Runs never_on(const Desk& desk, const model::Residue& residue) {
  const auto is_never = [&](const model::Chemistry& liquid) {
    return meeting_verdict(desk, residue, liquid) == model::Verdict::never;
  };
  const auto& liquids = desk.records.chemistries;
  const bool dry = std::any_of(liquids.begin(), liquids.end(),
                               [&](const auto& one) { return is_plain_water(desk, one.second) && is_never(one.second); });
  Line never(desk);
  if (dry) never.say("anything with water");
  for (const auto& [id, liquid] : liquids) {
    if (!is_never(liquid) || (dry && holds_water(desk, liquid))) continue;
    never.say(never.empty() ? "" : ", ").say(inner_name(liquid));
  }
  return never.take();
}

}  // namespace

PanelBlocks material_matrix(const Desk& desk, const Wanted& wanted) {
  model::Matrix matrix;
  const auto materials = by_kind(wanted, wanted_records(desk, wanted, desk.records.materials));
  const bool whole = wanted.records.empty();  // a short list is in an order of its own
  matrix.heads_at_both_ends = wanted.wide;
  for (const model::Material* material : materials) {
    matrix.columns.push_back(head(*material));
    if (whole) matrix.groups.push_back(sentence_case(word_of(material->family)));
  }
  for (const model::Chemistry* liquid : by_kind(wanted, wanted_records(desk, wanted, desk.records.chemistries))) {
    model::Matrix::Row row{head(*liquid), {}, whole ? word_of(liquid->family) : std::string(), more_at(liquid->reference())};
    for (const model::Material* material : materials) row.cells.push_back(verdict_on(*liquid, material->reference()));
    matrix.rows.push_back(std::move(row));
  }
  if (matrix.rows.empty() || matrix.columns.empty()) return {};
  return {std::move(matrix), matrix_legend(desk, "with care", "no harm")};
}

PanelBlocks meeting_matrix(const Desk& desk, const Wanted& wanted) {
  std::vector<const model::Record*> records;
  for (const std::string& reference : wanted.records) {
    const model::Record* record = desk.records.find(reference);
    if (record != nullptr && bench::is_mixture(*record)) records.push_back(record);
  }
  if (wanted.records.empty()) {
    for (const auto& [id, liquid] : desk.records.chemistries) records.push_back(&liquid);
  }
  model::Matrix matrix;
  matrix.heads_at_both_ends = wanted.wide;
  for (const model::Record* record : records) matrix.columns.push_back(head(*record));
  for (const model::Record* record : records) {
    model::Matrix::Row row{head(*record), {}, {}, more_at(record->reference())};
    for (const model::Record* other : records) row.cells.push_back(meeting_verdict(desk, *record, *other));
    matrix.rows.push_back(std::move(row));
  }
  if (records.size() < 2) return {};
  return {std::move(matrix), matrix_legend(desk, "not poured together: on a swab, or rinse between", "may meet in an open dish")};
}

PanelBlocks never_together(const Desk& desk, const Wanted& wanted) {
  std::vector<const model::Record*> records;
  for (const std::string& reference : wanted.records) {
    const model::Record* record = desk.records.find(reference);
    if (record != nullptr && bench::is_mixture(*record)) records.push_back(record);
  }
  model::Table table;
  table.columns = {column({}, model::Column::Align::left, true), column({}), column({}, model::Column::Align::right)};
  for (std::size_t i = 0; i < records.size(); ++i) {
    Line never(desk);
    bool said = true;  // by the rows above, which name the pair from the other side
    for (std::size_t k = 0; k < records.size(); ++k) {
      if (k == i || meeting_verdict(desk, *records[i], *records[k]) != model::Verdict::never) continue;
      never.say(never.empty() ? "" : ", ").say(inner_name(*records[k]));
      said = said && k < i;
    }
    if (said) continue;
    const std::string name = unbroken(sentence_case(short_name(*records[i])));
    model::Runs key{model::text_run(name, model::Style::look_up)};
    table.rows.push_back({{cell(std::move(key)), cell(never.take()), cell(more_at(records[i]->reference()))}, {}});
  }
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

PanelBlocks crust_key(const Desk& desk, const Wanted& wanted) {
  model::Table table;
  table.columns = {column("looks", model::Column::Align::left, true), column("dab with, in order"), column("never"),
                   column({}, model::Column::Align::right)};
  for (const model::Residue* residue : wanted_records(desk, wanted, desk.records.residues)) {
    Line dab(desk);
    for (const std::string& liquid : residue->answers) {
      const model::Record* record = desk.records.find(liquid);
      if (record != nullptr) dab.say(dab.empty() ? "" : ", ").say(inner_name(*record), model::Style::bold);
    }
    if (dab.empty()) dab.say("leave it: bag it, hand it in", model::Style::bold);
    model::Runs key{model::text_run(first_look(*residue), model::Style::look_up),
                    model::text_run(", " + inner_name(*residue), model::Style::bold)};
    table.rows.push_back(
        {{cell(std::move(key)), cell(dab.take()), cell(never_on(desk, *residue)), cell(more_at(residue->reference()))}, {}});
  }
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

}  // namespace benchleaf::compose
