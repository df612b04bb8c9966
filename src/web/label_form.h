#pragma once

#include <string>

#include "web/page_library.h"

namespace benchleaf::web {

/// What the form for labels asks, as JSON: {ways: [{value, label}], fields: [{name, part, ways, label, what, example, unit,
/// required, choices: [{value, label}]}]}. `ways` of a field are the things it is asked for, parted by blanks: none for all,
/// `own` for a sheet of the user's own. `part` is the word that the request and its refusal name it by.
std::string label_form(const PageLibrary& library);

}  // namespace benchleaf::web
