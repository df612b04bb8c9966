#pragma once

#include <optional>
#include <string>
#include <vector>

#include "query/vocabulary.h"

namespace benchleaf::model {
struct Cell;
struct KnowledgeBase;
struct Record;
}  // namespace benchleaf::model

namespace benchleaf::query {

/// A length that a query states, in millimetres.
struct Measure {
  enum class Role { any, wide, high };
  Role role = Role::any;
  double mm = 0;
  double slack = 0;  ///< how far from it the measure may be that is meant: half the last digit of a figure in inches
};

/// The lengths of a query and the words that are none.
struct AskedSize {
  std::vector<Measure> measures;
  std::vector<Word> rest;
  bool pair = false;  ///< whether two were written as one size: `7.9 x 5.4`
};

/// Reads sizes out of a query: `7.9x5.4`, `2.1 high 7.9 dia`, `9.5 wide`, `29/64 in. by 7/32 in.`. A bare figure is none.
AskedSize size_in(const std::vector<Word>& words, const Vocabulary& vocabulary);

/// Cells of a size.
struct CellsOfSize {
  std::vector<const model::Cell*> cells;    ///< the likeliest first
  std::vector<const model::Cell*> smaller;  ///< a little smaller, in case the old cell has swollen
};
CellsOfSize cells_of_size(const std::vector<Measure>& measures, const model::KnowledgeBase& records, const model::Tables& tables);

/// A series of gaskets or crystals that comes in a size.
struct SeriesOfSize {
  const model::Record* record = nullptr;
  int fits = 0;  ///< the more of what was measured fits, the higher; a section counts twice
};

/// Series that come in a size, the best first.
std::vector<SeriesOfSize> series_of_size(const std::vector<Measure>& measures, const model::KnowledgeBase& records);

}  // namespace benchleaf::query
