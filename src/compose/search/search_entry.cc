// In: a record, its names and facts. Out: what the search knows of it: keys with weights.
#include <algorithm>
#include <array>
#include <map>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/calculator.h"
#include "compose/desk.h"
#include "compose/index_order.h"
#include "compose/names.h"
#include "compose/provenance.h"
#include "compose/search/search.h"
#include "compose/search/search_key.h"
#include "standards/table_view.h"

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

/// Between records that go by the same word: what is seen and done comes before the thing it is done with, the bottle before
/// what is in it.
int leaning(model::Kind kind) {
  switch (kind) {
    case model::Kind::symptom: return 3;
    case model::Kind::procedure: return 2;
    case model::Kind::tool: return -1;
    case model::Kind::substance: return -5;
    default: return 0;
  }
}

class KeyList {
 public:
  explicit KeyList(int leaning = 0) : leaning_(leaning) {}

  void add_key(const std::string& key, int weight) {
    if (key.empty()) return;
    if (weight > kTextWord) weight += leaning_;
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
  std::vector<model::SearchKey> take() const {
    std::vector<model::SearchKey> list;
    for (const auto& [key, weight] : keys_) list.push_back({key, weight});
    return list;
  }

 private:
  void add_words(const std::vector<std::string>& words, int weight) {
    for (const std::string& word : words) {
      if (says_something(word)) add_key(word, weight);
    }
  }

  int leaning_;
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
      for (const model::Seat seat : gasket.seats) keys.add_text(plain_words(word_of(seat)));
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

/// Where a record of each kind says in a sentence what it is about; the first that a record has.
constexpr std::array<const char*, 10> kSummaries = {"meaning", "hazard", "looks", "recognise", "purpose",
                                                    "lead",    "use",    "where", "found-in",  "publication"};

std::string summary_of(const model::Record& record) {
  for (const char* path : kSummaries) {
    const model::Node* node = record.root.find(path);
    if (node != nullptr && node->type == model::NodeType::string && record.usable(path)) return node->text;
  }
  const model::Node* uses = record.root.find("uses");
  if (uses == nullptr || !record.usable("uses")) return {};
  std::string text = uses->text;
  for (const auto& item : uses->items) text += (text.empty() ? "" : ", ") + item.text;
  return text;
}

class EntryMaker {
 public:
  EntryMaker(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived)
      : records_(records), tables_(tables), derived_(derived) {}

  model::SearchEntry make(const model::Record& record) const {
    model::SearchEntry entry;
    entry.record = record.reference();
    entry.anchor = record.reference();
    entry.group = std::string(model::kind_plural(record.kind));
    entry.title = record.title;
    entry.provenance = provenance_words(records_, record);
    KeyList keys(leaning(record.kind));
    const std::vector<Name> names = names_of(record, derived_.facts);
    for (const Name& name : names) entry.names.push_back(name.text);
    add_names(names, keys);
    keys.add_name(plain_words(record.id), kOldId, kKindWord);
    keys.add_name(std::string(model::kind_name(record.kind)), kKindWord, kKindWord);
    if (record.kind == model::Kind::cell) {
      const auto& cell = static_cast<const model::Cell&>(record);
      entry.title = title_of(cell);
      entry.summary = summary_of_cell(cell);
      entry.diameter_mm = value_of(cell, "#size.diameter");
      entry.height_mm = value_of(cell, "#size.height");
      add_cell(cell, derived_, keys);
    } else {
      entry.summary = summary_of(record);
      add_description(record, keys);
    }
    entry.keys = keys.take();
    return entry;
  }

 private:
  static std::string title_of(const model::Cell& cell) {
    return cell_key(cell) == cell.designation ? cell.designation : cell_key(cell) + " " + cell.designation;
  }

  double value_of(const model::Cell& cell, const char* path) const {
    const model::Fact* fact = derived_.facts.find(cell.reference() + path);
    return fact == nullptr || !fact->value ? 0 : base::tidy(*fact->value);
  }

  /// What a cell states at a path, as it is printed; empty where it states nothing.
  std::string stated(const model::Cell& cell, const char* path) const {
    const model::Fact* fact = derived_.facts.find(cell.reference() + path);
    return fact == nullptr || fact->printed == "not stated" || fact->printed == "not known" ? std::string() : fact->printed;
  }

  /// Size, voltage, system and what else fits, in the order in which they are asked for.
  std::string summary_of_cell(const model::Cell& cell) const {
    std::vector<std::string> parts;
    const std::string height = stated(cell, "#size.height");
    if (!height.empty()) parts.push_back(base::shortest_text(value_of(cell, "#size.diameter")) + " \u00D7 " + height);
    parts.push_back(stated(cell, "#nominal"));
    const model::CellSystem* system = tables_.cell_system_by_id(cell.system);
    if (system != nullptr) parts.push_back(system->name);
    if (const std::string drain = stated(cell, "#drain"); !drain.empty())
      parts.push_back(drain + (drain == "general" ? " use" : " drain"));
    std::erase(parts, std::string());
    return listed(parts) + peers_of(cell, true) + peers_of(cell, false);
  }

  std::string peers_of(const model::Cell& cell, bool same_system) const {
    std::vector<std::string> titles;
    for (const auto& peer : derived_.relations.same_size(cell.reference())) {
      const auto* other = records_.find<model::Cell>(peer.cell);
      if (peer.same_system == same_system && other != nullptr) titles.push_back(title_of(*other));
    }
    if (titles.empty()) return {};
    return std::string("; same size, ") + (same_system ? "same system: " : "OTHER system: ") + listed(titles);
  }

  const model::KnowledgeBase& records_;
  const model::Tables& tables_;
  const derive::Derived& derived_;
};

/// A calculator is found by its name and by the words of its question.
model::SearchEntry calculator_entry(const bench::Calculator& calculator) {
  const std::string name(calculator.name);
  model::SearchEntry entry;
  entry.record = entry.anchor = "calculator/" + name;
  entry.group = "calculators";
  entry.title = name;
  entry.summary = calculator.does;
  entry.names = {name};
  KeyList keys;
  keys.add_name(name, kWholeTitle, kKindWord);
  keys.add_name("calculator", kKindWord, kKindWord);
  keys.add_text(std::string(calculator.does));
  entry.keys = keys.take();
  return entry;
}

double swelling_of(const model::Tables& tables) {
  const auto* rule = standards::row_of(tables, "bench-rules", "cell-swelling");
  const auto swelling = rule == nullptr ? std::nullopt : standards::cell_value(*rule, "value", base::Unit::millimetre);
  return swelling.value_or(0);
}

}  // namespace

model::SearchList make_search_list(const model::KnowledgeBase& records, const model::Tables& tables,
                                   const derive::Derived& derived) {
  const EntryMaker maker(records, tables, derived);
  model::SearchList list;
  list.swelling_mm = swelling_of(tables);
  for (const model::Kind kind : model::all_kinds()) {
    std::vector<model::SearchEntry> of_kind;
    for (const model::Record* record : records.all()) {
      if (record->kind == kind) of_kind.push_back(maker.make(*record));
    }
    std::stable_sort(of_kind.begin(), of_kind.end(),
                     [](const auto& one, const auto& other) { return index_before(one.title, other.title); });
    for (model::SearchEntry& entry : of_kind) list.entries.push_back(std::move(entry));
  }
  for (const bench::Calculator& calculator : bench::calculators()) list.entries.push_back(calculator_entry(calculator));
  return list;
}

}  // namespace benchleaf::compose
