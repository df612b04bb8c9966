// Tiny content trees under tests/cases, each with the findings that `check` must give. Written by hand from what the rules
// are there for: expect.txt holds the exit code, then every finding in its order with its hint and its notes below it, then
// what passes a rule by a hair. A case without a handbook.yaml of its own gets the common one.

#include "support/catch.h"

#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>

#include "prove/case_folder.h"

namespace fs = std::filesystem;
using benchleaf::test::all_cases;
using benchleaf::test::Case;
using benchleaf::test::CaseFolder;
using benchleaf::test::read_bytes;

namespace {

/// Rules of the wrong procedures of tests/cases/procedures, each of which is mended there as well.
std::set<std::string> held_by_procedures() {
  std::set<std::string> rules;
  const std::regex kRefused("refused by: ([^\n]*)");
  const std::regex kRule("[a-z.-]+");
  for (const auto& entry : fs::directory_iterator("tests/cases/procedures")) {
    if (entry.path().extension() != ".txt") continue;
    const std::string text = read_bytes(entry.path());
    for (std::sregex_iterator at(text.begin(), text.end(), kRefused), end; at != end; ++at) {
      const std::string line = (*at)[1];
      for (std::sregex_iterator rule(line.begin(), line.end(), kRule); rule != end; ++rule) rules.insert((*rule)[0]);
    }
  }
  return rules;
}

/// Ids of the rules that the sources of a folder name.
std::set<std::string> raised_by(const std::string& folder) {
  std::set<std::string> names;
  const std::regex use("Rule::([a-z0-9_]+)");
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (entry.path().extension() != ".cc") continue;
    const std::string text = read_bytes(entry.path());
    for (std::sregex_iterator at(text.begin(), text.end(), use), end; at != end; ++at) names.insert((*at)[1]);
  }
  std::set<std::string> ids;
  const std::string table = read_bytes("src/report/rules.def");
  const std::regex line("BENCHLEAF_RULE\\(([a-z0-9_]+), \"([^\"]+)\"");
  for (std::sregex_iterator at(table.begin(), table.end(), line), end; at != end; ++at) {
    if (names.count((*at)[1]) > 0) ids.insert((*at)[2]);
  }
  REQUIRE(ids.size() == names.size());
  return ids;
}

/// Rules whose cases are no tree of files, with the test that holds them.
const std::map<std::string, std::string>& held_elsewhere() {
  static const std::map<std::string, std::string> kElsewhere = {
      {"content.unreadable", "a file that vanishes between two looks: tests/command/faults_test.cc"}};
  return kElsewhere;
}

struct Pinned {
  std::string file;
  std::string rule;
};

/// The findings of an expect.txt: `FILE:LINE:COLUMN SEVERITY RULE: MESSAGE`.
std::vector<Pinned> pinned(const Case& one) {
  static const std::regex kLine("(^|\n)([^ \n][^\n:]*|):[0-9]+:[0-9]+ (error|warning|note) ([a-z.-]+): ");
  std::vector<Pinned> list;
  const std::string& text = one.findings;
  for (std::sregex_iterator at(text.begin(), text.end(), kLine), end; at != end; ++at) list.push_back({(*at)[2], (*at)[4]});
  return list;
}

std::map<std::string, std::string> tree(const fs::path& folder) {
  std::map<std::string, std::string> files;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    files.emplace(entry.path().lexically_relative(folder).string(), entry.is_regular_file() ? read_bytes(entry.path()) : "");
  }
  return files;
}

}  // namespace

TEST_CASE("each case gives exactly the findings that it expects") {
  REQUIRE(all_cases().size() >= 12);
  for (const Case& one : all_cases()) {
    INFO(one.path.string());
    CHECK(CaseFolder(one).check() == one.findings);
  }
}

TEST_CASE("one case is clean") {
  for (const Case& one : all_cases()) {
    if (one.path.filename() == "clean") CHECK(one.findings == "exit 0\n");
  }
}

TEST_CASE("at least 120 bad inputs are pinned to rule, line and column") {
  std::size_t inputs = 0, findings = 0;
  for (const Case& one : all_cases()) {
    std::set<std::string> files;
    for (const Pinned& finding : pinned(one)) {
      files.insert(finding.file);
      ++findings;
    }
    inputs += files.size();
  }
  INFO(findings << " findings");
  CHECK(inputs >= 120);
}

TEST_CASE("bind on any bad input writes nothing") {
  int bad = 0;
  for (const Case& one : all_cases()) {
    if (one.findings.rfind("exit 1\n", 0) != 0) continue;
    INFO(one.path.string());
    const CaseFolder folder(one);
    CHECK(folder.bind("out") == 1);
    CHECK_FALSE(fs::exists(folder.path() / "out"));
    fs::create_directories(folder.path() / "old/handbook/html");
    std::ofstream(folder.path() / "old/handbook/MANIFEST") << "names";
    std::ofstream(folder.path() / "old/handbook/html/index.html") << "page";
    const auto before = tree(folder.path() / "old");
    CHECK(folder.bind("old") == 1);
    CHECK(tree(folder.path() / "old") == before);
    ++bad;
  }
  CHECK(bad >= 20);
}

TEST_CASE("every rule of read and prove has a case that fails by it and one that just passes") {
  std::set<std::string> failing, passing;
  for (const Case& one : all_cases()) {
    std::set<std::string> told;
    for (const Pinned& finding : pinned(one)) {
      failing.insert(finding.rule);
      told.insert(finding.rule + " " + finding.file);
      told.insert(finding.rule + " -");
    }
    if (one.passes.empty()) continue;
    const CaseFolder folder(one);
    for (const Case::Pass& pass : one.passes) {
      INFO(one.path.string() << ": pass " << pass.rule << " " << pass.file);
      CHECK((pass.file == "-" || fs::exists(folder.path() / pass.file)));
      CHECK(told.count(pass.rule + " " + pass.file) == 0);
      passing.insert(pass.rule);
    }
  }
  std::set<std::string> ids = raised_by("src/read");
  const std::set<std::string> proved = raised_by("src/prove");
  CHECK(ids.size() >= 60);
  CHECK(proved.size() >= 25);
  ids.insert(proved.begin(), proved.end());
  const std::set<std::string> in_procedures = held_by_procedures();
  std::set<std::string> held_by_rules;  // by a wrong and a right sample, in tests/rules
  for (const auto& entry : fs::directory_iterator("tests/rules")) {
    if (entry.path().extension() == ".case") held_by_rules.insert(entry.path().stem().string());
  }
  CHECK(held_by_rules.size() >= 50);
  for (const std::string& id : ids) {
    if (held_by_rules.count(id) == 1 || held_elsewhere().count(id) == 1 || in_procedures.count(id) == 1) continue;
    INFO(id);
    CHECK(failing.count(id) == 1);
    CHECK(passing.count(id) == 1);
  }
}
