#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/tables.h"
#include "read/shape.h"

namespace benchleaf::web {

/// What a ticket is made from on the page: the tables, the records, the shapes that a watch and a drawer have.
struct TicketLibrary {
  model::Tables tables;
  model::KnowledgeBase records;
  derive::Derived derived;
  std::optional<read::Shape> watch_shape;
  std::optional<read::Shape> stock_shape;
  std::string fault;  ///< why it could not be read, or empty
};

/// What the page needs besides the lines of its tables (standards/table_lines.h): the records that a plan looks into, and behind
/// them the shapes, all as lines of plain text.
std::string ticket_lines(const model::KnowledgeBase& records, const model::Node& watch_shape, const model::Node& stock_shape);

/// Reads both texts.
TicketLibrary read_ticket_library(std::string_view table_lines, std::string_view ticket_lines);

}  // namespace benchleaf::web
