// Tiny content trees under tests/cases, each with the findings that `check` must give: NAME/content and NAME/expect.txt.
// The first line of expect.txt is the exit code; then every finding in its order, its hint and its notes indented below it.
// Written by hand from what the rules are there for. A case without a handbook.yaml of its own gets the common one.

#include "support/catch.h"

#include <stdlib.h>
#include <sys/wait.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

namespace fs = std::filesystem;
using nlohmann::json;

namespace {

const fs::path kCases = "tests/cases";

std::string read(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::vector<fs::path> cases() {
  std::vector<fs::path> list;
  for (const auto& entry : fs::directory_iterator(kCases)) {
    if (fs::exists(entry.path() / "expect.txt")) list.push_back(entry.path());
  }
  std::sort(list.begin(), list.end());
  return list;
}

std::string place(const json& where) {
  return where.at("file").get<std::string>() + ":" + std::to_string(where.at("line").get<int>()) + ":" +
         std::to_string(where.at("column").get<int>());
}

std::string finding_text(const json& finding) {
  std::string text = place(finding) + " " + finding.at("severity").get<std::string>() + " " +
                     finding.at("rule").get<std::string>() + ": " + finding.at("message").get<std::string>() + "\n";
  const std::string hint = finding.at("hint");
  if (!hint.empty()) text += "  hint: " + hint + "\n";
  for (const auto& note : finding.at("notes")) text += "  " + place(note) + " " + note.at("text").get<std::string>() + "\n";
  return text;
}

/// The case in a folder of its own beside the schema, so that every path is the same on every machine.
class CaseFolder {
 public:
  explicit CaseFolder(const fs::path& from) {
    std::string pattern = (fs::temp_directory_path() / "benchleaf-case-XXXXXX").string();
    path_ = mkdtemp(pattern.data());
    fs::copy(from / "content", path_ / "content", fs::copy_options::recursive);
    if (!fs::exists(path_ / "content/handbook.yaml")) fs::copy(kCases / "handbook.yaml", path_ / "content/handbook.yaml");
    fs::copy("schema", path_ / "schema", fs::copy_options::recursive);
  }
  ~CaseFolder() { fs::remove_all(path_); }
  CaseFolder(const CaseFolder&) = delete;
  CaseFolder& operator=(const CaseFolder&) = delete;

  /// What expect.txt must hold.
  std::string check() const {
    const std::string command = "cd '" + path_.string() + "' && '" BENCHLEAF_PROGRAM "' check --json --quiet >findings.json";
    const int status = std::system(command.c_str());
    REQUIRE(WIFEXITED(status));
    std::string text = "exit " + std::to_string(WEXITSTATUS(status)) + "\n";
    const json findings = json::parse(read(path_ / "findings.json"));
    for (const auto& finding : findings.at("findings")) text += finding_text(finding);
    return text;
  }

 private:
  fs::path path_;
};

/// ` RULE: ` for every rule that the wrong procedures name.
std::string refused_in_procedures() {
  std::string all;
  const std::regex refused("refused by: ([^\n]*)");
  for (const auto& entry : fs::directory_iterator(kCases / "procedures")) {
    const std::string text = read(entry.path());
    for (std::sregex_iterator at(text.begin(), text.end(), refused), end; at != end; ++at) {
      all += " " + std::regex_replace((*at)[1].str(), std::regex(", "), ": ") + ": ";
    }
  }
  return all;
}

/// Ids of the rules that the sources of prove name.
std::set<std::string> raised_by_prove() {
  std::set<std::string> names;
  const std::regex use("Rule::([a-z_]+)");
  for (const auto& entry : fs::directory_iterator("src/prove")) {
    if (entry.path().extension() != ".cc") continue;
    const std::string text = read(entry.path());
    for (std::sregex_iterator at(text.begin(), text.end(), use), end; at != end; ++at) names.insert((*at)[1]);
  }
  std::set<std::string> ids;
  const std::string table = read("src/report/rules.def");
  const std::regex line("BENCHLEAF_RULE\\(([a-z_]+), \"([^\"]+)\"");
  for (std::sregex_iterator at(table.begin(), table.end(), line), end; at != end; ++at) {
    if (names.count((*at)[1]) > 0) ids.insert((*at)[2]);
  }
  REQUIRE(ids.size() == names.size());
  return ids;
}

}  // namespace

TEST_CASE("each case gives exactly the findings that it expects") {
  REQUIRE(cases().size() >= 12);
  for (const auto& path : cases()) {
    INFO(path.string());
    CHECK(CaseFolder(path).check() == read(path / "expect.txt"));
  }
}

TEST_CASE("one case is clean") { CHECK(read(kCases / "clean/expect.txt") == "exit 0\n"); }

TEST_CASE("every rule that prove raises stands in some case") {
  std::string all;
  for (const auto& path : cases()) all += read(path / "expect.txt");
  all += refused_in_procedures();
  const auto ids = raised_by_prove();
  REQUIRE(ids.size() >= 25);
  for (const auto& id : ids) {
    INFO(id);
    CHECK(all.find(" " + id + ": ") != std::string::npos);
  }
}
