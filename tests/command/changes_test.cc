// changes: what two states of a small content say differently. What each edit must bring about is written down by hand, with the
// reason; the figures are worked out beside it.

#include "command/run_program.h"
#include "support/catch.h"
#include "support/temporary_folder.h"

#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

namespace fs = std::filesystem;
using benchleaf::test::Ran;
using benchleaf::test::text_of;
using nlohmann::json;

namespace {

/// Two copies of tests/command/states/content, the second to be edited.
class States {
 public:
  States() {
    fs::copy("schema", path() / "schema", fs::copy_options::recursive);
    for (const char* name : {"old", "new"}) {
      fs::copy("tests/command/states/content", path() / name, fs::copy_options::recursive);
    }
  }

  void write(const std::string& file, const std::string& text) const { std::ofstream(path() / "new" / file) << text; }
  void remove(const std::string& file) const { fs::remove(path() / "new" / file); }
  void edit(const std::string& file, const std::string& what, const std::string& instead) const {
    std::string text = text_of(path() / "new" / file);
    const std::size_t at = text.find(what);
    INFO(file << ": " << what);
    REQUIRE(at != std::string::npos);
    write(file, text.replace(at, what.size(), instead));
  }

  Ran changes(const std::string& words = {}) const { return benchleaf::test::run_program(path(), "changes old new " + words); }
  json told() const {
    const Ran ran = changes("--json");
    INFO(ran.err);
    REQUIRE((ran.code == 0 || ran.code == 1));
    return json::parse(ran.out);
  }

  const fs::path& path() const { return folder_.path(); }

 private:
  benchleaf::test::TemporaryFolder folder_{"changes"};
};

using Told = std::map<std::string, std::string>;

/// `HOW BEFORE -> AFTER` by id.
Told by_id(const json& list) {
  Told told;
  for (const auto& change : list) {
    const std::string line = change.at("how").get<std::string>() + " " + change.at("before").get<std::string>() + " -> " +
                             change.at("after").get<std::string>();
    CHECK(told.emplace(change.at("id"), line).second);
  }
  return told;
}

std::set<std::string> ids(const json& list) {
  std::set<std::string> ids;
  for (const auto& change : list) ids.insert(change.at("id"));
  return ids;
}

const json& named(const json& list, const std::string& id) {
  for (const auto& change : list) {
    if (change.at("id") == id) return change;
  }
  FAIL("nothing is told of " << id);
  return list;
}

constexpr const char* kNewCell =
    "id: sr754sw\ndesignation: SR754SW\ntrade-number: \"309\"\nsystem: silver-oxide\n"
    "size: { diameter: 7.9 mm, height: 5.4 mm }\nnominal: 1.55 V\ndrain: low\nbasis:\n"
    "  size: { source: some-book, where: table 1, trust: handbook }\n";

void make_ten_edits(const States& states) {
  states.edit("cell/sr754w.yaml", "80 mAh", "75 mAh");
  states.edit("cell/sr754w.yaml", "size: { trust: memory }", "size: { source: some-book, where: table 1, trust: handbook }");
  states.edit("cell/sr754w.yaml", "uses: Watches with a lamp.\n", "");
  states.write("cell/sr754sw.yaml", kNewCell);
  states.remove("cell/sr41w.yaml");
  states.edit("caution/slippery-floor.yaml", "A wet floor is slippery.", "A wet floor slips.");
  states.edit("procedure/wipe.yaml", "  - { do: Wipe it dry. }\n", "  - { do: Turn it over. }\n  - { do: Wipe it dry. }\n");
  states.edit("chemistry/vinegar.yaml", "5 % w/v", "10 % w/v");
  states.edit("chemistry/vinegar.yaml", "verdict: never", "verdict: with-care");
  states.edit("page/leaks.md", "Water is never the last word.", "Water is the last word.");
}

}  // namespace

