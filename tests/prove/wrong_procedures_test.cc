// Wrong procedures of tests/cases/procedures: each is refused by its rule, with the pair, the reason and the source that its
// line `says:` names; mended, each passes. They are read together with the records of the real content, since those hold
// the verdicts; what is expected comes from the facts behind these records.
//
// A block of a file: `## NAME`, `refused by: RULES`, `says: words | words`, then `wrong:` and `mended:` with the rest of a
// procedure's record under each.

#include "support/catch.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "derive/derive.h"
#include "prove/prove.h"
#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/table_reader.h"

namespace {

namespace fs = std::filesystem;
using namespace benchleaf;

struct WrongProcedure {
  std::string name;
  std::set<std::string> rules;
  std::vector<std::string> says;
  std::string wrong;
  std::string mended;
};

std::vector<std::string> parted(const std::string& text, const std::string& by) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  for (std::size_t at = text.find(by); at != std::string::npos; from = at + by.size(), at = text.find(by, from))
    parts.push_back(text.substr(from, at - from));
  parts.push_back(text.substr(from));
  return parts;
}

bool starts(const std::string& line, const std::string& with) { return line.compare(0, with.size(), with) == 0; }

void read_cases(const fs::path& path, std::vector<WrongProcedure>& cases) {
  std::ifstream in(path);
  std::string* body = nullptr;
  for (std::string line; std::getline(in, line);) {
    if (starts(line, "## ")) {
      cases.push_back({line.substr(3), {}, {}, {}, {}});
      body = nullptr;
    } else if (starts(line, "refused by: ")) {
      for (const auto& rule : parted(line.substr(12), ", ")) cases.back().rules.insert(rule);
    } else if (starts(line, "says: ")) {
      cases.back().says = parted(line.substr(6), " | ");
    } else if (line == "wrong:") {
      body = &cases.back().wrong;
    } else if (line == "mended:") {
      body = &cases.back().mended;
    } else if (body != nullptr && !line.empty()) {
      *body += line + "\n";
    }
  }
}

std::vector<WrongProcedure> all_cases() {
  std::vector<fs::path> paths;
  for (const auto& entry : fs::directory_iterator("tests/cases/procedures")) {
    if (entry.path().extension() == ".txt") paths.push_back(entry.path());
  }
  std::sort(paths.begin(), paths.end());
  std::vector<WrongProcedure> cases;
  for (const auto& path : paths) read_cases(path, cases);
  return cases;
}

/// All findings about the cases, by the file of the procedure: `content/procedure/wrong-NAME.yaml`.
std::map<std::string, std::vector<report::Finding>> findings_about(const std::vector<WrongProcedure>& cases) {
  const test::DiskFiles disk("content");
  std::map<std::string, std::string> content;
  const auto listed = disk.list();
  REQUIRE(listed);
  for (const auto& entry : *listed) {
    const bool judged = starts(entry.path, "procedure/") || starts(entry.path, "watch/") || starts(entry.path, "cell/");
    if (!judged) content[entry.path] = disk.read(entry.path).value_or("");
  }
  const test::DiskFiles more("tests/cases/procedures/records");
  const auto added = more.list();
  REQUIRE(added);
  for (const auto& entry : *added) content[entry.path] = more.read(entry.path).value_or("");
  for (const auto& one : cases) {
    for (const auto& [front, body] : {std::pair{"wrong-", one.wrong}, std::pair{"mended-", one.mended}}) {
      const std::string id = front + one.name;
      content["procedure/" + id + ".yaml"] = "id: " + id + "\ntitle: Case " + id + "\n" + body;
    }
  }
  base::FileTable files;
  report::Findings findings;
  const test::DiskFiles schema("schema");
  const read::Shapes shapes = read::load_shapes(schema, files, findings);
  const model::Tables tables = read::read_tables(schema, shapes, files, findings);
  const model::KnowledgeBase records =
      read::read_content(read::MemoryFiles("content", std::move(content)), shapes, files, findings);
  const derive::Derived derived = derive::derive(records, tables, findings);
  prove::prove(records, tables, derived, findings);
  std::map<std::string, std::vector<report::Finding>> by_file;
  for (const auto& finding : findings.all()) {
    if (finding.where.file != base::kNoFile) by_file[files.path(finding.where.file)].push_back(finding);
  }
  return by_file;
}

std::string listed(const std::vector<report::Finding>& findings) {
  std::string text;
  for (const auto& finding : findings) {
    text += std::string(report::rule_info(finding.rule).id) + " at line " + std::to_string(finding.where.line) + ": " +
            finding.message + " [" + finding.hint + "]\n";
  }
  return text;
}

}  // namespace

TEST_CASE("every wrong procedure is refused with pair, reason and source; mended, it passes") {
  const auto cases = all_cases();
  REQUIRE(cases.size() >= 60);
  auto findings = findings_about(cases);
  for (const auto& one : cases) {
    INFO(one.name);
    const auto& wrong = findings["content/procedure/wrong-" + one.name + ".yaml"];
    const auto& mended = findings["content/procedure/mended-" + one.name + ".yaml"];
    INFO(listed(wrong));
    std::set<std::string> rules;
    for (const auto& finding : wrong) {
      rules.insert(std::string(report::rule_info(finding.rule).id));
      CHECK(finding.severity == report::Severity::error);
      CHECK_FALSE(finding.hint.empty());
      CHECK(finding.where.line > 2);
    }
    CHECK(rules == one.rules);
    const bool said = std::any_of(wrong.begin(), wrong.end(), [&one](const report::Finding& finding) {
      return std::all_of(one.says.begin(), one.says.end(),
                         [&finding](const std::string& words) { return finding.message.find(words) != std::string::npos; });
    });
    CHECK(said);
    CHECK(listed(mended) == "");
  }
}

TEST_CASE("the cases break every rule about steps and their cautions") {
  std::set<std::string> broken;
  for (const auto& one : all_cases()) broken.insert(one.rules.begin(), one.rules.end());
  for (const auto& rule : report::all_rules()) {
    const std::string family(rule.id.substr(0, rule.id.find('.')));
    const bool of_steps = family == "step" || family == "mix" || family == "wet" || family == "heat";
    if (!of_steps || rule.id == "mix.group") continue;
    INFO(rule.id);
    CHECK(broken.count(std::string(rule.id)) > 0);
  }
}
