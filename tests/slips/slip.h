#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "model/knowledge_base.h"
#include "prove/rule_files.h"

namespace benchleaf::test {

/// What a hand does wrong on the way from a source into a record.
enum class SlipKind {
  transposed_digits,
  point_moved,
  unit_swapped,
  fields_exchanged,
  letter_changed,
  wrong_reference,
  other_record,
  dropped_field,
  duplicated_record,
  neighbour_copied,
  code_off_by_one,
};

constexpr std::array<std::string_view, 11> kSlipNames = {
    "transposed digits", "decimal point moved", "unit swapped",      "fields exchanged", "letter changed", "wrong reference",
    "another record",    "dropped field",       "duplicated record", "neighbour copied", "code off by one"};

inline std::string_view name_of(SlipKind kind) { return kSlipNames.at(static_cast<std::size_t>(kind)); }

/// One slip in one record.
struct Slip {
  SlipKind kind;
  std::string field;  ///< `cell size.diameter`, list places as `*`
  std::string path;   ///< the damaged file below content/; of a duplicated record the copy
  std::string text;   ///< what that file then holds
  std::string told;   ///< `5.4 mm -> 4.5 mm`
};

/// Up to `most` different slips of each kind, drawn with a fixed seed: a field by chance, then one of its places.
std::vector<Slip> draw_slips(const model::KnowledgeBase& base, const FileTexts& content, std::size_t most);

}  // namespace benchleaf::test
