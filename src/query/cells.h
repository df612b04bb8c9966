#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/records/cell.h"
#include "model/tables.h"
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

/// Whether a word is a name of a cell on file, a maker's letter before it or not.
bool is_cell_name(const std::string& word, const NameIndex& names);

/// What a query says of a cell beside its name or its size: `high drain`, `silver`.
struct AskedTraits {
  std::optional<model::Drain> drain;
  std::vector<std::string> systems;  ///< all that the words can mean; empty where none is said
  std::vector<Word> rest;            ///< the words without those of the drain
};
AskedTraits traits_in(const std::vector<Word>& words, const Vocabulary& vocabulary, const model::Tables& tables);

/// How many of the traits that were asked for a cell does not have.
int missed(const model::Cell& cell, const AskedTraits& asked);

/// Whether one cell is offered before another of its size: those that are still made, then those whose drain is known, then those
/// of a system that may stand in for the others (table cell-substitutes).
bool is_likelier(const model::Cell& one, const model::Cell& other, const model::Tables& tables);

}  // namespace benchleaf::query
