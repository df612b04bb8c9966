// What a careful contributor may do raises no error: 300 edits of the real content through read, derive and prove. A false
// alarm costs a contributor, so this is held as strictly as what must be refused. House rule, no outside source.

#include "support/catch.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <string>

#include "derive/derive.h"
#include "prove/edits.h"
#include "prove/prove.h"
#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/table_reader.h"

namespace fs = std::filesystem;
using namespace benchleaf;
using test::ContentText;
using test::Edit;

namespace {

constexpr std::size_t kTogether = 20;  // edits of different files are independent, and the whole content is checked each time

ContentText real_content() {
  ContentText content;
  const test::DiskFiles disk("content");
  const auto entries = disk.list();
  REQUIRE(entries);
  for (const read::FileEntry& entry : *entries) content.emplace(entry.path, disk.read(entry.path).value());
  return content;
}

/// The errors that a content has, one a line.
std::string errors_of(const ContentText& content) {
  static const test::DiskFiles kSchema("schema");
  base::FileTable files;
  report::Findings findings;
  const read::Shapes shapes = read::load_shapes(kSchema, files, findings);
  const model::Tables tables = read::read_tables(kSchema, shapes, files, findings);
  const model::KnowledgeBase base = read::read_content(read::MemoryFiles("content", content), shapes, files, findings);
  const auto derived = derive::derive(base, tables, findings);
  prove::prove(base, tables, derived, findings);
  std::string errors;
  for (const report::Finding& finding : findings.all()) {
    if (finding.severity != report::Severity::error) continue;
    const std::string file = finding.where.file >= 0 ? files.path(finding.where.file) : std::string();
    errors += file + ":" + std::to_string(finding.where.line) + " " + finding.message + "\n";
  }
  return errors;
}

ContentText with(ContentText content, const std::vector<Edit>& edits) {
  for (const Edit& edit : edits) content[edit.path] = edit.text;
  return content;
}

/// Edits in groups that touch no file twice.
std::vector<std::vector<Edit>> groups_of(const std::vector<Edit>& edits) {
  std::vector<std::vector<Edit>> groups;
  std::vector<std::set<std::string>> touched;
  for (const Edit& edit : edits) {
    std::size_t group = 0;
    while (group < groups.size() && (groups.at(group).size() == kTogether || touched.at(group).count(edit.path) == 1)) ++group;
    if (group == groups.size()) {
      groups.emplace_back();
      touched.emplace_back();
    }
    groups.at(group).push_back(edit);
    touched.at(group).insert(edit.path);
  }
  return groups;
}

}  // namespace

TEST_CASE("300 legitimate edits raise no error") {
  const ContentText content = real_content();
  REQUIRE(errors_of(content).empty());
  const std::vector<Edit> edits = test::legitimate_edits(content);
  CHECK(edits.size() == 300);
  std::map<std::string, int> kinds;
  for (const Edit& edit : edits) ++kinds[edit.what];
  CHECK(kinds.size() == 6);
  for (const auto& group : groups_of(edits)) {
    std::string names;
    for (const Edit& edit : group) names += edit.what + " in " + edit.path + "\n";
    INFO(names);
    CHECK(errors_of(with(content, group)) == "");
  }
}

TEST_CASE("an edit that is wrong is not passed over among the right ones") {
  ContentText content = real_content();
  std::vector<Edit> edits = test::legitimate_edits(content);
  edits.resize(kTogether - 1);
  const std::string path = "cell/sr754w.yaml";
  std::string text = content.at(path);
  text.replace(text.find("5.4 mm"), 6, "5.9 mm");
  edits.push_back({"a wrong height", path, text});
  CHECK_FALSE(errors_of(with(content, edits)).empty());
}
