// What a stranger with the open watch before him asks of each line: that it can be done from the sheet alone. Expected words and
// numbers are those of the records that stand beside each check.
#include <algorithm>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "bench/step_checker.h"
#include "support/catch.h"
#include "ticket/planned.h"

using namespace benchleaf;
using test::drawer_of_demonstration;
using test::need_of;
using test::plan_of;
using test::real_book;
using test::section_of;
using test::words_of;

namespace {

/// A watch with a snap back, of which nothing else is known.
model::Watch bare(const std::string& id) {
  model::Watch watch;
  watch.kind = model::Kind::watch;
  watch.id = id;
  watch.back = "snap";
  return watch;
}

/// The same, and the cell in it can be read.
model::Watch with_cell(const std::string& id) {
  model::Watch watch = bare(id);
  watch.cells_found = {model::RecordRef("cell/sr44w")};
  return watch;
}

const model::Watch& demonstration(int number) { return real_book().records.watches.at("quillfen-d-00" + std::to_string(number)); }

compose::Plan plan_of(const model::Watch& watch) {
  report::Findings findings;
  return test::plan_of(watch, nullptr, findings);
}

base::Quantity quantity(const std::string& text) { return std::get<base::Quantity>(base::parse_quantity(text)); }

std::string words_of(const compose::PlanSection* section) {
  std::string words;
  if (section == nullptr) return words;
  for (const auto& line : section->lines) words += base::to_terminal(model::plain_text(line.runs)) + "\n";
  return words;
}

bool has(const std::string& words, const std::string& part) { return words.find(part) != std::string::npos; }

bool asks(const compose::Plan& plan, const std::string& field) {
  return std::any_of(plan.checks.begin(), plan.checks.end(), [&field](const auto& one) { return one.field == field; });
}

const compose::PlanJob* job_of(const compose::Plan& plan, const std::string& procedure) {
  const auto found = std::find_if(plan.jobs.begin(), plan.jobs.end(),
                                  [&procedure](const auto& job) { return job.procedure == "procedure/" + procedure; });
  return found == plan.jobs.end() ? nullptr : &*found;
}

bool cautions(const compose::PlanJob& job, const std::string& caution) {
  const auto& steps = job.bound.steps;
  return std::find(job.bound.cautions.begin(), job.bound.cautions.end(), caution) != job.bound.cautions.end() ||
         std::any_of(steps.begin(), steps.end(), [&caution](const auto& step) { return step.caution == caution; });
}

int cells_to_get(const compose::Plan& plan) {
  int count = 0;
  for (const auto& need : plan.needs) count += need.record.rfind("cell/", 0) == 0 ? need.count : 0;
  return count;
}

}  // namespace

TEST_CASE("a current is held against a figure, or the sheet says that there is none") {
  CHECK(has(words_of(plan_of(demonstration(2))), "healthy is 3 to 5 \u00B5A while dark."));
  model::Watch watch = with_cell("current");
  watch.display = "led";  // one kind on record
  const std::string red = words_of(plan_of(watch));
  CHECK(has(red,
            "Healthy by kind: light-emitting display, two cells, 2 to 10 \u00B5A while dark. Of another kind no healthy figure "
            "is on record: write the reading on the owner's card"));
  CHECK_FALSE(has(red, "are healthy"));
  watch.display = "lcd";
  const std::string grey = words_of(plan_of(watch));
  CHECK(has(grey, "liquid crystal, no lamp, 1 to 3 \u00B5A. Of another kind"));
  CHECK_FALSE(has(grey, "light-emitting display, two cells"));
  CHECK_FALSE(has(grey, "demonstration"));
  watch.module = model::RecordRef("module/lcd-scattering");  // its record has no figure
  CHECK(has(words_of(plan_of(watch)), "no healthy figure is on record"));
}

