// In: earlier visits of a watch, the life that is reckoned for its cell. Out: what they tell, three lines at most.
#include <cmath>
#include <cstdlib>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/number.h"
#include "base/quantity.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using Visit = model::Watch::Visit;
using model::Style;

constexpr int kMonthsOfYear = 12;
constexpr std::size_t kToTheMonth = 7;  // `2024-10`
constexpr const char* kLife = "cell-life.life";

/// Months since the year 0; nothing where a date is a year alone.
std::optional<int> month_of(const std::string& date) {
  if (date.size() < kToTheMonth) return std::nullopt;
  return std::atoi(date.substr(0, 4).c_str()) * kMonthsOfYear + std::atoi(date.substr(5, 2).c_str()) - 1;
}

/// The month that is `life` months after another, rounded down as lives are printed.
std::string month_words(int from, double life = 0) {
  const int whole = from + static_cast<int>(std::floor(life));
  const int month = whole % kMonthsOfYear + 1;
  return std::to_string(whole / kMonthsOfYear) + "-" + (month < 10 ? "0" : "") + std::to_string(month);
}

/// The reckoned life of the cell that this plan fits, in months; nothing where no life is worked out.
const model::Fact* life_of(const SheetContext& context) {
  const model::Fact* life = context.fact(kLife);
  return life != nullptr && life->unit == "month" && life->low && life->high ? life : nullptr;
}

bool is_fitted_now(const SheetContext& context, const Visit& visit) {
  const PlanNeed* need = context.plan.need_of(model::Kind::cell);
  return need != nullptr && need->record == visit.cell;
}

/// What records advise there.
void advise(const SheetContext& context, std::string_view place, compose::Line& line) {
  for (const model::Look* look : context.looks(place)) line.say(" " + context.filled(look->text));
}

/// How long the last cell was in that came out again, against what is reckoned for its like.
void tell_life(const SheetContext& context, SectionBuilder& section) {
  const auto& visits = context.watch.visits;
  for (std::size_t i = visits.size(); i-- > 1;) {
    const Visit& in = visits[i - 1];
    const auto from = month_of(in.date);
    const auto to = month_of(visits[i].date);
    const model::Cell* cell = context.desk.cell(in.cell);
    if (!from || !to || cell == nullptr) continue;
    compose::Line line = context.line();
    line.say("The ").say(compose::cell_key(*cell), Style::bold).say(" of " + month_words(*from) + " was in for ");
    line.say(std::to_string(*to - *from) + " months", Style::bold);
    const model::Fact* life = is_fitted_now(context, in) ? life_of(context) : nullptr;
    if (life != nullptr) {
      line.say(", reckoned ");
      context.say_fact(line, kLife);
      const bool lasted = *to - *from >= std::floor(*life->low);
      line.say(lasted ? ": as it should be." : ": too short.");
      if (!lasted) advise(context, "cell-too-short", line);
    } else {
      line.say(".");
    }
    section.add(Kind::words, line.take());
    return;
  }
}

/// The healthy draw at rest, in microamperes; nothing where the module has no span on record.
std::optional<base::Interval> healthy_draw(const SheetContext& context) {
  const model::Module* module = context.context.module();
  if (module == nullptr || module->loads.empty() || !is_known(module->loads.front().current)) return std::nullopt;
  const auto band = module->loads.front().current->in(base::Unit::microampere);
  return band && band->low < band->high ? band : std::nullopt;
}

/// How the draw moved from the first reading to the last.
void tell_draw(const SheetContext& context, SectionBuilder& section) {
  std::vector<const base::Quantity*> draws;
  for (const Visit& visit : context.watch.visits) {
    if (is_known(visit.draw) && visit.draw->value_in(base::Unit::microampere)) draws.push_back(&*visit.draw);
  }
  if (draws.size() < 2) return;
  const double first = *draws.front()->value_in(base::Unit::microampere);
  const double last = *draws.back()->value_in(base::Unit::microampere);
  const double change = base::tidy(last - first);
  compose::Line line = context.line();
  line.say("Draw ").say(bare_figure(base::printed(*draws.front())), Style::bold).say(", then ");
  line.say(base::printed(*draws.back()), Style::bold);
  if (change == 0) line.say(": unchanged.");
  if (change != 0) line.say((change > 0 ? ": up by " : ": down by ") + base::shortest_text(std::abs(change)) + ".");
  if (const auto healthy = healthy_draw(context)) {
    line.say(" Healthy up to " + base::shortest_text(base::tidy(healthy->high)) + ".");
    if (last > healthy->high) advise(context, "draw-too-high", line);
  }
  section.add(Kind::words, line.take());
}

/// When the cell that is in the watch is reckoned to end.
void tell_due(const SheetContext& context, SectionBuilder& section) {
  const Visit& last = context.watch.visits.back();
  const auto from = month_of(last.date);
  const model::Fact* life = is_fitted_now(context, last) ? life_of(context) : nullptr;
  if (!from || life == nullptr) return;
  compose::Line line = context.line();
  line.say("The cell in it is due ");
  line.say(month_words(*from, *life->low) + " to " + month_words(*from, *life->high), Style::bold);
  line.say(".");
  advise(context, "cell-due", line);
  section.add(Kind::words, line.take());
}

}  // namespace

void add_history_told(const SheetContext& context, std::vector<SheetSection>& front) {
  if (context.watch.visits.empty()) return;
  SectionBuilder section("history-told", "What that says");
  tell_life(context, section);
  tell_draw(context, section);
  tell_due(context, section);
  section.close(front);
}

}  // namespace benchleaf::ticket
