// In: targets and anchors met while a page is set. Out: addresses and names, each name given once.
#include "html/setting.h"

namespace benchleaf::html {

std::optional<Id> claim_name(const std::string& anchor, Setting& setting) {
  if (anchor.empty()) return std::nullopt;
  std::optional<Place> place = setting.plan.place_of_anchor(anchor);
  if (!place || place->path != setting.page.path || !place->id) return std::nullopt;
  if (!setting.named.insert(anchor).second) return std::nullopt;
  return place->id;
}

std::optional<Url> address_of(const std::string& target, Setting& setting) {
  const std::optional<Place> place = setting.plan.place(target);
  if (!place) {
    setting.dead.insert(target);
    return std::nullopt;
  }
  if (place->path == setting.page.path && place->id) return Url::within(*place->id);
  const Url page = Url::between(setting.page.path, place->path);
  return place->id ? page.at(*place->id) : page;
}

Url address_of(const Page& page, const Setting& setting) { return Url::between(setting.page.path, page.path); }

}  // namespace benchleaf::html
