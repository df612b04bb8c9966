// What a designation stands for. Outside sources are named at each check.

#include "support/catch.h"

#include <string>

#include "base/number.h"
#include "standards/cell_code.h"
#include "standards/designation.h"
#include "standards/real_schema.h"

using namespace benchleaf;
using standards::CellCode;
using standards::CellSize;
using standards::DesignationError;
using standards::SizeCode;

namespace {

const model::Tables& tables() {
  static const test::RealSchema kSchema;
  return kSchema.tables;
}

std::variant<CellCode, DesignationError> read_code(std::string_view text) {
  const auto parsed = standards::parse_designation(text);
  REQUIRE(std::holds_alternative<standards::Designation>(parsed));
  return standards::read_cell_code(std::get<standards::Designation>(parsed), tables());
}

CellCode decoded(std::string_view text) {
  INFO("designation " << text);
  const auto code = read_code(text);
  REQUIRE(std::holds_alternative<CellCode>(code));
  return std::get<CellCode>(code);
}

/// A row of the published table: largest diameter and largest height in millimetres.
struct Published {
  const char* designation;
  double diameter;
  double height;
};

bool in_range(double height, int tenths) {
  const auto range = standards::height_range(tenths);
  return height >= range.low && height < range.below;
}

}  // namespace

TEST_CASE("sizes decode to those of Linden's Handbook of Batteries, 4th ed., table 4.9a, page 4.11") {
  const Published rows[] = {{"SR41", 7.9, 3.6}, {"SR43", 11.6, 4.2},  {"SR44", 11.6, 5.4},
                            {"SR48", 7.9, 5.4}, {"SR54", 11.6, 3.05}, {"SR57", 9.5, 2.7},
                            {"SR58", 7.9, 2.1}, {"SR59", 7.9, 2.6},   {"SR60", 6.8, 2.15}};
  for (const auto& row : rows) {
    const CellCode code = decoded(row.designation);
    CHECK(code.diameter->diameter.value_in(base::Unit::millimetre) == row.diameter);
    CHECK(in_range(row.height, code.tenths));
  }
}

TEST_CASE("R55 is the row of that table that breaks the rule: 2.1 mm printed for the digits 20") {
  CHECK(decoded("SR55").tenths == 20);
  CHECK_FALSE(in_range(2.1, 20));
  CHECK(in_range(2.05, 20));  // newer published lists
}

TEST_CASE("system letters stand for the systems of encyclopaedia pages on IEC 60086") {
  CHECK(decoded("SR754W").system->system == "silver-oxide");
  CHECK(decoded("LR44").system->system == "alkaline");
  CHECK(decoded("CR2032").system->system == "lithium-manganese");
  CHECK(decoded("PR48").system->system == "zinc-air");
  CHECK(decoded("MR44").system->withdrawn);
}

TEST_CASE("short and long forms are those of encyclopaedia pages on button cells: 44 is 1154, 48 is 754") {
  CHECK(decoded("SR44").long_size == "1154");
  CHECK(decoded("SR754W").short_form->short_size == "48");
  CHECK(decoded("LR1154").short_form->short_size == "44");
  CHECK(decoded("CR2032").short_form == nullptr);
}

TEST_CASE("suffixes: S sodium hydroxide, P potassium hydroxide, W for watches; W alone is high drain by the trade") {
  const CellCode low = decoded("SR754SW");
  REQUIRE(low.suffixes.size() == 2);
  CHECK(low.suffixes[0]->electrolyte == "sodium-hydroxide");
  REQUIRE(low.drain != nullptr);
  CHECK(low.drain->drain == "low");
  REQUIRE(decoded("SR754W").drain != nullptr);
  CHECK(decoded("SR754W").drain->drain == "high");
  CHECK(decoded("SR754PW").drain->drain == "high");
  CHECK(decoded("LR44").drain == nullptr);
  CHECK(decoded("CR2032H").unknown_suffix == "H");
}

