// In: the records of the page. Out: what its forms let choose from.
#include "web/choices.h"

#include <algorithm>
#include <utility>

namespace benchleaf::web {

namespace {

template <typename List>
Choices titles(const List& list) {
  Choices choices;
  add_records(choices, list);
  return sorted(std::move(choices));
}

}  // namespace

Choices sorted(Choices choices) {
  std::sort(choices.begin(), choices.end(), [](const auto& one, const auto& other) { return one.label < other.label; });
  return choices;
}

Choices liquids(const PageLibrary& library) { return titles(library.records.chemistries); }
Choices series(const PageLibrary& library) { return titles(library.records.gaskets); }
Choices crystals(const PageLibrary& library) { return titles(library.records.crystals); }

Choices cells(const PageLibrary& library) {
  Choices choices;
  for (const auto& [id, cell] : library.records.cells) {
    if (derive::is_demonstration(cell)) continue;
    const std::string number = cell.trade_number.empty() ? std::string() : cell.trade_number + ", ";
    choices.push_back({id, number + cell.designation});
  }
  return sorted(std::move(choices));
}

void write_choices(std::string_view name, const Choices& choices, bench::JsonText& json) {
  json.key(name).open_array();
  for (const Choice& one : choices) json.open_object().member("value", one.value).member("label", one.label).close();
  json.close();
}

}  // namespace benchleaf::web
