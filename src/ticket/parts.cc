// In: what a plan needs. Out: the sections of what to get: cell, gasket, crystal, the rest, each with a blank for what was
// fitted.
#include <algorithm>

#include "base/quantity.h"
#include "compose/desk.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Style;

/// Where it lies, or that it is ordered; nothing without a drawer.
std::string stock_words(const Plan& plan, const PlanNeed& need, bool listed) {
  if (plan.drawer.empty() && !listed) return {};
  if (need.in_drawer >= need.count) return "in stock" + (need.place.empty() ? std::string() : ": " + need.place);
  if (need.in_drawer > 0) return "only " + std::to_string(need.in_drawer) + " in stock; order the rest";
  return "to order";
}

/// Where it lies, then what does as well, in one paragraph.
void add_instead(const SheetContext& context, const PlanNeed& need, const std::string& stock, SectionBuilder& section) {
  compose::Line line = context.line();
  if (!stock.empty()) line.say(compose::sentence_case(stock) + ". ");
  for (const Alternative& one : need.instead)
    line.verdict(model::Verdict::with_limits, "or").say(" " + alternative_words(context.desk, one) + ". ");
  if (!line.empty()) section.add(Kind::words, line.take(), need.record);
}

std::string stock_of(const SheetContext& context, const PlanNeed& need) {
  return stock_words(context.plan, need,
                     lists(context.context, need.record.kind().value_or(model::Kind::tool)) && context.context.drawer != nullptr);
}

void add_cell(const SheetContext& context, std::vector<SheetSection>& front) {
  for (const PlanNeed& need : context.plan.needs) {
    const model::Cell* cell = context.desk.cell(need.record);
    if (cell == nullptr || need.purpose != PlanNeed::For::fit) continue;
    SectionBuilder section("cell", "Cell to fit", need.count == 1 ? "one" : std::to_string(need.count) + ", one type, one date");
    section.add(Kind::key, text_runs(compose::cell_key(*cell)), need.record);
    compose::Line words = context.line();
    words.say(cell_words(context.desk, *cell), Style::look_up);
    section.add(Kind::words, words.take(), need.record);
    add_instead(context, need, stock_of(context, need), section);
    compose::Line fitted = context.line();
    section.add(Kind::words, fitted.say("fitted ", Style::bold).blank(16).say(" on ").blank(14).take());
    section.close(front);
  }
}

void add_gasket(const SheetContext& context, std::vector<SheetSection>& front) {
  const PlanNeed* need = context.plan.need_of(model::Kind::gasket);
  if (need == nullptr) return;
  const auto* series = context.desk.records.find<model::Gasket>(need->record);
  const bool sized = !need->size.empty() && series != nullptr;
  const bool round = series != nullptr && is_known(series->section);
  SectionBuilder section("gasket", sized ? "Gasket: " + gasket_kind(context.desk, *series) : "Gasket of the back",
                         sized ? "mm" : "");
  if (sized) {
    const auto& thick = round ? series->section : series->height;
    const std::string first = is_known(thick) ? bare_figure(base::printed(*thick)) + " \u00D7 " : std::string();
    section.add(Kind::key, text_runs(first + bare_figure(need->size)), need->record);
  }
  compose::Line words = context.line();
  if (!sized) words.say(need_words(context.desk, *need), Style::bold);
  if (need->to_measure && context.fact("gasket-fit.size") != nullptr) {
    words.say(", by the old one ");
    context.say_fact(words, "gasket-fit.size").say("; it is set: measure the seat");
  }
  for (const char* output : {"stretch", "interference", "play"}) {
    if (need->to_measure || context.fact(std::string("gasket-fit.") + output) == nullptr) continue;
    words.say(words.empty() ? compose::sentence_case(output) + " " : std::string("; ") + output + " ");
    context.say_fact(words, std::string("gasket-fit.") + output);
  }
  if (!words.empty()) section.add(Kind::words, words.say(".").take(), need->record);
  add_instead(context, *need, stock_of(context, *need), section);
  compose::Line fitted = context.line();
  section.add(Kind::words, fitted.say("fitted: section ", Style::bold).blank(9).say(" inside ").blank(10).take());
  section.close(front);
}

