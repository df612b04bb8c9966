// The nearest word: distances worked by hand (a slip is a letter more, less, other, or two neighbours swapped).
#include "base/id.h"

#include <string>
#include <vector>

#include "support/catch.h"

using namespace benchleaf::base;

TEST_CASE("slips are counted", "[id]") {
  CHECK(edit_distance("", "") == 0);
  CHECK(edit_distance("", "abc") == 3);
  CHECK(edit_distance("kitten", "sitting") == 3);  // the textbook pair
  CHECK(edit_distance("sr745w", "sr754w") == 1);   // two neighbours swapped
  CHECK(edit_distance("ca", "abc") == 3);          // the restricted form edits no stretch twice
  CHECK(edit_distance("mü", "mu") == 1);           // code points, not bytes
}

TEST_CASE("the nearest word is offered, and no far one", "[id]") {
  const std::vector<std::string> words = {"cell", "crystal", "caution", "chemistry", "gasket"};
  CHECK(nearest_word("gaskets", words) == "gasket");
  CHECK(nearest_word("crystel", words) == "crystal");
  CHECK(nearest_word("Cell", words) == "cell");
  CHECK(nearest_word("CHEMISTRY", words) == "chemistry");
  CHECK(nearest_word("cel", words) == "cell");
  CHECK(nearest_word("bell", words) == "cell");
  CHECK(nearest_word("bill", words).empty());
  CHECK(nearest_word("battery", words).empty());
  CHECK(nearest_word("", words).empty());
  CHECK(nearest_word("x", words).empty());
  CHECK(nearest_word("cell", {}).empty());
  CHECK(nearest_word(std::string(1000000, 'c'), words).empty());
}

TEST_CASE("of two words equally near the first is offered", "[id]") {
  CHECK(nearest_word("from", {"form", "frog"}) == "form");
  CHECK(nearest_word("from", {"frog", "form"}) == "frog");
}

TEST_CASE("choices are listed in words", "[id]") {
  CHECK(or_list({}).empty());
  CHECK(or_list({"a"}) == "a");
  CHECK(or_list({"a", "b"}) == "a or b");
  CHECK(or_list({"a", "b", "c"}) == "a, b or c");
}
