// In: the role of a tag. Out: the name under which readers know it.
#include "pdf/roles.h"

#include <array>

namespace benchleaf::pdf {

std::string_view role_name(page::Role role) {
  static constexpr std::array<std::string_view, 28> kNames = {
      "Document", "Part",  "Sect", "Div", "H1", "H2",      "H3",     "H4",   "P",    "L",    "LI",  "Lbl",  "LBody",     "Table",
      "THead",    "TBody", "TR",   "TH",  "TD", "Caption", "Figure", "Link", "Span", "Note", "TOC", "TOCI", "Reference", "Index"};
  static_assert(static_cast<std::size_t>(page::Role::index) + 1 == kNames.size());
  return kNames.at(static_cast<std::size_t>(role));
}

}  // namespace benchleaf::pdf
