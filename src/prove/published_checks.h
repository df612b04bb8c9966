#pragma once

#include "prove/proof.h"

namespace benchleaf::prove {

// Rules that hold records against published standards and against each other.

// sources.cc
void check_basis_fits_its_source(const Proof& proof);
void check_sources_are_current(const Proof& proof);
void check_source_dates(const Proof& proof);
void check_reading_is_dated(const Proof& proof);
void check_sources_are_cited(const Proof& proof);
void check_trust_has_a_source(const Proof& proof);
void check_licences(const Proof& proof);

// figures.cc
void check_ranges(const Proof& proof);
void check_titles(const Proof& proof);
void check_twins(const Proof& proof);
void check_link_numbers(const Proof& proof);

// cell_families.cc
void check_cell_families(const Proof& proof);
void check_capacities(const Proof& proof);
void check_cells_are_flat(const Proof& proof);
void check_cells_have_partners(const Proof& proof);

// modules.cc
void check_module_cells(const Proof& proof);
void check_module_supply(const Proof& proof);

// sealing.cc
void check_gasket_sections(const Proof& proof);
void check_gasket_proportions(const Proof& proof);
void check_gasket_materials(const Proof& proof);
void check_crystal_materials(const Proof& proof);
void check_rubber_storage(const Proof& proof);
void check_material_bounds(const Proof& proof);
void check_inch_sizes(const Proof& proof);

// abrasives.cc
void check_grade_scales(const Proof& proof);
void check_bare_numbers(const Proof& proof);
void check_named_grades(const Proof& proof);
void check_grades_are_published(const Proof& proof);
void check_medians(const Proof& proof);
void check_median_order(const Proof& proof);
void check_grain_spread(const Proof& proof);

// residues.cc
void check_residue_colours(const Proof& proof);

// substances.cc
void check_check_digits(const Proof& proof);
void check_registry_numbers(const Proof& proof);
void check_formulas(const Proof& proof);
void check_explosion_limits(const Proof& proof);
void check_acid_constants(const Proof& proof);
void check_equivalents(const Proof& proof);
void check_gas_given_off(const Proof& proof);

// hazards.cc
void check_class_statements(const Proof& proof);
void check_statements_are_known(const Proof& proof);
void check_harmonised_classes(const Proof& proof);
void check_limit_steps(const Proof& proof);
void check_flammable_categories(const Proof& proof);

// liquids.cc
void check_strength_sums(const Proof& proof);
void check_labels(const Proof& proof);
void check_label_words(const Proof& proof);
void check_extreme_ph(const Proof& proof);
void check_ph_side(const Proof& proof);
void check_pure_liquids(const Proof& proof);

// voices.cc
void check_pairs_stand_once(const Proof& proof);
void check_meetings_agree(const Proof& proof);
void check_liquids_have_data(const Proof& proof);

// safety.cc
void check_first_aid(const Proof& proof);
void check_sign_titles(const Proof& proof);
void check_sign_words(const Proof& proof);
void check_cautions_are_cited(const Proof& proof);

// written_figures.cc
void check_written_figures(const Proof& proof);

// dates.cc
void check_dates(const Proof& proof);

// watches.cc
void check_watches(const Proof& proof);
void check_watch_numbers(const Proof& proof);
void check_stock_sizes(const Proof& proof);

// module_loads.cc
void check_module_loads(const Proof& proof);
void check_healthy_words(const Proof& proof);
void check_module_years(const Proof& proof);

// procedures.cc
void check_procedure_tools(const Proof& proof);
void check_procedure_times(const Proof& proof);
void check_grade_ladders(const Proof& proof);
void check_year_is_told(const Proof& proof);

// trade_numbers.cc
void check_trade_numbers(const Proof& proof);
void check_suffix_letters(const Proof& proof);

// overlays.cc
void check_overlay_copies(const Proof& proof);
void check_overlay_drops(const Proof& proof);
void check_overlay_pages(const Proof& proof);

// properties.cc
void check_published_properties(const Proof& proof);
void check_acid_ph(const Proof& proof);
void check_single_parts(const Proof& proof);
void check_mixture_flash_points(const Proof& proof);

}  // namespace benchleaf::prove
