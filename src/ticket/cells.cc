// In: the cells that were found or measured, the module. Out: the cells to fit, by the calculator of cells.
#include "ticket/cells.h"

#include <algorithm>
#include <map>

#include "base/quantity.h"

namespace benchleaf::ticket {

namespace {

using bench::CellItem;
using bench::Code;

constexpr std::size_t kMostInstead = 2;

RecordRef cell_of(const CellItem& item) { return RecordRef(std::string_view(item.record)); }

/// Where nobody knows, a lamp is taken to be there: a cell of high drain serves a watch without one too.
Words drain_words(const Context& context) { return {{"lamp", context.draws_much().value_or(true) ? "yes" : "no"}}; }

/// A cell without a place among those that a module works with: another voltage.
bool works_here(const Context& context, const RecordRef& reference) {
  const model::Module* module = context.module();
  const model::Cell* cell = context.desk.cell(reference);
  if (module == nullptr || cell == nullptr || module->cells.empty()) return cell != nullptr;
  return std::any_of(module->cells.begin(), module->cells.end(), [&](const RecordRef& own) {
    const model::Cell* listed = context.desk.cell(own);
    return listed != nullptr && listed->system == cell->system;
  });
}

/// An alkaline cell leaks and slopes; it may have come in for a silver one.
bool is_second_rate(const Context& context, const CellItem& item) {
  const model::Cell* cell = context.desk.cell(cell_of(item));
  return cell == nullptr || cell->system == "alkaline" || cell->system == "zinc-air";
}

/// Whether one is better for the place than another: first size, then verdict as the calculator ranks them.
std::vector<CellItem> candidates(const Context& context, Words words) {
  for (const auto& [key, value] : drain_words(context)) words.emplace_back(key, value);
  std::vector<CellItem> able;
  for (const CellItem& item : ask(context, "cell-swap", words).cells) {
    const bool goes_in = item.verdict == Code::use || item.verdict == Code::with_care;
    if (goes_in && works_here(context, cell_of(item))) able.push_back(item);
  }
  std::stable_sort(able.begin(), able.end(), [&](const CellItem& one, const CellItem& other) {
    const auto rank = [&](const CellItem& item) {
      return (is_second_rate(context, item) ? 4 : 0) + (item.size == Code::needs_spacer ? 2 : 0) +
             (item.verdict == Code::use ? 0 : 1);
    };
    return rank(one) < rank(other);
  });
  return able;
}

/// The first candidate; the cell that was found where it is as good.
ChosenCell chosen(const Context& context, const std::vector<CellItem>& able, const RecordRef& found, int count) {
  ChosenCell choice{cell_of(able.front()), count, {}};
  const bool serves = std::any_of(able.begin(), able.end(), [&](const CellItem& item) {
    return cell_of(item) == found && item.verdict == Code::use && !is_second_rate(context, item);
  });
  if (serves) choice.cell = found;
  for (const CellItem& item : able) {
    const bool listed = cell_of(item) == choice.cell || item.size == Code::needs_spacer || is_second_rate(context, item);
    // a display that lights itself draws so much that only what is said without reserve does
    const bool sags = context.display() == "led" && item.verdict != Code::use;
    if (listed || sags || choice.instead.size() >= kMostInstead) continue;
    choice.instead.push_back({cell_of(item), {}, item.verdict, item.drain, false});
  }
  return choice;
}

Words measured_words(const Context& context) {
  const auto& size = context.watch.cell_size;
  Words words = {{"diameter", base::terminal(*size->diameter)}, {"height", base::terminal(*size->height)}};
  const model::Module* module = context.module();
  const model::Cell* listed = module == nullptr || module->cells.empty() ? nullptr : context.desk.cell(module->cells.front());
  if (listed != nullptr && is_known(listed->nominal)) words.emplace_back("voltage", base::terminal(*listed->nominal));
  return words;
}

/// By the cells that were found. A module takes cells of one kind; without one each place has its own.
std::vector<ChosenCell> by_found(const Context& context) {
  std::vector<ChosenCell> all;
  for (const RecordRef& found : context.watch.cells_found) {
    const std::vector<CellItem> able = candidates(context, {{"cell", found.id()}});
    if (able.empty()) continue;
    ChosenCell one = chosen(context, able, found, 1);
    const auto there = std::find_if(all.begin(), all.end(), [&one](const ChosenCell& other) { return other.cell == one.cell; });
    if (there == all.end())
      all.push_back(std::move(one));
    else
      ++there->count;
  }
  if (context.module() != nullptr && !all.empty()) {
    const auto silver =
        std::find_if(all.begin(), all.end(), [&](const ChosenCell& one) { return has(context.watch.cells_found, one.cell); });
    if (silver != all.end()) std::swap(*all.begin(), *silver);
    all.resize(1);
  }
  if (all.size() == 1) all.front().count = std::max(all.front().count, context.wells());
  return all;
}

}  // namespace

std::vector<ChosenCell> choose_cells(const Context& context) {
  if (!context.watch.cells_found.empty()) return by_found(context);
  const auto& size = context.watch.cell_size;
  const int count = std::max(1, context.wells());
  if (size && is_known(size->diameter) && is_known(size->height)) {
    const std::vector<CellItem> able = candidates(context, measured_words(context));
    if (able.empty()) return {};
    return {chosen(context, able, {}, count)};
  }
  const model::Module* module = context.module();
  if (module == nullptr || module->cells.size() != 1 || context.desk.cell(module->cells.front()) == nullptr) return {};
  const std::vector<CellItem> able = candidates(context, {{"cell", module->cells.front().id()}});
  ChosenCell own{module->cells.front(), count, {}};
  return {able.empty() ? own : chosen(context, able, module->cells.front(), count)};
}

}  // namespace benchleaf::ticket
