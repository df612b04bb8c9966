// Index order is the design's sixth decision: marks folded, digits as numbers, letters before signs, ties by code point.
#include <algorithm>
#include <random>

#include "compose/index_order.h"
#include "compose/real_book.h"
#include "support/catch.h"

namespace benchleaf {

TEST_CASE("index order takes digits as numbers and folds marks", "[compose][index]") {
  std::vector<std::string> words{"zinc",      "SR416SW", "acid", "SR41W", "Öl",    "oil", "ÖL", "393",    "9",      "10",
                                 "acid bath", "acids",   "SR9",  "2016",  "Zebra", "µm",  "μm", "CR2016", "CR2025", "§ 1"};
  const std::vector<std::string> wanted{"9",  "10", "393", "2016",  "acid",    "acid bath", "acids", "CR2016", "CR2025", "oil",
                                        "ÖL", "Öl", "SR9", "SR41W", "SR416SW", "Zebra",     "zinc",  "µm",     "μm",     "§ 1"};
  std::mt19937 shuffle(1);
  for (int round = 0; round < 5; ++round) {
    std::shuffle(words.begin(), words.end(), shuffle);
    std::sort(words.begin(), words.end(), [](const auto& one, const auto& other) { return compose::index_before(one, other); });
    CHECK(words == wanted);
  }
}

TEST_CASE("a number written with leading noughts stands with its value", "[compose][index]") {
  CHECK(compose::index_key("P0800") == compose::index_key("P800"));
  CHECK(compose::index_before("P800", "P0800") != compose::index_before("P0800", "P800"));
}

TEST_CASE("the index of the handbook is in order and joins equal words", "[compose][index]") {
  const auto& blocks = test::real_book().book.chapters.back().blocks;
  const auto* list = std::get_if<model::IndexList>(&blocks.back().what);
  REQUIRE(list != nullptr);
  REQUIRE(list->entries.size() > 500);
  const auto find = [&](const std::string& word) {
    return std::find_if(list->entries.begin(), list->entries.end(), [&](const auto& entry) { return entry.word == word; });
  };
  for (std::size_t i = 0; i < list->entries.size(); ++i) {
    const model::IndexEntry& entry = list->entries[i];
    INFO(entry.word);
    CHECK(entry.targets.empty() != entry.see.empty());
    if (i > 0) CHECK(compose::index_key(list->entries[i - 1].word) < compose::index_key(entry.word));
    if (!entry.see.empty()) CHECK(find(entry.see) != list->entries.end());
  }
  REQUIRE(find("393") != list->entries.end());
  CHECK(find("393")->targets == std::vector<std::string>{"cell/sr754w"});
  // Low and high drain share the short form SR48 (the design's example record, and its low-drain sister).
  REQUIRE(find("SR48") != list->entries.end());
  CHECK(find("SR48")->targets == std::vector<std::string>{"cell/sr754sw", "cell/sr754w"});
  REQUIRE(find("rubbing alcohol") != list->entries.end());
  CHECK(find("rubbing alcohol")->see == "Isopropyl alcohol");
  REQUIRE(find("SR41W") != list->entries.end());
  REQUIRE(find("SR416SW") != list->entries.end());
  CHECK(find("SR41W") < find("SR416SW"));
}

}  // namespace benchleaf
