// What must hold over whole ranges: monotone, inverse, balance, dimension, and that an interval contains its nominal.

#include "support/catch.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/amount.h"
#include "bench/vectors.h"

using namespace benchleaf;

namespace {

const bench::Result& keep(const bench::Result& result, const std::string& request) {
  INFO(request);
  REQUIRE_FALSE(result.refusal);
  return result;
}

double value(const std::string& request, const char* name) {
  const bench::Result result = test::workshop().ask(request);
  keep(result, request);
  const bench::Output* output = result.find(name);
  INFO(request << " " << name);
  REQUIRE(output != nullptr);
  REQUIRE(output->value);
  return *output->value;
}

std::string number(double value) { return base::shortest_text(base::tidy(value)); }

}  // namespace

TEST_CASE("the dose is proportional to the mass and inverse to the strength; swabs never fall short of the volume") {
  double before = 0;
  for (const int mass : {1, 7, 20, 63, 100, 250, 999}) {
    const std::string request =
        "crust-dose; residue=potassium-carbonate; liquid=white-vinegar; mass=" + std::to_string(mass) + " mg";
    const double volume = value(request, "volume");
    CHECK(volume > before);
    CHECK(volume / mass == Approx(0.017380).epsilon(0.001));  // 1.738 mL for 100 mg by GNU units
    CHECK(value(request, "swabs") * 0.1 >= volume - 1e-9);
    CHECK((value(request, "swabs") - 1) * 0.1 < volume);
    CHECK(value(request + "; strength=10 % w/v", "volume") == Approx(volume / 2));
    before = volume;
  }
}

TEST_CASE("acid and base balance: the dose of acid answers just the base that its mass answers") {
  const double acid_ml = value("crust-dose; residue=sodium-bicarbonate; mass=84.007 mg; liquid=white-vinegar", "volume");
  const double acid_mg = acid_ml * 50;
  const double base_ml =
      value("crust-dose; residue=acetic-acid; mass=" + number(acid_mg) + " mg; liquid=bicarbonate-solution", "volume");
  CHECK(base_ml * 50 == Approx(84.007).epsilon(1e-6));
}

TEST_CASE("stretch grows with the seat and falls with the size; the chosen one lies in the band") {
  double before = -100;
  for (double seat = 20.6; seat < 21.0; seat += 0.05) {
    const std::string request = "gasket-fit; series=round-0-7; seat=" + number(seat) + " mm";
    const auto result = test::workshop().ask(request);
    keep(result, request);
    const bench::Output* stretch = result.find("stretch");
    REQUIRE(stretch != nullptr);
    CHECK(*stretch->value >= 1);
    CHECK(*stretch->value <= 5);
    CHECK(*stretch->low < *stretch->value);
    CHECK(*stretch->high > *stretch->value);
    if (result.find("size")->printed ==
        test::workshop().ask("gasket-fit; series=round-0-7; seat=20.6 mm").find("size")->printed) {
      CHECK(*stretch->value > before);
      before = *stretch->value;
    }
  }
  CHECK(before > -100);
}

TEST_CASE("a moving gasket takes a dynamic squeeze, a standing one a static one") {
  const std::string request = "gasket-fit; seat=2.05 mm; series=crown-0-5; groove-depth=0.37 mm";
  const auto moving = test::workshop().ask(request);
  keep(moving, request);
  REQUIRE(moving.find("squeeze-verdict") != nullptr);
  CHECK(moving.find("squeeze-verdict")->printed.find("8 to 25") != std::string::npos);
  const auto standing = test::workshop().ask(request + "; moving=no");
  CHECK(standing.find("squeeze-verdict")->printed.find("15 to 30") != std::string::npos);
}

TEST_CASE("a thicker crystal has less stress, and at the least thickness the safety is the one asked for") {
  for (const char* shape : {"diameter=26 mm", "width=20 mm; length=26 mm"}) {
    const std::string request = std::string("crystal-thickness; edge=simple; material=acrylic; ") + shape;
    const double least = value(request, "least");
    CHECK(value(request + "; thickness=" + number(least) + " mm", "safety") == Approx(4).epsilon(1e-6));
    double before = 1e9;
    for (const double thickness : {1.2, 1.4, 1.6, 2.0, 2.4}) {
      const double stress = value(request + "; thickness=" + number(thickness) + " mm", "stress");
      CHECK(stress < before);
      before = stress;
    }
  }
}

