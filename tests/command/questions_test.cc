// The questions of the bench, tests/spec/questions.md: `find` brings the wanted record first or second. Written by hand from
// what a restorer asks; the program itself is asked some of them by tests/house/questions_test.py.

#include "support/catch.h"

#include <algorithm>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "command/finder.h"

using namespace benchleaf;

namespace {

struct Question {
  std::string words;
  std::string wanted;  ///< references parted by commas
};

std::vector<Question> questions() {
  static const std::regex kLine("\\| [0-9]+ \\| [^|]+ \\| ([^|]+) \\| ([^|]+) \\|");
  std::vector<Question> list;
  std::ifstream lines("tests/spec/questions.md");
  std::smatch match;
  for (std::string line; std::getline(lines, line);) {
    if (std::regex_match(line, match, kLine)) list.push_back({match[1], match[2]});
  }
  return list;
}

/// What stands first or second.
std::vector<std::string> first_two(const query::Answers& answers) {
  std::vector<std::string> records;
  for (const auto* list : {&answers.hits, &answers.others}) {
    for (const query::Answer& answer : *list) records.push_back(answer.record);
  }
  records.resize(std::min<std::size_t>(records.size(), 2));
  return records;
}

bool is_wanted(const std::string& record, const std::string& wanted) {
  std::istringstream names(wanted);
  for (std::string name; std::getline(names >> std::ws, name, ',');) {
    if (name == record) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("each question of the bench brings the wanted record first or second") {
  const auto list = questions();
  CHECK(list.size() >= 50);
  for (const Question& question : list) {
    INFO("find " << question.words << ": wanted " << question.wanted);
    const auto found = first_two(test::Finder::answers(question.words));
    CHECK(std::any_of(found.begin(), found.end(), [&](const auto& one) { return is_wanted(one, question.wanted); }));
  }
}
