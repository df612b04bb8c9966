// In: the records of two states. Out: what they say otherwise, field by field, values apart from what they rest on.

#include "compose/changes/record_changes.h"

#include <algorithm>
#include <array>
#include <functional>
#include <set>
#include <string_view>
#include <utility>

#include "compose/changes/list_pairs.h"
#include "compose/changes/record_tree.h"
#include "compose/changes/same_fact.h"

namespace benchleaf::compose {
namespace {

using model::Node;
using model::NodeType;
using Of = Change::Of;
using How = Change::How;

/// Members by which entries of a list are known, the first that an entry has.
constexpr std::array<std::string_view, 14> kNames = {"id",    "name",  "key",       "title", "field",   "material", "substance",
                                                     "state", "grade", "statement", "slot",  "picture", "liquid",   "with"};

constexpr std::string_view kValue = ".value";  // a value with its conditions beside it is one fact

std::string below(const std::string& path, std::string_view name) {
  return path.empty() ? std::string(name) : path + "." + std::string(name);
}

ListEntry entry_of(const Node& node) {
  ListEntry entry{sorted_text(node), {}};
  for (const auto name : kNames) {
    const Node* member = node.find(name);
    if (member == nullptr || !member->is_scalar()) continue;
    entry.name = std::string(name) + " " + member->text;
    break;
  }
  return entry;
}

std::vector<ListEntry> entries_of(const Node& node) {
  std::vector<ListEntry> entries;
  for (const auto& item : node.items) entries.push_back(entry_of(item));
  return entries;
}

/// A value of one state.
struct Side {
  const State& state;
  const Told& told;
  std::string path;
  const Node* node;

  Side at(std::string_view name, const Node& child) const { return {state, told, below(path, name), &child}; }
  std::string id(const std::string& of_path) const { return told.reference + "#" + of_path; }
  std::string basis() const { return told.record == nullptr ? std::string() : basis_words(*told.record, path); }

  /// The path as facts have it.
  std::string fact_path() const {
    if (!path.ends_with(kValue)) return path;
    const std::string whole = path.substr(0, path.size() - kValue.size());
    return state.derived.facts.find(id(whole)) != nullptr ? whole : path;
  }
  const model::Fact* fact() const { return state.derived.facts.find(id(fact_path())); }
};

bool holds_fact(const Side& side) {
  if (side.node->is_scalar()) return side.fact() != nullptr;
  for (std::size_t i = 0; i < side.node->items.size(); ++i) {
    if (holds_fact(side.at(std::to_string(i), side.node->items[i]))) return true;
  }
  return std::any_of(side.node->members.begin(), side.node->members.end(),
                     [&side](const auto& member) { return holds_fact(side.at(member.key, member.value)); });
}

std::string printed(const Side& side) {
  const model::Fact* fact = side.node->is_scalar() ? side.fact() : nullptr;
  return fact == nullptr ? flat_text(*side.node) : fact->printed;
}

/// The head of a page says what the whole page rests on.
bool is_basis_of_page(const Side& side) {
  const std::string first = side.path.substr(0, side.path.find('.'));
  return side.told.record != nullptr && side.told.record->kind == model::Kind::page && (first == "trust" || first == "sources");
}

/// One record in two states.
class RecordComparison {
 public:
  RecordComparison(Renamed& renamed, std::vector<Change>& changes) : renamed_(renamed), changes_(changes) {}

  void run(const Side& before, const Side& after) {
    compare(before, after);
    for (auto& [basis, fields] : bases_) {
      const std::string id = after.told.reference + "#basis." + fields.front();
      changes_.push_back({Of::value, How::basis, id, basis.first, basis.second, {}, fields, {}});
    }
  }

 private:
  void compare(const Side& before, const Side& after) {
    const Node &one = *before.node, &other = *after.node;
    if (one.is_scalar() && other.is_scalar()) return leaf(before, after);
    if (one.type != other.type) return alter(before, after);
    if (one.type == NodeType::sequence) return compare_lists(before, after);
    for (const auto& member : one.members) {
      if (other.find(member.key) == nullptr) single(before.at(member.key, member.value), How::removed);
    }
    for (const auto& member : other.members) {
      const Node* old = one.find(member.key);
      if (old == nullptr) single(after.at(member.key, member.value), How::added);
      if (old != nullptr) compare(before.at(member.key, *old), after.at(member.key, member.value));
    }
  }

  void compare_lists(const Side& before, const Side& after) {
    for (const EntryPair& pair : pair_entries(entries_of(*before.node), entries_of(*after.node))) {
      if (!pair.after) single(item(before, *pair.before), How::removed);
      if (!pair.before) single(item(after, *pair.after), How::added);
      if (pair.before && pair.after) compare(item(before, *pair.before), item(after, *pair.after));
    }
  }

  static Side item(const Side& list, std::size_t place) { return list.at(std::to_string(place), list.node->items[place]); }

