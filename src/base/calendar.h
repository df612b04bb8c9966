#pragma once

#include <string_view>

namespace benchleaf::base {

/// Whether a date `2026`, `2026-11` or `2026-11-25` (ISO 8601) is in the calendar.
bool is_date(std::string_view text);

}  // namespace benchleaf::base
