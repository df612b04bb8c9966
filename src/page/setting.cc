// Out: structure elements in book order.
#include "page/setting.h"

#include <algorithm>
#include <utility>

namespace benchleaf::page {

Look Setting::sized(Look look) const {
  const double factor = std::max(scale, least_pt / look.size_pt);
  look.size_pt *= factor;
  look.leading_pt *= factor;
  return look;
}

TagId Setting::add_tag(Role role, TagId parent) {
  Tag tag;
  tag.role = role;
  tag.parent = parent;
  tags.push_back(std::move(tag));
  return static_cast<TagId>(tags.size()) - 1;
}

TagId Setting::add_figure(TagId parent, std::string alt) {
  const TagId tag = add_tag(Role::figure, parent);
  tags.back().set().alt = std::move(alt);
  return tag;
}

TagId Setting::add_heading(int level, TagId parent) {
  constexpr Role kRoles[] = {Role::h1, Role::h2, Role::h3, Role::h4};
  return add_tag(kRoles[std::clamp(level, 1, 4) - 1], parent);
}

}  // namespace benchleaf::page
