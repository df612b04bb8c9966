// In: a record. Out: whether it is part of the invented demonstration.

#include "derive/demonstration.h"

#include <string_view>

namespace benchleaf::derive {

bool is_demonstration(const model::Record& record) {
  constexpr std::string_view kPrefix = "demo-";
  const bool invented_kind = record.kind == model::Kind::watch || record.kind == model::Kind::stock;
  const std::string_view id = record.id;
  return invented_kind || id == "demonstration" || id.substr(0, kPrefix.size()) == kPrefix;
}

}  // namespace benchleaf::derive
