// In: two states of the content. Out: what the second says otherwise, stated and derived.

#include "compose/changes/changes.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "base/number.h"
#include "compose/changes/causes.h"
#include "compose/changes/chart_rows.h"
#include "compose/changes/record_changes.h"
#include "compose/changes/same_fact.h"
#include "derive/natural_order.h"
#include "derive/usual_answers.h"

namespace benchleaf::compose {
namespace {

using model::Fact;
using model::FactBase;
using Of = Change::Of;
using How = Change::How;

constexpr std::string_view kTable = "table/";

std::string joined(const std::set<std::string>& words) {
  std::string text;
  for (const auto& word : words) text += (text.empty() ? "" : ", ") + word;
  return text;
}

std::set<std::string> without(const std::set<std::string>& all, const std::set<std::string>& some) {
  std::set<std::string> left;
  std::set_difference(all.begin(), all.end(), some.begin(), some.end(), std::inserter(left, left.end()));
  return left;
}

/// What a fact rests on, in words.
std::string rests(const Fact& fact, const std::set<std::string>& others) {
  std::string words(model::trust_name(fact.trust));
  if (!fact.source.empty()) words += ", " + fact.source;
  return others.empty() ? words : words + "; rests on " + joined(others);
}

/// What rounding has hidden.
std::string exactly(const Fact& fact) {
  std::string figures;
  for (const auto& figure : {fact.value, fact.low, fact.high}) {
    if (figure) figures += (figures.empty() ? "" : ", ") + base::shortest_text(base::tidy(*figure));
  }
  return ", exactly " + figures + " " + fact.unit;
}

/// Facts of one sort in two states, ids and inputs under their later names.
class FactComparison {
 public:
  FactComparison(Of of, const Renamed& renamed) : of_(of), renamed_(renamed) {}

  void add_before(const Fact& fact) {
    Fact named = fact;
    named.id = renamed_(fact.id);
    for (auto& input : named.inputs) input = renamed_(input);
    facts_[named.id].first = std::move(named);
  }
  void add_after(const Fact& fact) { facts_[fact.id].second = fact; }

  /// The changes; `causes` is none for what is stated.
  std::vector<Change> run(const Causes* causes) const {
    std::vector<Change> changes;
    for (const auto& [id, both] : facts_) {
      auto change = compare(both.first, both.second);
      if (!change) continue;
      if (causes != nullptr) change->because = causes->of(all_inputs(id), id);
      changes.push_back(std::move(*change));
    }
    return changes;
  }

 private:
  using Both = std::pair<std::optional<Fact>, std::optional<Fact>>;
  struct Natural {
    bool operator()(const std::string& one, const std::string& other) const {
      return derive::natural_less(one, other) || (one < other && !derive::natural_less(other, one));
    }
  };

  std::optional<Change> compare(const std::optional<Fact>& before, const std::optional<Fact>& after) const {
    const Fact& named = after ? *after : *before;
    Change change{of_, How::altered, named.id, {}, {}, {}, {}, {}};
    if (before) change.before = before->printed;
    if (after) change.after = after->printed;
    if (before && after) {
      const std::set<std::string> rested(before->inputs.begin(), before->inputs.end());
      const std::set<std::string> rests_now(after->inputs.begin(), after->inputs.end());
      if (!same_value(*before, *after)) {
        if (before->printed != after->printed) return change;
        change.before += exactly(*before);
        change.after += exactly(*after);
        return change;
      }
      if (before->trust == after->trust && before->source == after->source && rested == rests_now) return std::nullopt;
      change.how = How::basis;
      change.before = rests(*before, without(rested, rests_now));
      change.after = rests(*after, without(rests_now, rested));
    } else {
      change.how = after ? How::added : How::removed;
      change.basis = rests(named, {});
    }
    return change;
  }