TEST_CASE("ten edits: these ten and nothing else are stated otherwise") {
  const States states;
  make_ten_edits(states);
  CHECK(by_id(states.told().at("stated")) ==
        Told{{"cell/sr754w#capacity", "altered 80 mAh -> 75 mAh"},
             {"cell/sr754w#basis.size.diameter", "basis memory -> handbook, source/some-book, table 1"},
             {"cell/sr754w#uses", "removed Watches with a lamp. -> "},
             {"cell/sr754sw", "added  -> SR754SW"},
             {"cell/sr41w", "removed SR41W -> "},
             {"caution/slippery-floor#hazard", "altered A wet floor is slippery. -> A wet floor slips."},
             {"procedure/wipe#steps.1", "added  -> do: Turn it over."},
             {"chemistry/vinegar#made-of.0.strength", "altered 5 % w/v -> 10 % w/v"},
             {"chemistry/vinegar#on-materials.1.verdict", "altered never -> with-care"},
             {"page/leaks#body.2", "altered Water is never the last word. -> Water is the last word."}});
}

TEST_CASE("ten edits: what follows from them, each with its reason, and nothing else") {
  const States states;
  make_ten_edits(states);
  const json told = states.told();
  std::set<std::string> expected = {
      // Life is charge by current, so it is shorter by 75 to 80; what the cell loses by itself is a share of its charge.
      "module/tiny-lcd#cell-life.sr754w.life", "module/tiny-lcd#cell-life.sr754w.self-current", "cell/sr754w#cell-life.life",
      // A cell in its own place rests on its own size: recalled before, now as good as the table of substitutes, usage of the
      // trade. Beside LR754, whose size is recalled, nothing changes: the weakest counts.
      "cell/sr754w#cell-swap.candidate.sr754w",
      // The chart marks a recalled size; this one no longer is.
      "chart/tiny#By number: 393",
      // A new cell of the size of two others: each of the three pairs both ways but the one that was there, and itself.
      "cell/sr754sw#same-size.sr754w", "cell/sr754w#same-size.sr754sw", "cell/sr754sw#same-size.lr754",
      "cell/lr754#same-size.sr754sw", "cell/sr754sw#cell-swap.candidate.sr754sw", "cell/sr754sw#cell-swap.candidate.sr754w",
      "cell/sr754sw#cell-swap.candidate.lr754", "cell/sr754w#cell-swap.candidate.sr754sw",
      "cell/lr754#cell-swap.candidate.sr754sw",
      // The removed cell had nobody of its size.
      "cell/sr41w#cell-swap.candidate.sr41w",
      // 40 mg of potassium carbonate, 138.206 g/mol, take two acid each: 0.579 mmol. Vinegar of 5 g in 100 mL is 0.833 mol/L:
      // 0.695 mL, seven swabs of 0.1 mL; of 10 g, half as much, four. 10 mg: two swabs, then one. The gas is the crust's.
      "page/leaks#crust-dose.swabs.potassium-carbonate.swabs", "residue/crust#crust-dose.vinegar.swabs",
      "residue/crust#crust-dose.vinegar.volume",
      // The chart prints the verdict.
      "chart/tiny#This on that: Vinegar on Printed film"};
  // What a designation says: S, R, 7, 54, SW by the tables of systems, sizes, suffixes and drains, 48 its short form.
  for (const char* output : {"system", "nominal", "end-voltage", "diameter", "height", "short-form", "electrolyte", "drain"}) {
    expected.insert("cell/sr754sw#cell-decode." + std::string(output));
  }
  // 41 is the short form of 736; no electrolyte without the second letter.
  for (const char* output : {"system", "nominal", "end-voltage", "diameter", "height", "long-form", "drain"}) {
    expected.insert("cell/sr41w#cell-decode." + std::string(output));
  }
  CHECK(ids(told.at("derived")) == expected);
  CHECK(named(told.at("derived"), "page/leaks#crust-dose.swabs.potassium-carbonate.swabs").at("before") ==
        "7 swabs (0.695 mL, rounded up)");
  CHECK(named(told.at("derived"), "page/leaks#crust-dose.swabs.potassium-carbonate.swabs").at("after") ==
        "4 swabs (0.348 mL, rounded up)");
}

