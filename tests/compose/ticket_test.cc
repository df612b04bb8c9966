// The plan of one watch. Expected figures: tests/spec/ticket-*.md, worked by hand from the published formulas before the plan was
// written. What must hold of any watch: five hundred made up from a fixed seed.
#include <algorithm>
#include <fstream>
#include <map>
#include <random>
#include <set>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/step_checker.h"
#include "compose/real_book.h"
#include "compose/ticket/intake_card.h"
#include "compose/ticket/plan.h"
#include "read/disk_files.h"
#include "support/catch.h"

using namespace benchleaf;
using benchleaf::test::real_book;

namespace {

compose::Plan plan_of(const model::Watch& watch, const model::Stock* drawer, report::Findings& findings) {
  const auto& made = real_book();
  return compose::make_plan(made.records, made.tables, made.derived, watch, drawer, findings);
}

const model::Stock& drawer_of_demonstration() { return real_book().records.stocks.at("quillfen-drawer"); }

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

std::string words_of(const compose::Plan& plan) {
  std::string words;
  for (const auto& section : plan.sections) {
    for (const auto& line : section.lines) words += model::plain_text(line.runs) + "\n";
  }
  return base::to_terminal(words);
}

const compose::PlanSection* section_of(const compose::Plan& plan, const std::string& id) {
  const auto found = std::find_if(plan.sections.begin(), plan.sections.end(), [&id](const auto& one) { return one.id == id; });
  return found == plan.sections.end() ? nullptr : &*found;
}

const compose::PlanNeed* need_of(const compose::Plan& plan, const std::string& record) {
  const auto found =
      std::find_if(plan.needs.begin(), plan.needs.end(), [&record](const auto& one) { return one.record == record; });
  return found == plan.needs.end() ? nullptr : &*found;
}

std::string messages(const report::Findings& findings) {
  std::string text;
  for (const auto& finding : findings.all())
    text += std::string(report::rule_info(finding.rule).id) + ": " + finding.message + "\n";
  return text;
}

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
    if (coin()) made.module = one_of(records.modules, "module/");
    if (coin()) made.crystal = one_of(records.crystals, "crystal/");
    if (coin())
      made.crystal_size = model::Watch::CrystalSize{length(15, 36), coin() ? length(15, 36) : std::nullopt, length(0.4, 2.5)};
    if (coin()) made.scratch = length(0.002, 0.4);
    if (coin()) made.cells_found = some_of(records.cells, "cell/", 2);
    if (coin()) made.back = std::vector<std::string>{"snap", "screwed", "four-screws", "none"}[below(4)];
    if (coin()) made.gasket = one_of(records.gaskets, "gasket/");
    if (coin()) made.gasket_seat = length(6, 42);
    if (coin()) {
      made.case_metal = model::Watch::Case{{}, {}, {}};
      if (coin()) made.case_metal->metal = one_of(records.materials, "material/");
      if (coin()) made.case_metal->surface = one_of(records.materials, "material/");
    }
    if (coin()) made.residues = some_of(records.residues, "residue/", 3);
    if (coin()) made.inside = some_of(records.parts, "part/", 5);
    if (coin()) made.symptoms = some_of(records.symptoms, "symptom/", 2);
    if (coin()) made.lug_width = length(8, 24);
    if (coin()) made.found = "made up";
    add_sightings(made);
    if (coin()) {
      for (const std::string& procedure : some_of(records.procedures, "procedure/", 6)) made.jobs.push_back({procedure, {}});
      made.jobs.push_back(
          {"procedure/polish-a-crystal", {{"crystal", coin() ? "part/acrylic-crystal" : "part/loose-acrylic-crystal"}}});
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
    made.on_hand = model::Watch::OnHand{{"P400", "P1200"}, some_of(records.chemistries, "chemistry/", 6), {}};
    made.on_hand->gaskets.push_back({one_of(records.gaskets, "gasket/"), length(6, 42)});
  }
  std::string word(const std::vector<std::string>& words) { return words[below(words.size())]; }
  std::size_t below(std::size_t end) { return random_() % end; }
  template <class Records>
  std::string one_of(const Records& records, const std::string& kind) {
    return kind + std::next(records.begin(), static_cast<std::ptrdiff_t>(below(records.size())))->first;
  }
  template <class Records>
  std::vector<std::string> some_of(const Records& records, const std::string& kind, std::size_t most) {
    std::set<std::string> some;
    for (std::size_t i = below(most) + 1; i > 0; --i) some.insert(one_of(records, kind));
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
    std::vector<std::string> materials;
    for (const std::string& part : step.on) {
      const auto of = bench::materials_of({made.records, made.tables}, part);
      materials.insert(materials.end(), of.begin(), of.end());
    }
    for (const std::string& agent : step.with) {
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

/// The first caution that a step needs and that has not been read before it, or empty.
std::string lacks_caution(const model::Procedure& procedure, std::size_t& needs_seen) {
  const auto& made = real_book();
  for (const auto& need : bench::caution_needs({made.records, made.tables}, procedure)) {
    ++needs_seen;
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

/// The fields that a watch record can leave out, and whether this one does.
std::map<std::string, bool> missing_fields(const model::Watch& watch) {
  return {{"number", watch.number.empty()},
          {"found", watch.found.empty()},
          {"symptoms", watch.symptoms.empty()},
          {"back", watch.back.empty()},
          {"case.metal", !watch.case_metal || watch.case_metal->metal.empty()},
          {"case.surface", !watch.case_metal || watch.case_metal->surface.empty()},
          {"lume", watch.lume.empty() && !is_among(watch.inside, "part/luminous-paint")},
          {"lug-width", !watch.lug_width},
          {"crystal", watch.crystal.empty() && !signs_agree(watch.crystal_signs)},
          {"crystal-size.diameter", !watch.crystal_size},
          {"crystal-size.thickness", !watch.crystal_size},
          {"scratch", !watch.scratch && watch.nail.empty()},
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
  CHECK(wanted("cell/sr44w") == list.end());  // both lie in the drawer
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
  watch.residues = {"residue/potassium-carbonate-crust"};
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
  report::Findings findings;
  SECTION("a white crust at an alkaline cell may be its leak, and counts as an old one") {
    watch.crust = model::Watch::Crust{"white", "at the minus leaf"};
    watch.cells_found = {"cell/lr754"};
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    const auto check =
        std::find_if(plan.checks.begin(), plan.checks.end(), [](const auto& one) { return one.field == "residues"; });
    REQUIRE(check != plan.checks.end());
    CHECK(check->how.rfind("White, at the minus leaf: it may be crust of an alkaline leak.", 0) == 0);
    CHECK(check->how.find("sodium") == std::string::npos);  // no alkaline cell leaves that
    CHECK(plan.jobs.at(1).procedure == "procedure/lift-an-old-leak");
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
    watch.on_hand->gaskets = {{"gasket/round-0-7", std::get<base::Quantity>(base::parse_quantity("20 mm"))}};
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
    bleach.item = "chemistry/household-bleach";
    bleach.count = 1;
    drawer.items.push_back(bleach);
    plan_of(watch, &drawer, findings);
    CHECK(messages(findings).find("ticket.liquid: household-bleach lies in the drawer and would ruin gold-plate") == 0);
  }
  SECTION("a step that the records forbid on this case") {
    watch.jobs = {{"procedure/polish-a-crystal", {{"crystal", "part/acrylic-crystal"}}}};
    watch.crystal = "crystal/mineral-flat-gasket";
    const compose::Plan plan = plan_of(watch, nullptr, findings);
    REQUIRE(plan.jobs.size() == 1);
    CHECK_FALSE(plan.jobs.front().held.empty());
    CHECK(findings.all().size() == 1);
  }
}

TEST_CASE("no plan of five hundred watches holds a forbidden step, a grade that is not there, or lacks a caution or a check") {
  MadeUp made_up(20261126);
  std::size_t done = 0;
  std::size_t held = 0;
  std::size_t needs = 0;
  std::size_t checks = 0;
  std::size_t graded = 0;
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
      CHECK(lacks_caution(job.bound, needs).empty());
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
    if (!step.with.empty()) step.on = {"part/polariser"};
  }
  CHECK_FALSE(ruins(crust).empty());
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
