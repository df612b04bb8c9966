// Rules about what a module draws: within what its state can draw, in step with its own words on a healthy one, in its years.

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/ascii.h"
#include "base/number.h"
#include "derive/demonstration.h"
#include "prove/handling_checks.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Module;
using report::Rule;

const model::PublishedTable::Row* bounds_of(const Proof& proof, const std::string& state) {
  const std::string words = " " + plain_words(state) + " ";
  for (const auto& row : standards::rows_of(proof.tables, "load-bounds")) {
    if (words.find(" " + plain_words(row.key) + " ") != std::string::npos) return &row;
  }
  return nullptr;
}

void check_load_figure(const Proof& proof, const Module& module, const std::string& path,
                       const std::optional<base::Quantity>& found, const model::PublishedTable::Row& row, const char* column,
                       Unit unit) {
  const auto bounds = standards::cell_quantity(row, column);
  const auto within = bounds ? bounds->in(unit) : std::nullopt;
  const auto value = found && found->has_value() && module.usable(path) ? found->in(unit) : std::nullopt;
  if (!within || !value) return;
  if (base::tidy(value->low) >= base::tidy(within->low) && base::tidy(value->high) <= base::tidy(within->high)) return;
  proof.findings
      .add(Rule::module_load, module.span_of(path),
           "found " + shown(found) + " while " + row.key + ", expected " + base::terminal(*bounds),
           "read the figure and its unit again")
      .notes.push_back({row.span, "table load-bounds"});
}

/// The currents that a sentence names: `2 to 8 µA in all.`
std::vector<base::Quantity> currents_in(const std::string& text) {
  std::vector<base::Quantity> found;
  for (std::size_t end = text.find("µA"); end != std::string::npos; end = text.find("µA", end + 1)) {
    std::size_t begin = end;
    while (begin > 0 && std::string_view("0123456789. to").find(text[begin - 1]) != std::string_view::npos) --begin;
    while (begin < end && !base::is_digit(text[begin])) ++begin;
    if (const auto quantity = quantity_in(text.substr(begin, end - begin) + "µA")) found.push_back(*quantity);
  }
  return found;
}

/// The years that a text names.
std::vector<int> years_in(const std::string& text) {
  std::vector<int> years;
  for (std::size_t at = 0; at < text.size();) {
    std::size_t end = at;
    while (end < text.size() && (base::is_digit(text[end]) || text[end] == '.')) ++end;
    if (end > at) years.push_back(static_cast<int>(base::parse_decimal(text.substr(at, end - at)).value_or(0)));
    at = end + 1;
  }
  return years;
}

}  // namespace

void check_module_loads(const Proof& proof) {
  for (const auto& [id, module] : proof.base.modules) {
    for (std::size_t i = 0; i < module.loads.size(); ++i) {
      const auto& load = module.loads[i];
      const std::string path = "loads." + std::to_string(i) + ".";
      const auto* row = module.usable(path + "state") ? bounds_of(proof, load.state) : nullptr;
      if (row == nullptr) continue;
      check_load_figure(proof, module, path + "current", load.current, *row, "current", Unit::microampere);
      check_load_figure(proof, module, path + "for", load.duration, *row, "for", Unit::second);
      check_load_figure(proof, module, path + "per-day", load.per_day, *row, "per-day", Unit::one);
      const bool passing = standards::cell_quantity(*row, "for").has_value();
      if (!passing || !module.usable("loads") || (load.duration && load.per_day)) continue;
      proof.findings
          .add(Rule::module_load, module.span_of(path + "state"),
               "found " + load.state + " without " + (load.duration ? "per-day" : "for") + ", so no life can be reckoned",
               "state how long it lasts and how often a day it happens")
          .notes.push_back({row->span, "table load-bounds"});
    }
  }
}

void check_healthy_words(const Proof& proof) {
  for (const auto& [id, module] : proof.base.modules) {
    const auto named = module.usable("healthy") ? currents_in(module.healthy) : std::vector<base::Quantity>();
    const bool readable = !named.empty() && !module.loads.empty() && module.usable("loads.0.current");
    if (!readable || !module.loads[0].current || !module.loads[0].current->has_value()) continue;
    const auto rest = module.loads[0].current->in(Unit::microampere);
    const auto healthy = named.front().in(Unit::microampere);
    if (!rest || !healthy || (rest->low <= healthy->high && rest->high >= healthy->low && rest->low >= healthy->low / 2))
      continue;
    proof.findings
        .add(Rule::module_healthy, module.span_of("loads.0.current"),
             "found " + shown(module.loads[0].current) + " at rest, but a healthy one is said to draw " +
                 base::terminal(named.front()),
             "correct one of the two")
        .notes.push_back({module.span_of("healthy"), "its words on a healthy one"});
  }
}

