// In: the jobs of a watch, their procedures. Out: the procedures with this watch's parts and grades in their steps, judged; one
// with a step that the records forbid is left out, with the reason and a finding. What its slots are filled with is the watch's
// own: a plated case is no steel case, whatever the procedure was written for.
#include <algorithm>
#include <iterator>

#include "base/quantity.h"
#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

using Step = model::Procedure::Step;

model::References parts_for(const Planner& planner, const model::RecordRef& named) {
  if (named == "part/steel-case" || named == "part/plated-case") return case_materials(planner.watch);
  if (named == "part/acrylic-crystal" || named == "part/loose-acrylic-crystal" || named == "part/mineral-crystal")
    return {model::RecordRef(crystal_part(planner, named))};
  return {named};
}

void put_own_parts(const Planner& planner, model::References& references) {
  model::References own;
  for (const model::RecordRef& reference : references) {
    for (model::RecordRef& part : parts_for(planner, reference)) {
      if (!holds(own, part)) own.push_back(std::move(part));
    }
  }
  references = std::move(own);
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

/// Whether the words name a grade that is no rung.
bool names_another_grade(const std::string& words, const std::vector<std::string>& rungs) {
  for (std::size_t at = words.find('P'); at != std::string::npos; at = words.find('P', at + 1)) {
    std::size_t end = at + 1;
    while (end < words.size() && words[end] >= '0' && words[end] <= '9') ++end;
    if (end - at >= 3 && !holds(rungs, words.substr(at, end - at))) return true;
  }
  return false;
}

/// The sentences that name no grade but those of the ladder: where to begin, and what to skip, is the ladder's to say.
std::string by_ladder(const std::string& words, const std::vector<std::string>& rungs) {
  std::string kept;
  for (std::size_t at = 0; at < words.size();) {
    const std::size_t stop = words.find(". ", at);
    const std::size_t end = stop == std::string::npos ? words.size() : stop + 1;
    const std::string sentence = words.substr(at, end - at);
    const bool skips = sentence.find("skips this step") != std::string::npos;
    if (!skips && !names_another_grade(sentence, rungs)) kept += (kept.empty() ? "" : " ") + sentence;
    at = stop == std::string::npos ? end : end + 1;
  }
  return kept;
}

void speak_of_ladder(const std::vector<std::string>& rungs, model::Procedure& procedure) {
  if (rungs.empty()) return;
  for (Step& step : procedure.steps) {
    step.text = by_ladder(step.text, rungs);
    step.see = by_ladder(step.see, rungs);
  }
  auto& stops = procedure.stop;
  for (std::string& stop : stops) {
    if (names_another_grade(stop, rungs))
      stop = "The scratch is still felt after " + rungs.front() + "; the crystal is changed instead";
  }
}

/// Parts and materials of this watch, as far as they are known, and those that the steps name.
model::References things_there(const Planner& planner, const model::Procedure& procedure) {
  model::References there = case_materials(planner.watch);
  const auto add = [&there](const model::References& more) { there.insert(there.end(), more.begin(), more.end()); };
  add(planner.watch.inside);
  for (const model::Module* module : planner.modules()) add(module->parts);
  for (const Step& step : procedure.steps) {
    add(step.on);
    add(step.reaches);
  }
  for (std::size_t i = there.size(); i > 0; --i)
    add(bench::materials_of({planner.desk.records, planner.desk.tables}, there[i - 1]));
  return there;
}

/// A procedure is written for any watch: what it says of a part that this one has not is left out.
void drop_idle_cautions(const Planner& planner, model::Procedure& procedure) {
  const model::References there = things_there(planner, procedure);
  const bench::StepWorld world{planner.desk.records, planner.desk.tables};
  const auto idle = [&](const model::RecordRef& caution) {
    return !caution.empty() && !bench::has_to_guard(world, caution, there);
  };
  auto& head = procedure.cautions;
  head.erase(std::remove_if(head.begin(), head.end(), idle), head.end());
  auto& steps = procedure.steps;
  steps.erase(std::remove_if(steps.begin(), steps.end(), [&idle](const Step& step) { return idle(step.caution); }), steps.end());
}

/// Every caution that a step needs and that has not been read before it goes directly before it.
void add_cautions(const bench::StepWorld& world, model::Procedure& procedure) {
  const std::vector<bench::CautionNeed> needs = bench::caution_needs(world, procedure);
  model::References read = procedure.cautions;
  std::vector<Step> steps;
  for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
    if (!procedure.steps[i].caution.empty()) read.push_back(procedure.steps[i].caution);
    for (const bench::CautionNeed& need : needs) {
      if (need.step != i || holds(read, need.caution)) continue;
      read.push_back(need.caution);
      Step caution;
      caution.caution = need.caution;
      steps.push_back(std::move(caution));
    }
    steps.push_back(procedure.steps[i]);
  }
  procedure.steps = std::move(steps);
}

