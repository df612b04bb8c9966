// In: entries with their keys; a query. Out: the records that fit, the best first, or the names nearest to the query.
#include "compose/search.h"

#include <algorithm>

#include "base/id.h"
#include "base/utf8.h"
#include "compose/index_order.h"
#include "compose/search_key.h"

namespace benchleaf::compose {

namespace {

constexpr std::size_t kShortestBeginning = 2;
constexpr std::size_t kShortQuery = 4;  // of which all but one letter may differ in a name that is offered

template <typename Found>
void keep_better(std::map<std::size_t, Found>& all, std::size_t entry, Found found) {
  const auto [place, added] = all.try_emplace(entry, found);
  Found& old = place->second;
  if (!added && (found.fit < old.fit || (found.fit == old.fit && found.score > old.score))) old = found;
}

bool starts_with(std::string_view text, std::string_view beginning) { return text.substr(0, beginning.size()) == beginning; }

bool is_plain_number(std::string_view word) { return word.find_first_not_of("0123456789") == std::string_view::npos; }

}  // namespace

SearchIndex::SearchIndex(std::vector<SearchEntry> entries) : entries_(std::move(entries)) {
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    for (const SearchKey& key : entries_[i].keys) places_[key.key].push_back({i, key.weight});
  }
  for (const auto& [key, places] : places_) {
    if (key.find(' ') != std::string::npos) continue;  // a slip is forgiven in a word, not in a whole name
    for (std::string& form : one_slip_forms(key)) slips_[std::move(form)].push_back(key);
  }
}

std::vector<Hit> SearchIndex::find(std::string_view query) const {
  std::vector<std::string> words = search_words(query);
  const auto whole = places_.find(joined_words(words));
  const auto whole_words = static_cast<int>(words.size());
  // `no figures at all`: small words are no keys, so they ask for nothing beside others that are.
  if (std::any_of(words.begin(), words.end(), says_something))
    std::erase_if(words, [](const std::string& word) { return !says_something(word); });
  if (words.empty()) return {};
  FoundByEntry found = look_up(words.front());
  for (std::size_t i = 1; i < words.size(); ++i) {
    const FoundByEntry next = look_up(words[i]);
    FoundByEntry both;
    for (const auto& [entry, one] : found) {
      const auto other = next.find(entry);
      if (other == next.end()) continue;
      both[entry] = {std::max(one.fit, other->second.fit), one.score + other->second.score};
    }
    found = std::move(both);
  }
  if (whole_words > 1 && whole != places_.end()) {
    for (const Place& place : whole->second) keep_better(found, place.entry, Found{Fit::exact, place.weight * (whole_words + 1)});
  }
  const bool only_slips = std::all_of(found.begin(), found.end(), [](const auto& one) { return one.second.fit == Fit::slip; });
  std::vector<Hit> hits;
  for (const auto& [entry, one] : found) {
    if (one.fit == Fit::slip && !only_slips) continue;
    hits.push_back({entries_[entry].record, entries_[entry].anchor, entries_[entry].title, one.fit, one.score});
  }
  std::stable_sort(hits.begin(), hits.end(), [](const Hit& one, const Hit& other) {
    return one.fit == other.fit ? one.score > other.score : one.fit < other.fit;
  });
  return hits;
}

/// Best fit of one word in every entry that has it.
SearchIndex::FoundByEntry SearchIndex::look_up(const std::string& word) const {
  FoundByEntry found;
  const bool by_beginning = word.size() >= kShortestBeginning && !is_plain_number(word);
  for (auto place = places_.lower_bound(word); place != places_.end() && starts_with(place->first, word); ++place) {
    const bool exact = place->first == word;
    if (!exact && !by_beginning) break;
    for (const Place& one : place->second) keep_better(found, one.entry, Found{exact ? Fit::exact : Fit::beginning, one.weight});
  }
  look_up_slips(word, found);
  return found;
}

/// One letter more, less or other: what both words become when they lose one letter is the same.
void SearchIndex::look_up_slips(const std::string& word, FoundByEntry& found) const {
  std::vector<std::string> forms = one_slip_forms(word);
  if (forms.empty()) return;
  forms.push_back(word);
  for (const std::string& form : forms) {
    std::vector<std::string> keys;
    if (const auto lost = slips_.find(form); lost != slips_.end()) keys = lost->second;
    if (form != word && places_.contains(form)) keys.push_back(form);
    for (const std::string& key : keys) {
      if (key == word || base::edit_distance(key, word) > 1) continue;
      for (const Place& place : places_.find(key)->second) keep_better(found, place.entry, Found{Fit::slip, place.weight});
    }
  }
}

std::vector<std::string> SearchIndex::nearest(std::string_view query, std::size_t most) const {
  struct Near {
    std::size_t slips = 0;
    std::string order;
    std::string name;
  };
  const std::string folded = joined_words(search_words(query));
  const std::size_t length = base::count_code_points(folded);
  const std::size_t allowed = length <= kShortQuery ? length - std::min<std::size_t>(length, 1) : length / 2;
  std::vector<Near> near;
  for (const SearchEntry& entry : entries_) {
    for (const std::string& name : entry.names) {
      const std::size_t slips = base::edit_distance(folded, joined_words(search_words(name)));
      if (slips <= allowed) near.push_back({slips, index_key(name), name});
    }
  }
  std::sort(near.begin(), near.end(), [](const Near& one, const Near& other) {
    if (one.slips != other.slips) return one.slips < other.slips;
    return one.order == other.order ? one.name < other.name : one.order < other.order;
  });
  std::vector<std::string> names;
  for (const Near& one : near) {
    if (names.size() == most) break;
    if (std::find(names.begin(), names.end(), one.name) == names.end()) names.push_back(one.name);
  }
  return names;
}

}  // namespace benchleaf::compose
