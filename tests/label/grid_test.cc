// Grids that a user describes. Expected places are reckoned by hand from the words.
#include "label/labels.h"

#include "support/catch.h"

#include <string>
#include <variant>

using namespace benchleaf;

namespace {

const model::LabelGrid& grid_of(const std::variant<model::LabelGrid, label::Refused>& read) {
  REQUIRE(std::holds_alternative<model::LabelGrid>(read));
  return std::get<model::LabelGrid>(read);
}

std::string why(const label::GridWords& words) {
  const auto read = label::read_grid(words);
  REQUIRE(std::holds_alternative<label::Refused>(read));
  CHECK(std::get<label::Refused>(read).bad_call);
  return std::get<label::Refused>(read).why;
}

bool near(double one, double other) { return std::abs(one - other) < 1e-9; }

}  // namespace

TEST_CASE("a grid of one's own is centred, or begins where its corner is") {
  const auto centred = label::read_grid(label::GridWords{"a4", "50x30", "52x30", "", "3", "9"});
  const model::LabelGrid& grid = grid_of(centred);
  CHECK(grid.count() == 27);
  CHECK(near(grid.left_mm, (210 - 154) / 2.0));
  CHECK(near(grid.top_mm, (297 - 270) / 2.0));
  CHECK(near(grid.corner(26).x, 28 + 104));
  CHECK(near(grid.corner(26).y, 13.5 + 240));
  const auto placed = label::read_grid(label::GridWords{"letter", "2x1in", "", "0.25x0.5in", "4", "10"});
  CHECK(near(grid_of(placed).left_mm, 6.35));
  CHECK(near(grid_of(placed).corner(4).y, 12.7 + 25.4));
}

TEST_CASE("a grid that no sheet has is refused with what is wrong") {
  CHECK(why({"a4", "50", "", "", "3", "9"}).find("'50' is not a label size") == 0);
  CHECK(why({"a4", "50x30", "", "", "5", "9"}).find("do not fit on A4") != std::string::npos);
  CHECK(why({"a4", "50x30", "40x30", "", "3", "9"}).find("over each other") != std::string::npos);
  CHECK(why({"a4", "50x30", "", "-1x5", "3", "9"}).find("is not a corner") != std::string::npos);
  CHECK(why({"a4", "5x5", "", "", "3", "9"}).find("too small") != std::string::npos);
  CHECK(why({"a3", "50x30", "", "", "3", "9"}).find("a4 or letter") != std::string::npos);
  for (const char* count : {"0", "-1", "2.5", "41", "x", "", "1e3", "99999999999999999999"})
    CHECK(why({"a4", "50x30", "", "", count, "9"}).find("whole numbers") != std::string::npos);
  for (const char* label : {"nanxnan", "infx30", "x", "50x", "50 x 30", "1e9x1e9"}) why({"a4", label, "", "", "3", "9"});
}
