// In: words for a thing, or a drawer. Out: the records that get a label, with what is known of each.
#include <algorithm>
#include <utility>

#include "bench/typed.h"
#include "label/labels.h"

namespace benchleaf::label {

namespace {

const std::vector<std::string>& kinds() {
  static const std::vector<std::string> kKinds = {"cell", "chemistry", "gasket", "crystal", "abrasive", "module", "part", "tool"};
  return kKinds;
}

Refused refused(std::string why, std::string hint = {}, const char* field = "thing") {
  return {std::move(why), std::move(hint), false, field};
}

std::variant<model::RecordRef, Refused> resolved(const query::BenchNames& names, const std::string& name) {
  const bench::Resolution found = names.resolve(name, kinds());
  using State = bench::Resolution::State;
  if (found.state == State::found) return model::RecordRef(found.record);
  if (found.state == State::ambiguous)
    return refused("'" + name + "' can mean " + compose::listed(found.readings, " or "), "name one of them");
  return refused("nothing on file is called '" + name + "'",
                 found.hints.empty() ? "look it up with benchleaf find" : "did you mean " + found.hints.front() + "?");
}

/// Whether a series is made in a size; a series that states no ends is not asked.
bool is_made(const std::optional<model::SizeRange>& range, const base::Quantity& size) {
  const auto value = size.value_in(base::Unit::millimetre);
  if (!value) return false;
  if (!range || !range->from || !range->to) return true;
  const auto from = range->from->value_in(base::Unit::millimetre);
  const auto to = range->to->value_in(base::Unit::millimetre);
  return !from || !to || (*value >= *from - 1e-9 && *value <= *to + 1e-9);
}

/// The sizes that a record of a series comes in; nothing for what has none.
std::optional<model::SizeRange> sizes_of(const compose::Desk& desk, const model::RecordRef& record) {
  if (const auto* gasket = desk.records.find<model::Gasket>(record)) return gasket->inside;
  if (const auto* crystal = desk.records.find<model::Crystal>(record)) return crystal->sizes.value_or(model::SizeRange{});
  return std::nullopt;
}

std::optional<Refused> take_size(const compose::Desk& desk, Thing& thing, const std::string& text) {
  if (const auto* abrasive = desk.records.find<model::Abrasive>(thing.record)) {
    const bool known =
        std::any_of(abrasive->grades.begin(), abrasive->grades.end(), [&text](const auto& grade) { return grade.grade == text; });
    if (!known) return refused(abrasive->title + " has no grade " + text, {}, "size");
    thing.grade = text;
    return std::nullopt;
  }
  const auto sizes = sizes_of(desk, thing.record);
  if (!sizes) return refused(desk.name(thing.record) + " has one size: write its name alone", {}, "size");
  const bench::Typed typed = bench::read_typed(text, base::Unit::millimetre, desk.tables);
  const auto* size = std::get_if<base::Quantity>(&typed.read);
  if (size == nullptr || !size->has_value() || !size->value_in(base::Unit::millimetre))
    return refused("'" + text + "' is not a size", "write it in millimetres, like 28, or with its unit", "size");
  if (!is_made(sizes, *size)) return refused(desk.name(thing.record) + " is not made in " + text, {}, "size");
  thing.size = *size;
  return std::nullopt;
}

}  // namespace

std::variant<Thing, Refused> read_thing(const compose::Desk& desk, const query::BenchNames& names, const std::string& words) {
  const std::size_t colon = words.find(':');
  auto record = resolved(names, words.substr(0, colon));
  if (auto* problem = std::get_if<Refused>(&record)) return std::move(*problem);
  Thing thing{std::get<model::RecordRef>(record), {}, {}, {}, {}, {}};
  if (colon == std::string::npos) return thing;
  if (auto problem = take_size(desk, thing, words.substr(colon + 1))) return std::move(*problem);
  return thing;
}

std::vector<Thing> things_in(const model::Stock& drawer) {
  std::vector<Thing> things;
  for (const model::Stock::Item& item : drawer.items) {
    if (item.count > 0) things.push_back({item.item, item.size, item.grade, item.made, {}, item.place});
  }
  return things;
}

}  // namespace benchleaf::label
