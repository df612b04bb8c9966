// The handbook of content/: whatever is written there, the book holds together.
#include <map>
#include <set>

#include "compose/book_walk.h"
#include "compose/real_book.h"
#include "support/catch.h"

namespace benchleaf {

namespace {

using test::BookWalk;
using test::real_book;

std::map<std::string, int> anchors_of(const model::Book& book) {
  std::map<std::string, int> anchors;
  BookWalk walk;
  walk.on_block = [&](const model::Block& block) {
    if (const auto* entry = std::get_if<model::Entry>(&block.what)) ++anchors[entry->anchor];
    if (const auto* heading = std::get_if<model::Heading>(&block.what); heading != nullptr && !heading->anchor.empty())
      ++anchors[heading->anchor];
    if (const auto* table = std::get_if<model::Table>(&block.what)) {
      for (const model::TableRow& row : table->rows) {
        if (!row.anchor.empty()) ++anchors[row.anchor];
      }
    }
  };
  walk.walk(book);
  return anchors;
}

}  // namespace

TEST_CASE("every record of every kind stands in the book once", "[compose]") {
  const std::map<std::string, int> anchors = anchors_of(real_book().book);
  const std::vector<const model::Record*> records = real_book().records.all();
  REQUIRE(records.size() > 400);
  for (const model::Record* record : records) {
    if (model::is_of_ticket(record->kind)) continue;
    INFO(record->reference().text());
    const auto found = anchors.find(record->reference());
    REQUIRE(found != anchors.end());
    CHECK(found->second == 1);
  }
  for (const auto& [anchor, count] : anchors) {
    INFO(anchor);
    CHECK(count == 1);
  }
}

TEST_CASE("every link and every page reference leads somewhere", "[compose]") {
  const std::map<std::string, int> anchors = anchors_of(real_book().book);
  int links = 0, pages = 0;
  BookWalk walk;
  walk.on_runs = [&](const model::Runs& runs) {
    for (const model::Run& run : runs) {
      if (run.target.empty()) continue;
      ++(run.kind == model::Run::Kind::page_of ? pages : links);
      INFO(run.target << " in '" << model::plain_text(runs) << "'");
      CHECK(anchors.contains(run.target.substr(0, run.target.find('#'))));
    }
  };
  walk.walk(real_book().book);
  CHECK(links > 2000);
  CHECK(pages > 2000);
}

TEST_CASE("every number that is a fact is set as the fact is printed", "[compose]") {
  const model::FactBase& facts = real_book().derived.facts;
  int set = 0;
  const auto hold = [&](const std::string& id, const std::string& text) {
    INFO(id);
    const model::Fact* fact = facts.find(id);
    REQUIRE(fact != nullptr);
    CHECK(fact->printed == text);
    ++set;
  };
  BookWalk walk;
  walk.on_runs = [&](const model::Runs& runs) {
    for (const model::Run& run : runs) {
      if (!run.fact.empty()) hold(run.fact, run.text);
    }
  };
  walk.on_drawing = [&](const model::Drawing& drawing) {
    CHECK_FALSE(drawing.alt.empty());
    for (const model::Shape& shape : drawing.shapes) {
      const auto* text = std::get_if<model::TextShape>(&shape);
      if (text != nullptr && !text->fact.empty()) hold(text->fact, text->text);
    }
  };
  walk.walk(real_book().book);
  CHECK(set > 1000);
}

TEST_CASE("every size, voltage and capacity that a cell states is printed in its entry", "[compose]") {
  for (const auto& [id, cell] : real_book().records.cells) {
    const model::Entry* entry = test::entry_of(real_book().book, cell.reference());
    REQUIRE(entry != nullptr);
    std::set<std::string> printed;
    BookWalk walk;
    walk.on_runs = [&](const model::Runs& runs) {
      for (const model::Run& run : runs) printed.insert(run.fact);
    };
    walk.walk(model::Block{*entry});
    for (const char* path : {"size.diameter", "size.height", "nominal", "capacity"}) {
      const std::string fact = cell.reference() + "#" + path;
      INFO(fact);
      const model::Fact* known = real_book().derived.facts.find(fact);
      if (known != nullptr && (known->value || known->low)) CHECK(printed.contains(fact));
    }
  }
}

TEST_CASE("a page reference follows each link in running text", "[compose]") {
  const model::Entry* entry = test::entry_of(real_book().book, "cell/sr754w");
  REQUIRE(entry != nullptr);
  int links = 0;
  BookWalk walk;
  walk.on_runs = [&](const model::Runs& runs) {
    for (std::size_t i = 0; i < runs.size(); ++i) {
      if (runs[i].kind != model::Run::Kind::text || runs[i].target.empty()) continue;
      ++links;
      REQUIRE(i + 1 < runs.size());
      CHECK(runs[i + 1].kind == model::Run::Kind::page_of);
      CHECK(runs[i + 1].target == runs[i].target);
    }
  };
  walk.walk(model::Block{*entry});
  CHECK(links > 0);
}

TEST_CASE("cells stand by size, then by number", "[compose]") {
  std::vector<std::pair<double, double>> sizes;
  BookWalk walk;
  walk.on_block = [&](const model::Block& block) {
    const auto* entry = std::get_if<model::Entry>(&block.what);
    if (entry == nullptr || entry->anchor.rfind("cell/", 0) != 0) return;
    const model::Fact* across = real_book().derived.facts.find(entry->anchor + "#size.diameter");
    const model::Fact* high = real_book().derived.facts.find(entry->anchor + "#size.height");
    REQUIRE(across != nullptr);
    REQUIRE(high != nullptr);
    sizes.emplace_back(across->value.value_or(0), high->value.value_or(0));
  };
  walk.walk(real_book().book);
  CHECK(sizes.size() == real_book().records.cells.size());
  CHECK(std::is_sorted(sizes.begin(), sizes.end()));
}

TEST_CASE("the real content asks for nothing that the book cannot make", "[compose]") {
  CHECK(test::rules_of(real_book().findings).find("compose.") == std::string::npos);
  const model::Book& book = real_book().book;
  REQUIRE(book.chapters.size() == real_book().records.handbook.chapters.size() + 1);
  CHECK(book.chapters.back().title == "Index");
  CHECK(book.date == "November 2026");  // of `2026-11` in handbook.yaml
  CHECK(book.iso_date == "2026-11-01");
  for (const model::Chapter& chapter : book.chapters) {
    INFO(chapter.id);
    REQUIRE_FALSE(chapter.blocks.empty());
    const auto* heading = std::get_if<model::Heading>(&chapter.blocks.front().what);
    REQUIRE(heading != nullptr);
    CHECK(heading->level == 1);
    CHECK(model::plain_text(heading->runs) == chapter.title);
  }
}

}  // namespace benchleaf
