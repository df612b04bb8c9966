// In: a procedure of the handbook. Out: the same for this watch: a plated case is no steel case, whatever the procedure was
// written for.
#include "ticket/bind_steps.h"

#include <algorithm>
#include <iterator>

namespace benchleaf::ticket {

namespace {

using Step = model::Procedure::Step;

References own_parts(const Context& context, const References& named) {
  References own;
  for (const RecordRef& one : named) {
    if (context.has_role(one, "case")) {
      for (const RecordRef& part : context.case_materials()) add_once(own, part);
    } else if (context.has_role(one, "crystal") || context.has_role(one, "loose-crystal")) {
      add_once(own, context.crystal_part(one));
    } else {
      add_once(own, one);
    }
  }
  return own;
}

bool is_graded(const Step& step) { return !step.grade.empty(); }

/// The steps that sand, one for each rung of the ladder: the words of the first and the last stay at the ends.
void climb(const std::vector<std::string>& rungs, std::vector<Step>& steps) {
  const auto first = std::find_if(steps.begin(), steps.end(), is_graded);
  if (first == steps.end() || rungs.empty()) return;
  std::vector<Step> graded;
  std::copy_if(steps.begin(), steps.end(), std::back_inserter(graded), is_graded);
  std::vector<Step> climbed;
  for (std::size_t i = 0; i < rungs.size(); ++i) {
    const bool last = i > 0 && i + 1 == rungs.size();
    climbed.push_back(last ? graded.back() : graded[std::min(i, graded.size() > 1 ? graded.size() - 2 : 0)]);
    climbed.back().grade = rungs[i];
  }
  const auto at = first - steps.begin();
  steps.erase(std::remove_if(steps.begin(), steps.end(), is_graded), steps.end());
  steps.insert(steps.begin() + at, climbed.begin(), climbed.end());
}

/// Parts and materials of this watch, as far as they are known, and those that the steps name.
References things_there(const Context& context, const model::Procedure& procedure) {
  References there = context.case_materials();
  const auto add = [&there](const References& more) { there.insert(there.end(), more.begin(), more.end()); };
  add(context.watch.inside);
  for (const model::Module* module : context.modules()) add(module->parts);
  for (const Step& step : procedure.steps) {
    add(step.on);
    add(step.reaches);
  }
  for (std::size_t i = there.size(); i > 0; --i) add(bench::materials_of(context.world(), there[i - 1]));
  return there;
}

void drop_idle(const Context& context, model::Procedure& procedure) {
  const References there = things_there(context, procedure);
  const auto idle = [&](const RecordRef& caution) {
    return !caution.empty() && !bench::has_to_guard(context.world(), caution, there);
  };
  auto& head = procedure.cautions;
  head.erase(std::remove_if(head.begin(), head.end(), idle), head.end());
  auto& steps = procedure.steps;
  steps.erase(std::remove_if(steps.begin(), steps.end(), [&idle](const Step& step) { return idle(step.caution); }), steps.end());
}

}  // namespace

model::Procedure bind_steps(const Context& context, const model::Procedure& procedure,
                            const std::vector<model::Watch::Filling>& fill, const std::vector<std::string>& rungs) {
  bench::Binding binding;
  for (const auto& slot : procedure.slots) {
    if (!slot.allowed.empty()) binding[slot.name] = slot.allowed.front();
  }
  for (const auto& filling : fill) binding[filling.slot] = filling.record;
  model::Procedure bound = bench::bound(procedure, binding);
  for (Step& step : bound.steps) {
    step.on = own_parts(context, step.on);
    step.reaches = own_parts(context, step.reaches);
  }
  climb(rungs, bound.steps);
  return bound;
}

void put_cautions(const Context& context, model::Procedure& procedure) {
  const std::vector<bench::CautionNeed> needs = bench::caution_needs(context.world(), procedure);
  References read = procedure.cautions;
  std::vector<Step> steps;
  for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
    if (!procedure.steps[i].caution.empty()) read.push_back(procedure.steps[i].caution);
    for (const bench::CautionNeed& need : needs) {
      if (need.step != i || has(read, need.caution)) continue;
      read.push_back(need.caution);
      Step caution;
      caution.caution = need.caution;
      steps.push_back(std::move(caution));
    }
    steps.push_back(procedure.steps[i]);
  }
  procedure.steps = std::move(steps);
  drop_idle(context, procedure);
}

void warn_of_leaks(const Context& context, const Marks& marks, model::Procedure& procedure) {
  References cautions;
  for (const RecordRef& reference : context.residues()) {
    const auto* residue = context.desk.records.find<model::Residue>(reference);
    if (residue == nullptr || residue->left_by.empty()) continue;
    for (const RecordRef& caution : residue->cautions) {
      if (!has(procedure.cautions, caution)) add_once(cautions, caution);
    }
  }
  // where nobody has looked, what lies there may be a crust: the cautions of every residue that is dry and alkaline
  if (marks.count(Mark::leak_unchecked) > 0) {
    for (const auto& [id, residue] : context.desk.records.residues) {
      if (residue.side != model::Side::alkaline || residue.left_by.empty() || residue.stays || residue.cautions.empty()) continue;
      add_once(cautions, residue.cautions.front());
    }
  }
  std::vector<Step> steps;
  for (const RecordRef& caution : cautions) {
    Step step;
    step.caution = caution;
    steps.push_back(std::move(step));
  }
  procedure.steps.insert(procedure.steps.begin(), steps.begin(), steps.end());
}

}  // namespace benchleaf::ticket