/// What lies in the watch is met when its back is lifted, not when its own job begins. Where nobody knows, it may be a crust.
void warn_of_leaks(const Planner& planner, model::Procedure& procedure) {
  constexpr const char* kCrust = "caution/caustic-crust";
  model::References cautions;
  const bool unknown = planner.watch.residues.empty() && !planner.watch.crust;
  if (unknown && planner.desk.records.find(kCrust) != nullptr) cautions.emplace_back(kCrust);
  for (const std::string& residue : planner.residues()) {
    const auto found = planner.desk.records.residues.find(Planner::id_of(residue));
    if (found == planner.desk.records.residues.end() || found->second.left_by.empty()) continue;
    for (const model::RecordRef& caution : found->second.cautions) {
      if (!holds(procedure.cautions, caution)) add_once(cautions, caution);
    }
  }
  std::vector<Step> steps;
  for (const model::RecordRef& caution : cautions) {
    Step step;
    step.caution = caution;
    steps.push_back(std::move(step));
  }
  procedure.steps.insert(procedure.steps.begin(), steps.begin(), steps.end());
}

bench::Binding binding_of(const model::Procedure& procedure, const model::Watch::Job& job) {
  bench::Binding binding;
  for (const auto& slot : procedure.slots) {
    if (!slot.allowed.empty()) binding[slot.name] = slot.allowed.front();
  }
  for (const auto& filling : job.fill) binding[filling.slot] = filling.record;
  return binding;
}

/// Why a procedure cannot be done on this watch, or empty.
std::string why_held(Planner& planner, const model::Procedure& procedure, std::size_t place) {
  const std::string path = "jobs." + std::to_string(place);
  if (is_polish(procedure) && !planner.no_ladder.empty()) return planner.no_ladder;
  for (const Step& step : procedure.steps) {
    for (const std::string& named : step.on) {
      if (named.empty() || named.front() != '$') continue;
      planner.find(report::Rule::ticket_slot, path, "nothing fills the slot " + named.substr(1) + " of " + procedure.id,
                   "fill it");
      return "nothing fills its slot " + named.substr(1);
    }
  }
  const auto faults = bench::check_steps({planner.desk.records, planner.desk.tables}, procedure);
  if (faults.empty()) return {};
  planner.find(report::Rule::ticket_step, path, procedure.id + " is left out: " + faults.front().message, faults.front().hint);
  return faults.front().message;
}

}  // namespace

std::string crystal_part(const Planner& planner, const std::string& named) {
  const std::string material = planner.crystal_material();
  const bool loose = named == "part/loose-acrylic-crystal";
  if (material.empty() || material == "material/acrylic") return loose ? named : "part/acrylic-crystal";
  return material == "material/mineral-glass" ? "part/mineral-crystal" : material;
}

model::References case_materials(const model::Watch& watch) {
  const bool known = watch.case_metal && !watch.case_metal->surface.empty();
  model::References materials;
  if (!known || watch.case_metal->surface == "material/gold-plate") materials.emplace_back("part/plated-case");
  if (known) materials.push_back(watch.case_metal->surface);
  if (!watch.case_metal) materials.emplace(materials.begin(), "part/steel-case");
  const model::RecordRef metal = watch.case_metal ? watch.case_metal->metal : model::RecordRef();
  if (!metal.empty() && (!known || metal != watch.case_metal->surface)) materials.push_back(metal);
  return materials;
}

int number_of_job(const Planner& planner, const char* procedure) {
  int number = 0;
  for (const PlanJob& job : planner.plan.jobs) {
    if (!job.held.empty()) continue;
    ++number;
    if (job.procedure == procedure) return number;
  }
  return 0;
}

void Planner::add_jobs() {
  const std::vector<model::Watch::Job> jobs = jobs_of_sheet(*this);
  for (std::size_t i = 0; i < jobs.size(); ++i) {
    const auto found = desk.records.procedures.find(id_of(jobs[i].procedure));
    if (found == desk.records.procedures.end()) continue;
    PlanJob job{jobs[i].procedure, bench::bound(found->second, binding_of(found->second, jobs[i])), {}};
    for (Step& step : job.bound.steps) {
      put_own_parts(*this, step.on);
      put_own_parts(*this, step.reaches);
    }
    climb(rungs, job.bound.steps);
    if (is_polish(job.bound)) speak_of_ladder(rungs, job.bound);
    job.held = why_held(*this, job.bound, i);
    add_cautions({desk.records, desk.tables}, job.bound);
    drop_idle_cautions(*this, job.bound);
    if (opens_back(job)) warn_of_leaks(*this, job.bound);
    plan.jobs.push_back(std::move(job));
  }
}

}  // namespace benchleaf::compose