TEST_CASE("as many cells are got as the watch takes") {
  for (const auto& [id, module] : real_book().records.modules) {
    INFO(id);
    model::Watch watch = bare("cells");
    watch.module = model::RecordRef("module/" + id);
    const compose::Plan plan = plan_of(watch);
    CHECK(cells_to_get(plan) == module.cell_count);
    CHECK(has(words_of(section_of(plan, "card")), "Cell fitted: " + std::to_string(module.cell_count)) ==
          (module.cells.size() == 1));
  }
  model::Watch watch = bare("cells");
  watch.module = model::RecordRef("module/lcd-no-lamp");  // takes 7.9 x 5.4, 7.9 x 3.6 or 11.6 x 2.1 mm
  CHECK(has(words_of(section_of(plan_of(watch), "parts")), "in a well of its size"));
  watch.cells_found = {model::RecordRef("cell/lr736")};  // 7.9 x 3.6 mm
  CHECK(need_of(plan_of(watch), "cell/sr41sw") != nullptr);
  watch.cells_found.clear();
  watch.cell_size = model::Watch::CellSize{quantity("7.9 mm"), quantity("5.5 mm")};
  CHECK(need_of(plan_of(watch), "cell/sr754sw") != nullptr);
  CHECK(cells_to_get(plan_of(watch)) == 1);
}

TEST_CASE("bars are ordered where bars are fitted, and the lugs are measured where bars come out") {
  const auto bars = [](const compose::Plan& plan) { return need_of(plan, "part/spring-bar"); };
  CHECK(bars(plan_of(demonstration(1))) == nullptr);
  const compose::Plan second = plan_of(demonstration(2));
  REQUIRE(bars(second) != nullptr);
  CHECK(bars(second)->count == 2);
  CHECK(base::to_terminal(bars(second)->size) == "20 mm");
  model::Watch watch = bare("bars");
  watch.jobs = {{"procedure/change-the-cell", {}}};
  CHECK_FALSE(asks(plan_of(watch), "lug-width"));
  watch.jobs = {{"procedure/fit-spring-bars", {}}};
  CHECK(asks(plan_of(watch), "lug-width"));
  REQUIRE(bars(plan_of(watch)) != nullptr);
  CHECK(bars(plan_of(watch))->size.empty());
  watch = with_cell("bath");  // its bars come out for the bath
  watch.case_metal =
      model::Watch::Case{model::RecordRef("material/stainless-steel"), model::RecordRef("material/stainless-steel"), "none"};
  CHECK(job_of(plan_of(watch), "fit-spring-bars") != nullptr);
}

TEST_CASE("what was found has a job or somebody who does it") {
  const std::string words = words_of(section_of(plan_of(demonstration(3)), "never"));
  CHECK(has(demonstration(3).found, "dust under the crystal"));
  CHECK(has(words, "For somebody else: Dust on a dial under hands"));
}

TEST_CASE("a caution stands where there is something that it guards") {
  const compose::Plan hands = plan_of(demonstration(3));  // a glass crystal
  REQUIRE(job_of(hands, "check-for-fog") != nullptr);
  CHECK_FALSE(cautions(*job_of(hands, "check-for-fog"), "caution/crystal-in-press"));
  CHECK(cautions(*job_of(hands, "close-a-snap-back"), "caution/crystal-in-press"));
  const char* current = "caution/no-direct-current";
  for (const char* job : {"change-the-cell", "measure-consumption"}) {
    INFO(job);
    CHECK(cautions(*job_of(plan_of(demonstration(1)), job), current));
    CHECK_FALSE(cautions(*job_of(plan_of(demonstration(2)), job), current));
    CHECK_FALSE(cautions(*job_of(hands, job), current));
    CHECK(cautions(*job_of(plan_of(with_cell("unknown")), job), current));
  }
  model::Watch watch = with_cell("hands");  // may be hands over a grey window
  watch.display = "hands";
  CHECK(cautions(*job_of(plan_of(watch), "change-the-cell"), current));
  const bench::StepWorld world{real_book().records, real_book().tables};
  CHECK(bench::has_to_guard(world, model::RecordRef("caution/swallowed-cell"), {}));       // a person
  CHECK(bench::has_to_guard(world, model::RecordRef("caution/not-water-resistant"), {}));  // no part asks for it
  CHECK_FALSE(bench::has_to_guard(world, model::RecordRef("caution/no-direct-current"), {model::RecordRef("part/hands")}));
  CHECK(bench::has_to_guard(world, model::RecordRef("caution/thin-gold"), {model::RecordRef("material/gold-plate")}));
}

