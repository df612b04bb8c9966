// The search of the pages against that of the terminal: the script of the site, run by node on the data of the bound book,
// brings the same records in the same order for every query; and both bring what tests/spec/queries.txt wants.

#include "support/catch.h"

#include <array>
#include <cstdio>
#include <fstream>
#include <random>
#include <set>
#include <sstream>

#include "compose/real_book.h"
#include "html/assets.h"
#include "html/search_data.h"

using namespace benchleaf;

namespace {

constexpr std::size_t kRandomSlips = 1500;
constexpr unsigned kSeed = 20261126;

/// A line of the list: what is typed, and the records of which one must come first.
struct Wanted {
  std::string query;
  std::set<std::string> records;
};

std::vector<Wanted> wanted() {
  std::vector<Wanted> list;
  std::ifstream file("tests/spec/queries.txt");
  for (std::string line; std::getline(file, line);) {
    const std::size_t bar = line.find(" | ");
    if (line.empty() || line[0] == '#' || bar == std::string::npos) continue;
    Wanted one{line.substr(0, bar), {}};
    std::istringstream names(line.substr(bar + 3));
    for (std::string name; std::getline(names, name, ',');) one.records.insert(name);
    list.push_back(std::move(one));
  }
  return list;
}

std::string joined(const std::vector<compose::Hit>& hits) {
  std::string text;
  for (const auto& hit : hits) text += (text.empty() ? "" : " ") + hit.record;
  return text;
}

std::string answer_of(const std::string& query) {
  const auto found = test::real_book().index.look_up(query);
  std::string names;
  for (const std::string& name : found.nearest) names += (names.empty() ? "" : " ") + name;
  return joined(found.hits) + " | " + joined(found.others) + " | " + names;
}

/// One letter of a name put in, left out, changed or changed over.
std::string with_slip(std::string name, std::mt19937& draw) {
  const auto below = [&draw](std::size_t size) { return static_cast<std::size_t>(draw() % size); };
  const std::size_t at = below(name.size());
  const char letter = static_cast<char>('a' + below(26));
  switch (below(4)) {
    case 0: name.insert(at, 1, letter); break;
    case 1: name.erase(at, 1); break;
    case 2: name[at] = letter; break;
    default: std::swap(name[at], name[(at + 1) % name.size()]); break;
  }
  return name;
}

bool is_ascii(const std::string& text) {
  for (const char c : text) {
    if (static_cast<unsigned char>(c) >= 0x80 || c == '\n') return false;
  }
  return !text.empty();
}

std::vector<std::string> queries() {
  std::vector<std::string> list{"",    " .,- ", "Öl, weiß",          "ΜΆΪ", "ﬁlm", "393 acetone", "1.254\"",
                                "7,9", "9999",  "no figures at all", "*",   "x",   "5 x"};
  for (const Wanted& one : wanted()) list.push_back(one.query);
  std::vector<std::string> names;
  for (const auto& entry : test::real_book().index.entries()) {
    for (const std::string& name : entry.names) names.push_back(name);
  }
  list.insert(list.end(), names.begin(), names.end());
  std::mt19937 draw(kSeed);
  for (std::size_t i = 0; i < kRandomSlips; ++i) {
    const std::string& name = names[draw() % names.size()];
    if (is_ascii(name)) list.push_back(with_slip(name, draw));
  }
  return list;
}

void write(const std::string& path, std::string_view text) { std::ofstream(path, std::ios::binary) << text; }

std::vector<std::string> script_answers(const std::vector<std::string>& asked) {
  const std::string folder = BENCHLEAF_WORK;
  const auto& assets = html::assets();
  const auto script =
      std::find_if(assets.begin(), assets.end(), [](const auto& asset) { return asset.path == html::kSearchPath; });
  REQUIRE(script != assets.end());
  write(folder + "/search.js", script->text);
  write(folder + "/search-data.js", html::search_data(test::real_book().book.search, html::Plan(test::real_book().book)));
  std::string lines;
  for (const auto& query : asked) lines += query + "\n";
  write(folder + "/queries.txt", lines);
  const std::string command = "'" BENCHLEAF_NODE "' tests/query/search_answers.cjs '" + folder + "/search.js' '" + folder +
                              "/search-data.js' '" + folder + "/queries.txt'";
  FILE* pipe = popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string text;
  std::array<char, 4096> block{};
  for (std::size_t got = 0; (got = std::fread(block.data(), 1, block.size(), pipe)) > 0;) text.append(block.data(), got);
  pclose(pipe);
  std::vector<std::string> answers;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) answers.push_back(line);
  return answers;
}

}  // namespace

TEST_CASE("the search of the pages brings what the terminal brings, in the same order") {
  const auto asked = queries();
  CHECK(asked.size() >= 2000);
  const auto answers = script_answers(asked);
  REQUIRE(answers.size() == asked.size());
  for (std::size_t i = 0; i < asked.size(); ++i) {
    INFO(asked[i]);
    CHECK(answers[i] == answer_of(asked[i]));
  }
}

TEST_CASE("every entry that is searched has a page") {
  const html::Plan plan(test::real_book().book);
  for (const auto& entry : test::real_book().book.search.entries) {
    INFO(entry.record);
    CHECK(plan.place(entry.anchor).has_value());
  }
}

TEST_CASE("of what is typed, 95 in a hundred bring the wanted record first and 99 among the first three") {
  const auto list = wanted();
  REQUIRE(list.size() >= 320);
  std::size_t first = 0, third = 0;
  std::string missed;
  for (const Wanted& one : list) {
    const auto found = test::real_book().index.look_up(one.query);
    std::vector<std::string> records;
    for (const auto* hits : {&found.hits, &found.others}) {
      for (const auto& hit : *hits) records.push_back(hit.record);
    }
    std::size_t place = 0;
    while (place < records.size() && one.records.count(records[place]) == 0) ++place;
    const bool found_at_all = place < records.size();
    first += found_at_all && place == 0 ? 1 : 0;
    third += found_at_all && place < 3 ? 1 : 0;
    if (place != 0 || !found_at_all) missed += one.query + ": " + (records.empty() ? "nothing" : records.front()) + "\n";
  }
  INFO(missed);
  CHECK(first * 100 >= list.size() * 95);
  CHECK(third * 100 >= list.size() * 99);
}

TEST_CASE("the data of the search stay below 400 kB") {
  const auto text = html::search_data(test::real_book().book.search, html::Plan(test::real_book().book));
  CHECK(text.size() < 400'000);
}
