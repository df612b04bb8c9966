#pragma once

#include "prove/proof.h"

namespace benchleaf::prove {

void check_charts_have_no_gaps(const Proof& proof);

}  // namespace benchleaf::prove
