#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::command {

/// A rule by its id: severity, reason, source, and from its own case the lines that break it and those that do not.
/// Nothing where there is no such rule.
std::optional<std::string> explain_rule(std::string_view id);

/// The rule that was probably meant, or empty.
std::string nearest_rule(std::string_view id);

}  // namespace benchleaf::command
