// In: the looks of records that take a reading. Out: a blank each, with the healthy figure beside it.
#include <algorithm>

#include "base/quantity.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Style;

constexpr double kBlankMm = 7.5;
constexpr int kMostBlanks = 4;  // the others are written behind the last
constexpr double kLoneBlankMm = 9;

model::Runs blanks_of(const SheetContext& context, const model::Look& look) {
  int count = look.blanks;
  if (look.per == "cell") count = std::max(1, context.context.wells());
  if (look.per == "pusher" && context.watch.pushers && context.watch.pushers->count)
    count = std::clamp(*context.watch.pushers->count, 1, kMostBlanks);
  compose::Line line = context.line();
  for (int i = 0; i < count; ++i) line.say(i == 0 ? "" : " ").blank(count > 1 ? kBlankMm : kLoneBlankMm);
  if (!look.unit.empty()) line.say("\u00A0" + look.unit);
  return line.take();
}

}  // namespace

void add_readings(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("readings", "Readings", "write; the healthy figure stands beside");
  for (const model::Look* look : context.looks("reading")) {
    section.row(Kind::tick,
                {text_runs(context.filled(look->text), Style::bold), blanks_of(context, *look),
                 text_runs(context.filled(look->healthy), Style::bold | Style::look_up)},
                look->reference());
  }
  section.close(front);
}

}  // namespace benchleaf::ticket