TEST_CASE("what is derived names the edits that it follows from") {
  const States states;
  make_ten_edits(states);
  const json derived = states.told().at("derived");
  const auto because = [&derived](const std::string& id) {
    return named(derived, id).at("because").get<std::vector<std::string>>();
  };
  using Ids = std::vector<std::string>;
  CHECK(because("module/tiny-lcd#cell-life.sr754w.life") == Ids{"cell/sr754w#capacity"});
  CHECK(because("cell/sr754w#cell-swap.candidate.sr754w") == Ids{"cell/sr754w#basis.size.diameter"});
  CHECK(because("cell/lr754#same-size.sr754sw") == Ids{"cell/sr754sw"});
  CHECK(because("cell/sr41w#cell-decode.system") == Ids{"cell/sr41w"});
  CHECK(because("residue/crust#crust-dose.vinegar.swabs") == Ids{"chemistry/vinegar#made-of.0.strength"});
  CHECK(because("chart/tiny#By number: 393") == Ids{"cell/sr754w#basis.size.diameter"});
}

TEST_CASE("another basis is told apart from another value, for what is derived too") {
  const States states;
  states.edit("cell/sr754w.yaml", "size: { trust: memory }", "size: { source: some-book, where: table 1, trust: handbook }");
  const json told = states.told();
  REQUIRE(told.at("stated").size() == 1);
  CHECK(told.at("stated").front().at("how") == "basis");
  CHECK(told.at("stated").front().at("fields") == json{"size.diameter", "size.height"});
  const json& swap = named(told.at("derived"), "cell/sr754w#cell-swap.candidate.sr754w");
  CHECK(swap.at("how") == "basis");
  CHECK(swap.at("before").get<std::string>().rfind("memory", 0) == 0);
  CHECK(swap.at("after").get<std::string>().rfind("trade", 0) == 0);
}

TEST_CASE("order of keys, line ends within text, quotes, comments, a basis written out: no difference, exit 0") {
  const States states;
  states.write("cell/sr754w.yaml",
               "# A comment.\nid: sr754w\nnominal: \"1.55 V\"\nsystem: 'silver-oxide'\ndrain: high   # another\n"
               "designation: SR754W\ntrade-number: '393'\nuses: >-\n  Watches\n  with a lamp.\n"
               "basis:\n  capacity: { trust: memory }\n  size.height: { trust: memory }\n  size.diameter: { trust: memory }\n"
               "capacity:\n  load: not stated\n  value: 80 mAh\nsize:\n  height: 5.4 mm\n  diameter: 7.9 mm\n");
  states.edit("page/leaks.md", "A crust is lifted with a damp swab, and ", "A crust is lifted\nwith a damp swab,\nand ");
  states.edit("module/tiny-lcd.yaml", "cells: [sr754w]", "cells:\n  - cell/sr754w");
  const Ran ran = states.changes();
  INFO(ran.out << ran.err);
  CHECK(ran.code == 0);
  CHECK(ran.out == "The two say the same.\n");
  CHECK(states.told() == json{{"same", true}, {"stated", json::array()}, {"derived", json::array()}});
}

TEST_CASE("a record under a new id that names the old one is the same record, and so is what follows from it") {
  const States states;
  fs::rename(states.path() / "new/cell/sr754w.yaml", states.path() / "new/cell/tall-silver.yaml");
  states.edit("cell/tall-silver.yaml", "id: sr754w", "id: tall-silver\naliases: [sr754w]");
  const json told = states.told();
  CHECK(by_id(told.at("stated")) == Told{{"cell/tall-silver", "altered cell/sr754w -> cell/tall-silver"}});
  CHECK(told.at("derived").empty());
}

TEST_CASE("an entry put before another moves what stands behind it, and changes nothing in it") {
  const States states;
  states.edit("chemistry/vinegar.yaml", "made-of:\n", "made-of:\n  - { substance: carbon-dioxide, strength: not stated }\n");
  const json told = states.told();
  CHECK(ids(told.at("stated")) == std::set<std::string>{"chemistry/vinegar#made-of.0"});
  CHECK(told.at("derived").empty());  // the dose rests on the strength of the acid, which is another entry now
}

