// In: words of a query. Out: what is to be read first because somebody may be hurt.
#include "query/danger.h"

#include <algorithm>
#include <set>
#include <sstream>

#include "standards/table_view.h"

namespace benchleaf::query {

namespace {

using Row = model::PublishedTable::Row;

/// The stems of a query and of the words that mean the same.
std::set<std::string> stems_of(const std::vector<Word>& words, const Vocabulary& vocabulary) {
  std::set<std::string> stems;
  for (const Word& word : words) {
    const std::string stem = stem_of(word.text);
    stems.insert(stem);
    for (const std::string& other : vocabulary.like(stem)) stems.insert(other);
  }
  return stems;
}

/// How many words a row has, where the query has them all; else 0. `eye|eyes lye`: one of the first and the second.
std::size_t words_hit(const Row& row, const std::set<std::string>& stems) {
  std::istringstream groups(row.key);
  std::size_t hit = 0;
  for (std::string group; groups >> group; ++hit) {
    std::istringstream words(group);
    bool any = false;
    for (std::string word; std::getline(words, word, '|');) any = any || stems.count(stem_of(folded(word))) > 0;
    if (!any) return 0;
  }
  return hit;
}

void add_records(const std::string& names, const model::KnowledgeBase& records, std::vector<const model::Record*>& list) {
  std::istringstream references(names);
  for (std::string reference; references >> reference;) {
    const model::Record* record = records.find(reference);
    if (record != nullptr && std::find(list.begin(), list.end(), record) == list.end()) list.push_back(record);
  }
}

}  // namespace

Dangers dangers_in(const std::vector<Word>& words, const Vocabulary& vocabulary, const model::KnowledgeBase& records,
                   const model::Tables& tables) {
  const std::set<std::string> stems = stems_of(words, vocabulary);
  std::set<std::string> own;  // as they were typed: a word that may mean the same excludes nothing
  for (const Word& word : words) own.insert(stem_of(word.text));
  std::vector<std::pair<std::size_t, const Row*>> rows;
  for (const Row& row : standards::rows_of(tables, "danger-words")) {
    const std::size_t hit = words_hit(row, stems);
    const std::string& never = standards::cell_text(row, "unless");
    std::istringstream excluded(never);
    bool out = hit == 0;
    for (std::string word; excluded >> word;) out = out || (word != "none" && own.count(stem_of(folded(word))) > 0);
    if (!out) rows.emplace_back(hit, &row);
  }
  std::stable_sort(rows.begin(), rows.end(), [](const auto& one, const auto& other) { return one.first > other.first; });
  Dangers dangers;
  for (const auto& [hit, row] : rows) {
    const bool first = standards::cell_text(*row, "stands") == "first";
    add_records(standards::cell_text(*row, "names"), records, first ? dangers.first : dangers.before);
  }
  return dangers;
}

}  // namespace benchleaf::query
