// In: records, tables, facts. Out: findings. The list of rules, in the order in which they are checked.

#include "prove/prove.h"

#include "prove/checks.h"
#include "prove/published_checks.h"

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
    check_basis_fits_its_source,
    check_sources_are_current,
    check_source_dates,
    check_sources_are_cited,
    check_ranges,
    check_titles,
    check_twins,
    check_link_numbers,
    check_cell_families,
    check_capacities,
    check_cells_are_flat,
    check_cells_have_partners,
    check_module_cells,
    check_module_supply,
    check_gasket_sections,
    check_gasket_proportions,
    check_gasket_materials,
    check_crystal_materials,
    check_rubber_storage,
    check_material_bounds,
    check_inch_sizes,
    check_grade_scales,
    check_bare_numbers,
    check_named_grades,
    check_medians,
    check_median_order,
    check_grain_spread,
    check_check_digits,
    check_registry_numbers,
    check_formulas,
    check_explosion_limits,
    check_acid_constants,
    check_equivalents,
    check_gas_given_off,
    check_class_statements,
    check_statements_are_known,
    check_harmonised_classes,
    check_limit_steps,
    check_flammable_categories,
    check_strength_sums,
    check_labels,
    check_label_words,
    check_extreme_ph,
    check_ph_side,
    check_pure_liquids,
    check_pairs_stand_once,
    check_meetings_agree,
    check_liquids_have_data,
    check_first_aid,
    check_sign_titles,
    check_cautions_are_cited,
};

}  // namespace

std::span<const Check> all_checks() { return kChecks; }

void prove(const model::KnowledgeBase& base, const model::Tables& tables, const derive::Derived& derived,
           report::Findings& findings) {
  const Proof proof{base, tables, derived, findings};
  for (const Check check : all_checks()) check(proof);
}

}  // namespace benchleaf::prove
