#pragma once

#include <string>
#include <string_view>

#include "web/ticket_library.h"

namespace benchleaf::web {

/// The ticket of a watch as JSON: {findings: [{severity, rule, path, message, hint}], text, html}. The watch, and the drawer or
/// nothing, are trees in the lines of read/node_lines.h; `path` says where in them, `stock.` before it where it is in the drawer.
/// `text` is what the command `ticket` prints, `html` the page that it writes; both are empty where a finding is an error.
std::string answer_ticket(const TicketLibrary& library, std::string_view watch_lines, std::string_view stock_lines);

}  // namespace benchleaf::web
