#pragma once

#include <string>
#include <variant>
#include <vector>

#include "model/book.h"
#include "model/record.h"

namespace benchleaf::model {

/// A fenced block `bench` of a page: compose makes the block that its YAML body asks for.
struct DerivedRequest {
  Node body;
  base::Span span;
};

using PagePart = std::variant<Block, DerivedRequest>;

/// A page of prose. Runs that link to a record have `target` `kind/id`; those that link to a fact have `fact`
/// `kind/id#path` besides, and no text where the fact is to be printed.
struct Page : Record {
  std::string lead;
  Trust trust = Trust::memory;
  References sources;           ///< `source/ID`
  std::vector<PagePart> parts;  ///< in file order; headings are of level 2 to 4
};

}  // namespace benchleaf::model
