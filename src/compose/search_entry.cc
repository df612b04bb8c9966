// In: a record, its names and facts. Out: what the search knows of it: keys with weights.
#include <algorithm>
#include <map>

#include "base/number.h"
#include "compose/desk.h"
#include "compose/index_order.h"
#include "compose/names.h"
#include "compose/search.h"
#include "compose/search_key.h"

namespace benchleaf::compose {

namespace {

// Weights: what names a record outweighs what describes it.
constexpr int kNumber = 100;
constexpr int kDesignation = 95;
constexpr int kWithoutSuffix = 85;
constexpr int kWholeTitle = 90;
constexpr int kShortForm = 80;
constexpr int kWholeOtherName = 75;
constexpr int kSize = 70;
constexpr int kOldId = 60;
constexpr int kTitleWord = 45;
constexpr int kOtherNameWord = 40;
constexpr int kMeasure = 30;
constexpr int kKindWord = 20;
constexpr int kSystem = 15;
constexpr int kTextWord = 5;

class KeyList {
 public:
  void add_key(const std::string& key, int weight) {
    if (key.empty()) return;
    int& kept = keys_[key];
    kept = std::max(kept, weight);
  }
  /// A name as a whole, and its single words with another weight.
  void add_name(const std::string& text, int whole, int word) {
    const std::vector<std::string> words = search_words(text);
    add_key(joined_words(words), whole);
    if (words.size() > 1) add_words(words, word);
  }
  void add_text(const std::string& text) { add_words(search_words(text), kTextWord); }
  std::vector<SearchKey> take() const {
    std::vector<SearchKey> list;
    for (const auto& [key, weight] : keys_) list.push_back({key, weight});
    return list;
  }

 private:
  void add_words(const std::vector<std::string>& words, int weight) {
    for (const std::string& word : words) {
      if (says_something(word)) add_key(word, weight);
    }
  }

  std::map<std::string, int> keys_;
};

std::string figure(const model::Fact* fact) {
  return fact == nullptr || !fact->value ? std::string() : base::shortest_text(base::tidy(*fact->value));
}

/// `SR754W` is also looked for as `SR754`.
std::string without_suffix(const std::string& designation) {
  std::size_t end = designation.size();
  while (end > 0 && (designation[end - 1] < '0' || designation[end - 1] > '9')) --end;
  return designation.substr(0, end);
}

void add_cell(const model::Cell& cell, const derive::Derived& derived, KeyList& keys) {
  keys.add_name(without_suffix(cell.designation), kWithoutSuffix, 0);
  keys.add_name(plain_words(cell.system), kSystem, kSystem);
  keys.add_text(cell.uses);
  const std::string across = figure(derived.facts.find(cell.reference() + "#size.diameter"));
  const std::string high = figure(derived.facts.find(cell.reference() + "#size.height"));
  if (across.empty() || high.empty()) return;
  for (const std::string& size : {across + "x" + high, high + "x" + across}) keys.add_key(size, kSize);
  for (const std::string& measure : {across, high}) {
    keys.add_key(measure + "mm", kMeasure);
    keys.add_key(measure, kMeasure);
  }
}

/// Words by which a reader describes the thing without knowing its name.
void add_description(const model::Record& record, KeyList& keys) {
  switch (record.kind) {
    case model::Kind::symptom: {
      const auto& symptom = static_cast<const model::Symptom&>(record);
      keys.add_text(symptom.looks);
      for (const auto& cause : symptom.causes) keys.add_text(cause.cause);
      break;
    }
    case model::Kind::residue: {
      const auto& residue = static_cast<const model::Residue&>(record);
      keys.add_text(residue.looks);
      for (const std::string& system : residue.left_by) keys.add_text(plain_words(system));
      break;
    }
    case model::Kind::chemistry:
      for (const std::string& use : static_cast<const model::Chemistry&>(record).uses) keys.add_text(use);
      break;
    case model::Kind::procedure: keys.add_text(static_cast<const model::Procedure&>(record).purpose); break;
    case model::Kind::term: keys.add_text(static_cast<const model::Term&>(record).meaning); break;
    case model::Kind::caution: keys.add_text(static_cast<const model::Caution&>(record).hazard); break;
    case model::Kind::module: keys.add_text(static_cast<const model::Module&>(record).recognise); break;
    case model::Kind::crystal: keys.add_text(static_cast<const model::Crystal&>(record).recognise); break;
    case model::Kind::gasket: {
      const auto& gasket = static_cast<const model::Gasket&>(record);
      for (const std::string& seat : gasket.seats) keys.add_text(plain_words(seat));
      break;
    }
    default: break;
  }
}

void add_names(const std::vector<Name>& names, KeyList& keys) {
  for (const Name& name : names) {
    switch (name.role) {
      case Name::Role::number: keys.add_name(name.text, kNumber, 0); break;
      case Name::Role::designation: keys.add_name(name.text, kDesignation, 0); break;
      case Name::Role::short_form: keys.add_name(name.text, kShortForm, 0); break;
      case Name::Role::title: keys.add_name(name.text, kWholeTitle, kTitleWord); break;
      case Name::Role::other_name: keys.add_name(name.text, kWholeOtherName, kOtherNameWord); break;
      case Name::Role::old_id: keys.add_name(name.text, kOldId, kOldId); break;
    }
  }
}

SearchEntry make_search_entry(const model::Record& record, const derive::Derived& derived) {
  SearchEntry entry;
  entry.record = record.reference();
  entry.anchor = record.reference();
  entry.title = record.title;
  KeyList keys;
  const std::vector<Name> names = names_of(record, derived.facts);
  for (const Name& name : names) entry.names.push_back(name.text);
  add_names(names, keys);
  keys.add_name(std::string(model::kind_name(record.kind)), kKindWord, kKindWord);
  if (record.kind == model::Kind::cell) {
    const auto& cell = static_cast<const model::Cell&>(record);
    if (cell_key(cell) != cell.designation) entry.title = cell_key(cell) + " " + cell.designation;
    add_cell(cell, derived, keys);
  } else {
    add_description(record, keys);
  }
  entry.keys = keys.take();
  return entry;
}

}  // namespace

SearchIndex make_index(const model::KnowledgeBase& records, const derive::Derived& derived) {
  std::vector<SearchEntry> entries;
  for (const model::Kind kind : model::all_kinds()) {
    std::vector<SearchEntry> of_kind;
    for (const model::Record* record : records.all()) {
      if (record->kind == kind) of_kind.push_back(make_search_entry(*record, derived));
    }
    std::stable_sort(of_kind.begin(), of_kind.end(),
                     [](const SearchEntry& one, const SearchEntry& other) { return index_before(one.title, other.title); });
    for (SearchEntry& entry : of_kind) entries.push_back(std::move(entry));
  }
  return SearchIndex(std::move(entries));
}

}  // namespace benchleaf::compose
