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
#include "ticket/intake_card.h"
#include "ticket/planned.h"

using namespace benchleaf;
using test::drawer_of_demonstration;
using test::messages;
using test::need_of;
using test::plan_of;
using test::real_book;
using test::section_of;
using test::words_of;

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
    const model::Watch& watch = real_book().records.watches.at(id);
    report::Findings findings;
    const compose::Plan bare = plan_of(watch, nullptr, findings);
    const compose::Plan stocked = plan_of(watch, &drawer_of_demonstration(), findings);
    for (const Worked& row : sheet_of(id)) {
      const compose::Plan& plan = row.with_drawer ? stocked : bare;
      INFO(id << " " << row.fact << (row.with_drawer ? " with the drawer" : ""));
      const model::Fact* fact = plan.facts.find("watch/" + id + "#" + row.fact);
      REQUIRE(fact != nullptr);
      CHECK(base::to_terminal(fact->printed) == row.printed);
      CHECK(words_of(plan).find(row.printed) != std::string::npos);
      ++seen;
    }
  }
  CHECK(seen == 27);
}

TEST_CASE("parts come with a size, what does as well, and where they lie") {
  report::Findings findings;
  const auto& watches = real_book().records.watches;
  const compose::Plan first = plan_of(watches.at("quillfen-d-001"), &drawer_of_demonstration(), findings);
  REQUIRE(need_of(first, "cell/sr754w") != nullptr);
  CHECK(need_of(first, "cell/sr754w")->in_drawer == 4);
  CHECK(need_of(first, "cell/sr754w")->instead.front().find("SR754SW") != std::string::npos);
  REQUIRE(need_of(first, "gasket/round-0-7") != nullptr);
  CHECK(base::to_terminal(need_of(first, "gasket/round-0-7")->size) == "28 mm");
  CHECK(need_of(first, "gasket/round-0-7")->place == "drawer 2");
  CHECK(messages(findings).empty());
  const compose::Plan second = plan_of(watches.at("quillfen-d-002"), &drawer_of_demonstration(), findings);
  CHECK(need_of(second, "cell/sr44w")->count == 2);
  CHECK(messages(findings) ==
        "ticket.gasket: no gasket on hand fits a seat of 27.50 mm: of flat-0-4 there is 27 mm, wanted is 27.5 mm\n");
  const auto list = compose::shopping_list({first, second});
  const auto wanted = [&list](const std::string& record) {
    return std::find_if(list.begin(), list.end(), [&record](const auto& one) { return one.record == record; });
  };
  REQUIRE(wanted("cell/sr44w") != list.end());
  // both that go in lie in the drawer, but the third of their packet, for the test, does not
  CHECK(wanted("cell/sr44w")->count == 2);
  CHECK(wanted("gasket/flat-0-4") != list.end());
}

TEST_CASE("the order of the bench: what is forbidden first, the reset behind the cell, the card last") {
  report::Findings findings;
  const compose::Plan plan = plan_of(real_book().records.watches.at("quillfen-d-001"), nullptr, findings);
  CHECK(plan.sections.front().id == "never");
  CHECK(plan.sections.at(1).id == "first-aid");
  CHECK(plan.sections.back().id == "card");
  CHECK(section_of(plan, "closing") != nullptr);
  CHECK(section_of(plan, "disposal") != nullptr);
  const auto words = words_of(plan);
  const auto cell = words.find("hook the cell strap in");
  const auto reset = words.find("Reset after the cell. Pad with a ring beside the cell");
  REQUIRE(cell != std::string::npos);
  CHECK(reset != std::string::npos);
  CHECK(reset > cell);
  CHECK(words.find("Not water resistant.") != std::string::npos);
}

TEST_CASE("a leak of which nothing else is known is treated as one with mercury") {
  model::Watch watch;
  watch.id = "unknown";
  watch.back = "snap";
  watch.residues = {model::RecordRef("residue/potassium-carbonate-crust")};
  report::Findings findings;
  const compose::Plan plan = plan_of(watch, nullptr, findings);
  const auto has = [&plan](const std::string& procedure) {
    return std::any_of(plan.jobs.begin(), plan.jobs.end(), [&](const auto& job) { return job.procedure == procedure; });
  };
  CHECK(has("procedure/lift-an-old-leak"));
  CHECK_FALSE(has("procedure/clear-alkaline-crust"));
}

