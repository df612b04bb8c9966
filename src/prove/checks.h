#pragma once

#include "prove/proof.h"

namespace benchleaf::prove {

// identity.cc
void check_id_is_file_name(const Proof& proof);
void check_aliases(const Proof& proof);

// references.cc
void check_references(const Proof& proof);

// numbers.cc
void check_numbers_are_unique(const Proof& proof);

// basis.cc
void check_values_have_a_basis(const Proof& proof);
void check_basis_names_a_field(const Proof& proof);
void check_conflict_names_a_field(const Proof& proof);
void check_standard_has_a_clause(const Proof& proof);
void check_invented_is_demonstration(const Proof& proof);

// cell_names.cc
void check_designation(const Proof& proof);
void check_system_letter(const Proof& proof);
void check_short_form(const Proof& proof);
void check_cells_in_series(const Proof& proof);
void check_electrolyte(const Proof& proof);
void check_drain(const Proof& proof);

// cell_sizes.cc
void check_diameter_code(const Proof& proof);
void check_height_digits(const Proof& proof);
void check_size_table(const Proof& proof);

// cell_voltage.cc
void check_voltage(const Proof& proof);
void check_withdrawn(const Proof& proof);

// cautions.cc
void check_signal_words(const Proof& proof);
void check_short_forms(const Proof& proof);
void check_signs(const Proof& proof);
void check_head_cautions(const Proof& proof);

// step_cautions.cc
void check_cautions_before_steps(const Proof& proof);

// step_rules.cc
void check_procedure_steps(const Proof& proof);
void check_symptoms_end(const Proof& proof);

}  // namespace benchleaf::prove
