#pragma once

#include <string>
#include <vector>

#include "query/name_index.h"
#include "query/vocabulary.h"

namespace benchleaf::query {

/// Cells that a query names.
struct NamedCells {
  std::vector<std::vector<const model::Cell*>> groups;  ///< of each name, the likeliest first
  std::string unknown;                                  ///< a name built like that of a cell which is not on file
  std::vector<Word> rest;                               ///< words that are no such name
};

/// Reads the names of cells out of a query: `sr 626 sw`, `626sw`, `V377`, `AG 13`, `1154`.
NamedCells cells_in(const std::vector<Word>& words, const NameIndex& names);

/// Whether one cell is offered before another of its size: those that are still made, then those whose drain is known, then those
/// of a system that may stand in for the others (table cell-substitutes).
bool is_likelier(const model::Cell& one, const model::Cell& other, const model::Tables& tables);

}  // namespace benchleaf::query
