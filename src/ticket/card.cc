// In: a plan. Out: the emergency strip, and the owner's card, which is filled in when the watch goes out.
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Style;

constexpr double kNumberMm = 38;

/// `Swallowed a cell: hospital ...`: hazard in bold, then what to do, then a blank for the number to call.
void add_emergency(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("emergency", "If it happens");
  for (const model::Look* look : context.looks("emergency")) {
    const std::size_t colon = std::min(look->text.find(':'), look->text.size() - 1);
    compose::Line what = context.line();
    what.say(look->text.substr(0, colon + 1), Style::bold).say(look->text.substr(colon + 1));
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

void add_owner(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("card", "Owner's card", context.watch.title);
  compose::Line cell = context.line();
  cell.say("Date ").blank(15).say(" ").say("cell ", Style::bold).blank(19).say(" system ").blank(17);
  section.add(Kind::words, cell.take());
  compose::Line draw = context.line();
  draw.say("Change by ", Style::bold).blank(12);
  if (context.fact("cell-life.life") != nullptr) context.say_fact(draw.say(" reckoned "), "cell-life.life");
  section.add(Kind::words, draw.take());
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
