// What the bench asks most, to the figure; and what is said where no figure may stand alone.

#include "support/catch.h"

#include <string>

#include "base/quantity.h"
#include "bench/vectors.h"

using namespace benchleaf;

namespace {

bench::Result ask(const std::string& request) { return test::workshop().ask(request); }

std::string text_of(const std::string& request) { return bench::result_text(ask(request)); }

bool says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("a seat of 31.85 mm takes the 31 at 2.74 %, and 30 and 32 are out with reasons (common practice, no source)") {
  const std::string text = text_of("gasket-fit; seat=31.85mm; section=0.8mm; series=round-0-8");
  CHECK(says(text, "31 mm"));
  CHECK(says(text, "2.74 %"));
  CHECK(says(text, "30 mm: 6.17 % stretch, too tight"));
  CHECK(says(text, "32 mm: -0.47 % stretch, it does not touch the seat"));
  CHECK(says(text, "diameter only, section not proven"));
  CHECK(says(text, "came out of the bag"));
}

TEST_CASE("an old gasket of 31.85 mm inside is set: the answer may be 32 (common practice, no source)") {
  const std::string text = text_of("gasket-fit; old-inside=31.85mm; section=0.8mm; series=round-0-8");
  CHECK(says(text, "31 mm or 32 mm"));
  CHECK(says(text, "An old gasket is set"));
  CHECK(says(text, "The answer may be 32 mm"));
}

TEST_CASE("100 mg of potassium carbonate: 18 swabs, 1.738 mL, 17.4 mL of gas; cautions stand first (GNU units)") {
  const std::string text = text_of("crust-dose; residue=potassium-carbonate; mass=100mg; liquid=white-vinegar");
  CHECK(says(text, "18 swabs (1.738 mL, rounded up)"));
  CHECK(says(text, "gas at 20 °C"));
  CHECK(says(text, "17.4 mL"));
  CHECK(text.find("never a closed vial") < text.find("18 swabs"));
  CHECK(text.find("caution/never-neutralise-on-a-person") < text.find("18 swabs"));
}

TEST_CASE("an answer names every fact it rests on, with its trust, and is no stronger than the weakest") {
  const auto result = ask("crust-dose; residue=potassium-carbonate; mass=100 mg; liquid=white-vinegar");
  const auto has = [&result](const std::string& fact, model::Trust trust) {
    for (const auto& ground : result.grounds) {
      if (ground.fact == fact) return ground.trust == trust;
    }
    return false;
  };
  CHECK(has("substance/potassium-carbonate#molar-mass", model::Trust::dataset));
  CHECK(has("chemistry/white-vinegar#made-of.0.strength", model::Trust::trade));
  CHECK(has("table/bench-rules#swab.value", model::Trust::memory));
  CHECK(result.find("swabs")->trust == model::Trust::memory);
  CHECK(says(bench::result_text(result), "138.206 g/mol (dataset)"));
}

TEST_CASE("what must never meet is refused, and so is what is on the same side") {
  const auto silver = ask("crust-dose; residue=silver-black-film; mass=10 mg; liquid=ammonia; strength=1 % w/v");
  REQUIRE(silver.refusal);
  CHECK(silver.refusal->input == "liquid");
  CHECK(says(silver.refusal->reason, "never"));
  CHECK(ask("crust-dose; residue=potassium-carbonate; mass=10 mg; liquid=bicarbonate-solution").refusal);
  CHECK(ask("crust-dose; residue=potassium-carbonate; mass=10 mg; liquid=isopropanol").refusal);
}

// Mercury(II) oxide dissolves in dilute acids as salts that go through skin: chemistry textbooks, from memory.
TEST_CASE("no dose of acid is worked out for what a mercury cell leaves") {
  const auto oxide = ask("crust-dose; residue=mercuric-oxide; mass=10 mg; liquid=white-vinegar");
  REQUIRE(oxide.refusal);
  CHECK(says(oxide.refusal->reason, "neither acid nor base"));
  CHECK(ask("crust-dose; residue=mercury-era-deposit; mass=10 mg; liquid=citric-acid-solution").refusal);
}

TEST_CASE("small-deflection theory ends where the sag passes half the thickness (Roark's Formulas, 11.11)") {
  const auto result = ask("crystal-thickness; diameter=26 mm; thickness=1 mm; material=acrylic; pressure=3 bar");
  REQUIRE(result.refusal);
  CHECK(says(result.refusal->reason, "small-deflection"));
  CHECK(ask("crystal-thickness; diameter=26 mm; thickness=4 mm; material=acrylic").refusal);
}

TEST_CASE("a bare grit number that stands on several scales is refused with its grains") {
  for (const char* request : {"scratch-ladder; scratch=nail-catches; grades=P600,800", "gold-margin; layer=20 µm; grade=800"}) {
    INFO(request);
    const auto refused = ask(request);
    REQUIRE(refused.refusal);
    for (const char* reading : {"P800 (21.8", "#800 (14", "F800 (6.5", "ANSI 800 (12.6"})
      CHECK(says(refused.refusal->reason, reading));
  }
  // On a scale it is answered, and so is a number that stands on one scale alone.
  for (const char* grade : {"P800", "#800", "ANSI 800", "ansi-800", "jis800", "12000"}) {
    INFO(grade);
    CHECK_FALSE(ask("scratch-ladder; scratch=nail-catches; grades=" + std::string(grade)).refusal);
  }
}

TEST_CASE("a ladder that leaves too little says so") {
  CHECK(says(text_of("scratch-ladder; scratch=0.04 mm; thickness=1.5 mm; diameter=26 mm"), "stands this load"));
  CHECK(says(text_of("scratch-ladder; scratch=0.1 mm; thickness=1.5 mm; diameter=26 mm"), "does not keep"));
  CHECK(says(text_of("scratch-ladder; scratch=0.2 mm; thickness=1.3 mm; diameter=26 mm"), "small-deflection"));
  CHECK(ask("scratch-ladder; scratch=0.3 mm; thickness=0.3 mm").refusal);
  CHECK(ask("scratch-ladder; scratch=0.04 mm; material=sapphire").refusal);
}

TEST_CASE("no lamp: the low-drain silver first; a lamp: the high-drain one; alkaline for a test only (usage of the trade)") {
  const auto dark = ask("cell-swap; cell=393; lamp=no; alarm=no");
  CHECK(dark.outputs.front().label == "SR754SW (309)");
  const auto lit = ask("cell-swap; cell=393; lamp=yes");
  CHECK(lit.outputs.front().label == "SR754W (393)");
  CHECK(says(lit.find("candidate.lr754")->printed, "bench test only"));
  CHECK(says(lit.find("candidate.pr48")->printed, "never"));
}

TEST_CASE("a worn cell without a voltage is taken for silver: no alkaline comes first (usage of the trade)") {
  const auto worn = ask("cell-swap; diameter=7.9 mm; height=5.4 mm");
  CHECK(says(worn.outputs.front().label, "SR754"));
  CHECK(says(worn.find("candidate.lr754")->printed, "bench test only"));
  CHECK(says(bench::result_text(worn), "Read the mark"));
}

TEST_CASE("a measured old cell is an upper bound: a swollen one of 5.6 mm still finds the 5.4") {
  const auto old_cell = ask("cell-swap; diameter=7.95 mm; height=5.6 mm; voltage=1.55 V");
  REQUIRE(old_cell.find("candidate.sr754w") != nullptr);
  CHECK_FALSE(says(old_cell.find("candidate.sr754w")->printed, "spacer"));
  const auto well = ask("cell-swap; diameter=7.9 mm; height=5.7 mm; measured=well; voltage=1.55 V");
  CHECK(says(well.find("candidate.sr754w")->printed, "spacer"));
  CHECK(well.find("candidate.sr44w") == nullptr);
}

// "An ordinary silver oxide battery can generate heat that can cause bursting and ignition": instructions of a light-powered
// watch, notes on replacing its secondary battery.
TEST_CASE("a watch that charges its cell gets none of this book") {
  for (const char* charging : {"light", "motion"}) {
    const auto refused = ask(std::string("cell-swap; cell=393; charging=") + charging);
    REQUIRE(refused.refusal);
    CHECK(refused.refusal->input == "charging");
    CHECK(says(refused.refusal->reason, "burst"));
    CHECK(refused.outputs.empty());
  }
  CHECK(ask("cell-swap; diameter=7.9 mm; height=5.4 mm; charging=light").refusal);
  CHECK_FALSE(ask("cell-swap; cell=393; charging=none").refusal);
}

TEST_CASE("a bare colon is read both ways, 1+20 one way") {
  CHECK(says(text_of("bath-mix; ratio=1:20; volume=600 mL"), "30.0 mL"));
  CHECK(says(text_of("bath-mix; ratio=1:20; volume=600 mL"), "28.6 mL"));
  CHECK_FALSE(says(text_of("bath-mix; ratio=1+20; volume=600 mL"), "30.0 mL"));
}

TEST_CASE("a worn edge and a mark without its year: gold says what is not known") {
  const auto no_year = ask("gold-margin; mark=rolled gold plate; grade=P2500");
  REQUIRE_FALSE(no_year.refusal);
  REQUIRE(no_year.not_known.size() == 1);
  CHECK(no_year.not_known.front().what == "year");
  CHECK(says(text_of("gold-margin; layer=5 µm; grade=P2500"), "one stroke may expose base metal"));
  CHECK(ask("gold-margin; mark= ; year=1955; grade=P2500").refusal);
}

TEST_CASE("a mark of gold is read by the rules of its year") {
  // United States watch case rules of 1948: 0.0005 in; the later guides, rescinded in 1999: 0.0015 in (from memory).
  const auto both = ask("gold-margin; mark=rolled gold plate; year=1955; grade=P2500");
  REQUIRE(both.find("layer") != nullptr);
  CHECK(*both.find("layer")->value == Approx(12.7));
  for (const char* request :
       {"gold-margin; mark=rolled gold plate; year=1900; grade=P2500", "gold-margin; mark=gold filled; year=2005; grade=P2500",
        "gold-margin; mark=iso a; year=1970; grade=P2500"}) {
    INFO(request);
    const auto refused = ask(request);
    REQUIRE(refused.refusal);
    CHECK(refused.refusal->input == "year");
  }
}

TEST_CASE("a clamped crystal longer than the published coefficients reach is refused, for a strip is stressed more") {
  // Roark's table for a rectangle with free edges: 0.6102 at 1 to 2, 0.75 for a long strip, from memory.
  const auto at_the_end = ask("crystal-thickness; width=20 mm; length=40 mm; thickness=2 mm; material=acrylic; edge=clamped");
  CHECK_FALSE(at_the_end.refusal);
  const auto beyond = ask("crystal-thickness; width=20 mm; length=40.1 mm; thickness=2 mm; material=acrylic; edge=clamped");
  REQUIRE(beyond.refusal);
  CHECK(beyond.refusal->input == "length");
  CHECK_FALSE(ask("crystal-thickness; width=20 mm; length=60 mm; thickness=2 mm; material=acrylic").refusal);
}

TEST_CASE("a refusal is one line that names the input and an example") {
  for (const char* request : {"gasket-fit; seat=31,85 mm", "gasket-fit; seat=5 g", "cell-life; capacity=5 V; mean=1 µA",
                              "cell-decode; designation=SRO57"}) {
    INFO(request);
    const auto result = ask(request);
    REQUIRE(result.refusal);
    const std::string line = bench::result_text(result);
    const std::string first = line.substr(0, line.find('\n'));
    CHECK(says(first, "refused: " + result.refusal->input + ": "));
    CHECK(says(first, "for example " + result.refusal->input + "="));
  }
}
