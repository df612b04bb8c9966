// What a reader of the sheets would trip over: a line that forbids, and a printed step on the same ticket that does it. Read as
// printed, without plan codes, over five hundred watches made up from a fixed seed.
#include <regex>
#include <string>
#include <vector>

#include "support/catch.h"
#include "ticket/made_up.h"
#include "ticket/planned.h"

using namespace benchleaf;
using test::real_book;

namespace {

constexpr unsigned kSeed = 20261203;
constexpr int kWatches = 500;

/// Two sentences that no ticket may hold together: what the front sheet says, and a step that goes against it.
struct Clash {
  const char* said;
  const char* done;
  std::size_t seen = 0;  ///< tickets that say it
};

std::vector<Clash> clashes() {
  const char* const opens =
      "set the blade into the lip|turn the back off|lift the back off|loosen the screws crosswise|into the notches";
  const char* const wets = "damp swab|swabs? damp|soak|rinse|press putty|scrape";
  const char* const lifts = "(lift|take) (the|each) (old )?cell (out by|off)|fit each cell|set the (new )?cell";
  return {
      {"the back stays on|the watch stays closed", opens},
      {"no blade goes to it|no blade, wrench or screwdriver goes to it", opens},
      {"anything wet or dry until its cell is named|nothing wet or dry touches it", wets},
      {"anything wet or dry until its cell is named|nothing wet or dry touches it", lifts},
      {"a sound one stays where it is", lifts},
      {"film of lithium: +water", "^(?!.*lithium cell has leaked).*(film|contact|leaf)[^.]*damp with (distilled water|vinegar)"},
      {"old leak: +dry wiping", "(crust|leak)[^.]*(dry swab|dry cloth|brush it|blower)|blow (the|it)"},
  };
}

std::string lower(std::string text) {
  for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return text;
}

struct Printed {
  std::string front;
  std::vector<std::string> steps;
};

Printed printed_of(const ticket::Sheets& sheets) {
  Printed printed;
  for (const auto& section : sheets.front) {
    if (section.id != "never" && section.id != "waits") continue;  // questions say what follows from an answer
    for (const auto& line : section.lines) printed.front += lower(ticket::line_text(line, real_book().records)) + "\n";
  }
  for (const auto& job : sheets.jobs) {
    for (const auto& line : job.steps.lines) {
      if (line.kind == ticket::SheetLine::Kind::step)
        printed.steps.push_back(lower(ticket::line_text(line, real_book().records)));
    }
  }
  return printed;
}

/// The first step that goes against what the front says, or empty.
std::string contradicts(const Printed& printed, Clash& clash) {
  if (!std::regex_search(printed.front, std::regex(clash.said))) return {};
  ++clash.seen;
  const std::regex done(clash.done);
  for (const std::string& step : printed.steps) {
    if (std::regex_search(step, done)) return step;
  }
  return {};
}

}  // namespace

TEST_CASE("no printed step of five hundred watches does what its front sheet forbids") {
  test::MadeUp made_up(kSeed);
  std::vector<Clash> all = clashes();
  std::size_t steps = 0;
  for (int number = 0; number < kWatches; ++number) {
    model::Watch watch = made_up.watch(number);
    if (number % 5 == 0) {  // a film of a cell that nobody can name
      watch.crust = model::Watch::Crust{"oily", "at the leaf", {}};
      watch.cells_found.clear();
      watch.residues.clear();
    }
    report::Findings findings;
    const ticket::Bench bench = test::bench_of(watch);
    const ticket::Plan plan = ticket::make_plan(bench, findings);
    const Printed printed = printed_of(ticket::make_sheets(bench, plan, findings));
    steps += printed.steps.size();
    for (Clash& clash : all) {
      INFO(watch.id << ": " << clash.said);
      CHECK(contradicts(printed, clash) == "");
    }
  }
  CHECK(steps > 5000);
  for (const Clash& clash : all) {
    INFO(clash.said);
    CHECK(clash.seen > 1);
  }
}

TEST_CASE("the search for contradictions on paper finds one") {
  for (Clash& clash : clashes()) {
    if (std::string(clash.said).find("the back stays on") == std::string::npos) continue;
    Printed printed{"luminous paint: scraping; the back stays on", {"glasses and gloves on. lift the back off."}};
    CHECK_FALSE(contradicts(printed, clash).empty());
    printed.steps = {"photograph the back"};
    CHECK(contradicts(printed, clash).empty());
  }
}
