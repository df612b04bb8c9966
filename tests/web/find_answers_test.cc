// The search of the pages against the look-up of the terminal: what people type (tests/spec/lay-queries.tsv), and 2,000 queries
// that are made of names, pairs of names and names with a slip, get the same JSON, letter for letter.
#include <fstream>
#include <random>

#include "query/names.h"
#include "query/real_answers.h"
#include "support/catch.h"
#include "web/page_script.h"

using namespace benchleaf;

namespace {

constexpr std::size_t kMade = 2000;
constexpr unsigned kSeed = 20261130;

std::vector<std::string> typed_by_people() {
  std::vector<std::string> queries = {"bleach and vinegar", "acetone acrylic", "vinegar on acrylic", "", "\t", "\"<&",
                                      "7,9 x 5,4"};
  std::ifstream file("tests/spec/lay-queries.tsv");
  for (std::string line; std::getline(file, line);) {
    if (!line.empty() && line[0] != '#') queries.push_back(line.substr(0, line.find('\t')));
  }
  return queries;
}

std::vector<std::string> names() {
  std::vector<std::string> list;
  for (const model::Record* record : test::real_content().records.all()) {
    if (!query::is_looked_up(record->kind)) continue;
    for (const query::Name& name : query::names_of(*record, test::real_content().tables)) list.push_back(name.text);
  }
  return list;
}

std::vector<std::string> made_queries() {
  const std::vector<std::string> all = names();
  REQUIRE(all.size() > 500);
  std::mt19937 draw(kSeed);
  const auto below = [&draw](std::size_t size) { return static_cast<std::size_t>(draw() % size); };
  std::vector<std::string> queries;
  while (queries.size() < kMade) {
    std::string query = all[below(all.size())];
    switch (below(4)) {
      case 0: query += " and " + all[below(all.size())]; break;
      case 1: query += " on " + all[below(all.size())]; break;
      case 2:
        if (static_cast<unsigned char>(query.front()) < 0x80) query.erase(0, 1);
        break;
      default: break;
    }
    queries.push_back(std::move(query));
  }
  return queries;
}

}  // namespace

TEST_CASE("the page finds what the terminal finds") {
  std::vector<std::string> queries = typed_by_people();
  CHECK(queries.size() > 100);
  for (std::string& query : made_queries()) queries.push_back(std::move(query));
  std::vector<test::Question> questions;
  for (const std::string& query : queries) questions.push_back({{"ask", "find"}, {"query", query}});
  const auto& content = test::real_content();
  const auto answers = test::page_answers(std::string(BENCHLEAF_WORK) + "/found",
                                          test::page_data(content.tables.published, content.records), questions);
  for (std::size_t i = 0; i < queries.size(); ++i) {
    INFO(queries[i]);
    CHECK(answers[i] == query::answer(test::real_answers(), queries[i]));
  }
}
