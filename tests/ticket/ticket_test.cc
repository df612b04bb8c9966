// The plan of one watch. Expected figures: tests/spec/ticket-*.md, worked by hand from the published formulas before the plan was
// written.
#include <algorithm>
#include <fstream>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "base/quantity.h"
#include "support/catch.h"
#include "ticket/form.h"
#include "ticket/intake_card.h"
#include "ticket/jobs.h"
#include "ticket/planned.h"

using namespace benchleaf;
using model::RecordRef;
using test::bare_watch;
using test::demonstration;
using test::drawer_of_demonstration;
using test::is_done;
using test::is_held;
using test::plan_of;
using test::quantity;
using test::real_book;

namespace {

/// A row of a worked sheet: the fact and what the ticket must print.
struct Worked {
  std::string fact;
  std::string printed;
  bool with_drawer = false;
};

std::string trimmed(const std::string& text) {
  const std::size_t from = text.find_first_not_of(" `");
  const std::size_t to = text.find_last_not_of(" `");
  return from == std::string::npos ? std::string() : text.substr(from, to - from + 1);
}

std::vector<Worked> sheet_of(const std::string& watch) {
  std::ifstream in("tests/spec/ticket-" + watch + ".md");
  std::vector<Worked> rows;
  bool with_drawer = false;
  for (std::string line; std::getline(in, line);) {
    with_drawer = with_drawer || line.rfind("## With the drawer", 0) == 0;
    if (line.rfind("| `", 0) != 0) continue;
    std::vector<std::string> cells;
    std::istringstream parts(line.substr(1));
    for (std::string cell; std::getline(parts, cell, '|');) cells.push_back(trimmed(cell));
    REQUIRE(cells.size() >= 5);
    rows.push_back({cells[0], cells[4], with_drawer});
  }
  return rows;
}

}  // namespace

TEST_CASE("the three tickets agree with the worked sheets to the last figure") {
  std::size_t seen = 0;
  for (const std::string id : {"quillfen-d-001", "quillfen-d-002", "quillfen-d-003"}) {
    report::Findings findings;
    const ticket::Plan bare = plan_of(demonstration(id), nullptr, findings);
    const ticket::Plan stocked = plan_of(demonstration(id), &drawer_of_demonstration(), findings);
    for (const Worked& row : sheet_of(id)) {
      const ticket::Plan& plan = row.with_drawer ? stocked : bare;
      INFO(id << " " << row.fact << (row.with_drawer ? " with the drawer" : ""));
      const model::Fact* fact = plan.facts.find("watch/" + id + "#" + row.fact);
      REQUIRE(fact != nullptr);
      CHECK(base::to_terminal(fact->printed) == row.printed);
      ++seen;
    }
  }
  CHECK(seen == 27);
}

TEST_CASE("a part comes with its size, what does as well, and where it lies") {
  report::Findings findings;
  const ticket::Plan first = plan_of(demonstration("quillfen-d-001"), &drawer_of_demonstration(), findings);
  const ticket::PlanNeed* cell = first.need_of(model::Kind::cell);
  REQUIRE(cell != nullptr);
  // a lamp asks for high drain: the 393 of the trade's lists
  CHECK(cell->record == RecordRef("cell/sr754w"));
  CHECK(cell->in_drawer == 4);
  const ticket::PlanNeed* gasket = first.need_of(model::Kind::gasket);
  REQUIRE(gasket != nullptr);
  CHECK(base::to_terminal(gasket->size) == "28 mm");
  CHECK(gasket->place == "drawer 2");
  const ticket::Plan second = plan_of(demonstration("quillfen-d-002"), &drawer_of_demonstration(), findings);
  REQUIRE(second.need_of(model::Kind::cell) != nullptr);
  CHECK(second.need_of(model::Kind::cell)->count == 2);
}

TEST_CASE("a silver cell that was found goes in again under hands, and hands imply no lamp") {
  model::Watch watch = bare_watch("hands");
  watch.display = "hands";
  watch.back = "snap";
  watch.cells_found = {RecordRef("cell/sr626sw")};
  report::Findings findings;
  const ticket::Plan plan = plan_of(watch, nullptr, findings);
  REQUIRE(plan.need_of(model::Kind::cell) != nullptr);
  // 377 is the low-drain cell of its size, 376 the high-drain one: lists of the trade
  CHECK(plan.need_of(model::Kind::cell)->record == RecordRef("cell/sr626sw"));
}

TEST_CASE("nothing is ordered where neither cell nor measure is known") {
  model::Watch watch = bare_watch("empty");
  watch.module = RecordRef("module/lcd-filament-lamp");
  watch.back = "snap";
  watch.lume = "none";
  report::Findings findings;
  const ticket::Plan plan = plan_of(watch, nullptr, findings);
  CHECK(plan.need_of(model::Kind::cell) == nullptr);
  CHECK(is_done(plan, "name-a-worn-cell"));
  CHECK(is_held(plan, "change-the-cell"));
}