TEST_CASE("what was only seen leads to a plan that is safe for all that it may be") {
  model::Watch watch;
  watch.kind = model::Kind::watch;
  watch.id = "seen";
  watch.back = "snap";
  report::Findings findings;
  SECTION("a white crust at an alkaline cell may be its leak, and counts as an old one") {
    watch.crust = model::Watch::Crust{"white", "at the minus leaf"};
    watch.cells_found = {model::RecordRef("cell/lr754")};
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    const auto check =
        std::find_if(plan.checks.begin(), plan.checks.end(), [](const auto& one) { return one.field == "residues"; });
    REQUIRE(check != plan.checks.end());
    CHECK(check->how.rfind("White, at the minus leaf: it may be crust of an alkaline leak.", 0) == 0);
    CHECK(check->how.find("sodium") == std::string::npos);             // no alkaline cell leaves that
    CHECK(plan.jobs.at(2).procedure == "procedure/lift-an-old-leak");  // after the back
    // the alkaline cell came in place of a silver one of its size
    CHECK(need_of(plan, "cell/sr754w") != nullptr);
  }
  SECTION("a white crust that may be of lithium or not is left alone") {
    watch.crust = model::Watch::Crust{"white", "all over"};
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    const auto clears = [](const auto& job) {
      return job.procedure.find("leak") != std::string::npos || job.procedure.find("crust") != std::string::npos;
    };
    CHECK(std::none_of(plan.jobs.begin(), plan.jobs.end(), clears));
    CHECK(words_of(plan).find("may be of lithium") != std::string::npos);
    // no lithium cell on record is so small
    watch.cell_size = model::Watch::CellSize{std::get<base::Quantity>(base::parse_quantity("7.9 mm")), {}};
    CHECK(words_of(plan_of(watch, nullptr, findings)).find("may be of lithium") == std::string::npos);
  }
  SECTION("a size without a number leads to cells of that size and system") {
    watch.cell_size = model::Watch::CellSize{std::get<base::Quantity>(base::parse_quantity("7.9 mm")),
                                             std::get<base::Quantity>(base::parse_quantity("3.6 mm"))};
    watch.cell_count = 2;
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    // 392 drives a lamp, of which nothing is known; 384 has the same size and does not
    REQUIRE(need_of(plan, "cell/sr41w") != nullptr);
    CHECK(need_of(plan, "cell/sr41w")->count == 2);
  }
  SECTION("soft and warm is acrylic, soft and cool is not known") {
    watch.crystal_signs = {"soft", "warm"};
    watch.nail = "catches";
    watch.crystal_size = model::Watch::CrystalSize{{}, {}, std::get<base::Quantity>(base::parse_quantity("1.5 mm"))};
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    CHECK(plan.facts.find("watch/seen#scratch-ladder.left") != nullptr);
    watch.crystal_signs.feels = "cool";
    CHECK(plan_of(watch, nullptr, findings).facts.find("watch/seen#scratch-ladder.left") == nullptr);
  }
  SECTION("a section leads to the series, an old gasket to no order") {
    watch.old_gasket = {std::get<base::Quantity>(base::parse_quantity("27.9 mm")),
                        std::get<base::Quantity>(base::parse_quantity("0.7 mm"))};
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    REQUIRE(need_of(plan, "gasket/round-0-7") != nullptr);  // both sizes, and the seat chooses
    CHECK(need_of(plan, "gasket/round-0-7")->size.empty());
    REQUIRE(section_of(plan, "gasket") != nullptr);
    CHECK(words_of(plan).find("its inside is no measure of the seat") != std::string::npos);
  }
  SECTION("paint that glows is left alone") {
    watch.lume = "some";
    CHECK(words_of(plan_of(watch, nullptr, findings)).find("no scraping, no sanding, no blowing") != std::string::npos);
  }
  SECTION("what lies ready is used, and is silent of the rest") {
    watch = real_book().records.watches.at("quillfen-d-001");
    watch.on_hand = model::Watch::OnHand{{"P1200", "P2500"}, {}, {}};
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    CHECK(messages(findings).empty());
    CHECK(base::to_terminal(plan.facts.find("watch/quillfen-d-001#scratch-ladder.ladder")->printed) ==
          "P1200, P2500, then polish");
    watch.on_hand->gaskets = {{model::RecordRef("gasket/round-0-7"), std::get<base::Quantity>(base::parse_quantity("20 mm"))}};
    plan_of(watch, nullptr, findings);
    CHECK(messages(findings).rfind("ticket.gasket: no gasket on hand fits a seat of 28.60 mm", 0) == 0);
  }
}

TEST_CASE("what stands in the way is a finding, and the work is left out") {
  model::Watch watch = real_book().records.watches.at("quillfen-d-001");
  report::Findings findings;
  SECTION("a crystal that the ladder would thin too far") {
    watch.crystal_size->thickness = std::get<base::Quantity>(base::parse_quantity("1.4 mm"));
    const compose::Plan plan = plan_of(watch, &drawer_of_demonstration(), findings);
    CHECK(
        messages(findings) ==
        "ticket.crystal: the ladder would leave 1.284 mm, which does not keep the safety asked for, 4 times, under this load\n");
    CHECK(need_of(plan, "crystal/acrylic-press-fit") != nullptr);
    CHECK(words_of(plan).find("Sand wet") == std::string::npos);
  }
  SECTION("a seat that no size fits") {
    watch.gasket_seat = std::get<base::Quantity>(base::parse_quantity("60 mm"));
    plan_of(watch, nullptr, findings);
    CHECK(messages(findings).rfind("ticket.gasket: no gasket can be chosen", 0) == 0);
  }
  SECTION("a liquid in the drawer that would ruin the plate") {
    model::Stock drawer = drawer_of_demonstration();
    model::Stock::Item bleach;
    bleach.item = model::RecordRef("chemistry/household-bleach");
    bleach.count = 1;
    drawer.items.push_back(bleach);
    plan_of(watch, &drawer, findings);
    CHECK(messages(findings).find("ticket.liquid: household-bleach lies in the drawer and would ruin gold-plate") == 0);
  }
  SECTION("a step that the records forbid on this case") {
    watch.jobs = {{"procedure/polish-a-crystal", {{"crystal", "part/acrylic-crystal"}}}};
    watch.crystal = model::RecordRef("crystal/mineral-flat-gasket");
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    REQUIRE(plan.jobs.size() == 1);
    CHECK_FALSE(plan.jobs.front().held.empty());
    CHECK(findings.all().size() == 1);
  }
}

TEST_CASE("the intake card has one side, a picture beside each measurement, and room to write") {
  const model::SheetSet card = compose::intake_card(real_book().records.handbook);
  REQUIRE(card.sides.size() == 1);
  std::size_t pictures = 0;
  for (const model::Panel& panel : card.sides.front().panels) {
    for (const auto& block : panel.blocks) {
      const auto* row = std::get_if<model::Pictures>(&block);
      if (row == nullptr) continue;
      ++pictures;
      CHECK_FALSE(row->pictures.front().drawing->alt.empty());
    }
  }
  CHECK(pictures == 6);
}