namespace {

/// Whether the source of a load gives a limit: less is healthy then.
bool is_upper(const Module& module, std::size_t load) {
  const std::string path = "loads." + std::to_string(load) + ".bound";
  const model::Node* bound = module.root.at_path(path);
  return bound != nullptr && module.usable(path) && bound->text == "upper";
}

/// Whether both ends of a range are limits that sheets of movements print: then its lower end is one as well.
bool is_made_of_limits(const Proof& proof, const base::Interval& found) {
  const auto printed = [&proof](double end) {
    const auto& rows = standards::rows_of(proof.tables, "movement-current-limits");
    return std::any_of(rows.begin(), rows.end(), [end](const auto& row) {
      const auto limit = standards::cell_value(row, "limit", Unit::microampere);
      return limit && base::tidy(*limit) == base::tidy(end);
    });
  };
  return found.low < found.high && printed(found.low) && printed(found.high);
}

/// A quantity that rules alone ask for, read where it stands.
std::optional<base::Interval> stated(const model::Record& record, std::string_view path, Unit unit) {
  const auto quantity = record.usable(path) ? quantity_in(record.root.at_path(path)) : std::nullopt;
  return quantity ? quantity->in(unit) : std::nullopt;
}

}  // namespace

void check_upper_limits(const Proof& proof) {
  for (const auto& [id, module] : proof.base.modules) {
    for (std::size_t i = 0; i < module.loads.size(); ++i) {
      const std::string path = "loads." + std::to_string(i) + ".current";
      const auto& current = module.loads[i].current;
      const bool readable = current && current->has_value() && module.usable(path);
      const auto found = readable ? current->in(Unit::microampere) : std::nullopt;
      if (!found || base::tidy(found->low) == base::tidy(found->high)) continue;
      if (!is_upper(module, i) && !is_made_of_limits(proof, *found)) continue;
      proof.findings.add(Rule::module_upper_limit, module.span_of(path),
                         "found " + shown(current) + ", but its source gives upper limits, and less is healthy",
                         "state the one limit that is followed, and the others under conflicts:");
    }
    const bool upper = !module.loads.empty() && is_upper(module, 0) && module.usable("healthy");
    const auto named = upper ? currents_in(module.healthy) : std::vector<base::Quantity>();
    const auto first = named.empty() ? std::nullopt : named.front().in(Unit::microampere);
    if (!first || base::tidy(first->low) == base::tidy(first->high)) continue;
    proof.findings.add(Rule::module_upper_limit, module.span_of("healthy"),
                       "found " + base::terminal(named.front()) + " as healthy, but its source gives an upper limit",
                       "write: at most, and the limit");
  }
}

namespace {

/// What is left of a cell's voltage at the peak of the pulse, behind a resistor that stands in series.
void check_behind(const Proof& proof, const Module& module, const model::Tool& tool) {
  const auto* cell = module.cells.empty() ? nullptr : record_of(proof, model::Kind::cell, module.cells[0]);
  const auto nominal = cell == nullptr ? std::nullopt : stated(*cell, "nominal", Unit::volt);
  const auto pulse = stated(module, "pulse", Unit::milliampere);
  const auto drop = stated(tool, "drop", Unit::volt);
  const auto supply = module.supply && module.usable("supply") ? module.supply->in(Unit::volt) : std::nullopt;
  if (!nominal || !pulse || !drop || !supply) return;
  const double left = base::tidy(nominal->low - pulse->high * drop->high);
  if (left >= base::tidy(supply->low)) return;
  proof.findings
      .add(Rule::module_series, tool.span_of("drop"),
           "behind it " + module.id + " gets " + shown(left, Unit::volt) + " at the peak of a pulse, less than the " +
               shown(supply->low, Unit::volt) + " that it works from",
           "take a smaller resistor, and a capacitor across the module")
      .notes.push_back({module.span_of("pulse"), "its pulse"});
}

}  // namespace

void check_series_resistors(const Proof& proof) {
  for (const auto& [tool_id, tool] : proof.base.tools) {
    for (const auto& [id, module] : proof.base.modules) check_behind(proof, module, tool);
  }
}

void check_module_years(const Proof& proof) {
  constexpr int kFirstQuartz = 1967;
  const int book =
      years_in(proof.base.handbook.date.substr(0, 4)).empty() ? 0 : years_in(proof.base.handbook.date.substr(0, 4)).front();
  for (const auto& [id, module] : proof.base.modules) {
    if (!module.usable("era") || module.era.empty()) continue;
    const auto years = years_in(module.era);
    const bool invented = module.era == "invented" && derive::is_demonstration(module);
    const bool within =
        std::all_of(years.begin(), years.end(), [&](int year) { return year >= kFirstQuartz && (book == 0 || year <= book); });
    if (invented || (!years.empty() && within && std::is_sorted(years.begin(), years.end()))) continue;
    proof.findings.add(Rule::module_years, module.span_of("era"),
                       "found " + module.era + ", which names no years of quartz watches",
                       "give years from 1967 on, the earlier first");
  }
}

}  // namespace benchleaf::prove
