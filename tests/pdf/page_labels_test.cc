// Expected: the example of ISO 32000-1, 12.4.2 (i, ii, iii, iv, 1, 2, 3, A-8, A-9), our own two labels at its end being no
// numbers to us.
#include "pdf/page_labels.h"

#include <string>
#include <vector>

#include "support/catch.h"

namespace benchleaf::pdf {

namespace {

std::string ranges_of(const std::vector<std::string>& labels) {
  std::vector<page::Page> pages(labels.size());
  for (std::size_t i = 0; i < labels.size(); ++i) pages[i].label = labels[i];
  std::string words;
  for (const LabelRange& range : label_ranges(pages)) {
    words += std::to_string(range.first_page);
    words += range.style == LabelRange::Style::roman ? "r" : range.style == LabelRange::Style::decimal ? "D" : "P";
    words += (range.style == LabelRange::Style::none ? range.prefix : std::to_string(range.start)) + " ";
  }
  return words;
}

}  // namespace

TEST_CASE("labels that count on share a range", "[pdf]") {
  CHECK(ranges_of({"i", "ii", "iii", "iv", "1", "2", "3", "A-8", "A-9"}) == "0r1 4D1 7PA-8 8PA-9 ");
  CHECK(ranges_of({"24", "25", "27"}) == "0D24 2D27 ");
  CHECK(ranges_of({"xiv", "xv", "xvi"}) == "0r14 ");
}

TEST_CASE("what only looks like a number is a label of its own", "[pdf]") {
  CHECK(ranges_of({"007"}) == "0P007 ");
  CHECK(ranges_of({"iiii"}) == "0Piiii ");
  CHECK(ranges_of({"IV"}) == "0PIV ");
  CHECK(ranges_of({"99999999999999999999"}) == "0P99999999999999999999 ");
  CHECK(ranges_of({"", ""}) == "0P 1P ");
}

}  // namespace benchleaf::pdf
