#pragma once

#include <string>
#include <vector>

#include "base/span.h"
#include "derive/derive.h"
#include "web/page_library.h"

namespace benchleaf::web {

/// The file that places of a request name; their line is that of its text.
inline constexpr base::FileId kRequestFile = 0;

/// What a ticket is made from on the page.
struct TicketGround {
  const PageLibrary& library;
  const derive::Derived& derived;
};

/// The ticket of a watch as JSON: {findings: [{severity, rule, path, message, hint}], text, html}. The watch stands under
/// `watch` in the request, a drawer under `stock`; `paths` are those of its lines. `path` says where in the watch, `stock.`
/// before it where it is in the drawer. `text` is what the command `ticket` prints, `html` the page that it writes; both are
/// empty where a finding is an error.
std::string answer_ticket(const TicketGround& ground, const model::Node& request, const std::vector<std::string>& paths);

}  // namespace benchleaf::web
