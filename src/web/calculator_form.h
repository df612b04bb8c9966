#pragma once

#include <string>
#include <string_view>

#include "web/page_library.h"

namespace benchleaf::web {

/// What the form of a calculator asks, as JSON: {name, ways, inputs: [{name, label, what, example, required, unit, way, answer,
/// choices: [{value, label}]}]}. `answer` is words, measure (a plain number is of `unit`), yes-no or one-of; inputs with a `way`
/// stand for each other, and `ways` asks which. No inputs for a name that is no calculator's.
std::string calculator_form(std::string_view name, const PageLibrary& library);

}  // namespace benchleaf::web
