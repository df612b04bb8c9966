#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "model/tables.h"
#include "query/words.h"

namespace benchleaf::query {

/// What a word does in a query, by the table query-words.
enum class Use {
  asks,      ///< stands in any question: `how`, `the`, `watch`
  defines,   ///< asks what a word means: `what`, `mean`
  cell,      ///< says nothing beside the name of a cell: `equivalent`, `vs`
  wide,      ///< the number beside it is a diameter
  high,      ///< the number beside it is a height
  joins,     ///< stands between two things that touch: `on`, `with`
  compares,  ///< stands between two things that are told apart: `or`, `vs`, `difference`
  acts,      ///< says nothing beside a liquid and what it touches: `clean`, `gasket`
  does,      ///< says that something is to be done: `fit`, `how`
  fails,     ///< says that something fails: `stuck`, `wont`
  craft      ///< of a craft or a trade that the book is not about
};

/// Words by what they do and by what else they may be called. Made once from the tables query-words and like-words.
class Vocabulary {
 public:
  explicit Vocabulary(const model::Tables& tables);

  bool is(const Word& word, Use use) const;
  /// Whether the word does anything in a query.
  bool is_any(const Word& word) const { return uses_.count(stem_of(word.text)) > 0; }
  /// Stems of other words for the same thing: `battery` gives `cell`.
  const std::vector<std::string>& like(const std::string& stem) const;

 private:
  std::map<std::string, std::set<Use>, std::less<>> uses_;
  std::map<std::string, std::vector<std::string>, std::less<>> like_;
};

}  // namespace benchleaf::query
