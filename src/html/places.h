#pragma once

#include <string>

#include "html/plan.h"

namespace benchleaf::html {

/// A script with where each record, chapter and calculator stands, so that an answer that names one can lead there:
/// `globalThis.benchleafPlaces = {"KIND/ID": "KIND/ID.html", ...};`
std::string places_script(const Plan& plan);

}  // namespace benchleaf::html
