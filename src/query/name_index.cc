// In: records and the table of everyday words. Out: which record a name means, or why it cannot be said.
#include "query/name_index.h"

#include <algorithm>
#include <optional>
#include <sstream>

#include "base/id.h"
#include "base/utf8.h"
#include "query/words.h"
#include "standards/table_view.h"

namespace benchleaf::query {

namespace {

using model::Kind;

constexpr std::string_view kEveryday = "everyday-words";
constexpr std::size_t kOneSlip = 5;    // letters from which one slip is forgiven
constexpr std::size_t kTwoSlips = 10;  // and from which two are

std::size_t slips_allowed(std::size_t letters) { return letters >= kTwoSlips ? 2 : letters >= kOneSlip ? 1 : 0; }

std::string spelled(const std::vector<Word>& words, std::size_t from, std::size_t to) {
  std::string text;
  for (std::size_t i = from; i < to; ++i) text += words[i].text;
  return text;
}

/// Slips between two names; nothing where they are more than names of their length forgive.
std::optional<std::size_t> slips_between(std::string_view typed, std::string_view name) {
  const std::size_t letters = std::max(base::count_code_points(typed), base::count_code_points(name));
  const std::size_t allowed = slips_allowed(letters);
  if (allowed == 0 || typed.size() > name.size() + allowed || name.size() > typed.size() + allowed) return std::nullopt;
  const std::size_t slips = base::edit_distance(typed, name);
  return slips <= allowed ? std::optional(slips) : std::nullopt;
}

bool is_of(Kind kind, const std::vector<Kind>& kinds) {
  return kinds.empty() || std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

std::size_t place_of(Kind kind, const std::vector<Kind>& kinds) {
  return static_cast<std::size_t>(std::find(kinds.begin(), kinds.end(), kind) - kinds.begin());
}

bool has_digit(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

/// The letters a cell's name begins with: two names of cells are near only where these are the same.
std::string_view head_of(std::string_view key) { return key.substr(0, key.find_first_of("0123456789")); }

void add_once(std::vector<const model::Record*>& list, const model::Record* record) {
  if (std::find(list.begin(), list.end(), record) == list.end()) list.push_back(record);
}

}  // namespace

NameIndex::NameIndex(const model::KnowledgeBase& records, const model::Tables& tables, const Vocabulary& vocabulary) {
  for (const model::Record* record : records.all()) {
    if (!is_looked_up(record->kind)) continue;
    for (Name& name : names_of(*record, tables)) add(*record, std::move(name), vocabulary);
  }
  for (const auto& row : standards::rows_of(tables, kEveryday)) {
    for (const auto& [column, role] : {std::pair{"names", Name::Role::everyday}, std::pair{"beside", Name::Role::beside}}) {
      std::istringstream names(standards::cell_text(row, column));
      for (std::string reference; names >> reference;) {
        const model::Record* record = records.find(reference);
        if (record != nullptr) add(*record, {role, row.key}, vocabulary);
      }
    }
  }
  for (Readings* all : {&by_key_, &by_bare_key_}) {
    for (auto& [key, readings] : *all) {
      std::stable_sort(readings.begin(), readings.end(),
                       [](const Reading& one, const Reading& other) { return tier_of(one.role) < tier_of(other.role); });
    }
  }
}

void NameIndex::add(const model::Record& record, Name name, const Vocabulary& vocabulary) {
  const std::vector<Word> words = words_of(name.text);
  std::string key = joined_key(words, 0, words.size());
  if (key.empty()) return;
  longest_ = std::max(longest_, words.size());
  const bool whole = name.role == Name::Role::designation || name.role == Name::Role::number;
  if (record.kind == Kind::cell && whole && !head_of(key).empty()) cell_heads_.insert(std::string(head_of(key)));
  by_key_[key].push_back({&record, name.role});
  std::string bare;
  for (const Word& word : words) bare += vocabulary.is(word, Use::asks) ? std::string() : stem_of(word.text);
  if (!bare.empty()) by_bare_key_[bare].push_back({&record, name.role});
  entries_.push_back({std::move(name.text), std::move(key), spelled(words, 0, words.size()), {&record, name.role}});
}

const std::vector<Reading>& NameIndex::in(const Readings& readings, std::string_view key) {
  static const std::vector<Reading> kNone;
  const auto found = readings.find(key);
  return found == readings.end() ? kNone : found->second;
}

const std::vector<Reading>& NameIndex::of_key(std::string_view key) const { return in(by_key_, key); }

const std::vector<Reading>& NameIndex::of_bare_key(std::string_view key) const { return in(by_bare_key_, key); }

Resolution NameIndex::resolve(std::string_view name, const std::vector<Kind>& kinds) const {
  Resolution found;
  int tier = -1;
  std::size_t kind = 0;
  for (const Reading& reading : of_key(joined_key(name))) {
    if (!is_of(reading.record->kind, kinds)) continue;
    const std::size_t place = kinds.empty() ? 0 : place_of(reading.record->kind, kinds);
    if (tier < 0 || (tier_of(reading.role) == tier && place < kind)) {
      tier = tier_of(reading.role);
      kind = place;
      found.readings.clear();
    }
    if (tier_of(reading.role) == tier && place == kind) add_once(found.readings, reading.record);
  }
  if (found.readings.size() == 1) found.record = found.readings.front();
  if (found.readings.empty()) found.nearest = nearest(name, kinds);
  return found;
}

std::vector<std::string> NameIndex::nearest(std::string_view name, const std::vector<Kind>& kinds, std::size_t most) const {
  struct Near {
    std::size_t slips;
    std::string text;
    const model::Record* record;
  };
  const std::vector<Word> words = words_of(name);
  const std::string typed = spelled(words, 0, words.size());
  const bool code = has_digit(typed);
  std::vector<Near> near;
  for (const Entry& entry : entries_) {
    if (!is_of(entry.reading.record->kind, kinds) || tier_of(entry.reading.role) > 1) continue;
    if (code && (head_of(typed) != head_of(entry.spelled) || head_of(typed).empty())) continue;
    const auto slips = slips_between(typed, entry.spelled);
    if (slips && (!code || *slips <= 1)) near.push_back({*slips, entry.text, entry.reading.record});
  }
  std::stable_sort(near.begin(), near.end(), [](const Near& one, const Near& other) { return one.slips < other.slips; });
  std::vector<std::string> names;
  std::vector<const model::Record*> told;
  for (const Near& one : near) {
    if (!code && one.slips > near.front().slips) break;  // a second liquid is no hint
    if (names.size() == most || std::find(told.begin(), told.end(), one.record) != told.end()) continue;
    told.push_back(one.record);
    names.push_back(one.text);
  }
  return names;
}

std::string NameIndex::with_slips(const std::vector<Word>& words, std::size_t from, std::size_t to) const {
  const std::string typed = spelled(words, from, to);
  std::size_t fewest = kTwoSlips;
  const Entry* best = nullptr;
  if (has_digit(typed)) return {};
  for (const Entry& entry : entries_) {
    if (entry.reading.record->kind == Kind::cell || has_digit(entry.spelled)) continue;
    const auto found = slips_between(typed, entry.spelled);
    if (!found || *found > fewest) continue;
    const std::size_t slips = *found;
    const bool same = best != nullptr && (best->key == entry.key || best->reading.record == entry.reading.record);
    if (slips < fewest || !same) best = slips < fewest ? &entry : nullptr;
    fewest = slips;
  }
  return best == nullptr ? std::string() : best->key;
}

}  // namespace benchleaf::query
