// The form of the page against the terminal: the same watch gives the same plan, letter for letter, from the program, from the
// library that the page's program is built of, and from that program in node.
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "compose/real_book.h"
#include "read/node_lines.h"
#include "support/catch.h"
#include "web/page_script.h"

using namespace benchleaf;
namespace fs = std::filesystem;
using nlohmann::json;

namespace {

const std::vector<std::string> kWatches = {"quillfen-d-001", "quillfen-d-002", "quillfen-d-003"};
constexpr const char* kDrawer = "quillfen-drawer";

std::string page_data() { return test::page_data(test::real_book().tables.published, test::real_book().records); }

/// The answer of the library that the page's program is built of.
std::string library_answer(const test::Question& question) {
  static web::Program program(page_data());
  return program.answer(read::node_lines(test::node_of(question)));
}

test::Question question(const std::string& watch, bool with_drawer) {
  const auto& records = test::real_book().records;
  test::Question asked = {{"ask", "ticket"}, {"watch", test::question_of(records.watches.at(watch).root)}};
  if (with_drawer) asked["stock"] = test::question_of(records.stocks.at(kDrawer).root);
  return asked;
}

/// What the program prints and writes for a watch of the content.
struct Printed {
  std::string text;
  std::string html;
};

Printed from_terminal(const std::string& watch, bool with_drawer) {
  const fs::path work = fs::path(BENCHLEAF_WORK) / "terminal";
  fs::remove_all(work);
  fs::create_directories(work);
  const std::string root = fs::current_path().string();
  std::string words =
      "ticket '" + root + "/content/watch/" + watch + ".yaml' --content '" + root + "/content' --schema '" + root + "/schema'";
  if (with_drawer) words += " --stock '" + root + "/content/stock/" + kDrawer + ".yaml'";
  const test::Ran ran = test::run_program(work, words);
  CHECK(ran.code == 0);
  return {ran.out, test::text_of(work / "out/tickets" / ("ticket-" + watch + ".html"))};
}

/// A watch with one answer.
test::Question form(const std::string& field, const std::string& words) {
  return {{"ask", "ticket"}, {"watch", {{"id", "a-slip"}, {"title", "A slip"}, {field, words}}}};
}

}  // namespace

TEST_CASE("the page's library makes the ticket that the program makes, with a drawer and without") {
  for (const std::string& watch : kWatches) {
    for (const bool with_drawer : {false, true}) {
      INFO(watch << (with_drawer ? " with the drawer" : ""));
      const json answer = json::parse(library_answer(question(watch, with_drawer)));
      const Printed printed = from_terminal(watch, with_drawer);
      CHECK(answer.at("text") == printed.text);
      CHECK(answer.at("html") == printed.html);
      CHECK(printed.html.size() > 10000);
    }
  }
}

TEST_CASE("the page's program answers as the library does") {
  const std::vector<test::Question> questions = {
      question(kWatches[0], true),
      question(kWatches[1], false),
      question(kWatches[2], true),
      {{"ask", "ticket"}, {"watch", {{"id", "an-old-watch"}, {"title", "An old watch"}}}},
      form("gasket-seat", "28,60 mm"),
      {{"ask", "ticket"}},
      {{"ask", "no-such"}}};
  const auto answers = test::page_answers(fs::path(BENCHLEAF_WORK) / "planned", page_data(), questions);
  for (std::size_t i = 0; i < questions.size(); ++i) CHECK(answers[i] == library_answer(questions[i]));
}

TEST_CASE("what is wrong with a watch is said at its field, and no plan is made") {
  struct Wrong {
    const char* field;
    const char* words;
    const char* message;
  };
  const Wrong wrong = GENERATE(values<Wrong>({{"gasket-seat", "28,60 mm", "comma"},
                                              {"gasket-seat", "28.60", "unit"},
                                              {"module", "no-such-module", "no-such-module"},
                                              {"back", "glued", "glued"},
                                              {"colour", "red", "colour"}}));
  const json answer = json::parse(library_answer(form(wrong.field, wrong.words)));
  INFO(answer.dump(1));
  REQUIRE(answer.at("findings").size() == 1);
  const json& finding = answer.at("findings").front();
  CHECK(finding.at("severity") == "error");
  CHECK(finding.at("path") == wrong.field);
  const std::string said = finding.at("message").get<std::string>() + " " + finding.at("hint").get<std::string>();
  CHECK(said.find(wrong.message) != std::string::npos);
  CHECK(answer.at("text") == "");
  CHECK(answer.at("html") == "");
}

TEST_CASE("data that the page cannot read is said") {
  web::Program broken("x");
  CHECK(broken.answer(read::node_lines(test::node_of({{"ask", "reckon"}}))) ==
        "the page's data cannot be read; bind the handbook again\n");
}