TEST_CASE("paint of unknown age keeps the watch closed, whatever was planned") {
  model::Watch watch = demonstration("quillfen-d-003");
  watch.lume = "some";
  report::Findings findings;
  const ticket::Plan plan = plan_of(watch, nullptr, findings);
  for (const char* id : {"open-a-snap-back", "change-the-cell", "renew-back-gasket", "close-a-snap-back"}) {
    INFO(id);
    CHECK(is_held(plan, id));
  }
  CHECK(plan.need_of(model::Kind::cell) == nullptr);
}

// "It holds a rechargeable one, and with another kind the watch may be badly damaged"; its exchange is for those who know it:
// a watch association's answers and instructions of movements, both in content/source.
TEST_CASE("nothing lifts the cell out of a watch that charges it, and case and gasket are done all the same") {
  for (const std::string by : {"light", "motion"}) {
    INFO(by);
    model::Watch watch = bare_watch("charged");
    watch.display = "hands";
    watch.back = "snap";
    watch.charges = by;
    watch.symptoms = {RecordRef(model::Kind::symptom, "hands-stopped")};
    report::Findings findings;
    const ticket::Plan plan = plan_of(watch, nullptr, findings);
    for (const char* id : {"name-a-worn-cell", "change-the-cell", "test-a-coil", "find-the-lowest-voltage",
                           "restore-a-cell-contact", "measure-consumption", "put-a-watch-away"})
      CHECK_FALSE(is_done(plan, id));
    CHECK(is_held(plan, "change-the-cell"));
    for (const char* id : {"tell-a-charging-watch", "renew-back-gasket", "close-a-snap-back"}) CHECK(is_done(plan, id));
  }
}

TEST_CASE("a leak counts as old unless the year of its cell is known") {
  model::Watch watch = bare_watch("leak");
  watch.back = "snap";
  watch.cells_found = {RecordRef("cell/lr754")};
  watch.residues = {RecordRef("residue/potassium-carbonate-crust")};
  report::Findings findings;
  CHECK(is_done(plan_of(watch, nullptr, findings), "lift-an-old-leak"));
  watch.crust = model::Watch::Crust{"white", "at the leaf", "2021"};
  const ticket::Plan young = plan_of(watch, nullptr, findings);
  CHECK(is_done(young, "clear-alkaline-crust"));
  CHECK_FALSE(is_done(young, "lift-an-old-leak"));
  CHECK(is_done(young, "restore-a-cell-contact"));  // the contact is looked after before a new cell lies on it
  CHECK(young.number_of(test::procedure("restore-a-cell-contact")) < young.number_of(test::procedure("change-the-cell")));
  CHECK(young.number_of(test::procedure("measure-consumption")) < young.number_of(test::procedure("change-the-cell")));
}

TEST_CASE("beside a film of lithium nothing is lifted damp, and no cell goes in") {
  model::Watch watch = bare_watch("two-leaks");
  watch.back = "snap";
  watch.cells_found = {RecordRef("cell/lr754")};
  watch.crust = model::Watch::Crust{"white", "at the leaf", "2021"};
  const RecordRef crust("residue/potassium-carbonate-crust");
  for (const bool film : {true, false}) {
    watch.residues = {crust};
    if (film) watch.residues.push_back(RecordRef("residue/lithium-electrolyte-film"));
    report::Findings findings;
    const ticket::Plan plan = plan_of(watch, nullptr, findings);
    CHECK(is_done(plan, "clean-a-lithium-leak") == film);
    CHECK(is_done(plan, "change-the-cell") != film);
    CHECK(is_held(plan, "clear-alkaline-crust") == film);
    bool damp = false;
    for (const ticket::PlanJob& job : plan.jobs) {
      for (const auto& step : job.bound.steps) {
        const bool water = std::any_of(step.with.begin(), step.with.end(), [](const RecordRef& liquid) {
          return liquid == "chemistry/distilled-water" || liquid == "chemistry/white-vinegar";
        });
        damp = damp || (water && !step.meets.empty() && job.state == ticket::PlanJob::State::done);
      }
    }
    CHECK(damp != film);
  }
}

TEST_CASE("a plain change of the cell is one page, its cautions with it") {
  model::Watch watch = demonstration("quillfen-d-003");
  watch.jobs.clear();
  watch.wishes = {"new-cell"};
  watch.symptoms = {RecordRef("symptom/steps-of-several-seconds")};
  report::Findings findings;
  const ticket::Bench bench = test::bench_of(watch);
  const ticket::Plan plan = ticket::make_plan(bench, findings);
  CHECK(plan.one_page);
  const ticket::Sheets sheets = ticket::make_sheets(bench, plan, findings);
  REQUIRE(sheets.jobs.size() == 1);
  std::size_t steps = 0;
  std::size_t cautions = 0;
  for (const auto& line : sheets.jobs.front().steps.lines) {
    steps += line.kind == ticket::SheetLine::Kind::step ? 1 : 0;
    cautions += line.kind == ticket::SheetLine::Kind::caution ? 1 : 0;
  }
  CHECK(steps >= 10);
  CHECK(cautions >= 6);
}

