// In: from the page's script: tables, records and shapes as lines, then watches. Out: their tickets as JSON, in memory that the
// script frees.

#include "web/ticket_entry.h"

#include <memory>

#include "web/c_text.h"
#include "web/ticket_answer.h"

using benchleaf::web::TicketLibrary;

TicketLibrary* benchleaf_open_tickets(const char* table_lines, const char* ticket_lines) {
  return std::make_unique<TicketLibrary>(benchleaf::web::read_ticket_library(table_lines, ticket_lines)).release();
}

char* benchleaf_ticket(const TicketLibrary* library, const char* watch_lines, const char* stock_lines) {
  return benchleaf::web::c_text(benchleaf::web::answer_ticket(*library, watch_lines, stock_lines));
}

void benchleaf_close_tickets(TicketLibrary* library) { std::unique_ptr<TicketLibrary>(library).reset(); }
