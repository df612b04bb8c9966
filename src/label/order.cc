// In: what is to be labelled, as typed at the terminal or into the form of the page. Out: the labels on their sheets.
#include <cstddef>
#include <utility>

#include "base/calendar.h"
#include "compose/imprint.h"
#include "label/labels.h"

namespace benchleaf::label {

namespace {

constexpr int kMostCopies = 200;
constexpr std::size_t kMostLabels = 2000;
constexpr std::size_t kLongestName = 80;

Refused misread(std::string why, std::string hint, const char* field) { return {std::move(why), std::move(hint), true, field}; }

std::string up_to(int most) { return "a whole number from 1 to " + std::to_string(most); }

std::variant<Mixture, Refused> read_mixture(const OrderWords& words) {
  if (words.name.empty()) return misread("the mixture has no name", "write what the bottle is to be called", "name");
  if (words.name.size() > kLongestName)
    return misread("the name of a mixture has at most " + std::to_string(kLongestName) + " bytes", {}, "name");
  Mixture mixture{words.name, {{"part", {words.parts, model::Trust::given, {}}}}, {}};
  for (const auto& [input, value] : words.measured) mixture.inputs.emplace(input, bench::Given{value, model::Trust::given, {}});
  return mixture;
}

Made label_of(const compose::Desk& desk, const Order& order, const model::LabelRoom& room) {
  return std::visit([&](const auto& what) { return label_of(desk, what, room); }, order.what);
}

}  // namespace

std::variant<Order, Refused> read_order(std::variant<Thing, Mixture> what, const OrderWords& words) {
  if (!words.date.empty() && !base::is_date(words.date))
    return misread("'" + words.date + "' is not a date", "write it like 2026-11-30", "date");
  const auto copies = read_count(words.copies, kMostCopies);
  if (!copies) return misread("the copies of a label are " + up_to(kMostCopies), {}, "copies");
  std::visit([&words](auto& one) { one.date = words.date; }, what);
  return Order{std::move(what), *copies};
}

std::variant<Order, Refused> read_order(const compose::Desk& desk, const query::BenchNames& names, const OrderWords& words) {
  if (!words.parts.empty()) {
    auto mixture = read_mixture(words);
    if (auto* refused = std::get_if<Refused>(&mixture)) return std::move(*refused);
    return read_order(std::get<Mixture>(std::move(mixture)), words);
  }
  auto thing = read_thing(desk, names, words.thing);
  if (auto* refused = std::get_if<Refused>(&thing)) return std::move(*refused);
  return read_order(std::get<Thing>(std::move(thing)), words);
}

std::variant<model::LabelSheets, Refused> sheets_of(const compose::Desk& desk, model::LabelGrid grid, const std::string& start,
                                                    const std::vector<Order>& orders) {
  model::LabelSheets sheets;
  sheets.title = "Labels";
  sheets.language = desk.records.handbook.language;
  sheets.iso_date = compose::iso_date(desk.records.handbook);
  sheets.grid = std::move(grid);
  const auto first = read_count(start, sheets.grid.count());
  if (!first) return misread("the first place on the sheet is " + up_to(sheets.grid.count()), {}, "start");
  sheets.first = *first - 1;
  const model::LabelRoom room = model::room_of(sheets.grid);
  for (const Order& order : orders) {
    Made made = label_of(desk, order, room);
    if (auto* refused = std::get_if<Refused>(&made)) return std::move(*refused);
    sheets.labels.insert(sheets.labels.end(), static_cast<std::size_t>(order.copies), std::get<model::Label>(made));
    if (sheets.labels.size() > kMostLabels)
      return misread("one run prints at most " + std::to_string(kMostLabels) + " labels", "print them in parts", "copies");
  }
  return sheets;
}

}  // namespace benchleaf::label