  void leaf(const Side& before, const Side& after) {
    renamed_.add_fact(before.id(before.fact_path()), after.id(after.fact_path()));
    const model::Fact *one = before.fact(), *other = after.fact();
    const bool same = one != nullptr && other != nullptr ? same_value(*one, *other) : before.node->text == after.node->text;
    if (!same) alter(before, after);
    const std::string rested = before.basis(), rests = after.basis();
    if (rested == rests) return;
    const auto known = std::find_if(bases_.begin(), bases_.end(), [&](const auto& basis) {
      return basis.first.first == rested && basis.first.second == rests;
    });
    auto& basis = known != bases_.end() ? *known : bases_.emplace_back(std::pair{rested, rests}, std::vector<std::string>());
    basis.second.push_back(after.fact_path());
  }

  void alter(const Side& before, const Side& after) {
    const Of of = holds_fact(before) || holds_fact(after) ? Of::value : Of::words;
    const How how = is_basis_of_page(after) ? How::basis : How::altered;
    changes_.push_back({of, how, after.id(after.fact_path()), printed(before), printed(after), {}, {}, {}});
  }

  void single(const Side& side, How how) {
    Change change{holds_fact(side) ? Of::value : Of::words, how, side.id(side.fact_path()), {}, {}, side.basis(), {}, {}};
    (how == How::added ? change.after : change.before) = printed(side);
    if (is_basis_of_page(side)) change.how = How::basis;
    changes_.push_back(std::move(change));
  }

  Renamed& renamed_;
  std::vector<Change>& changes_;
  std::vector<std::pair<std::pair<std::string, std::string>, std::vector<std::string>>> bases_;  ///< in the order met
};

std::string title_of(const model::Record& record) {
  if (record.kind == model::Kind::cell) return static_cast<const model::Cell&>(record).designation;
  return record.title.empty() ? record.id : record.title;
}

/// The record of the later state that an earlier one lives on in, or nullptr.
const model::Record* successor(const model::Record& record, const State& before, const State& after) {
  const model::Record* next = after.records.find(record.reference());
  const bool took_over = next != nullptr && next->id != record.id && before.records.find(next->reference()) != nullptr;
  return took_over ? nullptr : next;
}

/// The former id among the aliases says no more than that the record was renamed.
void drop_alias(Node& tree, const std::string& former) {
  for (auto& member : tree.members) {
    auto& items = member.value.items;
    if (member.key != "aliases") continue;
    items.erase(std::remove_if(items.begin(), items.end(), [&](const Node& item) { return item.text == former; }), items.end());
    if (items.empty()) member.value.type = NodeType::null;
  }
  auto& members = tree.members;
  members.erase(std::remove_if(members.begin(), members.end(),
                               [](const auto& member) { return member.key == "aliases" && member.value.type == NodeType::null; }),
                members.end());
}

std::string same_name(const std::string& name) { return name; }

void compare_records(const State& before, const State& after, const model::Record& old, const model::Record& next,
                     Renamed& renamed, std::vector<Change>& changes) {
  const Told one = told(old, std::cref(renamed));
  Told other = told(next, same_name);
  if (old.id != next.id) {
    changes.push_back({Of::record, How::altered, next.reference(), old.reference(), next.reference(), {}, {}, {}});
    drop_alias(other.tree, old.id);
  }
  RecordComparison(renamed, changes).run({before, one, {}, &one.tree}, {after, other, {}, &other.tree});
}

}  // namespace

void Renamed::add_record(const model::RecordRef& before, const model::RecordRef& after) {
  records_.emplace(before, after);
  ids_.emplace(before.id(), after.id());
}

std::string Renamed::operator()(const std::string& before) const {
  const auto fact = facts_.find(before);
  if (fact != facts_.end()) return fact->second;
  const std::size_t mark = model::FactId(before).record.size();
  const auto record = records_.find(std::string_view(before).substr(0, mark));
  std::string name = record == records_.end() ? before.substr(0, mark) : record->second;
  for (std::size_t at = mark; at < before.size();) {
    const std::size_t end = std::min(before.find('.', at + 1), before.size());
    const std::string word = before.substr(at + 1, end - at - 1);
    const auto other = ids_.find(word);
    name += before[at] + (other == ids_.end() ? word : other->second);
    at = end;
  }
  return name;
}

std::vector<Change> record_changes(const State& before, const State& after, Renamed& renamed) {
  std::vector<Change> changes;
  for (const model::Record* old : before.records.all()) {
    const model::Record* next = successor(*old, before, after);
    if (next != nullptr && next->id != old->id) renamed.add_record(old->reference(), next->reference());
  }
  const Told one = told(before.records.handbook, std::cref(renamed)), other = told(after.records.handbook, same_name);
  RecordComparison(renamed, changes).run({before, one, {}, &one.tree}, {after, other, {}, &other.tree});
  std::set<const model::Record*> known;
  for (const model::Record* old : before.records.all()) {
    const model::Record* next = successor(*old, before, after);
    if (next == nullptr) changes.push_back({Of::record, How::removed, old->reference(), title_of(*old), {}, {}, {}, {}});
    if (next != nullptr && known.insert(next).second) compare_records(before, after, *old, *next, renamed, changes);
  }
  for (const model::Record* record : after.records.all()) {
    if (known.count(record) > 0) continue;
    changes.push_back({Of::record, How::added, record->reference(), {}, title_of(*record), {}, {}, {}});
  }
  return changes;
}

}  // namespace benchleaf::compose
