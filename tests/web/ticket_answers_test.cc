// The form of the page against the terminal: the same watch gives the same plan, letter for letter, from the program, from the
// library that the page's script is built of, and from the script itself in node.
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "command/run_program.h"
#include "compose/real_book.h"
#include "read/disk_files.h"
#include "read/node_lines.h"
#include "read/shapes.h"
#include "standards/table_lines.h"
#include "support/catch.h"
#include "web/ticket_answer.h"

using namespace benchleaf;
namespace fs = std::filesystem;
using nlohmann::json;

namespace {

const std::vector<std::string> kWatches = {"quillfen-d-001", "quillfen-d-002", "quillfen-d-003"};
constexpr const char* kDrawer = "quillfen-drawer";
constexpr const char* kParting = "====\n";

std::string table_lines() { return standards::table_lines(test::real_book().tables.published); }

std::string ticket_lines() {
  const test::DiskFiles schema("schema");
  return web::ticket_lines(test::real_book().records, *read::shape_tree(schema, "watch"), *read::shape_tree(schema, "stock"));
}

const web::TicketLibrary& library() {
  static const web::TicketLibrary kLibrary = web::read_ticket_library(table_lines(), ticket_lines());
  REQUIRE(kLibrary.fault.empty());
  return kLibrary;
}

std::string watch_lines(const std::string& id) { return read::node_lines(test::real_book().records.watches.at(id).root); }
std::string drawer_lines() { return read::node_lines(test::real_book().records.stocks.at(kDrawer).root); }

void write(const fs::path& path, const std::string& text) { std::ofstream(path, std::ios::binary) << text; }

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

/// A watch as lines: `key`, `value` in turn at the first level, all of them words.
std::string form(const std::vector<std::string>& words) {
  model::Node root;
  root.type = model::NodeType::mapping;
  for (std::size_t i = 0; i + 1 < words.size(); i += 2) {
    model::Node value;
    value.type = model::NodeType::string;
    value.text = words[i + 1];
    root.members.push_back({words[i], {}, value});
  }
  return read::node_lines(root);
}

}  // namespace

TEST_CASE("the page's library makes the ticket that the program makes, with a drawer and without") {
  for (const std::string& watch : kWatches) {
    for (const bool with_drawer : {false, true}) {
      INFO(watch << (with_drawer ? " with the drawer" : ""));
      const json answer = json::parse(web::answer_ticket(library(), watch_lines(watch), with_drawer ? drawer_lines() : ""));
      const Printed printed = from_terminal(watch, with_drawer);
      CHECK(answer.at("text") == printed.text);
      CHECK(answer.at("html") == printed.html);
      CHECK(printed.html.size() > 10000);
    }
  }
}

TEST_CASE("the page's script answers as the library does") {
  const fs::path work = fs::path(BENCHLEAF_WORK) / "asked";
  fs::remove_all(work);
  fs::create_directories(work);
  write(work / "tables.txt", table_lines());
  write(work / "records.txt", ticket_lines());
  const std::vector<std::pair<std::string, std::string>> asked = {
      {watch_lines(kWatches[0]), drawer_lines()},
      {watch_lines(kWatches[1]), ""},
      {watch_lines(kWatches[2]), drawer_lines()},
      {form({"id", "an-old-watch", "title", "An old watch"}), ""},
      {form({"id", "a-slip", "title", "A slip", "gasket-seat", "28,60 mm"}), ""}};
  std::string expected;
  for (std::size_t i = 0; i < asked.size(); ++i) {
    const std::string name = "asked-" + std::to_string(i);
    write(work / (name + ".watch"), asked[i].first);
    if (!asked[i].second.empty()) write(work / (name + ".stock"), asked[i].second);
    expected += web::answer_ticket(library(), asked[i].first, asked[i].second) + kParting;
  }
  const std::string root = fs::current_path().string();
  const test::Ran ran = test::run_program(
      work, "'" + root + "/tests/web/ticket_answers.cjs' '" BENCHLEAF_SCRIPT "' tables.txt records.txt .", {}, BENCHLEAF_NODE);
  CHECK(ran.code == 0);
  CHECK(ran.out == expected);
  WARN(ran.err);  // how long each took
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
  const json answer =
      json::parse(web::answer_ticket(library(), form({"id", "a-slip", "title", "A slip", wrong.field, wrong.words}), ""));
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

TEST_CASE("data that the page cannot read is said once") {
  const web::TicketLibrary broken = web::read_ticket_library("x", "y");
  const json answer = json::parse(web::answer_ticket(broken, watch_lines(kWatches[0]), ""));
  CHECK(answer.at("findings").size() == 1);
  CHECK(answer.at("text") == "");
}
