#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/record_ref.h"

namespace benchleaf::model {

/// What a condition may ask of a watch: a line of marks.def each.
enum class Mark {
#define BENCHLEAF_MARK(trait, name, trait_word, word) name,
#include "model/marks.def"
#undef BENCHLEAF_MARK
};

/// `back` of `back_snap`.
std::string_view mark_trait(Mark mark);
/// `snap` of `back_snap`.
std::string_view mark_word(Mark mark);
std::optional<Mark> mark_named(std::string_view trait, std::string_view word);
/// All marks in the order of marks.def.
const std::vector<Mark>& all_marks();
/// The traits, each once, in that order.
const std::vector<std::string_view>& all_traits();

/// What must hold of a watch together: of each trait that is named one of its words, of each list of records one of them.
struct Condition {
  struct Asked {
    std::string trait;
    std::vector<Mark> any_of;
  };
  std::vector<Asked> traits;
  References surface;  ///< `material/ID`: of the case
  References residue;  ///< `residue/ID`: named, or possible by colour
  References symptom;  ///< `symptom/ID`: ticked
};

}  // namespace benchleaf::model