TEST_CASE("clamped never needs more than free") {
  for (const char* load : {"thumb", "splash", "press"}) {
    const std::string request = std::string("crystal-thickness; diameter=30 mm; material=mineral-glass; load=") + load;
    CHECK(value(request, "least-clamped") <= value(request, "least"));
  }
}

TEST_CASE("life falls with load and margin, and with neither loss nor margin charge is current by time") {
  double before = 1e9;
  for (const double mean : {0.5, 1.0, 2.0, 5.0, 20.0}) {
    const std::string request = "cell-life; capacity=50 mAh; self-discharge=0 % per year; mean=" + number(mean) + " µA";
    const double months = value(request + "; margin=0 %", "life");
    CHECK(months / 12 * 8.76 * mean == Approx(50));
    CHECK(value(request + "; margin=20 %", "life") == Approx(0.8 * months));
    CHECK(months < before);
    before = months;
  }
}

TEST_CASE("ppm and seconds a day are inverse") {
  for (const double ppm : {-120.0, -3.5, 0.7, 11.0}) {
    const double day = value("rate-drift; ppm=" + number(ppm) + " ppm", "per-day");
    CHECK(value("rate-drift; per-day=" + number(day) + " s/d", "ppm") == Approx(ppm));
  }
}

TEST_CASE("depth and pressure are inverse; nothing that is printed reads as a rating") {
  for (const double depth : {0.5, 10.0, 30.0, 200.0}) {
    const double bar = value("water-pressure; depth=" + number(depth) + " m", "fresh");
    CHECK(value("water-pressure; pressure=" + number(bar) + " bar", "fresh-depth") == Approx(depth).epsilon(1e-6));
  }
  const std::string text = bench::result_text(test::workshop().ask("water-pressure; depth=30 m"));
  CHECK(text.find("tells nothing about this watch") < text.find("bar"));
  for (const char* request : {"crystal-thickness; diameter=26 mm; thickness=1.5 mm; material=acrylic; pressure=3 bar",
                              "crystal-thickness; diameter=26 mm; thickness=1.5 mm; material=acrylic"}) {
    const std::string crystal = bench::result_text(test::workshop().ask(request));
    for (const char* word : {"waterproof", "water resistant to", "ATM", " m deep", "depth of", "rated"})
      CHECK(crystal.find(word) == std::string::npos);
  }
}

TEST_CASE("more rinses leave less, and small ones beat one big one") {
  double before = 1e9;
  for (int times = 1; times <= 6; ++times) {
    const std::string request = "rinse; carry-over=0.1 mL; volume=5 mL; times=" + std::to_string(times);
    const double left = value(request, "left");
    CHECK(left < before);
    CHECK(left <= value(request, "single") + 1e-9);
    before = left;
  }
}

TEST_CASE("concentrate and water make up the volume, and 1+n is 1 in n+1") {
  for (const int parts : {1, 4, 10, 20, 99}) {
    const std::string request = "bath-mix; volume=600 mL; ratio=1+" + std::to_string(parts);
    CHECK(value(request, "concentrate") + value(request, "water") == Approx(600));
    CHECK(value("bath-mix; volume=600 mL; ratio=1 in " + std::to_string(parts + 1), "concentrate") ==
          Approx(value(request, "concentrate")));
  }
}

TEST_CASE("air that burns is the vapour by the lower limit") {
  const std::string request = "fumes; liquid=propan-2-ol; volume=3 mL";
  CHECK(value(request, "burning-air") * 0.02 == Approx(value(request, "vapour")));
}

TEST_CASE("units do not matter: the same measure in another unit gives the same answer") {
  const auto text = [](const std::string& request) { return test::workshop().ask(request).find("stretch")->printed; };
  CHECK(text("gasket-fit; series=round-0-8; seat=31.85 mm") == text("gasket-fit; series=round-0-8; seat=3.185 cm"));
  CHECK(value("water-pressure; pressure=3 bar", "fresh-depth") ==
        Approx(value("water-pressure; pressure=300 kPa", "fresh-depth")));
}

