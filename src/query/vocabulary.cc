// In: the tables of words. Out: what a word of a query does.
#include "query/vocabulary.h"

#include <array>
#include <sstream>
#include <utility>

#include "standards/table_view.h"

namespace benchleaf::query {

namespace {

constexpr std::array<std::pair<std::string_view, Use>, 11> kUses = {{{"asks", Use::asks},
                                                                     {"defines", Use::defines},
                                                                     {"cell", Use::cell},
                                                                     {"wide", Use::wide},
                                                                     {"high", Use::high},
                                                                     {"joins", Use::joins},
                                                                     {"compares", Use::compares},
                                                                     {"acts", Use::acts},
                                                                     {"does", Use::does},
                                                                     {"fails", Use::fails},
                                                                     {"craft", Use::craft}}};

}  // namespace

Vocabulary::Vocabulary(const model::Tables& tables) {
  for (const auto& row : standards::rows_of(tables, "query-words")) {
    std::istringstream uses(standards::cell_text(row, "use"));
    for (std::string use; uses >> use;) {
      for (const auto& [name, meant] : kUses) {
        if (name == use) uses_[stem_of(folded(row.key))].insert(meant);
      }
    }
  }
  for (const auto& row : standards::rows_of(tables, "like-words")) {
    std::istringstream words(standards::cell_text(row, "as"));
    for (std::string word; words >> word;) like_[stem_of(folded(row.key))].push_back(stem_of(folded(word)));
  }
}

bool Vocabulary::is(const Word& word, Use use) const {
  const auto found = uses_.find(stem_of(word.text));
  return found != uses_.end() && found->second.count(use) > 0;
}

const std::vector<std::string>& Vocabulary::like(const std::string& stem) const {
  static const std::vector<std::string> kNone;
  const auto found = like_.find(stem);
  return found == like_.end() ? kNone : found->second;
}

}  // namespace benchleaf::query