TEST_CASE("an answer that is refused now is told with the reason and with what brought it about") {
  const States states;
  states.edit("chemistry/vinegar.yaml", "strength: 5 % w/v", "strength: not stated");
  const json derived = states.told().at("derived");
  const json& refused = named(derived, "residue/crust#crust-dose.vinegar.refused");
  CHECK(refused.at("how") == "added");
  CHECK(refused.at("after").get<std::string>().find("does not state its strength") != std::string::npos);
  for (const auto& change : derived) CHECK(change.at("because") == json{"chemistry/vinegar#made-of.0.strength"});
  CHECK(derived.size() == 5);  // swabs of the page; swabs, volume and gas of the crust, and the refusal in their place
}

TEST_CASE("a state with errors, or none at all, is exit 2 with its findings") {
  const States states;
  states.edit("cell/sr754w.yaml", "1.55 V", "1.5 V");
  const Ran wrong = states.changes();
  CHECK(wrong.code == 2);
  CHECK(wrong.out.empty());
  CHECK(wrong.err.find("new/cell/sr754w.yaml:6:10: error:") != std::string::npos);
  CHECK(wrong.err.find("the content new has errors") != std::string::npos);
  CHECK(benchleaf::test::run_program(states.path(), "changes old nowhere").code == 2);
  CHECK(benchleaf::test::run_program(states.path(), "changes old").code == 2);
  CHECK(benchleaf::test::run_program(states.path(), "changes old new --json --markdown").code == 2);
}

TEST_CASE("one edit is told in ten lines, and the rest counted; the working leaves nothing out") {
  const States states;
  states.edit("chemistry/vinegar.yaml", "strength: 5 % w/v", "strength: 6 % w/v");
  states.edit("chemistry/vinegar.yaml", "made-of:\n",
              "note: One.\ndilute: Two.\ndose: Three.\nwaste: Four.\nstorage: Five.\nshort-name: Six\nmade-of:\n");
  const json told = states.told();
  const std::size_t all = told.at("stated").size() + told.at("derived").size();
  const auto lines_of = [](const std::string& text) { return std::count(text.begin(), text.end(), '\n'); };
  const auto changes_in = [](const std::string& text) {
    std::size_t count = 0;
    for (std::size_t at = text.find("\n  "); at != std::string::npos; at = text.find("\n  ", at + 1))
      count += text.compare(at + 1, 4, "    ") == 0 ? 0 : 1;
    return count;
  };
  const std::string brief = states.changes().out, working = states.changes("--working").out;
  INFO(brief << "\n" << working);
  REQUIRE(all > 10);
  CHECK(changes_in(brief) == 10);
  CHECK(brief.find("and " + std::to_string(all - 10) + " more (see all with --working)\n") != std::string::npos);
  CHECK(changes_in(working) == all);
  CHECK(working.find(" more (") == std::string::npos);
  CHECK(lines_of(brief) < lines_of(working));
}

TEST_CASE("text and Markdown: the same changes in words, nothing of the content read as markup") {
  const States states;
  states.edit("cell/sr754w.yaml", "80 mAh", "75 mAh");
  states.edit("cell/sr754w.yaml", "Watches with a lamp.", "\"Watches with <b>a</b> `lamp` | *here*.\"");
  const Ran text = states.changes();
  CHECK(text.code == 1);
  CHECK(text.out.find("Stated\n  cell/sr754w#capacity altered: 80 mAh -> 75 mAh\n") != std::string::npos);
  CHECK(text.out.find("follows from") == std::string::npos);
  CHECK(states.changes("--working").out.find("    follows from cell/sr754w#capacity\n") != std::string::npos);
  CHECK(text.out.find("2 stated changes, 3 derived changes.\n") != std::string::npos);
  const Ran markdown = states.changes("--markdown");
  CHECK(markdown.code == 1);
  CHECK(markdown.out.find("### Stated\n\n- `cell/sr754w#capacity` altered: `80 mAh` -> `75 mAh`\n") != std::string::npos);
  CHECK(markdown.out.find("-> `` Watches with <b>a</b> `lamp` | *here*. ``\n") != std::string::npos);
}
