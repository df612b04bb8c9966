// Checks of the published tables. Expected rows of the real tables: sizes and letters as encyclopaedia articles on
// IEC 60086 print them (S silver oxide 1.55 V; SR44 = SR1154); faults are the rule of this house.

#include "support/catch.h"

#include <map>
#include <string>

#include "disk_files.h"
#include "read/table_reader.h"
#include "read_support.h"

using namespace benchleaf;

namespace {

using Changes = std::map<std::string, std::string>;

struct Schema {
  explicit Schema(const Changes& changed = {}) {
    const test::DiskFiles disk("schema");
    std::map<std::string, std::string> all;
    const auto entries = disk.list();
    REQUIRE(entries);
    for (const auto& entry : *entries) all[entry.path] = *disk.read(entry.path);
    for (const auto& [path, text] : changed) all[path] = text;
    for (auto it = all.begin(); it != all.end();) it = it->second.empty() ? all.erase(it) : std::next(it);
    const read::MemoryFiles memory("schema", all);
    const read::Shapes shapes = read::load_shapes(memory, files, findings);
    tables = read::read_tables(memory, shapes, files, findings);
    fonts = read::read_fonts(memory, shapes, files, findings);
  }
  base::FileTable files;
  report::Findings findings;
  model::Tables tables;
  read::FontList fonts;

  std::string found() const { return test::places_and_rules(findings); }
};

std::string drains(const std::string& rows) {
  return "name: cell-drains\ntitle: T\nkey: suffix\npublication: P\ntrust: trade\ndate-read: \"2026\"\ntranscription: single\n"
         "columns:\n  - { name: suffix, title: S }\n  - { name: drain, title: D }\n  - { name: most, title: M, quantity: length "
         "}\n"
         "rows:\n" +
         rows;
}

}  // namespace

TEST_CASE("the real tables are read, typed, with an origin for each row") {
  Schema schema;
  CHECK(schema.found().empty());
  const model::CellSystem* silver = schema.tables.cell_system("S");
  REQUIRE(silver != nullptr);
  CHECK(silver->system == "silver-oxide");
  CHECK(silver->nominal.value_in(base::Unit::volt) == 1.55);
  CHECK(silver->origin.id == "table/cell-systems#S");
  CHECK(schema.tables.cell_system_by_id("silver-oxide") == silver);
  CHECK_FALSE(schema.tables.cell_system("P")->end);
  CHECK(schema.tables.cell_system("M")->withdrawn);
  CHECK(schema.tables.cell_system("Q") == nullptr);
  const model::CellShortForm* short_form = schema.tables.cell_short_form("44");
  REQUIRE(short_form != nullptr);
  CHECK(short_form->long_size == "1154");
  CHECK(schema.tables.cell_diameter(11)->diameter.value_in(base::Unit::millimetre) == 11.6);
  CHECK(schema.tables.signal_word("danger")->colour == "red");
  CHECK(schema.tables.find("cell-systems")->rows.size() == schema.tables.cell_systems.size());
  CHECK(schema.fonts.fonts.size() >= 10);
  CHECK(schema.fonts.fonts.front().sha256.size() == 64);
  CHECK(schema.fonts.hyphenation.sha256.size() == 64);
  CHECK_FALSE(schema.fonts.profile.file.empty());
}

TEST_CASE("a row may have a trust of its own") {
  Schema schema;
  const model::PublishedTable* table = schema.tables.find("cell-systems");
  REQUIRE(table != nullptr);
  CHECK(table->trust == model::Trust::handbook);
  CHECK(schema.tables.cell_system("N")->origin.trust == model::Trust::memory);
  CHECK(schema.tables.cell_system("S")->origin.trust == model::Trust::handbook);
}

TEST_CASE("a table with a fault is told at its place, once") {
  auto found = [](const std::string& rows) { return Schema(Changes{{"tables/cell-drains.yaml", drains(rows)}}).found(); };
  CHECK(found("  - { suffix: SW, drain: low, most: 1 mm }\n").empty());
  CHECK(found("  - { suffix: SW, drain: low, most: not stated }\n").empty());
  CHECK(found("  - { suffix: SW, drain: low, most: 1 V }\n") == "13:37 quantity.dimension");
  CHECK(found("  - { suffix: SW, drain: low }\n") == "13:5 table.cell");
  CHECK(found("  - { suffix: SW, drain: low, most: 1 mm, colour: red }\n") == "13:43 table.cell");
  CHECK(found("  - { suffix: SW, drain: low, most: 1 mm }\n  - { suffix: SW, drain: high, most: 1 mm }\n") == "14:5 table.key");
  CHECK(Schema(Changes{{"tables/cell-drains.yaml", ""}}).found() == "0:0 table.missing");
  CHECK(Schema(Changes{{"tables/other.yaml", drains("  - { suffix: SW, drain: low, most: 1 mm }\n")}}).found() ==
        "1:7 table.name");
  CHECK(Schema(Changes{{"fonts.yaml", ""}}).found() == "1:1 table.missing");
  CHECK(Schema(Changes{{"shapes/cell.schema.json", ""}}).found() == "1:1 shape.missing");
}
