// In: the heads of the handbook and its overlays. Out: what says which edition a page or a sheet belongs to.
#include "compose/imprint.h"

#include <array>

namespace benchleaf::compose {

std::string printed_date(const std::string& date) {
  static constexpr std::array<const char*, 12> kMonths{"January", "February", "March",     "April",   "May",      "June",
                                                       "July",    "August",   "September", "October", "November", "December"};
  if (date.size() != 7) return date;
  const int month = (date[5] - '0') * 10 + (date[6] - '0');
  if (month < 1 || month > 12) return date;
  return std::string(kMonths.at(static_cast<std::size_t>(month - 1))) + " " + date.substr(0, 4);
}

std::string iso_date(const model::Handbook& handbook) {
  return handbook.date.size() == 7 ? handbook.date + "-01" : handbook.date;
}

std::string imprint(const model::Handbook& handbook) {
  return "Benchleaf, edition\u00A0" + handbook.edition + ", " + printed_date(handbook.date);
}

std::string overlay_line(const model::KnowledgeBase& records) {
  const std::size_t count = records.overlays.size();
  if (count == 0) return {};
  return count == 1 ? "with " + records.overlays.front().name : "with " + std::to_string(count) + " overlays";
}

}  // namespace benchleaf::compose
