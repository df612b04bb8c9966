#pragma once

#include <string>
#include <string_view>

namespace benchleaf::compose {

/// Key by whose bytes words stand in index order: marks folded, words before longer words, digits by their number,
/// digits before letters, letters before signs.
std::string index_key(std::string_view word);
/// Index order of two words; equal keys are told apart by their code points.
bool index_before(std::string_view one, std::string_view other);

}  // namespace benchleaf::compose
