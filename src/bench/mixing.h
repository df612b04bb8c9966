#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "bench/step_world.h"

namespace benchleaf::bench {

/// What may be done with two things that meet, the mildest first. `care`: on a swab; `rinse`: one after the other only
/// with a rinse between.
enum class Meet { ok, care, rinse, never };

/// `no harm in the open`, `on a swab only`, `rinse between`, `never`: for terminal and page.
std::string_view meet_words(Meet meet);

/// One thing that is known of two liquids, or of a liquid and a residue.
struct MixVerdict {
  Meet open = Meet::ok;
  bool closed_never = false;  ///< whether it must not happen in a closed vessel
  std::string product;        ///< empty where nothing forms
  std::string effect;
  std::string when;    ///< on what condition, or empty
  std::string ground;  ///< source and trust
  model::Trust trust = model::Trust::memory;
  model::RecordRef record;  ///< whose line says it, or empty for a table
  std::string path;         ///< of the line, or `table/reactive-pairs#...`
};

/// All that is known of the two: the meetings that their records state, then the reactive groups of what they are made of.
std::vector<MixVerdict> mixes(const StepWorld& world, const model::RecordRef& one, const model::RecordRef& other);
/// The same of what is mixed from these substances and has no record, and a liquid or a residue.
std::vector<MixVerdict> mixes(const StepWorld& world, const model::References& substances, const model::RecordRef& other);
/// Whether a record can meet a liquid: a liquid or a residue.
bool is_mixture(const model::Record& record);
/// Meetings that a liquid or a residue states itself; none for a record of another kind.
const std::vector<model::Meeting>& meetings_of(const model::Record& record);
/// The one that matters most, in the open or in a closed vessel; nothing known is ok.
MixVerdict gravest(const std::vector<MixVerdict>& verdicts, bool closed);
/// Whether a gas is among what forms, so that a closed vessel bursts.
bool gives_gas(const std::vector<MixVerdict>& verdicts);

/// Substances of a liquid or a residue that stand in no reactive group.
model::References ungrouped(const StepWorld& world, const model::RecordRef& reference);

}  // namespace benchleaf::bench
