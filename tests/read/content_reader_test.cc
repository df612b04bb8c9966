// Checks of the content folder as a whole, in memory, against the real shapes. Places and rules are the rule of this
// house (design: records, limits, recovery) and were counted by hand; the invented records stand for no real thing.

#include "support/catch.h"

#include <map>
#include <string>

#include "disk_files.h"
#include "read/content_reader.h"
#include "read_support.h"

using benchleaf::model::Kind;
using benchleaf::model::KnowledgeBase;
using benchleaf::model::Trust;
using benchleaf::read::MemoryFiles;

namespace {

const benchleaf::read::Shapes& shapes() {
  static const benchleaf::read::Shapes kShapes = [] {
    benchleaf::report::Findings findings;
    benchleaf::base::FileTable files;
    auto loaded = benchleaf::read::load_shapes(benchleaf::test::DiskFiles("schema"), files, findings);
    CHECK(findings.all().empty());
    return loaded;
  }();
  return kShapes;
}

using Files = std::map<std::string, std::string>;

/// A small tree without a fault.
Files good_files() {
  return {
      {"handbook.yaml",
       "title: Trial\nedition: \"1\"\ndate: 2026-11\nlanguage: en-GB\nformat: 1\npapers: [a4]\nchapters:\n"
       "  - { id: cells, number: 1, title: Cells, tab: Cells, pages: [cells], kinds: [cell, term] }\n"},
      {"cell/sr754w.yaml",
       "id: sr754w\naliases: [old-name]\ndesignation: SR754W\ntrade-number: \"393\"\nsystem: silver-oxide\n"
       "size: { diameter: 7.9 mm, height: 5.4 mm }\nnominal: 1.55 V\ncapacity: { value: 80 mAh, load: not stated }\n"
       "basis:\n  size: { source: trial-work, where: table 1, trust: handbook }\n  size.height: { trust: memory }\n"
       "  capacity: { trust: trade }\n"
       "conflicts:\n  - { field: size.height, says: 5.3 mm, why: an older list, source: trial-work }\n"},
      {"source/trial-work.yaml",
       "id: trial-work\ntitle: Trial work\nkind: handbook\npublication: \"A trial, 2026\"\nread: Table 1.\n"},
      {"term/cell.yaml", "id: cell\nterm: cell\nmeaning: What drives the watch.\nsee: [old-name]\n"},
      {"page/cells.md", "---\nid: cells\ntitle: Cells\nlead: About cells.\ntrust: memory\n---\n\nSee [393](cell/sr754w).\n"},
  };
}

struct Read {
  explicit Read(Files tree) : content("content", std::move(tree)), base(read_content(content, shapes(), files, findings)) {
    findings.sort(files);
  }
  MemoryFiles content;
  benchleaf::base::FileTable files;
  benchleaf::report::Findings findings;
  KnowledgeBase base;

  /// `content/cell/a.yaml 3:1 shape.type` for each finding.
  std::string found() const {
    std::string all;
    for (const auto& finding : findings.all()) {
      if (!all.empty()) all += ", ";
      if (finding.where.file >= 0) all += files.path(finding.where.file) + " ";
      all += benchleaf::test::place_and_rule(finding);
    }
    return all;
  }
};

std::string found_with(const std::string& path, const std::string& text) {
  Files files = good_files();
  files[path] = text;
  return Read(std::move(files)).found();
}

}  // namespace

TEST_CASE("a small tree without a fault is read whole") {
  Read read(good_files());
  CHECK(read.found().empty());
  CHECK(read.base.all().size() == 4);
  CHECK(read.base.broken.empty());

  const auto& cell = read.base.cells.at("sr754w");
  CHECK(cell.reference() == "cell/sr754w");
  CHECK(cell.title == "SR754W");
  CHECK(cell.trade_number == "393");
  CHECK(cell.size.diameter->value_in(benchleaf::base::Unit::millimetre) == 7.9);
  CHECK(cell.capacity->load == "not stated");
  CHECK(cell.status == benchleaf::model::CellStatus::current);
  CHECK(cell.cells_in_series == 1);
  CHECK(cell.unusable.empty());
  CHECK(cell.basis_paths == std::vector<std::string>{"size.diameter", "size.height", "capacity.value"});
  REQUIRE(cell.conflicts.size() == 1);
  CHECK(cell.conflicts.front().source == "source/trial-work");
  CHECK(cell.conflicts.front().span.line == 14);

  CHECK(read.base.handbook.title == "Trial");
  REQUIRE(read.base.handbook.chapters.size() == 1);
  CHECK(read.base.handbook.chapters.front().pages == benchleaf::model::References{benchleaf::model::RecordRef("page/cells")});
  CHECK(read.base.handbook.chapters.front().kinds == std::vector<Kind>{Kind::cell, Kind::term});
  CHECK(read.base.pages.at("cells").references.front().target == "cell/sr754w");
}

