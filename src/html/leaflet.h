#pragma once

#include <string>

#include "model/leaflet.h"
#include "report/finding.h"

namespace benchleaf::html {

/// A leaflet as one page that stands alone: its style sheet inside it, no script, nothing loaded.
std::string render_leaflet(const model::Leaflet& leaflet, report::Findings& findings);

}  // namespace benchleaf::html
