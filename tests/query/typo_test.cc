// One and two slips in every name of ten letters and more: the record, or no answer and the right name nearest; never another
// liquid, another cell system or another verdict.
#include <algorithm>
#include <random>

#include "query/names.h"
#include "query/real_answers.h"
#include "query/words.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

constexpr std::size_t kLongName = 10;
constexpr unsigned kSeed = 20261130;

/// One letter put in, left out, changed or changed over; blanks and figures stay.
std::string with_slip(std::string name, std::mt19937& draw) {
  const auto below = [&draw](std::size_t size) { return static_cast<std::size_t>(draw() % size); };
  std::size_t at = below(name.size());
  while (name[at] < 'a' || name[at] > 'z') at = below(name.size());
  const char letter = static_cast<char>('a' + below(26));
  switch (below(4)) {
    case 0: name.insert(at, 1, letter); break;
    case 1: name.erase(at, 1); break;
    case 2: name[at] = letter; break;
    default:
      at = std::min(at, name.size() - 2);
      std::swap(name[at], name[at + 1]);
      break;
  }
  return name;
}

bool is_long(const std::string& name) {
  std::size_t letters = 0;
  for (const char c : name) {
    if (static_cast<unsigned char>(c) >= 0x80) return false;
    letters += (c >= 'a' && c <= 'z') ? 1 : 0;
  }
  return letters >= kLongName;
}

/// The record of the first answer, or empty.
std::string first_of(const query::Answers& answers) { return answers.hits.empty() ? std::string() : answers.hits.front().record; }

}  // namespace

TEST_CASE("one and two slips in a long name bring the right record, or the right name") {
  // With all records that go by each, however its words are parted, and with what comes first where there is no slip.
  std::map<std::string, std::set<std::string>> names, by_key;
  for (const model::Record* record : test::real_content().records.all()) {
    if (!query::is_looked_up(record->kind)) continue;
    for (const query::Name& name : query::names_of(*record, test::real_content().tables)) {
      by_key[query::joined_key(name.text)].insert(record->reference());
      if (is_long(name.text)) names[name.text];
    }
  }
  for (auto& [name, records] : names) {
    records = by_key[query::joined_key(name)];
    records.insert(first_of(test::real_answers().answer(name)));
    records.erase(std::string());
  }
  REQUIRE(names.size() > 300);
  std::mt19937 draw(kSeed);
  std::size_t right = 0, all = 0;
  std::string missed;
  for (const auto& [name, records] : names) {
    std::string typed = name;
    for (int slips = 1; slips <= 2; ++slips, ++all) {
      typed = with_slip(typed, draw);
      const query::Answers answers = test::real_answers().answer(typed);
      const bool hit = records.count(first_of(answers)) > 0;
      const bool named = answers.hits.empty() && !answers.nearest.empty() &&
                         by_key[query::joined_key(answers.nearest.front())] == by_key[query::joined_key(name)];
      right += hit || named ? 1 : 0;
      if (hit || named) continue;
      missed += typed + " (" + name + "): " + (answers.hits.empty() ? "nothing" : first_of(answers)) + "\n";
      INFO(typed << " for " << name);
      if (answers.hits.empty()) continue;
      const std::string kind = answers.hits.front().kind;
      const bool liquid = records.begin()->rfind("chemistry/", 0) == 0;
      CHECK_FALSE((kind == "cell" || (liquid && kind == "chemistry")));
    }
  }
  INFO(missed);
  CHECK(right * 100 >= all * 95);
}
