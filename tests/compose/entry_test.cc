// Entries of records that the tests write themselves: what must stand where on the page.
#include <algorithm>

#include "compose/book_walk.h"
#include "compose/entries/book.h"
#include "compose/real_book.h"
#include "support/catch.h"

namespace benchleaf {

namespace {

constexpr const char* kHandbook = R"(title: A handbook
edition: "1"
date: 2026-03
language: en-GB
format: 1
papers: [a4]
chapters:
  - id: all
    number: 1
    title: Everything
    tab: All
    pages: [opening]
    kinds: [cell, chemistry, material, caution, procedure, residue]
)";

std::string caution(const std::string& id, const std::string& word, const std::string& severity) {
  return "id: " + id + "\ntitle: Title of " + id + "\nword: " + word + "\nseverity: " + severity +
         "\nlikelihood: could\nhazard: Hazard of " + id + ".\nharm: Harm of " + id + ".\navoid: Way round " + id +
         ".\nsigns: [W023, M004]\n" + "basis:\n  hazard: { trust: memory }\n";
}

std::map<std::string, std::string> small_content(std::string page = "Words.\n") {
  std::map<std::string, std::string> content;
  content["handbook.yaml"] = kHandbook;
  content["page/opening.md"] = "---\nid: opening\ntitle: Opening\nlead: A lead.\ntrust: memory\n---\n\n" + page;
  content["caution/mild.yaml"] = caution("mild", "caution", "minor-or-moderate");
  content["caution/grave.yaml"] = caution("grave", "danger", "death-or-serious");
  content["caution/middle.yaml"] = caution("middle", "warning", "death-or-serious");
  content["material/brass.yaml"] = "id: brass\ntitle: Brass\nkind: metal\nfound-in: Cases.\n";
  content["material/steel.yaml"] = "id: steel\ntitle: Steel\nkind: metal\nfound-in: Cases.\n";
  content["chemistry/water.yaml"] =
      "id: water\ntitle: Water\nkind: water\nform: liquid\nmade-of: []\nuses: [wets things]\n"
      "on-materials:\n  - { material: brass, verdict: never, why: It rots. }\n"
      "basis:\n  made-of: { trust: trade }\n  on-materials: { trust: handbook, source: paper }\n";
  content["procedure/wet-it.yaml"] =
      "id: wet-it\ntitle: Wet it\ncautions: [mild]\nsteps:\n"
      "  - do: First act.\n    on: [brass]\n    with: [water]\n    rinse: true\n"
      "  - caution: middle\n  - caution: grave\n  - do: Second act.\n    meets: []\n";
  return content;
}

std::size_t place(const std::string& words, const std::string& of) {
  const std::size_t found = words.find(of);
  INFO("'" << of << "' in " << words);
  REQUIRE(found != std::string::npos);
  return found;
}

}  // namespace

TEST_CASE("a grave caution stands directly above the step that it guards, the gravest first", "[compose][entry]") {
  const test::MadeBook made = test::book_of(small_content());
  const model::Entry* entry = test::entry_of(made.book, "procedure/wet-it");
  REQUIRE(entry != nullptr);
  const std::string words = test::words_of(*entry);
  const std::size_t first = place(words, "1. First act.");
  const std::size_t danger = place(words, "DANGER: Hazard of grave. Harm of grave.|Way round grave.");
  const std::size_t warning = place(words, "WARNING: Hazard of middle.");
  CHECK(place(words, "CAUTION: Hazard of mild.") < first);
  CHECK(first < danger);
  CHECK(danger < warning);
  CHECK(warning < place(words, "2. Second act."));
  CHECK(words.find("\n", warning + 1) + 1 == place(words, "2. Second act."));
}

TEST_CASE("a step says what it puts on what", "[compose][entry]") {
  const test::MadeBook made = test::book_of(small_content());
  const std::string words = test::words_of(*test::entry_of(made.book, "procedure/wet-it"));
  CHECK(words.find("with water  on brass  rinse") != std::string::npos);
}

