#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/search_list.h"

namespace benchleaf::compose {

/// How well a query fits: as written, by its beginning, or with one slip.
enum class Fit { exact, beginning, slip };

struct Hit {
  std::string record;
  std::string anchor;
  std::string title;
  Fit fit = Fit::exact;  ///< of the word that fits worst
  int score = 0;         ///< higher is better, within one fit
};

/// What a query brings.
struct FoundRecords {
  std::vector<Hit> hits;             ///< as good as it gets, the best first
  std::vector<Hit> others;           ///< found by part of a word, or a little smaller than the size that was asked for
  std::string others_head;           ///< why they are named
  std::vector<std::string> nearest;  ///< names near to the query where there is no hit
};

/// What `find` and the search of the pages look into. Made once; every lookup of a query gives the same hits in the same
/// order. The pages' script (html/scripts/search.js) goes by the same rules; tests hold the two together.
class SearchIndex {
 public:
  explicit SearchIndex(model::SearchList list);

  /// Hits apart from what else is named; of a size, the cells that an old one of it may have been before it swelled.
  FoundRecords look_up(std::string_view query) const;
  /// Records that all words of the query fit, the best first; equal ones in the order of the entries. Hits by a slip are
  /// given only where nothing else fits.
  std::vector<Hit> find(std::string_view query) const;
  /// Names nearest to the query, at most `most`, for when nothing is found.
  std::vector<std::string> nearest(std::string_view query, std::size_t most = 5) const;
  /// By kind, then index order of the titles.
  const std::vector<model::SearchEntry>& entries() const { return entries_; }

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

  FoundByEntry look_up_word(const std::string& word) const;
  void look_up_slips(const std::string& word, FoundByEntry& found) const;
  std::string metric(const std::string& word) const;
  double in_millimetres(std::string_view inches) const;
  std::vector<Hit> of_a_seat() const;
  std::vector<Hit> a_little_smaller(const std::string& size) const;

  std::vector<model::SearchEntry> entries_;
  double swelling_mm_ = 0;
  std::vector<double> measures_;                                        ///< that are keys, in millimetres, rising
  std::map<std::string, std::vector<Place>, std::less<>> places_;       ///< by key
  std::map<std::string, std::vector<std::string>, std::less<>> slips_;  ///< key with one code point less, to the keys
};

/// Knowledge base and facts to what is searched: every record and calculator, every name it goes by, sizes and variants of
/// codes.
model::SearchList make_search_list(const model::KnowledgeBase& records, const model::Tables& tables,
                                   const derive::Derived& derived);

}  // namespace benchleaf::compose