TEST_CASE("what is measured stands with its unit: only counts and ratios of like things are bare numbers") {
  constexpr std::array<std::string_view, 19> kBare = {"equivalents",
                                                      "moles",
                                                      "poisson",
                                                      "safety-factor",
                                                      "per-day",
                                                      "factor",
                                                      "power",
                                                      "grain-depth.value",
                                                      "step-ratio.value",
                                                      "extreme-acid.value",
                                                      "extreme-base.value",
                                                      ".point",
                                                      ".up-to",
                                                      "-stress",
                                                      "-sag",
                                                      "-edge",
                                                      "gold-figure-least.value",
                                                      "magnus-factor.value",
                                                      "air-changes-shut.value"};
  const auto ends_with = [](std::string_view id, std::string_view end) {
    return id.size() >= end.size() && id.substr(id.size() - end.size()) == end;
  };
  std::size_t seen = 0;
  for (const auto& vector : test::read_vectors("tests/bench/outside_vectors.txt")) {
    for (const auto& ground : test::workshop().ask(vector.request).grounds) {
      ++seen;
      if (ground.fact.find("cell-short-forms") != std::string::npos) continue;  // sizes by name, as 44
      const bool plain = base::to_terminal(ground.printed).find_first_not_of("-.0123456789to ") == std::string::npos;
      INFO(ground.fact << ": " << ground.printed);
      if (plain) CHECK(std::any_of(kBare.begin(), kBare.end(), [&](auto end) { return ends_with(ground.fact, end); }));
    }
  }
  CHECK(seen > 300);
}

TEST_CASE("every answer carries its working, a formula with its source, and what it holds for") {
  for (const auto& vector : test::read_vectors("tests/bench/outside_vectors.txt")) {
    INFO(vector.request);
    const auto result = test::workshop().ask(vector.request);
    CHECK_FALSE(result.working.empty());
    CHECK_FALSE(result.range.empty());
    REQUIRE_FALSE(result.formulas.empty());
    for (const auto& formula : result.formulas) CHECK_FALSE(formula.source.empty());
  }
}

TEST_CASE("a decimal comma is refused with the point as a hint, and a missing space is not") {
  const auto comma = test::workshop().ask("gasket-fit; seat=31,85mm");
  REQUIRE(comma.refusal);
  CHECK(comma.refusal->hint == "31.85 mm");
  CHECK_FALSE(test::workshop().ask("gasket-fit; seat=31.85mm").refusal);
}

TEST_CASE("more of a substance never has fewer classes; without a flash point nothing is said of burning but that it is open") {
  std::size_t before = 0;
  for (const char* percent : {"1", "9", "10", "24"}) {
    const auto result = test::workshop().ask(std::string("mixture-class; part=acetic-acid:") + percent);
    CHECK(result.working.size() >= before);
    before = result.working.size();
  }
  const auto open = test::workshop().ask("mixture-class; part=propan-2-ol:70");
  CHECK(open.find("undecided")->printed.find("flash point") != std::string::npos);
  CHECK(test::workshop().ask("mixture-class; part=acetic-acid:30").cautions.front().first);
}

TEST_CASE("every interval of every outside vector contains its nominal, and every figure has its unit") {
  std::size_t intervals = 0;
  for (const auto& vector : test::read_vectors("tests/bench/outside_vectors.txt")) {
    INFO(vector.request);
    for (const auto& output : test::workshop().ask(vector.request).outputs) {
      INFO(output.name);
      if (output.value) CHECK(output.printed.find_first_not_of("-.0123456789") != std::string::npos);
      CHECK_FALSE(output.label.empty());
      if (!output.low || !output.value) continue;
      ++intervals;
      CHECK(*output.low <= *output.value);
      CHECK(*output.high >= *output.value);
    }
  }
  CHECK(intervals > 10);
}

TEST_CASE("an interval over corners is that of the function where it is monotone") {
  bench::Amount a = bench::exactly(2);
  a.low = 1;
  a.high = 3;
  a.has_ends = true;
  const bench::Amount b = bench::exactly(4);
  CHECK((a * b).low == 4);
  CHECK((a * b).high == 12);
  CHECK((b / a).low == Approx(4.0 / 3));
  CHECK((b / a).high == 4);
  CHECK((b - a).nominal == 2);
  CHECK_FALSE((b + b).has_ends);
}

TEST_CASE("the parabola of quartz has its top at the turnover: warm and cold both lose") {
  for (const char* temperature : {"-5 °C", "10 °C", "38 °C", "45 °C"}) {
    const std::string request = std::string("rate-drift; temperature=") + temperature;
    CHECK(value(request, "drift") < 0);
    const auto result = test::workshop().ask(request);
    CHECK(*result.find("drift")->high <= 0);
  }
  CHECK(*test::workshop().ask("rate-drift; temperature=25 °C").find("drift")->high == 0);
}
