#pragma once

#include "prove/proof.h"

namespace benchleaf::prove {

// basis.cc
void check_published_values_name_a_place(const Proof& proof);

// module_loads.cc
void check_upper_limits(const Proof& proof);
void check_series_resistors(const Proof& proof);

// handling.cc
void check_handling(const Proof& proof);

// first_help.cc
void check_rinse_times(const Proof& proof);
void check_cells_in_distress(const Proof& proof);

// second_opinion.cc
void check_verdicts_by_family(const Proof& proof);
void check_class_cautions(const Proof& proof);
void check_group_cautions(const Proof& proof);

}  // namespace benchleaf::prove
