// In: the jobs of a watch, their procedures. Out: the procedures with this watch's parts and grades in their steps, judged; one
// with a step that the records forbid is left out, with the reason and a finding. What its slots are filled with is the watch's
// own: a plated case is no steel case, whatever the procedure was written for.
#include <algorithm>
#include <iterator>

#include "base/quantity.h"
#include "compose/ticket/planner.h"

namespace benchleaf::compose {

namespace {

using Step = model::Procedure::Step;

std::vector<std::string> parts_for(const Planner& planner, const std::string& named) {
  if (named == "part/steel-case" || named == "part/plated-case") return case_materials(planner.watch);
  if (named == "part/acrylic-crystal" || named == "part/loose-acrylic-crystal" || named == "part/mineral-crystal")
    return {crystal_part(planner, named)};
  return {named};
}

void put_own_parts(const Planner& planner, std::vector<std::string>& references) {
  std::vector<std::string> own;
  for (const std::string& reference : references) {
    for (std::string& part : parts_for(planner, reference)) {
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

/// Every caution that a step needs and that has not been read before it goes directly before it.
void add_cautions(const bench::StepWorld& world, model::Procedure& procedure) {
  const std::vector<bench::CautionNeed> needs = bench::caution_needs(world, procedure);
  std::vector<std::string> read = procedure.cautions;
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
  const bool graded = std::any_of(procedure.steps.begin(), procedure.steps.end(), is_graded);
  if (graded && !planner.no_ladder.empty()) return planner.no_ladder;
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

std::vector<std::string> case_materials(const model::Watch& watch) {
  const bool known = watch.case_metal && !watch.case_metal->surface.empty();
  std::vector<std::string> materials;
  if (!known || watch.case_metal->surface == "material/gold-plate") materials.emplace_back("part/plated-case");
  if (known) materials.push_back(watch.case_metal->surface);
  if (!watch.case_metal) materials.insert(materials.begin(), "part/steel-case");
  const std::string metal = watch.case_metal ? watch.case_metal->metal : std::string();
  if (!metal.empty() && (!known || metal != watch.case_metal->surface)) materials.push_back(metal);
  return materials;
}

void Planner::add_jobs() {
  const std::vector<model::Watch::Job> jobs = jobs_of(*this);
  for (std::size_t i = 0; i < jobs.size(); ++i) {
    const auto found = desk.records.procedures.find(id_of(jobs[i].procedure));
    if (found == desk.records.procedures.end()) continue;
    PlanJob job{jobs[i].procedure, bench::bound(found->second, binding_of(found->second, jobs[i])), {}};
    for (Step& step : job.bound.steps) {
      put_own_parts(*this, step.on);
      put_own_parts(*this, step.reaches);
    }
    climb(rungs, job.bound.steps);
    if (std::any_of(job.bound.steps.begin(), job.bound.steps.end(), is_graded)) speak_of_ladder(rungs, job.bound);
    job.held = why_held(*this, job.bound, i);
    add_cautions({desk.records, desk.tables}, job.bound);
    plan.jobs.push_back(std::move(job));
  }
}

namespace {

/// What clears a residue. A watch without a list of jobs says nothing of the age of its leak, so that each but lithium's counts
/// as an old one, which may hold mercury.
void add_clearing(const Planner& planner, const std::string& residue, std::vector<model::Watch::Job>& jobs) {
  const auto& records = planner.desk.records;
  const auto found = records.residues.find(Planner::id_of(residue));
  if (found == records.residues.end()) return;
  const std::vector<std::string>& systems = found->second.left_by;
  const bool may_be_old = holds(systems, "alkaline") || holds(systems, "silver-oxide") || holds(systems, "mercuric-oxide");
  if (may_be_old && records.procedures.count("lift-an-old-leak") > 0) {
    const bool there =
        std::any_of(jobs.begin(), jobs.end(), [](const auto& job) { return job.procedure == "procedure/lift-an-old-leak"; });
    if (!there) jobs.push_back({"procedure/lift-an-old-leak", {}});
    return;
  }
  const auto clears = std::find_if(records.procedures.begin(), records.procedures.end(), [&residue](const auto& one) {
    return std::any_of(one.second.steps.begin(), one.second.steps.end(),
                       [&residue](const Step& step) { return holds(step.meets, residue); });
  });
  if (clears != records.procedures.end()) jobs.push_back({clears->second.reference(), {}});
}

/// The usual jobs in the order of the bench; one that the handbook lacks is left out.
class UsualJobs {
 public:
  explicit UsualJobs(const Planner& planner) : planner_(planner) {}

  void add(const char* id, std::vector<model::Watch::Filling> fill = {}) {
    if (planner_.desk.records.procedures.count(id) > 0) jobs_.push_back({std::string("procedure/") + id, std::move(fill)});
  }

  void open_back() {
    if (planner_.watch.back == "snap") add("open-a-snap-back");
    if (planner_.watch.back == "screwed") add("open-a-screwed-back");
    if (planner_.watch.back == "four-screws") add("open-a-four-screw-back");
  }

  void close_back() {
    if (planner_.watch.back == "snap") add("close-a-snap-back");
    if (planner_.watch.back == "screwed") add("close-a-screwed-back");
    if (planner_.watch.back == "four-screws") add("close-a-four-screw-back");
  }

  /// What may be of lithium or not is left alone: one bears no water, the other is lifted damp.
  void clear_leaks() {
    if (planner_.may_bear_no_water()) return;
    for (const std::string& residue : planner_.residues()) add_clearing(planner_, residue, jobs_);
  }

  void change_cells() {
    const auto& found = planner_.watch.cells_found;
    const bool mercury = std::any_of(found.begin(), found.end(), [&](const std::string& cell) {
      return planner_.desk.cell(cell) != nullptr && planner_.desk.cell(cell)->system == "mercuric-oxide";
    });
    if (found.empty() && planner_.module() == nullptr && !planner_.watch.cell_size) add("name-a-worn-cell");
    add(mercury ? "replace-a-mercury-cell" : "change-the-cell");
    if (holds(planner_.watch.symptoms, "symptom/blank-display")) add("wake-a-blank-display");
    add("measure-consumption");
  }

  /// Sanding waits until the thickness is known; glass is left as it is.
  void look_after_crystal() {
    const model::Watch& watch = planner_.watch;
    const std::string material = planner_.crystal_material();
    const bool scratched = is_known(watch.scratch) || !watch.nail.empty();
    if (!scratched) return;
    if (material == "material/mineral-glass") add("leave-glass-unpolished");
    const bool measured = watch.crystal_size && is_known(watch.crystal_size->thickness);
    if (material == "material/acrylic" && measured) add("polish-a-crystal", {{"crystal", "part/acrylic-crystal"}});
  }

  void clean_case() {
    const auto& metal = planner_.watch.case_metal;
    if (metal && metal->surface == "material/gold-plate") add("clean-a-gold-coloured-case");
    if (metal && metal->surface == "material/stainless-steel") add("clean-a-steel-case");
  }

  void seal() {
    if (!is_known(planner_.watch.gasket_seat)) add("measure-a-gasket");
    add("renew-back-gasket");
  }

  std::vector<model::Watch::Job> take() { return std::move(jobs_); }

 private:
  const Planner& planner_;
  std::vector<model::Watch::Job> jobs_;
};

}  // namespace

std::vector<model::Watch::Job> jobs_of(const Planner& planner) {
  if (!planner.watch.jobs.empty()) return planner.watch.jobs;
  UsualJobs usual(planner);
  usual.add("look-before-you-touch");
  usual.open_back();
  usual.clear_leaks();
  usual.look_after_crystal();  // before a new cell lies under water and dust
  usual.clean_case();
  usual.change_cells();
  usual.seal();
  usual.add("check-before-closing");
  usual.close_back();
  usual.add("check-for-fog");
  usual.add("hand-over");
  return usual.take();
}

}  // namespace benchleaf::compose
