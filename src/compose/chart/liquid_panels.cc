// In: liquids, residues, materials and their verdicts. Out: matrices, and the key to crusts.
#include <algorithm>
#include <utility>

#include "bench/mixing.h"
#include "compose/chart/panels.h"
#include "compose/entry_maker.h"
#include "compose/line.h"
#include "compose/meetings.h"

namespace benchleaf::compose {

namespace {

/// A name that fits the head of a column: the short one, else the title up to what only explains it.
std::string short_name(const model::Record& record) {
  if (record.kind == model::Kind::chemistry) {
    const auto& name = static_cast<const model::Chemistry&>(record).short_name;
    if (!name.empty()) return name;
  }
  if (record.kind == model::Kind::residue) {
    const auto& name = static_cast<const model::Residue&>(record).short_name;
    if (!name.empty()) return name;
  }
  if (record.kind == model::Kind::material) {
    const auto& name = static_cast<const model::Material&>(record).short_name;
    if (!name.empty()) return name;
  }
  return record.title;
}

model::Runs head(const model::Record& record) {
  return {model::text_run(sentence_case(short_name(record)), model::Style::look_up)};
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
  line.say(std::string(" \u2003\u2022\u00A0") + harmless + " \u2003empty: not known, do not");
  legend.runs = line.take();
  return legend;
}

}  // namespace

PanelBlocks material_matrix(const Desk& desk, const Wanted& wanted) {
  model::Matrix matrix;
  const auto materials = wanted_records(desk, wanted, model::Kind::material, desk.records.materials);
  for (const model::Material* material : materials) matrix.columns.push_back(head(*material));
  for (const model::Chemistry* liquid : wanted_records(desk, wanted, model::Kind::chemistry, desk.records.chemistries)) {
    model::Matrix::Row row{head(*liquid), {}};
    for (const model::Material* material : materials) row.cells.push_back(verdict_on(*liquid, material->reference()));
    matrix.rows.push_back(std::move(row));
  }
  if (matrix.rows.empty() || matrix.columns.empty()) return {};
  return {std::move(matrix), matrix_legend(desk, "see its entry", "no harm")};
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
  for (const model::Record* record : records) matrix.columns.push_back(head(*record));
  for (const model::Record* record : records) {
    model::Matrix::Row row{head(*record), {}};
    for (const model::Record* other : records) row.cells.push_back(meeting_verdict(desk, *record, *other));
    matrix.rows.push_back(std::move(row));
  }
  if (records.size() < 2) return {};
  return {std::move(matrix), matrix_legend(desk, "not poured together: on a swab, or rinse between", "may meet in an open dish")};
}

PanelBlocks crust_key(const Desk& desk, const Wanted& wanted) {
  model::Table table;
  table.columns = {column("crust", model::Column::Align::left, true), column("dab with, in order"), column("never")};
  for (const model::Residue* residue : wanted_records(desk, wanted, model::Kind::residue, desk.records.residues)) {
    Line dab(desk);
    for (const std::string& liquid : residue->answers) {
      const model::Record* record = desk.records.find(liquid);
      if (record != nullptr) dab.say(dab.empty() ? "" : ", ").say(short_name(*record), model::Style::bold);
    }
    if (dab.empty()) dab.say("leave it: bag it, hand it in", model::Style::bold);
    Line never(desk);
    for (const auto& [id, liquid] : desk.records.chemistries) {
      if (meeting_verdict(desk, *residue, liquid) != model::Verdict::never) continue;
      never.say(never.empty() ? "" : ", ").say(short_name(liquid));
    }
    table.rows.push_back(
        {{cell({model::text_run(sentence_case(short_name(*residue)), model::Style::bold)}), cell(dab.take()), cell(never.take())},
         {}});
  }
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

}  // namespace benchleaf::compose
