// In: a watch and the drawer. Out: what lies ready for it, and what of that is past its time.
#include "ticket/context.h"

#include <algorithm>

#include "base/quantity.h"

namespace benchleaf::ticket {

namespace {

/// Months of `2023-05`; 0 where there is none.
int months_of(const std::string& date) {
  if (date.size() < 7) return 0;
  return std::stoi(date.substr(0, 4)) * 12 + std::stoi(date.substr(5, 2));
}

model::Stock::Item at_hand(RecordRef item) {
  model::Stock::Item one;
  one.item = std::move(item);
  one.count = 1;
  return one;
}

}  // namespace

bool is_past(const Context& context, const model::Stock::Item& item) {
  const auto* gasket = context.desk.records.find<model::Gasket>(item.item);
  if (gasket == nullptr) return false;
  const auto* material = context.desk.records.find<model::Material>(gasket->material);
  if (material == nullptr || !is_known(material->shelf_life)) return false;
  const auto years = material->shelf_life->value_in(base::Unit::year);
  const int made = months_of(item.made);
  const int counted = months_of(context.drawer->date);
  return years && made > 0 && counted > 0 && counted - made > *years * 12;
}

bool lists(const Context& context, model::Kind kind) {
  if (context.drawer == nullptr || context.drawer_is_whole) return context.drawer != nullptr;
  const auto& items = context.drawer->items;
  return std::any_of(items.begin(), items.end(), [kind](const auto& item) { return item.item.is(kind); });
}

RecordRef scale_of(const Context& context, const std::string& grade) {
  for (const auto& [id, abrasive] : context.desk.records.abrasives) {
    const auto& grades = abrasive.grades;
    const bool there = std::any_of(grades.begin(), grades.end(), [&grade](const auto& one) { return one.grade == grade; });
    if (there) return abrasive.reference();
  }
  return {};
}

std::optional<model::Stock> drawer_of(const Context& context) {
  const auto& on_hand = context.watch.on_hand;
  if (!on_hand) return std::nullopt;
  model::Stock drawer;
  for (const std::string& grade : on_hand->grades) {
    const RecordRef scale = scale_of(context, grade);
    if (scale.empty()) continue;
    drawer.items.push_back(at_hand(scale));
    drawer.items.back().grade = grade;
  }
  for (const RecordRef& liquid : on_hand->liquids) drawer.items.push_back(at_hand(liquid));
  for (const auto& gasket : on_hand->gaskets) {
    drawer.items.push_back(at_hand(gasket.series));
    drawer.items.back().size = gasket.inside;
  }
  return drawer;
}

std::optional<model::Stock> ready_stock(const compose::Desk& desk, const model::FactBase& figures, const Bench& bench) {
  if (bench.drawer != nullptr) return std::nullopt;
  return drawer_of({desk, figures, bench.watch, nullptr, false});
}

}  // namespace benchleaf::ticket
