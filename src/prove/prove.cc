// In: records, tables, facts. Out: findings. The list of rules, in the order in which they are checked.

#include "prove/prove.h"

#include "prove/checks.h"

namespace benchleaf::prove {
namespace {

constexpr Check kChecks[] = {
    check_id_is_file_name,
    check_aliases,
    check_references,
    check_numbers_are_unique,
    check_values_have_a_basis,
    check_basis_names_a_field,
    check_conflict_names_a_field,
    check_standard_has_a_clause,
    check_invented_is_demonstration,
    check_designation,
    check_system_letter,
    check_short_form,
    check_cells_in_series,
    check_electrolyte,
    check_drain,
    check_diameter_code,
    check_height_digits,
    check_size_table,
    check_voltage,
    check_withdrawn,
    check_signal_words,
    check_signs,
    check_head_cautions,
    check_cautions_before_steps,
    check_procedure_steps,
    check_symptoms_end,
};

}  // namespace

void prove(const model::KnowledgeBase& base, const model::Tables& tables, const derive::Derived& derived,
           report::Findings& findings) {
  const Proof proof{base, tables, derived, findings};
  for (const Check check : kChecks) check(proof);
}

}  // namespace benchleaf::prove
