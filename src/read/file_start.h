#pragma once

#include "base/span.h"

namespace benchleaf::read {

/// Where a finding on a file as a whole is shown.
inline base::Span start_of(base::FileId file) { return {file, 1, 1, 0}; }

}  // namespace benchleaf::read
