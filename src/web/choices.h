#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "bench/json_text.h"
#include "derive/demonstration.h"
#include "web/page_library.h"

namespace benchleaf::web {

/// What the program takes, and what the reader sees.
struct Choice {
  std::string value;
  std::string label;
};
using Choices = std::vector<Choice>;

/// Records by their titles, none of the demonstration.
template <typename RecordType>
void add_records(Choices& choices, const std::map<std::string, RecordType, std::less<>>& list) {
  for (const auto& [id, record] : list) {
    if (!derive::is_demonstration(record)) choices.push_back({id, record.title});
  }
}
/// By what the reader sees.
Choices sorted(Choices choices);

Choices liquids(const PageLibrary& library);
Choices cells(const PageLibrary& library);  ///< by trade number and designation
Choices series(const PageLibrary& library);
Choices crystals(const PageLibrary& library);

/// `[{value, label}]` as a member of an object.
void write_choices(std::string_view name, const Choices& choices, bench::JsonText& json);

}  // namespace benchleaf::web
