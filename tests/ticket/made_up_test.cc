// What must hold of any watch: five hundred made up from a fixed seed, each field there or not. The records are looked up here
// again, without the step checker that the plan was made by.
#include <algorithm>
#include <map>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "base/number.h"
#include "bench/step_checker.h"
#include "support/catch.h"
#include "ticket/planned.h"

using namespace benchleaf;
using test::drawer_of_demonstration;
using test::plan_of;
using test::real_book;

namespace {

/// Watches made up at random: each field is there or not, and what is there may contradict the rest.
class MadeUp {
 public:
  explicit MadeUp(unsigned seed) : random_(seed) {}

  model::Watch watch(int number) {
    const auto& records = real_book().records;
    model::Watch made;
    made.kind = model::Kind::watch;
    made.id = "made-up-" + std::to_string(number);
    made.title = "Made up " + std::to_string(number);
    if (coin()) made.number = "M-" + std::to_string(number);
    if (coin()) made.module = one_of(records.modules);
    if (coin()) made.crystal = one_of(records.crystals);
    if (coin())
      made.crystal_size = model::Watch::CrystalSize{length(15, 36), coin() ? length(15, 36) : std::nullopt, length(0.4, 2.5)};
    if (coin()) made.scratch = length(0.002, 0.4);
    if (coin()) made.cells_found = some_of(records.cells, 2);
    if (coin()) made.back = std::vector<std::string>{"snap", "screwed", "four-screws", "none"}[below(4)];
    if (coin()) made.gasket = one_of(records.gaskets);
    if (coin()) made.gasket_seat = length(6, 42);
    if (coin()) {
      made.case_metal = model::Watch::Case{{}, {}, {}};
      if (coin()) made.case_metal->metal = one_of(records.materials);
      if (coin()) made.case_metal->surface = one_of(records.materials);
    }
    if (coin()) made.residues = some_of(records.residues, 3);
    if (coin()) made.inside = some_of(records.parts, 5);
    if (coin()) made.symptoms = some_of(records.symptoms, 2);
    if (coin()) made.lug_width = length(8, 24);
    if (coin()) made.found = "made up";
    add_sightings(made);
    if (coin()) {
      for (const model::RecordRef& procedure : some_of(records.procedures, 6)) made.jobs.push_back({procedure, {}});
      if (coin())
        made.jobs.push_back({model::RecordRef("procedure/polish-a-crystal"),
                             {{"crystal", model::RecordRef(coin() ? "part/acrylic-crystal" : "part/loose-acrylic-crystal")}}});
    }
    return made;
  }

  bool coin() { return below(3) > 0; }

 private:
  /// What the bench sees where it does not know.
  void add_sightings(model::Watch& made) {
    const auto& records = real_book().records;
    if (coin()) made.display = word({"lcd", "led", "hands"});
    if (coin()) made.crystal_signs = {word({"soft", "hard"}), word({"warm", "cool"})};
    if (coin()) made.nail = word({"catches", "seen-only"});
    if (coin()) made.cell_count = static_cast<int>(below(4)) + 1;
    if (coin()) made.cell_size = model::Watch::CellSize{length(4, 25), length(1, 6)};
    if (coin()) made.old_gasket = {length(6, 42), coin() ? length(0.7, 0.7) : length(0.71, 0.79)};
    if (coin()) made.groove = {length(0.3, 0.9), length(0.5, 1.5)};
    if (coin()) made.crust = model::Watch::Crust{word({"white", "grey", "green", "black", "brown", "oily"}), "at the leaf"};
    if (coin()) made.lume = word({"none", "some"});
    if (coin()) made.wants = "worn again";
    if (coin()) return;
    made.on_hand = model::Watch::OnHand{{"P400", "P1200"}, some_of(records.chemistries, 6), {}};
    made.on_hand->gaskets.push_back({one_of(records.gaskets), length(6, 42)});
  }
  std::string word(const std::vector<std::string>& words) { return words[below(words.size())]; }
  std::size_t below(std::size_t end) { return random_() % end; }
  template <class Records>
  model::RecordRef one_of(const Records& records) {
    return std::next(records.begin(), static_cast<std::ptrdiff_t>(below(records.size())))->second.reference();
  }
  template <class Records>
  model::References some_of(const Records& records, std::size_t most) {
    std::set<model::RecordRef> some;
    for (std::size_t i = below(most) + 1; i > 0; --i) some.insert(one_of(records));
    return {some.begin(), some.end()};
  }
  std::optional<base::Quantity> length(double from, double to) {
    const double share = static_cast<double>(below(1000)) / 1000;
    const auto read = base::parse_quantity(base::fixed_text(from + share * (to - from), 3, base::Trailing::cut) + " mm");
    const auto* quantity = std::get_if<base::Quantity>(&read);
    return quantity == nullptr ? std::nullopt : std::optional(*quantity);
  }

