#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "compose/desk.h"
#include "compose/names.h"
#include "model/sheet.h"

namespace benchleaf::compose {

using PanelBlocks = std::vector<model::PanelBlock>;
using Wanted = model::Chart::Panel;

/// Cells by trade and consumer number: size, and the drain of silver, the designation of other systems.
PanelBlocks cell_numbers(const Desk& desk, const Wanted& wanted);
/// Cells of 1.2 to 1.55 V by size, plan and section at true size: silver by drain, alkaline in a column of its own.
PanelBlocks cell_sizes(const Desk& desk, const Wanted& wanted);
/// The same with the charge of each cell and the short name of the size.
PanelBlocks cell_charges(const Desk& desk, const Wanted& wanted);
/// Lithium cells by size, which are never put where the others belong.
PanelBlocks lithium_sizes(const Desk& desk, const Wanted& wanted);
/// The same, a line a cell with its charge.
PanelBlocks lithium_charges(const Desk& desk, const Wanted& wanted);
/// Liquids down, materials across.
PanelBlocks material_matrix(const Desk& desk, const Wanted& wanted);
/// Liquids and residues against each other.
PanelBlocks meeting_matrix(const Desk& desk, const Wanted& wanted);
/// What a deposit looks like and what lifts it.
PanelBlocks crust_key(const Desk& desk, const Wanted& wanted);
/// Grades of all scales side by side, by median grain.
PanelBlocks abrasive_grades(const Desk& desk, const Wanted& wanted);
/// What pages ask of calculators, where the answer has more than two figures: the tables of the pages named.
PanelBlocks page_answers(const Desk& desk, const Wanted& wanted);
/// The answers of one figure or of the two ends of a span, in millimetres, as keys. Then the rows of the record.
PanelBlocks page_key(const Desk& desk, const Wanted& wanted);
/// What to do at once, with room for numbers.
PanelBlocks hurt_messages(const Desk& desk, const Wanted& wanted);
/// Outlines at true size of every whole millimetre that gaskets come in.
PanelBlocks gasket_nest(const Desk& desk, const Wanted& wanted);
/// Millimetres and inches on one scale at true size.
PanelBlocks twin_scale(const Desk& desk, const Wanted& wanted);
/// What modules draw when they are healthy.
PanelBlocks consumption_limits(const Desk& desk, const Wanted& wanted);
/// What marks on cases say of the layer of gold.
PanelBlocks plating_marks(const Desk& desk, const Wanted& wanted);
/// What must never come together: each pair, and all of them in each row that has one.
PanelBlocks never_together(const Desk& desk, const Wanted& wanted);
PanelBlocks word_rows(const Desk& desk, const Wanted& wanted);
PanelBlocks words_only(const Desk& desk, const Wanted& wanted);
PanelBlocks picture_row(const Desk& desk, const Wanted& wanted);

/// What parts one system from the next in the few letters of a column; of lithium its voltage matters.
std::string kind_words(const model::Cell& cell);
/// A fact without its unit, where the head says it.
model::Run figure_run(const model::Fact& fact, model::Style style = model::Style::plain);
/// A sign only where the value is recalled: a mark on every line marks nothing.
void mark_doubt(const Desk& desk, model::Runs& runs, const model::Record& record, const char* path);
/// The picture of that name, or nullptr.
std::shared_ptr<const model::Drawing> bench_picture(const std::string& name);
std::vector<std::string> bench_picture_names();

/// Records of a kind that a panel names, or all of that kind.
template <class RecordType>
std::vector<const RecordType*> wanted_records(const Desk& desk, const Wanted& wanted,
                                              const std::map<std::string, RecordType, std::less<>>& all) {
  std::vector<const RecordType*> found;
  for (const model::RecordRef& reference : wanted.records) {
    if (const auto* record = desk.records.find<RecordType>(reference)) found.push_back(record);
  }
  if (!wanted.records.empty()) return found;
  for (const auto& [id, record] : all) found.push_back(&record);
  return found;
}

}  // namespace benchleaf::compose
