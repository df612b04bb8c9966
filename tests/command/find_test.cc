// find on the real content: liquids by material, materials by liquid, a pair, symptoms by the words of who sees them. What is
// expected are verdicts of public sources (named beside each), not of any output.

#include "support/catch.h"

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>

#include <nlohmann/json.hpp>

#include "command/finder.h"

namespace fs = std::filesystem;
using nlohmann::json;

namespace {

/// What `find --json` answers.
json found(const std::string& words) {
  const json answer = json::parse(benchleaf::query::answers_json(benchleaf::test::Finder::answers(words)), nullptr, false);
  REQUIRE_FALSE(answer.is_discarded());
  return answer;
}

/// The verdict that the first hit gives for a record, or empty.
std::string verdict_on(const json& answer, const std::string& record) {
  if (answer.at("hits").empty()) return {};
  for (const auto& one : answer.at("hits").front().at("verdicts")) {
    if (one.at("record") == record) return one.at("verdict");
  }
  return {};
}

std::size_t files_in(const char* folder) {
  return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

std::set<std::string> records_of(const json& answer) {
  std::set<std::string> records;
  for (const char* list : {"hits", "others"}) {
    for (const auto& hit : answer.at(list)) records.insert(hit.at("record").get<std::string>());
  }
  return records;
}

}  // namespace

TEST_CASE("find: a material answers with every liquid and abrasive, the bans first", "[find]") {
  const json brass = found("brass");
  CHECK(brass.at("hits").front().at("record") == "material/brass");
  // Ammonia cracks brass under tension (pages on season cracking, as read); alcohol does it no harm (common practice).
  CHECK(verdict_on(brass, "chemistry/ammonia-glass-cleaner") == "never");
  CHECK(verdict_on(brass, "chemistry/isopropanol") == "no harm");
  CHECK(verdict_on(brass, "abrasive/fepa-p") != "");
  const json& verdicts = brass.at("hits").front().at("verdicts");
  CHECK(verdicts.size() == files_in("content/chemistry") + files_in("content/abrasive"));
  CHECK(verdicts.front().at("verdict") == "never");
}

TEST_CASE("find: a liquid answers with every material, none left out", "[find]") {
  const json vinegar = found("white vinegar");
  CHECK(verdict_on(vinegar, "material/polariser-film") == "never");   // from memory
  CHECK(verdict_on(vinegar, "material/polycarbonate") == "no harm");  // a trade note on polycarbonate, as read
  CHECK(vinegar.at("hits").front().at("verdicts").size() == files_in("content/material"));
}

TEST_CASE("find: a liquid and a material in one query, in either order", "[find]") {
  // Three public pages on acrylic: alcohol crazes it.
  for (const char* words : {"isopropanol on acrylic crystal in its case", "acrylic, fitted isopropanol"}) {
    INFO(words);
    CHECK(verdict_on(found(words), "material/stressed-acrylic") == "never");
  }
  // A laboratory's study of swelling: silicone about doubles in a fuel of the kerosene kind.
  const json swelling = found("silicone rubber light naphtha");
  CHECK(verdict_on(swelling, "material/silicone-rubber") == "never");
  CHECK(swelling.at("hits").front().at("verdicts").size() == 1);
}

TEST_CASE("find: two liquids, or a liquid and a residue, in one query", "[find]") {
  // Labels of bleach and pages on household chemicals: with acid chlorine, with ammonia chloramines, with peroxide oxygen at
  // once.
  for (const char* words :
       {"bleach and vinegar", "Vinegar With Bleach", "household bleach white vinegar", "bleach and ammonia glass cleaner"}) {
    INFO(words);
    const json answer = found(words);
    REQUIRE(answer.at("hits").size() == 1);
    REQUIRE(answer.at("hits").front().at("verdicts").size() == 1);
    CHECK(answer.at("hits").front().at("verdicts").front().at("verdict") == "never");
  }
  // An acid and ammonia neutralise each other and give a stinging mist (common practice, no source).
  CHECK(verdict_on(found("citric acid with window cleaner"), "chemistry/ammonia-glass-cleaner") == "rinse between");
}

TEST_CASE("find: symptoms answer to the words of who sees them", "[find]") {
  CHECK(records_of(found("no figures at all")).count("symptom/blank-display") == 1);
  CHECK(records_of(found("blotches")).count("symptom/black-blotches") == 1);
  CHECK(records_of(found("fog under the crystal")).count("symptom/fog-under-crystal") == 1);
  CHECK(records_of(found("new cell dead within weeks")).count("symptom/eats-cells") == 1);
}
