#pragma once

#include "html/setting.h"

namespace benchleaf::html {

/// The page that leads to each calculator.
Markup set_calculators(Setting& setting);

/// The page of one: its question and its inputs. A script puts a form in the place of the inputs' table; without one the page
/// tells what to type at the terminal.
Markup set_calculator(const model::CalculatorSheet& sheet, Setting& setting);

}  // namespace benchleaf::html
