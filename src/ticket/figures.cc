// In: the measures of a watch, the drawer. Out: what the calculators say of gasket, ladder, dose and life, as codes and facts of
// the plan; where the answer and the drawer do not agree, a finding at the measure.
#include "ticket/figures.h"

#include <algorithm>

#include "base/quantity.h"
#include "derive/fact_of_output.h"

namespace benchleaf::ticket {

namespace {

using bench::Code;
using report::Rule;

void find(const Context& context, Rule rule, std::string_view path, std::string message, std::string hint) {
  context.desk.findings.add(rule, context.watch.span_of(path), std::move(message), std::move(hint));
}

/// What lies in the drawer of a series, for a finding: `27 mm`, `27.5 mm (past its shelf life)`.
std::string sizes_at_hand(const Context& context, const RecordRef& series) {
  std::string text;
  for (const model::Stock::Item& item : context.drawer->items) {
    if (item.item != series || item.count == 0 || !item.size) continue;
    text += (text.empty() ? "" : ", ") + base::terminal(*item.size) + (is_past(context, item) ? " (past its shelf life)" : "");
  }
  return text.empty() ? "none" : text;
}

bool fits_one_at_hand(const Context& context, const Plan& plan, const RecordRef& series) {
  return std::any_of(context.drawer->items.begin(), context.drawer->items.end(), [&](const model::Stock::Item& item) {
    if (item.item != series || item.count == 0 || !item.size || is_past(context, item)) return false;
    const std::string size = base::printed(*item.size);
    return std::any_of(plan.gaskets.begin(), plan.gaskets.end(), [&](const auto& one) { return one.size.printed == size; });
  });
}

/// Grades in the drawer, each once, with commas between.
std::string grades_at_hand(const model::Stock& drawer) {
  std::vector<std::string> grades;
  for (const model::Stock::Item& item : drawer.items) {
    if (item.item.is(model::Kind::abrasive) && item.count > 0) add_once(grades, item.grade);
  }
  return compose::listed(grades, ",");
}

void reckon_old_gasket(const Context& context, const RecordRef& series, Plan& plan) {
  if (!is_known(context.watch.old_gasket.inside)) return;
  reckon(context, "gasket-fit", {{"series", series.id()}, {"old-inside", base::terminal(*context.watch.old_gasket.inside)}},
         plan);
}

/// The words that the ladder is asked with.
Words ladder_words(const Context& context) {
  const model::Watch& watch = context.watch;
  const std::string nail = watch.nail == "catches" ? "nail-catches" : watch.nail;
  Words words = {{"scratch", is_known(watch.scratch) ? base::terminal(*watch.scratch) : nail},
                 {"thickness", base::terminal(*watch.crystal_size->thickness)}};
  if (!context.crystal_material().empty()) words.emplace_back("material", context.crystal_material().id());
  const bool disc = is_known(watch.crystal_size->diameter) && !is_known(watch.crystal_size->length);
  if (disc) words.emplace_back("diameter", base::terminal(*watch.crystal_size->diameter));
  return words;
}

/// Whether somebody thinks of a polish: the scratch was looked at, or it is wished for.
bool thinks_of_polish(const Context& context) {
  const model::Watch& watch = context.watch;
  return is_known(watch.scratch) || !watch.nail.empty() || has(watch.wishes, "clear-crystal");
}

}  // namespace

bench::Result reckon(const Context& context, std::string_view calculator, const Words& words, Plan& plan,
                     const std::string& name) {
  bench::Result result = ask(context, calculator, words);
  for (const bench::Output& output : result.outputs)
    plan.facts.add(derive::fact_of_output(output, context.watch.reference(), name.empty() ? std::string(calculator) : name));
  return result;
}

void reckon_gasket(const Context& context, Plan& plan) {
  const model::Watch& watch = context.watch;
  const RecordRef series = context.series();
  if (series.empty()) return;
  if (!is_known(watch.gasket_seat)) return reckon_old_gasket(context, series, plan);
  const std::string seat = base::terminal(*watch.gasket_seat);
  Words words = {{"series", series.id()}, {"seat", seat}};
  if (is_known(watch.groove.depth)) words.emplace_back("groove-depth", base::terminal(*watch.groove.depth));
  if (is_known(watch.groove.depth) && is_known(watch.groove.width))
    words.emplace_back("groove-width", base::terminal(*watch.groove.width));
  const bench::Result result = reckon(context, "gasket-fit", words, plan);
  if (result.refusal) {
    return find(context, Rule::ticket_gasket, "gasket-seat", "no gasket can be chosen: " + result.refusal->reason,
                "measure the seat again, in three directions, and look at the series");
  }
  for (const bench::SizeItem& size : result.sizes) {
    if (size.verdict == Code::best || size.verdict == Code::within_band) plan.gaskets.push_back(size);
  }
  if (plan.gaskets.empty() || !lists(context, model::Kind::gasket) || fits_one_at_hand(context, plan, series)) return;
  const std::string wanted = base::to_terminal(plan.gaskets.front().size.printed);
  find(context, Rule::ticket_gasket, "gasket-seat",
       "no gasket in stock fits a seat of " + seat + ": of " + series.id() + " there is " + sizes_at_hand(context, series) +
           ", wanted is " + wanted,
       "order one of " + wanted + "; the ticket lists it");
}

std::optional<Mark> reckon_ladder(const Context& context, Plan& plan) {
  const model::Watch& watch = context.watch;
  if (!thinks_of_polish(context)) return std::nullopt;
  const auto* material = context.desk.records.find<model::Material>(context.crystal_material());
  if (material != nullptr && material->family != model::MaterialFamily::plastic) return Mark::polish_on_glass;
  const bool measured = watch.crystal_size && is_known(watch.crystal_size->thickness);
  if (!measured || (!is_known(watch.scratch) && watch.nail.empty())) return Mark::polish_unmeasured;
  Words words = ladder_words(context);
  if (lists(context, model::Kind::abrasive)) {
    const std::string grades = grades_at_hand(*context.drawer);
    if (grades.empty()) {
      find(context, Rule::ticket_grade, "scratch", "there is no graded abrasive paper in stock",
           "buy the grades that the ticket lists, or leave the crystal as it is");
      return Mark::polish_no_paper;
    }
    words.emplace_back("grades", grades);
  }
  const bench::Result result = reckon(context, "scratch-ladder", words, plan);
  if (result.refusal) {
    find(context, Rule::ticket_crystal, "scratch", "no ladder of grades: " + result.refusal->input + " " + result.refusal->reason,
         "change the crystal instead of sanding it");
    return Mark::polish_too_thin;
  }
  if (result.find("still-holds") != nullptr && result.code("still-holds") != Code::stands) {
    find(context, Rule::ticket_crystal, "crystal-size.thickness",
         "the ladder would leave " + base::to_terminal(result.find("left")->printed) + " of the crystal",
         "change the crystal instead of sanding it");
    return Mark::polish_too_thin;
  }
  for (const bench::Rung& rung : result.rungs) plan.rungs.push_back(rung.grade);
  return Mark::polish_possible;
}

void reckon_doses(const Context& context, Plan& plan) {
  const model::Fact* heap = context.desk.derived.facts.find("table/bench-rules#usual-crust.value");
  if (heap == nullptr) return;
  for (const RecordRef& residue : context.residues()) {
    const auto* record = context.desk.records.find<model::Residue>(residue);
    if (record == nullptr) continue;
    for (const RecordRef& liquid : record->answers) {
      const bool used = std::any_of(plan.jobs.begin(), plan.jobs.end(), [&](const PlanJob& job) {
        const auto& steps = job.bound.steps;
        return job.state == PlanJob::State::done &&
               std::any_of(steps.begin(), steps.end(), [&](const auto& step) { return has(step.with, liquid); });
      });
      if (!used) continue;
      const std::string name = plan.doses.empty() ? "crust-dose" : "crust-dose." + residue.id() + "." + liquid.id();
      const Words words = {{"residue", residue.id()}, {"mass", base::to_terminal(heap->printed)}, {"liquid", liquid.id()}};
      if (!reckon(context, "crust-dose", words, plan, name).refusal) plan.doses.push_back({name, residue, liquid});
    }
  }
}

void reckon_life(const Context& context, const RecordRef& cell, Plan& plan) {
  if (context.module() != nullptr)
    reckon(context, "cell-life", {{"cell", cell.id()}, {"module", context.watch.module.id()}}, plan);
}

}  // namespace benchleaf::ticket