TEST_CASE("a message names its signs as the table of signs does", "[compose][entry]") {
  const test::MadeBook made = test::book_of(small_content());
  int messages = 0;
  test::BookWalk walk;
  walk.on_block = [&](const model::Block& block) {
    const auto* message = std::get_if<model::Message>(&block.what);
    if (message == nullptr) return;
    ++messages;
    CHECK(message->signs == std::vector<std::string>{"W023", "M004"});
    // ISO 7010 titles as schema/tables/safety-signs.yaml gives them from an open data set.
    CHECK(message->sign_titles == std::vector<std::string>{"Corrosive substance", "Wear eye protection"});
  };
  walk.walk(made.book);
  CHECK(messages > 3);
}

TEST_CASE("what no record says is not on file, and a material knows what its liquids do", "[compose][entry]") {
  const test::MadeBook made = test::book_of(small_content());
  const std::string water = test::words_of(*test::entry_of(made.book, "chemistry/water"));
  CHECK(water.find("Brass|never|It rots.|") != std::string::npos);
  CHECK(water.find("Not known  steel|") != std::string::npos);
  const std::string brass = test::words_of(*test::entry_of(made.book, "material/brass"));
  CHECK(brass.find("Water|never|It rots.|") != std::string::npos);
  const std::string steel = test::words_of(*test::entry_of(made.book, "material/steel"));
  CHECK(steel.find("Not known  water|") != std::string::npos);
}

TEST_CASE("a derived block is made, and one that asks for nothing known is a finding", "[compose][entry]") {
  const test::MadeBook good =
      test::book_of(small_content("```bench\nshow: message\nrecord: grave\n```\n\n```bench\nshow: trust-signs\n```\n"));
  CHECK(test::rules_of(good.findings).find("compose.request") == std::string::npos);
  CHECK(std::holds_alternative<model::Message>(good.book.chapters.front().blocks.at(3).what));
  const test::MadeBook pictures =
      test::book_of(small_content("```bench\nshow: pictures\nrows: [{ picture: plus-up, words: Most cells }]\n```\n"));
  CHECK(test::rules_of(pictures.findings).find("compose.request") == std::string::npos);
  int found = 0;
  for (const model::Block& block : pictures.book.chapters.front().blocks) {
    const auto* table = std::get_if<model::Table>(&block.what);
    if (table == nullptr || table->name != "pictures") continue;
    REQUIRE(table->rows.size() == 1);
    REQUIRE(table->rows.front().cells.front().drawing);
    found += table->rows.front().cells.front().drawing->alt.find("wide flat face") != std::string::npos;
  }
  CHECK(found == 1);
  for (const char* body :
       {"show: weather", "show: message\nrecord: nobody", "show: published-table\ntable: nothing", "show: [1, 2]",
        "show: pictures", "show: pictures\nrows: [{ picture: nobody, words: A }]", "show: pictures\nrows: [{ picture: plus-up }]",
        "show: reckoned", "show: reckoned\nname: x\ncalculator: no-such\nrows: [{ depth: 5 m }]\ncolumns: [fresh]",
        "show: reckoned\nname: x\ncalculator: water-pressure\nrows: [{ depth: 5 g }]\ncolumns: [fresh]",
        "show: reckoned\nname: x\ncalculator: water-pressure\nrows: [{ depth: 5 m }]\ncolumns: [salt]"}) {
    INFO(body);
    const test::MadeBook bad = test::book_of(small_content("```bench\n" + std::string(body) + "\n```\n"));
    CHECK(test::rules_of(bad.findings).find("compose.request") != std::string::npos);
  }
}

