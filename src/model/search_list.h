#pragma once

#include <string>
#include <vector>

namespace benchleaf::model {

/// A word or a whole name by which a record is found.
struct SearchKey {
  std::string key;  ///< as compose::search_words makes it
  int weight = 0;   ///< 1 to 100: a number names a record, a word in a sentence hints at it
};

/// One record or calculator of the search.
struct SearchEntry {
  std::string record;              ///< `cell/sr754w`, `calculator/gasket-fit`
  std::string anchor;              ///< where it stands in the book
  std::string group;               ///< under which it is listed: `cells`
  std::string title;               ///< as a hit is shown: `393 SR754W`
  std::string summary;             ///< the answer itself in one line, as a page prints it
  std::string provenance;          ///< `Replaced by NAME`, or empty
  std::vector<std::string> names;  ///< as they are written, the strongest first
  double diameter_mm = 0;          ///< of a cell; 0 of anything else
  double height_mm = 0;
  std::vector<SearchKey> keys;  ///< by key, each once
};

/// What the terminal and the search of the pages look into.
struct SearchList {
  std::vector<SearchEntry> entries;
  double swelling_mm = 0;  ///< by how much an old cell can measure more than a new one
};

}  // namespace benchleaf::model
