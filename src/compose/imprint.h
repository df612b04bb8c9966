#pragma once

#include <string>

#include "model/knowledge_base.h"

namespace benchleaf::compose {

/// A year and month as printed: `November 2026`; a date of another form stays as it is.
std::string printed_date(const std::string& date);
/// The date of the edition as `2026-11-01`.
std::string iso_date(const model::Handbook& handbook);
/// `Benchleaf, edition 1, November 2026`
std::string imprint(const model::Handbook& handbook);
/// `with NAME`, `with 2 overlays`, or empty: what stands with the imprint of a sheet.
std::string overlay_line(const model::KnowledgeBase& records);

}  // namespace benchleaf::compose
