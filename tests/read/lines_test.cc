// Trees and records as lines of plain text come back as they were: what a page plans with is what the terminal reads.
#include <string>
#include <vector>

#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/node_lines.h"
#include "read/record_lines.h"
#include "read/shapes.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

const model::KnowledgeBase& real_records() {
  static const model::KnowledgeBase kRecords = [] {
    base::FileTable files;
    report::Findings findings;
    const test::DiskFiles schema("schema");
    const auto shapes = read::load_shapes(schema, files, findings);
    return read::read_content(test::DiskFiles("content"), shapes, files, findings);
  }();
  return kRecords;
}

/// All that a tree says, places aside.
std::string said(const model::Node& node) {
  std::string text = std::to_string(static_cast<int>(node.type)) + (node.quoted ? "q" : "") + ":" + node.text + "(";
  for (const auto& item : node.items) text += said(item) + ",";
  for (const auto& member : node.members) text += member.key + "=" + said(member.value) + ",";
  return text + ")";
}

std::vector<model::Kind> all_but_pages() {
  std::vector<model::Kind> kinds;
  for (const model::Kind kind : model::all_kinds()) {
    if (kind != model::Kind::page) kinds.push_back(kind);
  }
  return kinds;
}

}  // namespace

TEST_CASE("the tree of every record comes back from its lines") {
  std::size_t trees = 0;
  for (const model::Record* record : real_records().all()) {
    const auto tree = read::read_node_lines(read::node_lines(record->root));
    REQUIRE(tree.has_value());
    CHECK(said(*tree) == said(record->root));
    ++trees;
  }
  CHECK(trees > 600);
}

TEST_CASE("a value with tabs, line ends and backslashes comes back, and each line knows its path") {
  const std::string lines =
      "0\t{\t\t\n1\ts\tname\ta\\tb\\nc\\\\d\n1\t[\tlist\t\n2\ti\t\t7\n2\t{\t\t\n3\tq\tinner\t393\n1\t-\tlast\t\n";
  const auto tree = read::read_node_lines(lines, 3, 11);
  REQUIRE(tree.has_value());
  CHECK(read::node_lines(*tree) == lines);
  CHECK(tree->find("name")->text == "a\tb\nc\\d");
  CHECK(tree->at_path("list.1.inner")->quoted);
  CHECK(tree->at_path("list.1.inner")->span == base::Span{3, 16, 1, 1});
  CHECK(read::node_line_paths(lines) == std::vector<std::string>{"", "name", "list", "list.0", "list.1", "list.1.inner", "last"});
}

TEST_CASE("lines that are no tree give none") {
  const std::string bad = GENERATE(
      values<std::string>({"", "1\ts\ta\tb\n", "0\t{\t\t\n2\ts\ta\tb\n", "0\ts\t\tx\n1\ts\ta\tb\n", "0\tx\t\t\n", "0\t{\t\n",
                           "x\t{\t\t\n", "0\t{\t\t\n0\t{\t\t\n", "999\t{\t\t\n", "0\t\t\t\n", "-1\t{\t\t\n"}));
  INFO(bad);
  CHECK_FALSE(read::read_node_lines(bad).has_value());
}

TEST_CASE("all records but pages come back from their lines, typed as they were") {
  const auto& before = real_records();
  const auto after = read::read_record_lines(read::record_lines(before, all_but_pages()));
  REQUIRE(after.has_value());
  CHECK(after->handbook.title == before.handbook.title);
  CHECK(after->handbook.chapters.size() == before.handbook.chapters.size());
  CHECK(after->aliases == before.aliases);
  std::size_t same = 0;
  for (const model::Record* one : before.all()) {
    if (one->kind == model::Kind::page) continue;
    INFO(one->reference().text());
    const model::Record* other = after->find(one->reference());
    REQUIRE(other != nullptr);
    CHECK(other->title == one->title);
    CHECK(said(other->root) == said(one->root));
    CHECK(other->basis_paths == one->basis_paths);
    CHECK(other->quantity_paths == one->quantity_paths);
    CHECK(other->basis.size() == one->basis.size());
    CHECK(other->conflicts.size() == one->conflicts.size());
    ++same;
  }
  CHECK(same > 600);
  // a second writing says the same, typed references and all
  CHECK(read::record_lines(*after, all_but_pages()) == read::record_lines(before, all_but_pages()));
}

TEST_CASE("lines that are no records give none") {
  const std::string bad = GENERATE(
      values<std::string>({"", "benchleaf-records 2\n", "benchleaf-records 1\ntree\t0\t{\t\t\n",
                           "benchleaf-records 1\nrecord\tcell\tx\n", "benchleaf-records 1\nrecord\tno-kind\tx\ntree\t0\t{\t\t\n",
                           "benchleaf-records 1\nrecord\tcell\tx\nwhat\ty\n", "benchleaf-records 1\nbasis\tsize\n"}));
  INFO(bad);
  CHECK_FALSE(read::read_record_lines(bad).has_value());
}
