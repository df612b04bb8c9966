// The bound pages against the look-up of the terminal: what people type (tests/spec/lay-queries.tsv), what can hurt, and 2,000
// queries of the same sorts made with a fixed seed, get the same JSON.
#include <filesystem>
#include <fstream>
#include <sstream>

#include <nlohmann/json.hpp>

#include "command/run_program.h"
#include "query/made_queries.h"
#include "query/real_answers.h"
#include "support/catch.h"

using namespace benchleaf;
using Json = nlohmann::ordered_json;
using test::real_answers;

namespace {

constexpr std::size_t kMade = 2000;
constexpr std::size_t kEachOfTerminal = 150;  // one in so many is asked of the program itself, a process each

std::vector<std::string> queries() {
  std::vector<std::string> list = {"bleach and vinegar", "acetone acrylic", "vinegar on acrylic", "", "\t", "\"<&", "7,9 x 5,4"};
  std::ifstream file("tests/spec/lay-queries.tsv");
  for (std::string line; std::getline(file, line);) {
    if (!line.empty() && line[0] != '#') list.push_back(line.substr(0, line.find('\t')));
  }
  CHECK(list.size() > 150);
  test::MadeQueries made(test::real_content());
  CHECK(made.names() > 500);
  for (std::string& query : made.make(kMade)) list.push_back(std::move(query));
  return list;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

std::vector<std::string> page_answers(const std::filesystem::path& work, const std::vector<std::string>& asked) {
  std::filesystem::create_directories(work);
  std::ofstream file(work / "queries.txt", std::ios::binary);
  for (const std::string& query : asked) file << query << "\n";
  file.close();
  const std::string script = std::filesystem::current_path().string() + "/tests/web/ask_page.mjs";
  const test::Ran ran = test::run_program(work, "'" + script + "' '" BENCHLEAF_BOUND "' <queries.txt", {}, BENCHLEAF_NODE);
  INFO(ran.err);
  CHECK(ran.code == 0);
  return lines_of(ran.out);
}

std::string quoted(const std::string& word) {
  std::string out = "'";
  for (const char c : word) out += c == '\'' ? "'\\''" : std::string(1, c);
  return out + "'";
}

/// The verdicts of the first answer with their materials or liquids: `never material/acrylic`.
std::vector<std::string> verdicts_of(const std::string& query) {
  std::vector<std::string> said;
  const query::Answers answers = real_answers().answer(query);
  if (answers.hits.empty()) return said;
  for (const query::AnswerVerdict& verdict : answers.hits.front().verdicts) said.push_back(verdict.code + " " + verdict.record);
  return said;
}

}  // namespace

TEST_CASE("the page finds what the terminal finds") {
  const std::vector<std::string> asked = queries();
  const std::vector<std::string> answers = page_answers(std::string(BENCHLEAF_WORK) + "/found", asked);
  REQUIRE(answers.size() == asked.size());
  const std::string root = std::filesystem::current_path().string();
  for (std::size_t i = 0; i < asked.size(); ++i) {
    INFO(asked[i]);
    const std::string json = query::answer(real_answers(), asked[i]);
    CHECK(Json::parse(answers[i]) == Json::parse(json));
    if (i % kEachOfTerminal == 0)
      CHECK(test::run_program(BENCHLEAF_WORK, "--content '" + root + "/content' --schema '" + root + "/schema' find --json -- " +
                                                  quoted(asked[i]))
                .out == json);
  }
}

TEST_CASE("what must not meet is refused, and acrylic is answered fitted and loose") {
  using Catch::Matchers::VectorContains;
  // Labels of bleach: with acid it gives off chlorine. Pages on acrylic: acetone dissolves it.
  CHECK(verdicts_of("bleach and vinegar") == std::vector<std::string>{"never chemistry/white-vinegar"});
  const auto acetone = verdicts_of("acetone acrylic");
  CHECK_THAT(acetone, VectorContains(std::string("never material/stressed-acrylic")));
  CHECK_THAT(acetone, VectorContains(std::string("never material/acrylic")));
  // Acid on acrylic under tension: with care at best (common practice, no source), so it stands before the loose one.
  const auto vinegar = verdicts_of("vinegar on acrylic");
  REQUIRE(vinegar.size() == 2);
  CHECK(vinegar.front() == "with-care material/stressed-acrylic");
}