void add_ladder(const SheetContext& context, SectionBuilder& section) {
  if (context.plan.rungs.empty()) return;
  compose::Line rungs = context.line();
  section.add(Kind::words, text_runs(compose::listed(context.plan.rungs, " \u203A "), Style::bold | Style::look_up));
  rungs.say("then polish, wet; leaves ");
  context.say_fact(rungs, "scratch-ladder.left");
  if (context.fact("scratch-ladder.still-holds") != nullptr)
    context.say_fact(rungs.say("; under a thumb "), "scratch-ladder.still-holds");
  section.add(Kind::words, rungs.take());
}

void add_crystal(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("crystal", "Crystal");
  add_ladder(context, section);
  if (const PlanNeed* need = context.plan.need_of(model::Kind::crystal)) {
    compose::Line words = context.line();
    words.say("new: " + need_words(context.desk, *need), Style::bold).say("; the bare seat decides");
    const model::Crystal* crystal = context.context.crystal();
    if (crystal != nullptr && is_known(crystal->oversize)) words.say(", plus " + base::printed(*crystal->oversize));
    section.add(Kind::words, words.take(), need->record);
  }
  if (section.empty()) return;
  compose::Line kept = context.line();
  section.add(Kind::words, kept.tick().say("\u00A0kept ").tick().say("\u00A0new ").blank(20).take());
  section.close(front);
}

/// `393 of the same packet, to test`: a cell that is already on the sheet by its number alone.
std::string rest_words(const SheetContext& context, const PlanNeed& need) {
  const model::Cell* cell = context.desk.cell(need.record);
  return cell == nullptr ? need_words(context.desk, need) : compose::cell_key(*cell) + purpose_words(need.purpose);
}

/// A donor watch or a spare module in the drawer: one with the module of this watch.
void add_donors(const SheetContext& context, compose::Line& line) {
  const model::Stock* drawer = context.context.drawer;
  if (drawer == nullptr || context.watch.module.empty()) return;
  for (const model::Stock::Item& item : drawer->items) {
    const auto* donor = context.desk.records.find<model::Watch>(item.item);
    const bool donates = donor != nullptr && donor->id != context.watch.id && donor->module == context.watch.module;
    if (item.count == 0 || (!donates && item.item != context.watch.module)) continue;
    line.say(line.empty() ? "" : "\u2003").say(donates ? "Donor with this module: " : "Module in stock: ", Style::bold);
    line.say(context.desk.name(item.item) + (item.place.empty() ? "" : ", " + item.place));
  }
}

/// Whatever else is used up, then what is taken from the shelf, each with its box, in one paragraph.
void add_rest(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("parts", "Also get");
  std::vector<std::string> order;
  compose::Line line = context.line();
  const auto item = [&line]() -> compose::Line& { return line.say(line.empty() ? "" : "\u2003").tick().say("\u00A0"); };
  for (const PlanNeed& need : context.plan.needs) {
    const bool shown =
        need.purpose == PlanNeed::For::fit &&
        (need.record.is(model::Kind::cell) || need.record.is(model::Kind::gasket) || need.record.is(model::Kind::crystal));
    const std::string stock = stock_of(context, need);
    if (need.used_up && !shown) {
      item().say(std::to_string(need.count) + " \u00D7 " + rest_words(context, need), Style::bold);
      if (!stock.empty()) line.say("; " + stock);
    }
    if (!need.used_up && !need.record.is(model::Kind::tool) && !stock.empty() && need.in_drawer == 0)
      add_once(order, need_words(context.desk, need));
  }
  add_donors(context, line);
  if (!order.empty()) item().say("not in stock: ", Style::bold).say(compose::listed(order));
  if (!line.empty()) section.add(Kind::words, line.take());
  section.close(front);
}

}  // namespace

void add_parts(const SheetContext& context, std::vector<SheetSection>& front) {
  add_cell(context, front);
  add_gasket(context, front);
  add_crystal(context, front);
  add_rest(context, front);
}

}  // namespace benchleaf::ticket
