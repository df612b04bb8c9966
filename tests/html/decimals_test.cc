// Points under points: what is missing in front of a point or after it is filled with figure spaces.
#include "html/decimals.h"

#include "support/catch.h"

namespace benchleaf::html {

namespace {

const std::string kFigure(kFigureSpace), kPoint(kPunctuationSpace);

std::string padded(const std::vector<std::string>& cells, std::size_t which) {
  DecimalColumn column;
  for (const std::string& cell : cells) column.widen({model::text_run(cell)});
  return model::plain_text(column.padded({model::text_run(cells.at(which))}));
}

}  // namespace

TEST_CASE("numbers are found, parts of words are not", "[html]") {
  CHECK(find_figures("SR41 or P800").empty());
  CHECK(find_figures("not stated").empty());
  const auto found = find_figures("2.6 to 14.25\u2009mm");
  REQUIRE(found.size() == 2);
  CHECK(found.at(0).whole == 1);
  CHECK(found.at(0).fraction == 1);
  CHECK(found.at(1).whole == 2);
  CHECK(found.at(1).fraction == 2);
  CHECK(find_figures("12\u2009345.6").front().whole == 5);
  CHECK(find_figures("\u22127.5").front().whole == 2);
}

TEST_CASE("cells of a column of figures align on the point", "[html]") {
  const std::vector<std::string> cells = {"7.9\u2009mm", "11.65\u2009mm", "100\u2009mm", "not stated"};
  CHECK(padded(cells, 0) == kFigure + kFigure + "7.9\u2009mm");
  CHECK(padded(cells, 1) == kFigure + "11.65\u2009mm");
  CHECK(padded(cells, 2) == "100\u2009mm");
  CHECK(padded(cells, 3) == "not stated");
}

TEST_CASE("ranges align on both points", "[html]") {
  const std::vector<std::string> cells = {"2 to 14.2", "0.45 to 0.8"};
  CHECK(padded(cells, 0) == "2" + kPoint + kFigure + kFigure + " to 14.2");
  CHECK(padded(cells, 1) == "0.45 to " + kFigure + "0.8");
}

TEST_CASE("a cell of several runs keeps its facts", "[html]") {
  DecimalColumn column;
  column.widen({model::text_run("10.5 to 11.5")});
  model::Run low = model::text_run("9.5"), high = model::text_run("10.5");
  low.fact = "a/b#low";
  high.fact = "a/b#high";
  const model::Runs cell = column.padded({low, model::text_run(" to "), high});
  CHECK(model::plain_text(cell) == kFigure + "9.5 to 10.5");
  REQUIRE(cell.size() == 4);
  CHECK(cell.at(1).text == "9.5");
  CHECK(cell.at(3).text == "10.5");
}

}  // namespace benchleaf::html
