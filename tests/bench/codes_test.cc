// What a result decides, told by codes and items. Sources: the bands are those of a seal maker's design guide, as the table
// gland-limits has them; verdicts on cells are usage of the trade, no source.

#include "support/catch.h"

#include <algorithm>
#include <set>
#include <string>

#include "bench/vectors.h"

using namespace benchleaf;
using bench::Code;

namespace {

std::string nonsense(const std::string& words) { return std::string(words.size(), 'x'); }

const bench::CellItem* cell(const bench::Result& result, const std::string& record) {
  const auto found =
      std::find_if(result.cells.begin(), result.cells.end(), [&](const auto& item) { return item.record == record; });
  return found == result.cells.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("every code has a word of its own, and the word leads back to it") {
  std::set<std::string> words;
  for (int i = 0; i <= static_cast<int>(Code::not_told); ++i) {
    const std::string word(bench::code_word(static_cast<Code>(i)));
    CHECK(words.insert(word).second);
    CHECK(bench::code_named(word) == static_cast<Code>(i));
  }
  CHECK(bench::code_text(Code::bench_test_only) == "bench test only");
  CHECK(bench::code_named("jewellery") == Code::none);
}

TEST_CASE("the candidates of a cell are items with verdict, size and system") {
  const auto result = test::workshop().ask("cell-swap; cell=sr754w");
  REQUIRE_FALSE(result.refusal);
  REQUIRE(cell(result, "cell/sr754w") != nullptr);
  CHECK(cell(result, "cell/sr754w")->verdict == Code::use);
  CHECK(cell(result, "cell/sr754w")->size == Code::same_size);
  CHECK(cell(result, "cell/sr754w")->system == Code::same_system);
  REQUIRE(cell(result, "cell/lr754") != nullptr);
  CHECK(cell(result, "cell/lr754")->verdict == Code::bench_test_only);
  CHECK(cell(result, "cell/lr754")->system == Code::other_system);
}

TEST_CASE("the sizes of a gasket are items, the chosen one first, with stretch and verdict") {
  // 100 (31.85 - 31) / 31 = 2.74 %, by hand; the band is 1 to 5 %.
  const auto result = test::workshop().ask("gasket-fit; seat=31.85 mm; series=round-0-8");
  REQUIRE(result.sizes.size() > 1);
  CHECK(result.sizes.front().record == "gasket/round-0-8");
  CHECK(result.sizes.front().verdict == Code::best);
  CHECK(result.sizes.front().measure == Code::stretch);
  CHECK(*result.sizes.front().size.value == Approx(31));
  CHECK(*result.sizes.front().share.value == Approx(100 * 0.85 / 31));
  for (const auto& size : result.sizes) {
    const double share = *size.share.value;
    if (share < 0) CHECK(size.verdict == Code::below_band);
  }
  CHECK(result.code("section-verdict") == Code::not_told);
  REQUIRE(result.not_known.size() == 1);
  CHECK(result.not_known.front().what == "groove");
}

TEST_CASE("the rungs of a ladder are items, and the first takes the scratch") {
  const auto result =
      test::workshop().ask("scratch-ladder; scratch=0.04 mm; thickness=1.5 mm; diameter=26 mm; grades=P600,P1500");
  REQUIRE(result.rungs.size() == 2);
  CHECK(result.rungs.front().grade == "P600");
  CHECK(result.rungs.front().scale == "P");
  CHECK(*result.rungs.front().removal.value == Approx(40));
  CHECK(*result.rungs.back().grain.value < *result.rungs.front().grain.value);
  CHECK((result.code("still-holds") == Code::stands || result.code("still-holds") == Code::does_not_stand));
}

TEST_CASE("classes are items, and an extreme pH is a code and no class") {
  const auto result = test::workshop().ask("mixture-class; part=acetic-acid:30");
  REQUIRE_FALSE(result.hazards.empty());
  CHECK(std::any_of(result.hazards.begin(), result.hazards.end(),
                    [](const auto& one) { return one.statement == "H314" && one.verdict == Code::certain; }));
  CHECK(result.code("extreme-ph") == Code::none);
  const auto sour = test::workshop().ask("mixture-class; part=acetic-acid:5; ph=1.5");
  CHECK(sour.code("extreme-ph") == Code::extreme_acid);
  const auto lye = test::workshop().ask("mixture-class; part=acetic-acid:5; ph=13");
  CHECK(lye.code("extreme-ph") == Code::extreme_base);
}

TEST_CASE("other words change no code and no item") {
  for (const char* request : {"cell-swap; cell=sr754w", "gasket-fit; seat=31.85 mm; series=round-0-8",
                              "scratch-ladder; scratch=0.04 mm; thickness=1.5 mm", "mixture-class; part=acetic-acid:30"}) {
    INFO(request);
    const auto parts = test::split(request, "; ");
    bench::Inputs inputs;
    for (std::size_t i = 1; i < parts.size(); ++i) {
      const std::size_t equals = parts[i].find('=');
      inputs.emplace(parts[i].substr(0, equals), bench::Given{parts[i].substr(equals + 1), model::Trust::given, {}});
    }
    const auto& shop = test::workshop();
    const auto plain = bench::reckon(parts[0], inputs, {shop.schema.tables, shop.figures});
    const auto other = bench::reckon(parts[0], inputs, {shop.schema.tables, shop.figures, nullptr, nonsense});
    REQUIRE(plain.outputs.size() == other.outputs.size());
    for (std::size_t i = 0; i < plain.outputs.size(); ++i) CHECK(plain.outputs[i].code == other.outputs[i].code);
    REQUIRE(plain.cells.size() == other.cells.size());
    for (std::size_t i = 0; i < plain.cells.size(); ++i) CHECK(plain.cells[i].verdict == other.cells[i].verdict);
    CHECK(plain.sizes.size() == other.sizes.size());
    CHECK(plain.rungs.size() == other.rungs.size());
    CHECK(plain.hazards.size() == other.hazards.size());
  }
}
