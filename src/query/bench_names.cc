// In: a name as it was typed into a calculator. Out: the record that it means.
#include "query/bench_names.h"

namespace benchleaf::query {

namespace {

std::vector<model::Kind> kinds_named(const std::vector<std::string>& names) {
  std::vector<model::Kind> kinds;
  for (const std::string& name : names) {
    if (const auto kind = model::kind_from_name(name)) kinds.push_back(*kind);
  }
  return kinds;
}

}  // namespace

BenchNames::BenchNames(const model::KnowledgeBase& records, const model::Tables& tables)
    : records_(records), index_(records, tables, Vocabulary(tables)) {}

bench::Resolution BenchNames::resolve(std::string_view text, const std::vector<std::string>& kinds) const {
  using State = bench::Resolution::State;
  const std::vector<model::Kind> wanted = kinds_named(kinds);
  const model::Record* record = records_.find(text);  // `kind/id`
  for (const model::Kind kind : wanted) {
    if (record != nullptr && record->kind == kind) return {State::found, record->reference(), {}, {}};
  }
  const Resolution found = index_.resolve(text, wanted);
  if (found.record != nullptr) return {State::found, found.record->reference(), {}, {}};
  bench::Resolution none;
  none.state = found.readings.empty() ? State::unknown : State::ambiguous;
  for (const model::Record* reading : found.readings) none.readings.push_back(reading->reference());
  none.hints = found.nearest;
  return none;
}

}  // namespace benchleaf::query
