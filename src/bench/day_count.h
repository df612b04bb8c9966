#pragma once

#include <optional>
#include <string_view>

namespace benchleaf::bench {

/// Days, with their part, since 1970 of a moment as it is written: `2026-03-01`, `2026-03-01 20:00`, `2026-03-01T20:00:30`.
/// Nothing where it is none. The civil calendar; no time zone, so both moments of a difference must be of one.
std::optional<double> days_of_moment(std::string_view text);

}  // namespace benchleaf::bench
