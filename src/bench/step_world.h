#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/knowledge_base.h"
#include "model/tables.h"

namespace benchleaf::bench {

/// What the step checker may look into.
struct StepWorld {
  const model::KnowledgeBase& base;
  const model::Tables& tables;
};

/// A record that a step names, by what the checker asks of it. A slot that is not filled, an unknown or a broken record
/// gives nullptr.
const model::Chemistry* chemistry_named(const StepWorld& world, const model::RecordRef& reference);
const model::Abrasive* abrasive_named(const StepWorld& world, const model::RecordRef& reference);
const model::Residue* residue_named(const StepWorld& world, const model::RecordRef& reference);
const model::Part* part_named(const StepWorld& world, const model::RecordRef& reference);
const model::Tool* tool_named(const StepWorld& world, const model::RecordRef& reference);

/// The title of the record, lower case at its head, else the id: for messages.
std::string words_for(const StepWorld& world, const model::RecordRef& reference);
/// The substances of a liquid or a residue.
model::References substances_of(const StepWorld& world, const model::RecordRef& reference);
/// The materials of a part, or the material itself.
model::References materials_of(const StepWorld& world, const model::RecordRef& reference);
/// Highest flash point of a flammable liquid, in °C (third category, CLP annex I, table 2.6.1).
inline constexpr double kFlammableUpTo = 60;

/// Lowest flash point of the liquid or, where a solvent states none, of its substances, in °C.
struct FlashPoint {
  double celsius = 0;
  model::RecordRef record;  ///< that states it
};
std::optional<FlashPoint> flash_point_of(const StepWorld& world, const model::Chemistry& chemistry);
/// `source/ID, where` or `trust memory, no source`: where a line of a record comes from.
std::string ground_of(const model::Record& record, std::string_view path);

}  // namespace benchleaf::bench
