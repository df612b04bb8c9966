#pragma once

#include <optional>
#include <string>

#include "report/finding.h"

namespace benchleaf::command {

/// Name of the script below the bound folder.
inline constexpr const char* kBenchScriptName = "html/assets/bench.js";

/// The calculators as the build of the target bench-web leaves them for the browser: `bench.js` beside the program, else in
/// `../share/benchleaf`. Nothing, and an error, where it lies in neither.
std::optional<std::string> bench_script(report::Findings& findings);

}  // namespace benchleaf::command
