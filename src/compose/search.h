#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "derive/derive.h"
#include "model/knowledge_base.h"

namespace benchleaf::compose {

/// A word or a whole name by which a record is found.
struct SearchKey {
  std::string key;  ///< as search_words makes it
  int weight = 0;   ///< 1 to 100: a number names a record, a word in a sentence hints at it
};

/// One record of the search.
struct SearchEntry {
  std::string record;              ///< `cell/sr754w`
  std::string anchor;              ///< where it stands in the book
  std::string title;               ///< as a hit is shown: `393 SR754W`
  std::vector<std::string> names;  ///< as they are written, the strongest first
  std::vector<SearchKey> keys;     ///< by key, each once
};

/// How well a query fits: as written, by its beginning, or with one slip.
enum class Fit { exact, beginning, slip };

struct Hit {
  std::string record;
  std::string anchor;
  std::string title;
  Fit fit = Fit::exact;  ///< of the word that fits worst
  int score = 0;         ///< higher is better, within one fit
};

/// What `find` looks into. Made once; every lookup of a query gives the same hits in the same order.
class SearchIndex {
 public:
  explicit SearchIndex(std::vector<SearchEntry> entries);

  /// Records that all words of the query fit, the best first; equal ones in the order of the entries. Hits by a slip are
  /// given only where nothing else fits.
  std::vector<Hit> find(std::string_view query) const;
  /// Names nearest to the query, at most `most`, for when nothing is found.
  std::vector<std::string> nearest(std::string_view query, std::size_t most = 5) const;
  /// By kind, then index order of the titles.
  const std::vector<SearchEntry>& entries() const { return entries_; }

 private:
  struct Place {
    std::size_t entry = 0;
    int weight = 0;
  };
  struct Found {
    Fit fit = Fit::exact;
    int score = 0;
  };
  using FoundByEntry = std::map<std::size_t, Found>;

  FoundByEntry look_up(const std::string& word) const;
  void look_up_slips(const std::string& word, FoundByEntry& found) const;

  std::vector<SearchEntry> entries_;
  std::map<std::string, std::vector<Place>, std::less<>> places_;       ///< by key
  std::map<std::string, std::vector<std::string>, std::less<>> slips_;  ///< key with one code point less, to the keys
};

/// Knowledge base and facts to the search index: every record, every name it goes by, sizes and variants of codes.
SearchIndex make_index(const model::KnowledgeBase& records, const derive::Derived& derived);

}  // namespace benchleaf::compose