  std::mt19937 random_;
};

/// Looked up in the records alone, without the step checker: a liquid or an abrasive that a step puts on a material which its own
/// record says it ruins.
std::string ruins(const model::Procedure& procedure) {
  const auto& made = real_book();
  for (const auto& step : procedure.steps) {
    model::References materials;
    for (const model::RecordRef& part : step.on) {
      const auto of = bench::materials_of({made.records, made.tables}, part);
      materials.insert(materials.end(), of.begin(), of.end());
    }
    for (const model::RecordRef& agent : step.with) {
      const auto* liquid = bench::chemistry_named({made.records, made.tables}, agent);
      const auto* abrasive = bench::abrasive_named({made.records, made.tables}, agent);
      if (liquid == nullptr && abrasive == nullptr) continue;
      for (const auto& verdict : liquid != nullptr ? liquid->on_materials : abrasive->on_materials) {
        const bool meets = std::find(materials.begin(), materials.end(), verdict.material) != materials.end();
        if (meets && verdict.verdict == model::Verdict::never) return agent + " on " + verdict.material;
      }
    }
  }
  return {};
}

constexpr const char* kDirectCurrent = "caution/no-direct-current";

/// The first caution that a step needs and that has not been read before it, or empty. Where no liquid crystal is, none is hurt.
std::string lacks_caution(const model::Procedure& procedure, std::size_t& needs_seen, bool has_crystal_display = true) {
  const auto& made = real_book();
  for (const auto& need : bench::caution_needs({made.records, made.tables}, procedure)) {
    ++needs_seen;
    if (!has_crystal_display && need.caution == kDirectCurrent) continue;
    bool read = std::find(procedure.cautions.begin(), procedure.cautions.end(), need.caution) != procedure.cautions.end();
    for (std::size_t i = 0; i < need.step; ++i) read = read || procedure.steps[i].caution == need.caution;
    if (!read) return need.caution + " before step " + std::to_string(need.step) + " of " + procedure.id;
  }
  return {};
}

bool is_among(const std::vector<std::string>& list, const std::string& word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

bool signs_agree(const model::Watch::CrystalSigns& signs) {
  return (signs.scratches == "soft" && signs.feels == "warm") || (signs.scratches == "hard" && signs.feels == "cool");
}

/// Of the sections that are made up, 0.7 mm is one that round gaskets have.
bool is_section_on_record(const model::Watch::OldGasket& old) { return old.section && base::terminal(*old.section) == "0.7 mm"; }

/// Whether there may be a liquid crystal: the module says so itself; of those that shine in red none has one.
bool may_have_crystal_display(const model::Watch& watch, const model::Procedure& procedure) {
  const auto& records = real_book().records;
  for (const auto& step : procedure.steps) {
    if (is_among(step.on, "part/display-glass") || is_among(step.reaches, "part/display-glass")) return true;
  }
  if (is_among(watch.inside, "part/display-glass")) return true;
  if (watch.module.empty()) return watch.display != "led";
  return is_among(records.modules.at(watch.module.id()).cautions, kDirectCurrent);
}

bool says(const model::Procedure& procedure, const std::string& caution) {
  return is_among(procedure.cautions, caution) || std::any_of(procedure.steps.begin(), procedure.steps.end(),
                                                              [&caution](const auto& step) { return step.caution == caution; });
}

/// Whether one of these is among the jobs that the watch names.
bool names_job(const model::Watch& watch, const std::vector<std::string>& procedures) {
  return std::any_of(watch.jobs.begin(), watch.jobs.end(),
                     [&procedures](const auto& job) { return is_among(procedures, job.procedure); });
}

/// Acrylic alone is sanded; what is not known may be acrylic.
bool may_be_acrylic(const model::Watch& watch) {
  if (watch.crystal.empty()) return !signs_agree(watch.crystal_signs) || watch.crystal_signs.scratches == "soft";
  return real_book().records.crystals.at(watch.crystal.id()).material == "material/acrylic";
}

/// Without a list of jobs the depth decides whether it is sanded.
bool asks_scratch(const model::Watch& watch) {
  return may_be_acrylic(watch) &&
         (watch.jobs.empty() || names_job(watch, {"procedure/polish-a-crystal", "procedure/polish-an-edge-or-underside"}));
}

bool asks_crystal_size(const model::Watch& watch) {
  return asks_scratch(watch) || names_job(watch, {"procedure/change-a-glass-crystal", "procedure/change-a-pressed-crystal"});
}

/// Bars come out with the strap, and for the bath of a steel case, which is usual.
bool asks_lug_width(const model::Watch& watch) {
  const bool steel = watch.case_metal && watch.case_metal->surface == "material/stainless-steel";
  return watch.jobs.empty()
             ? steel
             : names_job(watch, {"procedure/take-the-strap-off", "procedure/fit-spring-bars", "procedure/clean-a-steel-case"});
}

/// The fields that a watch record can leave out, and whether this one does; some are asked only where a job uses them.
std::map<std::string, bool> missing_fields(const model::Watch& watch) {
  return {{"number", watch.number.empty()},
          {"found", watch.found.empty()},
          {"symptoms", watch.symptoms.empty()},
          {"back", watch.back.empty()},
          {"case.metal", !watch.case_metal || watch.case_metal->metal.empty()},
          {"case.surface", !watch.case_metal || watch.case_metal->surface.empty()},
          {"lume", watch.lume.empty() && !is_among(watch.inside, "part/luminous-paint")},
          {"lug-width", !watch.lug_width && asks_lug_width(watch)},
          {"crystal", watch.crystal.empty() && !signs_agree(watch.crystal_signs)},
          {"crystal-size.diameter", !watch.crystal_size && asks_crystal_size(watch)},
          {"crystal-size.thickness", !watch.crystal_size && asks_crystal_size(watch)},
          {"scratch", !watch.scratch && watch.nail.empty() && asks_scratch(watch)},
          {"module", watch.module.empty()},
          {"cells-found", watch.cells_found.empty() && !watch.cell_size},
          {"crust.colour", watch.residues.empty() && !watch.crust},
          {"residues", watch.residues.empty() && watch.crust.has_value()},
          {"inside", watch.inside.empty()},
          {"gasket", watch.gasket.empty() && !is_section_on_record(watch.old_gasket)},
          {"gasket-seat", !watch.gasket_seat},
          {"jobs", watch.jobs.empty()}};
}

}  // namespace

TEST_CASE("no plan of five hundred watches holds a forbidden step, a grade that is not there, or lacks a caution or a check") {
  MadeUp made_up(20261126);
  std::size_t done = 0;
  std::size_t held = 0;
  std::size_t needs = 0;
  std::size_t checks = 0;
  std::size_t graded = 0;
  std::size_t idle = 0;
  for (int number = 0; number < 500; ++number) {
    const model::Watch watch = made_up.watch(number);
    const model::Stock* drawer = made_up.coin() ? &drawer_of_demonstration() : nullptr;
    report::Findings findings;
    const compose::Plan plan = plan_of(watch, drawer, findings);
    INFO(watch.id);
    for (const auto& [field, is_missing] : missing_fields(watch)) {
      const bool checked = std::any_of(plan.checks.begin(), plan.checks.end(), [&field = field](const auto& one) {
        return one.field == field && !one.what.empty() && !one.how.empty();
      });
      INFO(field);
      CHECK(checked == is_missing);
      checks += is_missing ? 1 : 0;
    }
    for (const compose::PlanJob& job : plan.jobs) {
      if (!job.held.empty()) {
        ++held;
        continue;
      }
      ++done;
      INFO(job.procedure);
      CHECK(bench::check_steps({real_book().records, real_book().tables}, job.bound).empty());
      CHECK(ruins(job.bound).empty());
      const bool crystal_display = may_have_crystal_display(watch, job.bound);
      CHECK(lacks_caution(job.bound, needs, crystal_display).empty());
      CHECK_FALSE((!crystal_display && says(job.bound, kDirectCurrent)));
      idle += crystal_display ? 0 : 1;
      for (const auto& step : job.bound.steps) {
        if (step.grade.empty() || (drawer == nullptr && !watch.on_hand)) continue;
        ++graded;
        if (drawer == nullptr) {
          CHECK(is_among(watch.on_hand->grades, step.grade));
          continue;
        }
        CHECK(std::any_of(drawer->items.begin(), drawer->items.end(),
                          [&step](const auto& item) { return item.grade == step.grade && item.count > 0; }));
      }
    }
    if (number % 50 == 0) {
      const model::Leaflet leaflet =
          compose::ticket_leaflet(real_book().records, real_book().tables, real_book().derived, plan, findings);
      CHECK(leaflet.blocks.size() > 20);
    }
  }
  CHECK(done > 1000);
  CHECK(held > 50);
  CHECK(needs > 3000);
  CHECK(checks > 1000);
  CHECK(graded > 10);
  CHECK(idle > 100);
}

TEST_CASE("the checks of this test refuse what is wrong") {
  const auto& records = real_book().records;
  model::Procedure crust = records.procedures.at("clear-alkaline-crust");
  std::size_t needs = 0;
  CHECK(lacks_caution(crust, needs).empty());
  crust.steps.erase(
      std::remove_if(crust.steps.begin(), crust.steps.end(), [](const auto& step) { return !step.caution.empty(); }),
      crust.steps.end());
  CHECK_FALSE(lacks_caution(crust, needs).empty());
  for (auto& step : crust.steps) {
    if (!step.with.empty()) step.on = {model::RecordRef("part/polariser")};
  }
  CHECK_FALSE(ruins(crust).empty());
}
