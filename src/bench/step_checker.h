#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "bench/step_world.h"

namespace benchleaf::bench {

/// A slot of a procedure, without its sign, to the record that fills it.
using Binding = std::map<std::string, model::RecordRef, std::less<>>;

/// More combinations than this are not judged.
inline constexpr std::size_t kMostBindings = 256;

/// Every combination of what the slots allow; one empty binding where there is no slot, none where there are more
/// than kMostBindings.
std::vector<Binding> allowed_bindings(const model::Procedure& procedure);

/// The steps with slots filled, places as before; a slot that the binding does not fill stays `$name`.
model::Procedure bound(const model::Procedure& procedure, const Binding& binding);

/// What a step breaks.
enum class StepLaw {
  never,        ///< a liquid or an abrasive on a material that it ruins
  not_known,    ///< a pair that no record answers
  limits,       ///< a way or a temperature for which the verdict does not hold
  part,         ///< a way of working that a part does not bear
  mix_never,    ///< two that must not meet
  mix_rinse,    ///< two with a rinse between
  mix_closed,   ///< gas in a closed vessel
  mix_left,     ///< an acid or a lye that is not rinsed off
  mix_group,    ///< a substance that nobody has judged
  wet_crust,    ///< a crust handled dry or hot
  wet_sanding,  ///< sanding without water
  flash_point,  ///< a bath or heat too near to a flash point
  tank,         ///< a flammable liquid in the ultrasonic tank
  heat,         ///< hotter than a material bears
};

struct StepFault {
  StepLaw law = StepLaw::never;
  std::size_t step = 0;     ///< place in `steps`, from 0
  std::string field;        ///< below the step: `with.0`
  std::string message;      ///< what meets what, and why that is wrong
  std::string hint;         ///< one action
  std::string ground;       ///< source and trust of the reason
  model::RecordRef record;  ///< record whose line is the ground, or empty
  std::string path;         ///< of that line, or the row of a table
};

/// Judges the steps of a procedure whose slots are filled, in the order of the steps. A step with an unusable field is
/// passed over. The same faults come from the same input.
std::vector<StepFault> check_steps(const StepWorld& world, const model::Procedure& bound_procedure);

// The parts of check_steps.
void check_materials(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults);
void check_heat(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults);
void check_wet_method(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults);
void check_mixing(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults);

/// A caution that a step needs before it.
struct CautionNeed {
  std::size_t step = 0;
  std::string field;  ///< what calls for it: `with.0`, `do`
  model::RecordRef caution;
  std::string because;  ///< `the step uses white-vinegar`
  std::string reason;
  model::RecordRef record;  ///< that asks for it, or empty
  std::string path;         ///< of its list, or the row of a table
};

/// All cautions that the steps of a bound procedure need, in the order of the steps.
std::vector<CautionNeed> caution_needs(const StepWorld& world, const model::Procedure& bound_procedure);

/// Whether a caution has something to guard where there is nothing but these parts and materials. A harm that things alone come
/// to, and of which parts or materials warn, is a harm to those: direct current to a display.
bool has_to_guard(const StepWorld& world, const model::RecordRef& caution, const model::References& there);

}  // namespace benchleaf::bench
