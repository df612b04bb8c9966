// The line format of tables: what is written is read back. House format, no outside source.

#include "support/catch.h"

#include <string>

#include "standards/real_schema.h"
#include "standards/table_lines.h"

using namespace benchleaf;
using standards::read_table_lines;
using standards::table_lines;

TEST_CASE("all published tables come back as they were, places in files left out") {
  const test::RealSchema schema;
  const auto back = read_table_lines(table_lines(schema.tables.published));
  REQUIRE(back);
  REQUIRE(back->size() == schema.tables.published.size());
  for (std::size_t i = 0; i < back->size(); ++i) {
    const auto& one = schema.tables.published[i];
    const auto& other = (*back)[i];
    CHECK(one.name == other.name);
    CHECK(one.publication == other.publication);
    CHECK(one.note == other.note);
    CHECK(one.trust == other.trust);
    REQUIRE(one.columns.size() == other.columns.size());
    REQUIRE(one.rows.size() == other.rows.size());
    for (std::size_t row = 0; row < one.rows.size(); ++row) {
      CHECK(one.rows[row].key == other.rows[row].key);
      CHECK(one.rows[row].trust == other.rows[row].trust);
      CHECK(one.rows[row].note == other.rows[row].note);
      for (const auto& column : one.columns) {
        const auto cell = one.rows[row].cells.find(column.name);
        CHECK(other.rows[row].cells.at(column.name) == (cell == one.rows[row].cells.end() ? std::string() : cell->second));
      }
    }
  }
  std::vector<model::TableFault> faults;
  CHECK(model::make_tables(*back, faults).cell_systems.size() == schema.tables.cell_systems.size());
  CHECK(faults.empty());
}

TEST_CASE("tabs, line ends and backslashes survive") {
  model::PublishedTable table;
  table.name = "t";
  table.note = "a\tb\nc\\d\\n";
  table.columns = {{"k", "K", ""}};
  model::PublishedTable::Row row;
  row.key = "1";
  row.cells = {{"k", "\\"}};
  table.rows.push_back(row);
  const auto back = read_table_lines(table_lines({table}));
  REQUIRE(back);
  CHECK(back->front().note == table.note);
  CHECK(back->front().rows.front().cells.at("k") == "\\");
}

TEST_CASE("what is no table text is refused") {
  CHECK_FALSE(read_table_lines(""));
  CHECK_FALSE(read_table_lines("benchleaf-tables 2\n"));
  CHECK_FALSE(read_table_lines("benchleaf-tables 1\nrow\t1\tmemory\t\t\n"));
  CHECK_FALSE(read_table_lines("benchleaf-tables 1\ntable\tshort\n"));
  CHECK_FALSE(read_table_lines("benchleaf-tables 1\nsomething\telse\n"));
  const std::string table = "benchleaf-tables 1\ntable\tt\tk\tT\t\tp\t\tmemory\t\t\t\ncolumn\tk\tK\t\n";
  CHECK(read_table_lines(table));
  CHECK_FALSE(read_table_lines(table + "row\t1\tmemory\t\t\n"));      // a cell is missing
  CHECK_FALSE(read_table_lines(table + "row\t1\tcertain\t\t\tx\n"));  // no such trust
  CHECK(read_table_lines("benchleaf-tables 1\n")->empty());
}
