#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "compose/desk.h"
#include "model/sheet.h"

namespace benchleaf::compose {

using PanelBlocks = std::vector<model::PanelBlock>;
using Wanted = model::Chart::Panel;

/// Cells by trade number: size, system, drain.
PanelBlocks cell_numbers(const Desk& desk, const Wanted& wanted);
/// Cells by size, each diameter with its outline at true size.
PanelBlocks cell_sizes(const Desk& desk, const Wanted& wanted);
/// Liquids down, materials across.
PanelBlocks material_matrix(const Desk& desk, const Wanted& wanted);
/// Liquids and residues against each other.
PanelBlocks meeting_matrix(const Desk& desk, const Wanted& wanted);
/// What a deposit looks like and what lifts it.
PanelBlocks crust_key(const Desk& desk, const Wanted& wanted);
/// Grades of all scales side by side, by median grain.
PanelBlocks abrasive_grades(const Desk& desk, const Wanted& wanted);
/// What pages ask of calculators: the tables of the pages named.
PanelBlocks page_answers(const Desk& desk, const Wanted& wanted);
/// What to do at once, with room for numbers.
PanelBlocks hurt_messages(const Desk& desk, const Wanted& wanted);
PanelBlocks word_rows(const Desk& desk, const Wanted& wanted);
PanelBlocks words_only(const Desk& desk, const Wanted& wanted);
PanelBlocks picture_row(const Desk& desk, const Wanted& wanted);

/// The picture of that name, or nullptr.
std::shared_ptr<const model::Drawing> bench_picture(const std::string& name);
/// Text as a square code (ISO/IEC 18004), medium correction.
std::shared_ptr<const model::Drawing> square_code(const std::string& text);

/// Records of a kind that a panel names, or all of that kind.
template <class RecordType>
std::vector<const RecordType*> wanted_records(const Desk& desk, const Wanted& wanted, model::Kind kind,
                                              const std::map<std::string, RecordType, std::less<>>& all) {
  std::vector<const RecordType*> found;
  for (const std::string& reference : wanted.records) {
    const model::Record* record = desk.records.find(reference);
    if (record != nullptr && record->kind == kind) found.push_back(static_cast<const RecordType*>(record));
  }
  if (!wanted.records.empty()) return found;
  for (const auto& [id, record] : all) found.push_back(&record);
  return found;
}

}  // namespace benchleaf::compose
