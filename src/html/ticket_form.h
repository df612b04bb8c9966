#pragma once

#include "html/setting.h"

namespace benchleaf::html {

/// The page of the ticket: everything that is asked about a watch. A script makes a form of it; without one it tells what to look
/// for and what to type at the terminal.
Markup set_ticket_form(Setting& setting);

}  // namespace benchleaf::html
