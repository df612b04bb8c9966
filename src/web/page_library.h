#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/knowledge_base.h"
#include "model/tables.h"
#include "read/shape.h"

namespace benchleaf::web {

/// What the page's program looks into.
struct PageLibrary {
  model::Tables tables;
  model::KnowledgeBase records;
  std::optional<read::Shape> watch_shape;
  std::optional<read::Shape> stock_shape;
  std::string fault;  ///< why it could not be read, or empty
};

/// Tables, the records that answers look into, and the shapes of a watch and a drawer, as lines of plain text: a page that was
/// opened from a disk may read no other file.
std::string page_lines(const std::vector<model::PublishedTable>& tables, const model::KnowledgeBase& records,
                       const model::Node& watch_shape, const model::Node& stock_shape);

/// Reads that text.
PageLibrary read_page_library(std::string_view lines);

}  // namespace benchleaf::web