TEST_CASE("what the lines work with stands in the list of tools") {
  const std::vector<std::pair<std::string, std::string>> kNamed = {{"putty", "tool/putty"},
                                                                   {"clear bag", "tool/clear-bag"},
                                                                   {"With the leads", "tool/clip-leads"},
                                                                   {"mask on", "tool/dust-mask"}};
  std::size_t seen = 0;
  for (const model::Watch& watch : {demonstration(1), demonstration(2), demonstration(3), bare("little")}) {
    const compose::Plan plan = plan_of(watch);
    const std::string words = words_of(plan);
    for (const auto& [named, tool] : kNamed) {
      INFO(watch.id << " " << named);
      if (!has(words, named)) continue;
      CHECK(need_of(plan, tool) != nullptr);
      ++seen;
    }
  }
  CHECK(seen > 8);
  // the caution of the knife asks for it
  CHECK(need_of(plan_of(demonstration(1)), "tool/finger-stall") != nullptr);
}

TEST_CASE("what is measured in a job has room on its sheet") {
  const auto room = [](const compose::Plan& plan, const std::string& procedure) {
    const std::string title = real_book().records.procedures.at(procedure).title;
    const auto found = std::find_if(plan.sections.begin(), plan.sections.end(),
                                    [&title](const auto& one) { return one.title.find(title) != std::string::npos; });
    REQUIRE(found != plan.sections.end());
    std::size_t blanks = 0;
    for (const auto& line : found->lines) {
      blanks += static_cast<std::size_t>(
          std::count_if(line.runs.begin(), line.runs.end(), [](const auto& run) { return run.kind == model::Run::Kind::blank; }));
    }
    return blanks;
  };
  const compose::Plan plan = plan_of(bare("little"));
  CHECK(room(plan, "name-a-worn-cell") == 6);                           // width and height, of cell and well, system, drain
  CHECK(room(plan, "measure-a-gasket") == 7);                           // kind, three readings, depth, width, what is picked
  CHECK(room(plan_of(with_cell("cell")), "measure-consumption") == 2);  // current and voltage
}

TEST_CASE("a leak that is known to be young has a way to go") {
  model::Watch watch = bare("young");
  watch.residues = {model::RecordRef("residue/potassium-carbonate-crust")};
  const compose::Plan plan = plan_of(watch);
  REQUIRE(job_of(plan, "lift-an-old-leak") != nullptr);
  // table mercury-free: alkaline cells after 2016
  CHECK(has(words_of(plan), "Of an alkaline cell bought after 2016, by its receipt: the same steps, but no label mercury"));
  watch.residues = {model::RecordRef("residue/silver-black-film")};
  CHECK_FALSE(has(words_of(plan_of(watch)), "no label mercury"));
  watch = bare("young");
  const auto how = [](const compose::Plan& one, const std::string& field) {
    const auto found =
        std::find_if(one.checks.begin(), one.checks.end(), [&](const auto& check) { return check.field == field; });
    return found == one.checks.end() ? std::string() : found->how;
  };
  const std::string title = real_book().records.procedures.at("clear-alkaline-crust").title;
  CHECK(has(how(plan_of(watch), "crust.colour"), "after 2016, by its receipt: with the job \"" + title + "\""));
  watch.crust = model::Watch::Crust{"white", "at the leaf"};
  watch.cells_found = {model::RecordRef("cell/lr754")};
  CHECK(has(how(plan_of(watch), "residues"), title));
}