TEST_CASE("a basis holds for its path and everything below it, the longest path first") {
  Read read(good_files());
  const auto& cell = read.base.cells.at("sr754w");
  CHECK(cell.basis_for("size.diameter")->trust == Trust::handbook);
  CHECK(cell.basis_for("size.diameter")->source == "source/trial-work");
  CHECK(cell.basis_for("size.height")->trust == Trust::memory);
  CHECK(cell.basis_for("capacity.value")->trust == Trust::trade);
  CHECK(cell.basis_for("nominal") == nullptr);
  CHECK(cell.basis_for("sizes") == nullptr);
  CHECK(cell.span_of("size.height").line == 6);
  CHECK(cell.span_of("size.none").line == 6);
  CHECK(cell.span_of("none").line == 1);
}

TEST_CASE("references find their record by bare id, in full and by alias") {
  Read read(good_files());
  CHECK(read.base.find("cell/sr754w") == &read.base.cells.at("sr754w"));
  CHECK(read.base.find("cell/old-name") == &read.base.cells.at("sr754w"));
  CHECK(read.base.find<benchleaf::model::Cell>(benchleaf::model::RecordRef(Kind::cell, "old-name")) ==
        &read.base.cells.at("sr754w"));
  CHECK(read.base.find("term/sr754w") == nullptr);
  CHECK(read.base.find("sr754w") == nullptr);
  CHECK(read.base.resolved(benchleaf::model::RecordRef("cell/old-name")) == "cell/sr754w");
  CHECK(read.base.terms.at("cell").see == benchleaf::model::References{benchleaf::model::RecordRef("cell/sr754w")});

  SECTION("a bare id that two kinds have names neither") {
    Files files = good_files();
    files["page/old-name.md"] = "---\nid: old-name\ntitle: T\nlead: L.\ntrust: memory\n---\nText.\n";
    Read two(files);
    CHECK(two.base.terms.at("cell").references.front().target.empty());
    CHECK(two.base.terms.at("cell").see == benchleaf::model::References{benchleaf::model::RecordRef("old-name")});
    files["term/cell.yaml"] = "id: cell\nterm: cell\nmeaning: M.\nsee: [cell/old-name, term/none]\n";
    Read full(files);
    CHECK(full.base.terms.at("cell").references.at(0).target == "cell/sr754w");
    CHECK(full.base.terms.at("cell").references.at(1).target.empty());
  }
}

TEST_CASE("a file gives a whole, a partial or no record") {
  SECTION("partial: the bad field is named and nothing follows from it") {
    Files files = good_files();
    files["cell/sr754w.yaml"].replace(files["cell/sr754w.yaml"].find("5.4 mm"), 6, "5,4 mm");
    Read read(files);
    CHECK(read.found() == "content/cell/sr754w.yaml 6:35 quantity.number");
    const auto& cell = read.base.cells.at("sr754w");
    CHECK(cell.unusable == std::vector<std::string>{"size.height"});
    CHECK_FALSE(cell.usable("size.height"));
    CHECK_FALSE(cell.usable("size"));
    CHECK(cell.usable("size.diameter"));
    CHECK_FALSE(cell.size.height);
    CHECK(cell.size.diameter);
  }
  SECTION("none: the record is known as broken, so that naming it is no mistake") {
    Files files = good_files();
    files["source/trial-work.yaml"] = "id: trial-work\ntitle: \"open\n";
    Read read(files);
    CHECK(read.found() == "content/source/trial-work.yaml 2:8 yaml.open-quote");
    CHECK(read.base.sources.empty());
    CHECK(read.base.known("source/trial-work"));
    CHECK(read.base.find("source/trial-work") == nullptr);
    CHECK(read.base.cells.at("sr754w").basis_for("size.diameter")->source == "source/trial-work");
  }
  SECTION("a list in place of a record") {
    Files files = good_files();
    files["term/cell.yaml"] = "- id: cell\n";
    CHECK(Read(files).found() == "content/term/cell.yaml 1:1 shape.type");
  }
  SECTION("another id than the file name is for prove to tell; who refers to it is understood") {
    Files files = good_files();
    files["term/other.yaml"] = "id: stated\nterm: t\nmeaning: M.\n";
    files["page/cells.md"] += "\n[t](term/stated)\n";
    Read read(files);
    CHECK(read.found().empty());
    CHECK(read.base.terms.at("other").root.find("id")->text == "stated");
    CHECK(read.base.pages.at("cells").references.at(1).target == "term/other");
  }
}