TEST_CASE("a block that cannot be made says why, at the line that is at fault", "[compose][entry]") {
  constexpr int kFirstLine = 9;  // of the body of a block that begins the page
  struct Wrong {
    const char* body;
    int line;  // of the body, from 0
    const char* message;
  };
  const Wrong wrong[] = {
      {"show: weather", 0, "a block cannot show weather"},
      {"show: message\nrecord: nobody", 1, "there is no record caution/nobody"},
      {"show: message\nrecrod: grave", 1, "a block that shows message has no key recrod"},
      {"show: pictures\nrows:\n  - { picture: plus-up, words: A }\n  - { picture: plus-pu, words: B }", 3,
       "there is no picture plus-pu"},
      {"show: pictures\nrows:\n  - { picture: plus-up, wrods: A }", 2, "a row of pictures has no key wrods"},
      {"show: published-table\ntable: nothing", 1, "there is no table nothing"},
      {"show: nest\nwords: A nest\nseries: none-such", 2, "there is no record gasket/none-such"},
      {"show: reckoned\nname: x\ncalculator: water-presure\nrows: [{ depth: 5 m }]\ncolumns: [fresh]", 2,
       "there is no calculator water-presure"},
      {"show: reckoned\nname: x\ncalculator: water-pressure\nrows:\n  - { depth: 5 m }\ncolumns: [frehs]", 5,
       "water-pressure has no output frehs"},
      {"show: reckoned\nname: x\ncalculator: water-pressure\nrows:\n  - { depth: 5 m }\n  - { depth: 5 g }\ncolumns: [fresh]", 5,
       "water-pressure: depth: "},
      {"show: reckoned\nname: x\ncalculator: water-pressure\nrows:\n  - { depth: 5 m }\n  - { deph: 5 m }\ncolumns: [fresh]", 4,
       "the rows do not ask the same question"}};
  for (const Wrong& one : wrong) {
    INFO(one.body);
    const test::MadeBook bad = test::book_of(small_content("```bench\n" + std::string(one.body) + "\n```\n"));
    const auto& all = bad.findings.all();
    const auto found =
        std::find_if(all.begin(), all.end(), [](const auto& f) { return f.rule == report::Rule::compose_request; });
    REQUIRE(found != all.end());
    CHECK(found->message.substr(0, std::string(one.message).size()) == one.message);
    CHECK(found->where.line == kFirstLine + one.line);
    CHECK(!found->hint.empty());
    // check finds the same without making the book, once for screen and paper
    report::Findings checked;
    compose::check_blocks(bad.records, bad.tables, bad.derived, checked);
    REQUIRE(checked.all().size() == 1);
    CHECK(checked.all().front().message == found->message);
  }
}

TEST_CASE("a cell of the other system is never called the same", "[compose][entry]") {
  const model::Entry* entry = test::entry_of(test::real_book().book, "cell/sr754w");
  REQUIRE(entry != nullptr);
  CHECK(model::plain_text(entry->key) == "393");
  CHECK(model::plain_text(entry->second) == "SR754W");
  const std::string words = test::words_of(*entry);
  // The cell of its own system first; every other one is told by its system, and none of those is let in to stay.
  const std::size_t other = place(words, "OTHER system");
  CHECK(place(words, "309 SR754SW|with care|") < other);
  CHECK(place(words, "AG5 LR754|bench test only|OTHER system, alkaline;") < other);
  CHECK(place(words, "PR48|never|OTHER system, zinc air;") > other);
  CHECK(place(words, "MR754|never|OTHER system, mercuric oxide;") > other);
  CHECK(words.find("twin") == std::string::npos);
  REQUIRE(entry->drawing != nullptr);
  CHECK(entry->drawing->true_size);
}

TEST_CASE("a book without records and one with a missing page are books all the same", "[compose][entry]") {
  const test::MadeBook empty = test::book_of({{"handbook.yaml", kHandbook}});
  CHECK(empty.book.chapters.size() == 2);
  const test::MadeBook nothing = test::book_of({});
  CHECK(nothing.book.chapters.size() == 1);
}

}  // namespace benchleaf