TEST_CASE("4SR44 is four cells of size 44, as catalogue pages list it") {
  CHECK(decoded("4SR44").designation.in_series == 4);
  CHECK(decoded("4SR44").tenths == 54);
}

TEST_CASE("three digits of height: 11108 is 11.6 by 10.8 mm (from memory)") {
  const CellCode code = decoded("CR11108");
  CHECK(code.long_height);
  CHECK(code.diameter->code == 11);
  CHECK(code.tenths == 108);
}

TEST_CASE("what no table has is refused where it stands") {
  const auto system = read_code("XR754");
  REQUIRE(std::holds_alternative<DesignationError>(system));
  CHECK(std::get<DesignationError>(system).position == 0);
  const auto short_size = read_code("4SR83");
  REQUIRE(std::holds_alternative<DesignationError>(short_size));
  CHECK(std::get<DesignationError>(short_size).position == 3);
  const auto diameter = read_code("SR1754W");
  REQUIRE(std::holds_alternative<DesignationError>(diameter));
  CHECK(std::get<DesignationError>(diameter).reason == "no diameter is on file for the code 17");
}

TEST_CASE("codes are cut off, never rounded: figures of published lists") {
  CHECK(standards::size_code(9.5, 2.05) == SizeCode{9, 20});
  CHECK(standards::size_code(5.8, 1.65) == SizeCode{5, 16});
  CHECK(standards::size_code(24.5, 5.0) == SizeCode{24, 50});
  CHECK(standards::size_code(7.9, 5.4) == SizeCode{7, 54});
  CHECK(standards::size_code(11.6, 3.05) == SizeCode{11, 30});
}

TEST_CASE("a height range begins at its digits and ends a tenth above, for every pair of digits") {
  for (int tenths = 10; tenths < 100; ++tenths) {
    const auto range = standards::height_range(tenths);
    CHECK(standards::size_code(7.9, range.low).tenths == tenths);
    CHECK(standards::size_code(7.9, range.below).tenths == tenths + 1);
    CHECK(standards::size_code(7.9, base::tidy(range.below - 0.001)).tenths == tenths);
  }
}

TEST_CASE("same size: equal for lists that differ, apart for neighbours (house rule)") {
  CHECK(standards::same_size(CellSize{7.9, 5.4}, CellSize{7.9, 5.4}));
  CHECK(standards::same_size(CellSize{11.6, 2.05}, CellSize{11.6, 2.1}));
  CHECK(standards::same_size(CellSize{11.6, 2.1}, CellSize{11.6, 2.05}));
  CHECK_FALSE(standards::same_size(CellSize{7.9, 2.1}, CellSize{7.9, 2.6}));
  CHECK_FALSE(standards::same_size(CellSize{9.5, 2.6}, CellSize{9.5, 2.7}));
  CHECK_FALSE(standards::same_size(CellSize{7.9, 3.6}, CellSize{9.5, 3.6}));
}

TEST_CASE("every cell of the content keeps the rule of cut digits") {
  test::RealSchema schema;
  const model::KnowledgeBase base = schema.content();
  REQUIRE(base.cells.size() >= 57);  // as many as the first list of cells holds
  for (const auto& [id, cell] : base.cells) {
    INFO(id);
    const CellCode code = decoded(cell.designation);
    const auto diameter = cell.size.diameter->value_in(base::Unit::millimetre);
    const auto height = cell.size.height->value_in(base::Unit::millimetre);
    REQUIRE((diameter && height));
    CHECK(standards::size_code(*diameter, *height) == SizeCode{code.diameter->code, code.tenths});
  }
}

TEST_CASE("every published table names a source that the content has") {
  test::RealSchema schema;
  const model::KnowledgeBase base = schema.content();
  for (const auto& table : schema.tables.published) {
    INFO(table.name);
    CHECK((table.source.empty() || base.known(table.source)));
    for (const auto& row : table.rows) CHECK((row.source.empty() || base.known(row.source)));
  }
}