TEST_CASE("a watch that stays blank has a next job by its number, or a next thing to do") {
  const compose::Plan first = plan_of(demonstration(1));
  const auto titled = std::find_if(first.sections.begin(), first.sections.end(),
                                   [](const auto& one) { return one.title == "7  Wake a blank display"; });
  REQUIRE(titled != first.sections.end());
  CHECK(has(words_of(first), "Blank all the same: on with 7, "));
  CHECK(has(words_of(plan_of(demonstration(2))), "No figures while the button is held: look which way up each cell lies"));
  CHECK(has(words_of(plan_of(demonstration(3))), "No hand moves: look which way up the cell lies"));
}

TEST_CASE("the crystal is measured where a job uses the measure, and a scratch that stays is answered") {
  CHECK_FALSE(asks(plan_of(demonstration(2)), "scratch"));
  CHECK_FALSE(asks(plan_of(demonstration(2)), "crystal-size.diameter"));
  CHECK_FALSE(asks(plan_of(demonstration(3)), "scratch"));
  model::Watch watch = demonstration(1);
  watch.crystal_size->thickness = quantity("1.4 mm");  // 1.284 mm would be left, by the worked sheet's formula
  const std::string thin = words_of(section_of(plan_of(watch), "never"));
  CHECK(has(thin, "The scratch stays, or the crystal is changed: acrylic dome, press fit, about 26.0 mm, 1.4 mm thick."));
  watch.crystal = model::RecordRef("crystal/mineral-flat-gasket");
  const std::string glass = words_of(section_of(plan_of(watch), "never"));
  CHECK(has(glass, "The scratch stays, or the crystal is changed: flat mineral glass on a gasket, about 26.0 mm"));
  CHECK_FALSE(has(glass, ".."));
  watch.crystal_size.reset();
  CHECK_FALSE(asks(plan_of(watch), "crystal-size.thickness"));
  watch.jobs = {{"procedure/change-a-glass-crystal", {}}};
  CHECK(asks(plan_of(watch), "crystal-size.diameter"));
  CHECK_FALSE(asks(plan_of(watch), "scratch"));
  watch = demonstration(1);
  watch.crystal_size.reset();
  CHECK(has(words_of(section_of(plan_of(watch), "never")), "is not known. Until then the scratch stays."));
}

TEST_CASE("a back that nobody knows how to open stays closed, and the sheet says so") {
  model::Watch watch = bare("closed");
  for (const auto& [back, words] :
       {std::pair{"", "No blade, wrench or screwdriver goes to this back by this sheet"}, {"none", "which a watchmaker lifts"}}) {
    INFO(back);
    watch.back = back;
    const compose::Plan plan = plan_of(watch);
    REQUIRE(plan.jobs.size() == 1);
    CHECK(plan.jobs.front().procedure == "procedure/look-before-you-touch");
    CHECK(has(words_of(plan), words));
    CHECK_FALSE(has(words_of(plan), "Back off: photograph"));
    CHECK(section_of(plan, "card") == nullptr);
    CHECK(plan.sections.back().id == "water");
    CHECK(section_of(plan, "checks-inside") == &plan.sections.at(plan.sections.size() - 2));
  }
}

TEST_CASE("what is found out with the back off is asked behind the job that opens it") {
  const compose::Plan plan = plan_of(bare("order"));
  const auto place = [&plan](const std::string& part) {
    const auto found = std::find_if(plan.sections.begin(), plan.sections.end(),
                                    [&part](const auto& one) { return has(one.id, part) || has(one.title, part); });
    REQUIRE(found != plan.sections.end());
    return found - plan.sections.begin();
  };
  CHECK(place("checks-inside") == place(real_book().records.procedures.at("open-a-snap-back").title) + 1);
  for (const char* inside : {"module", "cells-found", "crust.colour", "inside", "gasket", "gasket-seat"}) {
    INFO(inside);
    const auto found = std::find_if(plan.checks.begin(), plan.checks.end(), [&](const auto& one) { return one.field == inside; });
    REQUIRE(found != plan.checks.end());
    CHECK(found->back_off);
    CHECK(has(words_of(section_of(plan, "checks-inside")), base::to_terminal(found->what)));
    CHECK_FALSE(has(words_of(section_of(plan, "checks")), base::to_terminal(found->what) + "."));
  }
}