  /// Everything that a fact rests on in either state, through other facts of this sort.
  std::set<std::string> all_inputs(const std::string& id) const {
    std::set<std::string> found;
    std::vector<std::string> open = {id};
    while (!open.empty()) {
      const auto both = facts_.find(open.back());
      open.pop_back();
      if (both == facts_.end()) continue;
      for (const auto& fact : {both->second.first, both->second.second}) {
        if (!fact) continue;
        for (const auto& input : fact->inputs) {
          if (found.insert(input).second) open.push_back(input);
        }
      }
    }
    return found;
  }

  Of of_;
  const Renamed& renamed_;
  std::map<std::string, Both, Natural> facts_;
};

std::vector<Change> table_changes(const State& before, const State& after, const Renamed& renamed) {
  FactComparison tables(Of::table, renamed);
  for (const Fact& fact : before.derived.facts.all()) {
    if (fact.id.starts_with(kTable)) tables.add_before(fact);
  }
  for (const Fact& fact : after.derived.facts.all()) {
    if (fact.id.starts_with(kTable)) tables.add_after(fact);
  }
  return tables.run(nullptr);
}

std::vector<Change> derived_changes(const State& before, const State& after, const Renamed& renamed, const Causes& causes) {
  FactComparison derived(Of::derived, renamed);
  const FactBase asked_before = derive::usual_answers(before.records, before.tables);
  for (const FactBase* facts : {&before.derived.facts, &asked_before}) {
    for (const Fact& fact : facts->all()) {
      if (fact.derived) derived.add_before(fact);
    }
  }
  const FactBase asked_after = derive::usual_answers(after.records, after.tables);
  for (const FactBase* facts : {&after.derived.facts, &asked_after}) {
    for (const Fact& fact : facts->all()) {
      if (fact.derived) derived.add_after(fact);
    }
  }
  return derived.run(&causes);
}

std::vector<Change> chart_changes(const State& before, const State& after, const Renamed& renamed, const Causes& causes) {
  std::map<std::string, ChartRow> old;
  for (ChartRow& row : chart_rows(before)) old.emplace(row.id, std::move(row));
  std::vector<Change> changes;
  const auto tell = [&](How how, const std::string& id, const ChartRow* was, const ChartRow* is) {
    std::set<std::string> facts;
    if (was != nullptr) {
      for (const auto& fact : was->facts) facts.insert(renamed(fact));
    }
    if (is != nullptr) facts.insert(is->facts.begin(), is->facts.end());
    changes.push_back(
        {Of::chart, how, id, was == nullptr ? "" : was->text, is == nullptr ? "" : is->text, {}, {}, causes.of(facts, id)});
  };
  for (const ChartRow& row : chart_rows(after)) {
    const auto was = old.find(row.id);
    if (was == old.end()) tell(How::added, row.id, nullptr, &row);
    if (was != old.end() && was->second.text != row.text) tell(How::altered, row.id, &was->second, &row);
    old.erase(row.id);
  }
  for (const auto& [id, row] : old) tell(How::removed, id, &row, nullptr);
  return changes;
}

void append(std::vector<Change>& list, std::vector<Change> more) {
  list.insert(list.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

}  // namespace

Changes compare(const State& before, const State& after) {
  Changes changes;
  Renamed renamed;
  changes.stated = record_changes(before, after, renamed);
  append(changes.stated, table_changes(before, after, renamed));
  const Causes causes(changes.stated);
  changes.derived = derived_changes(before, after, renamed, causes);
  append(changes.derived, chart_changes(before, after, renamed, causes));
  return changes;
}

std::string_view how_name(How how) {
  constexpr std::array<std::string_view, 4> kNames = {"added", "removed", "altered", "basis"};
  return kNames.at(static_cast<std::size_t>(how));
}

std::string_view of_name(Of of) {
  constexpr std::array<std::string_view, 6> kNames = {"record", "value", "words", "table", "derived", "chart"};
  return kNames.at(static_cast<std::size_t>(of));
}

}  // namespace benchleaf::compose