TEST_CASE("items of a list may carry their own basis") {
  Files files = good_files();
  files["source/second.yaml"] = "id: second\ntitle: S\nkind: page\npublication: P\nread: All.\n";
  files["abrasive/trial.yaml"] =
      "id: trial\ntitle: T\nscale: P\nform: coated\ngrades:\n"
      "  - { grade: P800, median: 21.8 µm, trust: memory }\n  - { grade: P1200, median: 15.3 µm, source: second }\n"
      "basis:\n  grades: { trust: handbook, source: trial-work }\n";
  Read read(files);
  CHECK(read.found().empty());
  const auto& scale = read.base.abrasives.at("trial");
  CHECK(scale.basis_for("grades.0.median")->trust == Trust::memory);
  CHECK(scale.basis_for("grades.1.median")->source == "source/second");
  CHECK(scale.basis_for("grades.1.median")->trust == Trust::handbook);
  CHECK(scale.basis_paths.empty());
}

TEST_CASE("what is no record is a finding") {
  CHECK(found_with("notes.txt", "x") == "content/notes.txt 1:1 content.unknown-file");
  CHECK(found_with("README.md", "About the records.\n").empty());
  CHECK(found_with("cells/sr1.yaml", "x") == "content/cells/sr1.yaml 1:1 content.unknown-file");
  CHECK(found_with("cell/sr1.yml", "x") == "content/cell/sr1.yml 1:1 content.unknown-file");
  CHECK(found_with("cell/more/sr1.yaml", "x") == "content/cell/more/sr1.yaml 1:1 content.unknown-file");
  CHECK(found_with("cell/SR1.yaml", "x") == "content/cell/SR1.yaml 1:1 content.file-name");
  CHECK(found_with("cell/a--b.yaml", "x") == "content/cell/a--b.yaml 1:1 content.file-name");
  CHECK(found_with("cell/" + std::string(49, 'a') + ".yaml", "x").find("content.file-name") != std::string::npos);
  CHECK(found_with("page/cells.yaml", "x") == "content/page/cells.yaml 1:1 content.unknown-file");
  CHECK(found_with("term/empty.yaml", "") == "content/term/empty.yaml 1:1 yaml.empty");
  CHECK(found_with("page/none.md", "Just text.\n") == "content/page/none.md 1:1 markdown.head");
  CHECK(found_with("page/none.md", "---\nid: none\n") == "content/page/none.md 1:1 markdown.head");
}

TEST_CASE("the head of the handbook is needed and its format must be known") {
  Files files = good_files();
  files.erase("handbook.yaml");
  CHECK(Read(files).found() == "content/handbook.yaml 1:1 content.handbook");
  files = good_files();
  std::string& head = files["handbook.yaml"];
  head.replace(head.find("format: 1"), 9, "format: 2");
  Read read(files);
  CHECK(read.found() == "content/handbook.yaml 5:9 content.format");
  CHECK(read.base.all().empty());
}

TEST_CASE("too many files are a finding, and none is read") {
  Files files = good_files();
  for (int i = 0; i < 20000; ++i) files["term/t" + std::to_string(i) + ".yaml"] = "x";
  Read read(std::move(files));
  CHECK(read.found() == "content 0:0 content.size");
  CHECK(read.base.all().empty());
}

TEST_CASE("the same tree gives the same base and findings whatever thread reads it") {
  Files files = good_files();
  for (int i = 0; i < 60; ++i) {
    const std::string id = "t" + std::to_string(i);
    files["term/" + id + ".yaml"] = "id: " + id + "\nterm: \"" + id + "\nmeaning: M.\nsee: [cell]\n";
  }
  const std::string first = Read(files).found();
  CHECK(first.find("content/term/t59.yaml 2:7 yaml.open-quote") != std::string::npos);
  for (int i = 0; i < 5; ++i) CHECK(Read(files).found() == first);
}

TEST_CASE("the real content is read without a finding") {
  benchleaf::base::FileTable files;
  benchleaf::report::Findings findings;
  KnowledgeBase base = read_content(benchleaf::test::DiskFiles("content"), shapes(), files, findings);
  for (const auto& finding : findings.all()) {
    UNSCOPED_INFO(files.path(finding.where.file) << " " << benchleaf::test::place_and_rule(finding) << ": " << finding.message);
  }
  CHECK(findings.all().empty());
  CHECK(base.all().size() > 400);
  for (const auto* record : base.all()) {
    for (const auto& reference : record->references) {
      INFO(record->reference().text() << " " << reference.path << ": " << reference.text);
      CHECK((!reference.target.empty() || reference.text.front() == '$'));
    }
  }
}
