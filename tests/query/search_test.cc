// What a person types at the bench, and what must come of it: the samples of the design and of the tasks.
#include "compose/real_book.h"
#include "compose/search/search_key.h"
#include "support/catch.h"

namespace benchleaf {

namespace {

std::vector<std::string> records_for(std::string_view query) {
  std::vector<std::string> records;
  for (const compose::Hit& hit : test::real_book().index.find(query)) records.push_back(hit.record);
  return records;
}

std::string first_for(std::string_view query) {
  const std::vector<std::string> records = records_for(query);
  return records.empty() ? "nothing" : records.front();
}

using Words = std::vector<std::string>;

}  // namespace

TEST_CASE("sizes, measures and codes become one word each", "[compose][search]") {
  for (const char* size :
       {"7.9x5.4", "7.9 x 5.4", "7.9×5.4 mm", "7.9 mm × 5.4 mm", "7.9*5.4", "7.90 x 5.40mm", "7.9mmx5.4mm", "7.9 by 5.4"}) {
    INFO(size);
    CHECK(compose::search_words(size) == Words{"7.9x5.4"});
  }
  CHECK(compose::search_words("5.4 mm") == Words{"5.4mm"});
  CHECK(compose::search_words("5.4mm") == Words{"5.4mm"});
  CHECK(compose::search_words("AG 5") == Words{"ag5"});
  CHECK(compose::search_words("ag5") == Words{"ag5"});
  CHECK(compose::search_words("SR754W") == Words{"sr754w"});
  CHECK(compose::search_words("Öl, weiß") == Words{"ol", "weiss"});
  CHECK(compose::search_words("2 x 4") == Words{"2x4"});
  CHECK(compose::search_words(" .,- ").empty());
  CHECK(compose::search_words("").empty());
}

TEST_CASE("a cell is found by its number, its name and what is left of them", "[compose][search]") {
  for (const char* query : {"393", "SR754W", "sr754w", "393 SR754W"}) {
    INFO(query);
    CHECK(first_for(query) == "cell/sr754w");
  }
  CHECK(first_for("309") == "cell/sr754sw");
  CHECK(first_for("AG5") == "cell/lr754");
  CHECK(first_for("ag 5") == "cell/lr754");
  const std::vector<std::string> both = records_for("sr754");
  CHECK(std::find(both.begin(), both.end(), "cell/sr754w") != both.end());
  CHECK(std::find(both.begin(), both.end(), "cell/sr754sw") != both.end());
}

TEST_CASE("a size gives all cells of that size and nothing else", "[compose][search]") {
  for (const char* query : {"7.9x5.4", "7.9 × 5.4 mm", "7.9*5.4", "5.4x7.9"}) {
    INFO(query);
    std::vector<std::string> records = records_for(query);
    std::sort(records.begin(), records.end());
    CHECK(records == Words{"cell/lr754", "cell/mr754", "cell/pr48", "cell/sr754sw", "cell/sr754w"});
  }
  const std::vector<std::string> high = records_for("5.4 mm silver");
  CHECK(std::find(high.begin(), high.end(), "cell/sr754w") != high.end());
  CHECK(std::find(high.begin(), high.end(), "cell/lr754") == high.end());
}

TEST_CASE("what is not on file is not found, and the nearest names are offered", "[compose][search]") {
  CHECK(records_for("9999").empty());
  CHECK_FALSE(test::real_book().index.nearest("9999").empty());
  CHECK(records_for("").empty());
  CHECK(records_for("393 acetone").empty());  // all words must fit one record
  const Words near = test::real_book().index.nearest("SR755W");
  REQUIRE_FALSE(near.empty());
  CHECK(near.front() == "SR754W");
  CHECK(test::real_book().index.nearest("9999", 2).size() == 2);
}

TEST_CASE("other names, whole names and one slip find their record", "[compose][search]") {
  CHECK(first_for("rubbing alcohol") == "chemistry/isopropanol");
  CHECK(first_for("white vinegar") == "chemistry/white-vinegar");
  CHECK(first_for("vinegar") == "chemistry/white-vinegar");
  CHECK(first_for("vinegra") == "chemistry/white-vinegar");  // two neighbours swapped
  CHECK(first_for("isopropil alcohol") == "chemistry/isopropanol");
  const Words blank = records_for("blank display");  // what the watch shows, and the work on it
  REQUIRE(blank.size() >= 2);
  CHECK(Words{std::min(blank[0], blank[1]), std::max(blank[0], blank[1])} ==
        Words{"procedure/wake-a-blank-display", "symptom/blank-display"});
  CHECK(first_for("polarisr") != "nothing");  // a letter less
}

TEST_CASE("hits are ordered by fit, then by weight, and come again the same", "[compose][search]") {
  for (const char* query : {"silver", "crust", "sr", "acr", "cell"}) {
    const std::vector<compose::Hit> hits = test::real_book().index.find(query);
    REQUIRE(hits.size() > 1);
    for (std::size_t i = 1; i < hits.size(); ++i) {
      CHECK(hits[i - 1].fit <= hits[i].fit);
      if (hits[i - 1].fit == hits[i].fit) CHECK(hits[i - 1].score >= hits[i].score);
    }
    CHECK(records_for(query) == records_for(query));
  }
}

TEST_CASE("whatever is typed, the search answers", "[compose][search]") {
  const auto& index = test::real_book().index;
  for (const std::string& query : Words{std::string(5000, 'x'), "\xFF\xFE\x80", "7.9x", "x5.4", "7.9xx5.4", "....", "mm", "×××",
                                        "1.x.2", std::string(3, '\0'), "７９"}) {
    const std::vector<compose::Hit> hits = index.find(query);
    CHECK(hits.size() <= index.entries().size());
    CHECK(index.nearest(query).size() <= 5);
  }
}

}  // namespace benchleaf
