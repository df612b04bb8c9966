// In: what is known of a watch. Out: its jobs: those that it names, else the usual ones, in the order of the bench.
#include <algorithm>

#include "ticket/planner.h"

namespace benchleaf::compose {

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
    if (!there) jobs.push_back({model::RecordRef("procedure/lift-an-old-leak"), {}});
    return;
  }
  const auto clears = std::find_if(records.procedures.begin(), records.procedures.end(), [&residue](const auto& one) {
    return std::any_of(one.second.steps.begin(), one.second.steps.end(),
                       [&residue](const auto& step) { return holds(step.meets, residue); });
  });
  if (clears != records.procedures.end()) jobs.push_back({clears->second.reference(), {}});
}

/// The usual jobs in the order of the bench; one that the handbook lacks is left out.
class UsualJobs {
 public:
  explicit UsualJobs(const Planner& planner) : planner_(planner) {}

  void add(const char* id, std::vector<model::Watch::Filling> fill = {}) {
    if (planner_.desk.records.procedures.count(id) > 0)
      jobs_.push_back({model::RecordRef(model::Kind::procedure, id), std::move(fill)});
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
    if (waits_for_cell(planner_)) add("name-a-worn-cell");
    const auto& found = planner_.watch.cells_found;
    const bool mercury = std::any_of(found.begin(), found.end(), [&](const std::string& cell) {
      return planner_.desk.cell(cell) != nullptr && planner_.desk.cell(cell)->system == "mercuric-oxide";
    });
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
    if (material == "material/acrylic" && measured)
      add("polish-a-crystal", {{"crystal", model::RecordRef("part/acrylic-crystal")}});
  }

  void clean_case() {
    const auto& metal = planner_.watch.case_metal;
    if (metal && metal->surface == "material/gold-plate") add("clean-a-gold-coloured-case");
    if (metal && metal->surface == "material/stainless-steel") add("clean-a-steel-case");
  }

  /// Bars that come out for the case go in again.
  void fit_bars() {
    if (works_on(planner_, jobs_, "part/spring-bar")) add("fit-spring-bars");
  }

  void measure_seat() {
    if (!is_known(planner_.watch.gasket_seat)) add("measure-a-gasket");
  }

  void seal() {
    measure_seat();
    add("renew-back-gasket");
  }

  std::vector<model::Watch::Job> take() { return std::move(jobs_); }

 private:
  const Planner& planner_;
  std::vector<model::Watch::Job> jobs_;
};

/// All of them, or as far as they can be done before the watch is planned again.
std::vector<model::Watch::Job> usual_jobs(const Planner& planner, bool this_sheet_alone) {
  UsualJobs usual(planner);
  usual.add("look-before-you-touch");
  if (this_sheet_alone && stays_closed(planner)) return usual.take();
  usual.open_back();
  usual.clear_leaks();
  if (this_sheet_alone && waits_for_cell(planner)) {
    usual.measure_seat();
    usual.add("name-a-worn-cell");
    return usual.take();
  }
  usual.look_after_crystal();  // before a new cell lies under water and dust
  usual.clean_case();
  usual.change_cells();
  usual.seal();
  usual.add("check-before-closing");
  usual.close_back();
  usual.add("check-for-fog");
  usual.fit_bars();
  usual.add("hand-over");
  return usual.take();
}

}  // namespace

bool works_on(const Planner& planner, const std::vector<model::Watch::Job>& jobs, const std::string& part) {
  const auto& procedures = planner.desk.records.procedures;
  return std::any_of(jobs.begin(), jobs.end(), [&](const model::Watch::Job& job) {
    const auto found = procedures.find(Planner::id_of(job.procedure));
    if (found == procedures.end()) return false;
    const auto& steps = found->second.steps;
    return std::any_of(steps.begin(), steps.end(), [&part](const auto& step) { return holds(step.on, part); });
  });
}

bool opens_back(const PlanJob& job) { return job.held.empty() && Planner::id_of(job.procedure).rfind("open-a-", 0) == 0; }

bool stays_closed(const Planner& planner) {
  const model::Watch& watch = planner.watch;
  return watch.jobs.empty() && (watch.back.empty() || watch.back == "none");
}

bool waits_for_cell(const Planner& planner) {
  const model::Watch& watch = planner.watch;
  return watch.jobs.empty() && watch.cells_found.empty() && !watch.cell_size && planner.module() == nullptr;
}

std::vector<model::Watch::Job> jobs_of(const Planner& planner) {
  return planner.watch.jobs.empty() ? usual_jobs(planner, false) : planner.watch.jobs;
}

std::vector<model::Watch::Job> jobs_of_sheet(const Planner& planner) {
  return planner.watch.jobs.empty() ? usual_jobs(planner, true) : planner.watch.jobs;
}

}  // namespace benchleaf::compose
