// A club's overlay, tests/command/club, over the real content, as a user gives it: what is marked, where, and what is refused.
// The life of the replaced cell is worked out by hand beside its check.

#include "command/run_program.h"
#include "support/catch.h"
#include "support/temporary_folder.h"

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>

#include <nlohmann/json.hpp>

namespace fs = std::filesystem;
using benchleaf::test::Ran;
using benchleaf::test::TemporaryFolder;
using benchleaf::test::text_of;
using nlohmann::json;

namespace {

constexpr const char* kName = "Quillfen bench club";
constexpr const char* kImprint = "With the bench notes of the Quillfen bench club";

fs::path here(const char* path) { return fs::absolute(path); }

/// The program in a folder of its own, over the real content and schema.
Ran run(const TemporaryFolder& folder, const std::string& words) {
  return benchleaf::test::run_program(
      folder.path(), words + " --content '" + here("content").string() + "' --schema '" + here("schema").string() + "'");
}

std::string club() { return " --overlay '" + here("tests/command/club").string() + "'"; }

bool holds(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

/// Text of pages of a PDF with the line ends of the page taken out, by poppler.
std::string words_of(const TemporaryFolder& folder, const std::string& pdf, const std::string& pages = {}) {
  const Ran ran = benchleaf::test::run_program(folder.path(), pages + " '" + pdf + "' -", {}, "pdftotext");
  REQUIRE(ran.code == 0);
  return std::regex_replace(ran.out, std::regex("\\s+"), " ");
}

/// An overlay that a test writes for itself.
struct OwnOverlay {
  OwnOverlay() { write("overlay.yaml", "name: Another club\nimprint: Of another club\ndate: 2026-11\nformat: 1\n"); }
  void write(const std::string& path, const std::string& text) const {
    fs::create_directories((folder.path() / "club" / path).parent_path());
    std::ofstream(folder.path() / "club" / path) << text;
  }
  TemporaryFolder folder{"overlay"};
};

}  // namespace

TEST_CASE("an overlay is clean over the real content, and stands in place of what it replaces") {
  const TemporaryFolder folder("overlay");
  const Ran checked = run(folder, "check --strict" + club());
  INFO(checked.err);
  CHECK(checked.code == 0);
  // 40 mAh x 0.8 / (2 uA + 40 mAh x 0.075 / 8.76) / 8.76 = 1.56 years, 18 whole months
  const Ran reckoned = run(folder, "reckon cell-life cell=sr754w mean=2uA" + club());
  INFO(reckoned.out << reckoned.err);
  CHECK(reckoned.code == 0);
  CHECK(holds(reckoned.out, " 18 months"));
}

TEST_CASE("find says whose an entry is, of a replaced and of an added one, and of no other") {
  const TemporaryFolder folder("overlay");
  const Ran replaced = run(folder, "find --quiet 393" + club());
  CHECK(holds(replaced.out, std::string("  Replaced by ") + kName + "\n"));
  CHECK(holds(replaced.out, "40 mAh"));
  const json added = json::parse(run(folder, "find --json --quiet drawer cell" + club()).out, nullptr, false);
  REQUIRE_FALSE(added.is_discarded());
  CHECK(added.at("hits").at(0).at("record") == "term/drawer-cell");
  CHECK(added.at("hits").at(0).at("provenance") == std::string("Added by ") + kName);
  CHECK_FALSE(holds(run(folder, "find --quiet 309" + club()).out, std::string("by ") + kName + "\n"));
  CHECK_FALSE(holds(run(folder, "find --quiet 393").out, kName));
}

TEST_CASE("bound: imprint on the covers, a mark at each entry, the colophon, and the overlay of each fact") {
  const TemporaryFolder folder("overlay");
  const Ran bound = run(folder, "bind --quiet --paper a4" + club());
  REQUIRE(bound.code == 0);
  const fs::path out = folder.path() / "out/handbook";
  const std::string pdf = (out / "handbook-a4.pdf").string();
  CHECK(holds(words_of(folder, pdf, "-l 1"), kImprint));
  const std::string whole = words_of(folder, pdf);
  CHECK(holds(whole, std::string("What ") + kName + " answers for"));
  CHECK(holds(whole, "The capacity is what is left after years in the drawer of the club."));
  const std::string mark = std::string(" by ") + kName + ".";
  std::size_t marks = 0;
  for (std::size_t at = whole.find(mark); at != std::string::npos; at = whole.find(mark, at + 1)) ++marks;
  CHECK(marks == 3);  // a cell, a term, a page

  CHECK(holds(text_of(out / "html/index.html"), kImprint));
  const std::string about = text_of(out / "html/about.html");
  for (const char* link : {"cell/sr754w.html", "term/drawer-cell.html", "chapter/cells.html#page-our-drawer"}) {
    INFO(link);
    CHECK(holds(about, link));
  }
  CHECK(holds(text_of(out / "html/cell/sr754w.html"), std::string("Replaced by ") + kName));
  CHECK(holds(text_of(out / "html/term/drawer-cell.html"), std::string("Added by ") + kName));
  CHECK(holds(text_of(out / "html/chapter/cells.html"), std::string("Added by ") + kName));
  CHECK_FALSE(holds(text_of(out / "html/cell/sr754sw.html"), std::string(" by ") + kName));
  CHECK(holds(words_of(folder, (out / "chart-one-sheet-a4.pdf").string()), std::string("With ") + kName));

  std::set<std::string> records;
  std::istringstream facts(text_of(out / "facts.jsonl"));
  for (std::string line; std::getline(facts, line);) {
    const json fact = json::parse(line);
    const std::string id = fact.at("id");
    const bool own = fact.contains("overlay");
    if (own) CHECK(fact.at("overlay") == kName);
    if (own) records.insert(id.substr(0, id.find('#')));
    if (id.rfind("cell/sr754w#", 0) == 0) CHECK(own);
  }
  CHECK(records == std::set<std::string>{"cell/sr754w", "page/our-drawer"});  // the words of a term are no fact
}

TEST_CASE("a ticket is planned with the records of the club, and the watch that the user names wins") {
  const TemporaryFolder folder("overlay");
  const std::string watch = here("content/watch/quillfen-d-001.yaml").string();
  const Ran ran = run(folder, "ticket '" + watch + "'" + club());
  INFO(ran.err);
  CHECK(ran.code == 0);
  CHECK(holds(text_of(folder.path() / "out/tickets/ticket-quillfen-d-001.html"), std::string("with ") + kName));

  const OwnOverlay own;
  own.write("watch/quillfen-d-001.yaml", text_of(watch));
  const Ran named = run(own.folder, "ticket 'club/watch/quillfen-d-001.yaml' --overlay club");
  INFO(named.err);
  CHECK(named.code == 0);
  CHECK_FALSE(holds(named.err, "overlay.same"));
}

TEST_CASE("what rules ask of the content they ask of an overlay, and name its file") {
  const OwnOverlay own;
  std::string procedure = text_of("content/procedure/clear-alkaline-crust.yaml");
  const std::string caution = "  - caution: caustic-crust\n";
  REQUIRE(holds(procedure, caution));
  procedure.erase(procedure.find(caution), caution.size());
  own.write("procedure/clear-alkaline-crust.yaml", procedure);
  const Ran ran = run(own.folder, "check --overlay club");
  INFO(ran.err);
  CHECK(ran.code == 1);
  CHECK(std::regex_search(
      ran.err, std::regex("club/procedure/clear-alkaline-crust\\.yaml:[0-9]+:[0-9]+: error: [^\n]*\\[caution\\.before-step\\]")));
  const Ran bound = run(own.folder, "bind --overlay club");
  CHECK(bound.code == 1);
  CHECK_FALSE(fs::exists(own.folder.path() / "out"));
}

TEST_CASE("an overlay that is no folder, or has no head, is told at once") {
  const TemporaryFolder folder("overlay");
  for (const char* command : {"check", "bind", "find 393", "reckon cell-decode designation=SR44"}) {
    INFO(command);
    const Ran gone = run(folder, std::string(command) + " --overlay gone");
    CHECK(gone.code == 2);
    CHECK(holds(gone.err, "there is no folder gone to read (name it with --overlay)"));
  }
  fs::create_directories(folder.path() / "headless/term");
  const Ran headless = run(folder, "reckon cell-decode designation=SR44 --overlay headless");
  CHECK(headless.code == 1);
  CHECK(holds(headless.err, "headless/overlay.yaml:1:1: error: overlay.yaml is missing [overlay.head]"));
}
