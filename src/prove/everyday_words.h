#pragma once

#include "prove/proof.h"

namespace benchleaf::prove {

/// The table of everyday words names records that are there, and no word of it is the own name of another record of their kind.
void check_everyday_words(const Proof& proof);

}  // namespace benchleaf::prove