TEST_CASE("the stages of the shape are those of the planner, in their order") {
  std::ifstream in("schema/shapes/job.schema.json");
  std::ostringstream text;
  text << in.rdbuf();
  std::size_t at = text.str().find("\"stage\"");
  for (const std::string_view stage : ticket::stages()) {
    const std::size_t next = text.str().find("\"" + std::string(stage) + "\"", at);
    INFO(std::string(stage));
    REQUIRE(next != std::string::npos);
    at = next;
  }
}

TEST_CASE("each mark of a condition stands in the shapes under its trait") {
  for (const char* kind : {"job", "hold", "question", "look"}) {
    std::ifstream in(std::string("schema/shapes/") + kind + ".schema.json");
    std::ostringstream text;
    text << in.rdbuf();
    const std::string shape = text.str();
    for (const model::Mark mark : model::all_marks()) {
      const std::size_t trait = shape.find("\"" + std::string(model::mark_trait(mark)) + "\": {");
      INFO(kind << " " << std::string(model::mark_trait(mark)) << " " << std::string(model::mark_word(mark)));
      REQUIRE(trait != std::string::npos);
      CHECK(shape.find("\"" + std::string(model::mark_word(mark)) + "\"", trait) != std::string::npos);
    }
  }
}

TEST_CASE("every procedure of the handbook is planned by one job") {
  for (const auto& [id, procedure] : real_book().records.procedures) {
    INFO(id);
    CHECK(ticket::job_of(real_book().records, procedure.reference()) != nullptr);
  }
}

TEST_CASE("the intake card has two sides, and the form every question") {
  const model::SheetSet card = ticket::intake_card(real_book().records.handbook);
  CHECK(card.sides.size() == 2);
  CHECK(card.card);
  std::size_t blanks = 0;
  for (const model::Sheet& side : card.sides) {
    for (const model::Panel& panel : side.panels) {
      for (const model::PanelBlock& block : panel.blocks) {
        const auto* fields = std::get_if<model::Fields>(&block);
        for (std::size_t i = 0; fields != nullptr && i < fields->lines.size(); ++i)
          blanks +=
              static_cast<std::size_t>(std::count_if(fields->lines[i].begin(), fields->lines[i].end(), [](const model::Run& run) {
                return run.kind == model::Run::Kind::blank || run.kind == model::Run::Kind::tick;
              }));
      }
    }
  }
  CHECK(blanks > 80);  // every measure that a calculator asks, and what is asked at the door
  std::size_t questions = 0;
  for (const auto& section : ticket::ticket_form(real_book().records).sections) questions += section.questions.size();
  CHECK(questions == real_book().records.questions.size());
  CHECK(questions > 40);
}

// Worked by hand: December 2022 to October 2024 are 22 months; the life of tests/spec/ticket-quillfen-d-001.md, 21 to 24 months,
// from October 2024 ends between July and October 2026.
TEST_CASE("earlier visits tell how long a cell lasted, how the draw moved and when the cell in it is due") {
  model::Watch watch = demonstration("quillfen-d-001");
  const RecordRef cell(model::Kind::cell, "sr754w");
  const auto told = [](const model::Watch& of) {
    report::Findings findings;
    const ticket::Bench bench = test::bench_of(of);
    const ticket::Plan plan = ticket::make_plan(bench, findings);
    const ticket::Sheets sheets = ticket::make_sheets(bench, plan, findings);
    std::string text;
    for (const auto& section : sheets.front) {
      if (section.id != "history-told") continue;
      for (const auto& line : section.lines) text += model::plain_text(line.cells.front()) + "\n";
    }
    return text;
  };
  CHECK(told(watch).empty());
  watch.visits = {
      {"2021", RecordRef(model::Kind::cell, "lr754"), {}, {}, {}, "", "", "", "crust"},
      {"2022-12-04", cell, {}, quantity("1.58 V"), quantity("2.4 \u00B5A"), "+0.3", "new", "crust", ""},
      {"2024-10-11", cell, quantity("1.51 V"), quantity("1.57 V"), quantity("2.6 \u00B5A"), "+0.4", "new", "cell", ""}};
  const std::string text = told(watch);
  INFO(text);
  CHECK(text.find("of 2022-12 was in for 22 months, reckoned 23") != std::string::npos);
  CHECK(text.find("as it should be") != std::string::npos);
  CHECK(text.find("Draw 2.4, then 2.6") != std::string::npos);
  CHECK(text.find("up by 0.2.") != std::string::npos);
  CHECK(text.find("due 2026-07 to 2026-10") != std::string::npos);
  watch.visits.back().date = "2024-03";
  watch.visits.back().draw = quantity("2.4 \u00B5A");
  const std::string early = told(watch);
  INFO(early);
  CHECK(early.find("was in for 15 months") != std::string::npos);
  CHECK(early.find("too short") != std::string::npos);
  CHECK(early.find("unchanged") != std::string::npos);
  watch.visits.back().date = "2024";
  CHECK(told(watch).find("due") == std::string::npos);
}
