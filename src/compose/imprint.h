#pragma once

#include <string>

#include "model/records/handbook.h"

namespace benchleaf::compose {

/// The date of the edition as printed: `November 2026`; one of another form stays as it is.
std::string printed_date(const model::Handbook& handbook);
/// The same as `2026-11-01`.
std::string iso_date(const model::Handbook& handbook);
/// `Benchleaf, edition 1, November 2026`
std::string imprint(const model::Handbook& handbook);

}  // namespace benchleaf::compose
