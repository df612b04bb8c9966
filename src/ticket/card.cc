// In: a plan. Out: the emergency strip, and the owner's card, which is filled in when the watch goes out.
#include <algorithm>

#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Style;

constexpr double kNumberMm = 38;

/// `Swallowed a cell: hospital ...`: the harm in bold, then what to do, then a blank for the number to call.
void add_emergency(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("emergency", "If it happens");
  for (const model::Look* look : context.looks("emergency")) {
    compose::Line what = context.line();
    what.say(look->head + ":", Style::bold).say(" " + look->text);
    compose::Line whom = context.line();
    whom.say(look->title + " ", Style::bold).blank(kNumberMm);
    section.row(Kind::words, {what.take(), whom.take()}, look->caution);
  }
  section.close(front);
}

/// What was done, to tick: the jobs that answer a wish or renew a part.
void add_done(const SheetContext& context, SectionBuilder& section) {
  compose::Line done = context.line();
  for (const PlanJob& job : context.plan.jobs) {
    const auto* rule = context.desk.records.find<model::Job>(job.job);
    const bool counts = rule != nullptr && (has(rule->roles, "renews-gasket") || has(rule->roles, "clears-leak") ||
                                            has(rule->roles, "polishes-crystal") || has(rule->roles, "changes-crystal"));
    if (job.state == PlanJob::State::done && counts) done.tick().say("\u00A0" + rule->title + "  ");
  }
  if (!done.empty()) section.add(Kind::tick, done.take());
  compose::Line left = context.line();
  section.add(Kind::tick, left.say("Left as it was ").blank(30).take());
}

bool fits_cell(const SheetContext& context) {
  return std::any_of(context.plan.jobs.begin(), context.plan.jobs.end(), [&context](const PlanJob& job) {
    const auto* rule = context.desk.records.find<model::Job>(job.job);
    return job.state == PlanJob::State::done && rule != nullptr && has(rule->roles, "fits-cell");
  });
}

/// When the cell is to be changed, and how long it is reckoned to last.
void add_life(const SheetContext& context, SectionBuilder& section) {
  compose::Line life = context.line();
  life.say("Change by ", Style::bold).blank(12);
  if (context.fact("cell-life.life") != nullptr) context.say_fact(life.say(" reckoned "), "cell-life.life");
  section.add(Kind::words, life.take());
}

void add_owner(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("card", "Owner's card", context.watch.title);
  compose::Line cell = context.line();
  cell.say("Date ").blank(15);
  if (fits_cell(context)) cell.say(" ").say("cell ", Style::bold).blank(19).say(" system ").blank(17);
  section.add(Kind::words, cell.take());
  if (fits_cell(context)) add_life(context, section);
  compose::Line read = context.line();
  section.add(Kind::tick, read.say("Draw ").blank(10).say("\u00A0\u00B5A  rate ").blank(9).say("\u00A0s a day").take());
  add_done(context, section);
  for (const model::Look* look : context.looks("card")) {
    const bool warns = !look->caution.empty();
    section.add(Kind::words, text_runs(context.filled(look->text), warns ? Style::bold : Style::plain), look->caution);
  }
  section.close(front);
}

}  // namespace

void add_card(const SheetContext& context, std::vector<SheetSection>& front) {
  add_emergency(context, front);
  add_owner(context, front);
}

}  // namespace benchleaf::ticket
