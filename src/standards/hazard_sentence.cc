// In: the code of a hazard statement. Out: its sentence.
#include "standards/hazard_sentence.h"

#include "standards/table_view.h"

namespace benchleaf::standards {

std::string hazard_sentence(const model::Tables& tables, const std::string& code) {
  const auto* row = row_of(tables, "hazard-statements", code);
  return row == nullptr || cell_text(*row, "text").empty() ? code : cell_text(*row, "text");
}

}  // namespace benchleaf::standards
