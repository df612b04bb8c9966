#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/tables.h"

namespace benchleaf::standards {

/// One class of an ingredient, from a share upwards where the entry sets a limit of its own. Shares are percent by mass.
struct HazardLine {
  std::string hazard_class;  ///< Skin Corr. 1B
  std::string statement;     ///< H314
  std::optional<double> from;
  std::optional<double> below;
};

/// An ingredient of a mixture.
struct MixturePart {
  std::string name;
  double percent = 0;
  std::vector<HazardLine> hazards;
  double m_acute = 1;  ///< multiplying factors for water life
  double m_chronic = 1;
  bool acid_or_base = false;  ///< its harm to skin need not add up with that of the others
};

/// A mixture and what was measured on the whole of it.
struct Mixture {
  std::vector<MixturePart> parts;
  bool no_flash_point = false;        ///< it is known that it has none
  std::optional<double> flash_point;  ///< °C
  std::optional<double> boiling;      ///< °C
  std::optional<double> ph_low, ph_high;
};

/// A class that the mixture has. `sure` is false where the percentage alone does not settle it.
struct FoundClass {
  std::string hazard_class;
  std::string statement;
  std::string why;
  bool sure = true;
};

/// What no percentage decides.
enum class OpenQuestion {
  viscosity,
  breathed,
  flash_point,
  boiling_point,
  oxidising,
  supplier,
  extreme_acid,
  extreme_base,
  ph_not_given,
  additivity,
  not_added_up
};

/// A question that is left open, and the sentence that says so.
struct Undecided {
  OpenQuestion question = OpenQuestion::not_added_up;
  std::string words;
};

/// `extreme-acid`, a word of a closed list.
std::string_view question_word(OpenQuestion question);

/// A cell of a table that a classification rests on: `table/generic-limits#skin-corr-by-corrosive.limit`.
struct LimitUsed {
  std::string fact;
  model::Trust trust = model::Trust::memory;
};

struct Classification {
  std::vector<FoundClass> classes;  ///< what is covered by a stronger class is left out
  std::vector<Undecided> undecided;
  std::vector<LimitUsed> limits;       ///< that the classes rest on, each once
  std::vector<LimitUsed> open_limits;  ///< that what is left open rests on besides
};

/// Classifies a mixture by the additivity rules of annex I: shares through their limits, a specific limit before the
/// generic one. An extreme pH and physical classes are told as undecided, never guessed.
Classification classify(const Mixture& mixture, const model::Tables& tables);

/// `2 or less` of extreme_acid, `11.5 or more` of extreme_base: the pH that counts as corrosive, by the table mixture-figures.
std::string extreme_ph_words(OpenQuestion end, const model::Tables& tables);

/// What a label must say for a set of classes.
struct ChemicalLabel {
  std::vector<std::string> statements;  ///< by code; what a stronger statement makes needless is left out
  std::string signal;                   ///< danger, warning, none
  std::vector<std::string> pictograms;  ///< by code; what another takes the place of is left out
};

/// The label of the sure classes, or with `all` of every class that may hold.
ChemicalLabel label_of(const Classification& classification, bool all, const model::Tables& tables);

/// The same from statements alone, each read with the first class that has it.
ChemicalLabel label_of(const std::vector<std::string>& statements, const model::Tables& tables);

}  // namespace benchleaf::standards
