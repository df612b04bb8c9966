#pragma once

#include "model/knowledge_base.h"
#include "model/ticket_form.h"

namespace benchleaf::ticket {

/// What the page asks for a ticket: every question about a watch, with the records to choose from.
model::TicketForm ticket_form(const model::KnowledgeBase& records);

}  // namespace benchleaf::ticket
