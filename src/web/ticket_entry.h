#pragma once

namespace benchleaf::web {
struct TicketLibrary;
}

extern "C" {

/// Reads the tables (standards/table_lines.h) and what `benchleaf::web::ticket_lines` wrote, once for all answers; closed with
/// `benchleaf_close_tickets`.
benchleaf::web::TicketLibrary* benchleaf_open_tickets(const char* table_lines, const char* ticket_lines);
/// Answers with JSON, see web/ticket_answer.h; an empty drawer is none. The caller frees the answer.
char* benchleaf_ticket(const benchleaf::web::TicketLibrary* library, const char* watch_lines, const char* stock_lines);
void benchleaf_close_tickets(benchleaf::web::TicketLibrary* library);
}