TEST_CASE("no cell is fitted before the sheet can name it") {
  const compose::Plan plan = plan_of(bare("worn"));
  CHECK(plan.jobs.back().procedure == "procedure/name-a-worn-cell");
  CHECK(job_of(plan, "change-the-cell") == nullptr);
  CHECK(has(words_of(plan), "Stop here: nothing is fitted before that"));
  CHECK(section_of(plan, "card") == nullptr);
  CHECK(job_of(plan_of(with_cell("read")), "change-the-cell") != nullptr);
}

TEST_CASE("a leak that is known is warned of before the back is lifted") {
  // record residue/potassium-carbonate-crust: caustic-crust, never-neutralise-on-a-person
  const compose::Plan plan = plan_of(demonstration(1));
  const compose::PlanJob* opening = job_of(plan, "open-a-snap-back");
  REQUIRE(opening != nullptr);
  CHECK(opening->bound.steps.front().caution == "caution/caustic-crust");
  // where nobody has looked yet, a crust may lie in it
  CHECK(job_of(plan_of(bare("unseen")), "open-a-snap-back")->bound.steps.front().caution == "caution/caustic-crust");
  model::Watch watch = bare("film");
  watch.residues = {model::RecordRef("residue/lithium-electrolyte-film")};
  const compose::Plan film = plan_of(watch);
  CHECK(job_of(film, "open-a-snap-back")->bound.steps.front().caution ==
        real_book().records.residues.at("lithium-electrolyte-film").cautions.front());
}

TEST_CASE("the groove is measured in the job that fits the gasket, between the depths of the formula") {
  const compose::Plan plan = plan_of(demonstration(1));
  const auto job = std::find_if(plan.sections.begin(), plan.sections.end(), [](const auto& one) {
    return has(one.title, real_book().records.procedures.at("renew-back-gasket").title);
  });
  REQUIRE(job != plan.sections.end());
  // depth = section (1 - squeeze / 100): 0.7 mm at 30 % is 0.49 mm, at 15 % 0.595 mm, rounded to the safe side (table
  // gland-limits)
  CHECK(has(words_of(&*job), "This section fits from 0.49 mm"));
  CHECK(has(words_of(&*job), " to 0.59 mm"));
  CHECK(has(words_of(&*job), "comes off as in 1, its caution first"));
  CHECK_FALSE(has(words_of(section_of(plan, "gasket")), "putty"));
  CHECK_FALSE(has(words_of(plan_of(demonstration(2))), "This section fits from"));  // flat
}

TEST_CASE("a display that lights itself gets no cell that sags, and the test has its cells") {
  const compose::Plan plan = plan_of(demonstration(2));
  const auto fitted = std::find_if(plan.needs.begin(), plan.needs.end(),
                                   [](const auto& need) { return need.record.rfind("cell/", 0) == 0 && !need.for_test; });
  REQUIRE(fitted != plan.needs.end());
  CHECK(fitted->count == 2);
  for (const std::string& instead : fitted->instead) CHECK_FALSE(has(instead, "with care"));
  const auto tried = std::count_if(plan.needs.begin(), plan.needs.end(), [](const auto& need) { return need.for_test; });
  CHECK(tried == 2);
  CHECK(has(words_of(section_of(plan, "card")), "Cell fitted: 2"));
  CHECK_FALSE(has(words_of(section_of(plan, "card")), "for the test"));
  report::Findings findings;
  const compose::Plan stocked = test::plan_of(demonstration(2), &drawer_of_demonstration(), findings);  // two of its cells
  for (const char* note : {"all out of one packet", "body and tip as measured"}) {
    INFO(note);  // said where it is got, and not to the owner
    CHECK(has(words_of(section_of(stocked, "parts")), note));
    CHECK_FALSE(has(words_of(section_of(stocked, "card")), note));
  }
}
