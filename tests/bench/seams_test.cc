// Where the calculators met their edges: two voltages of one size, cells within their tolerance, substances nobody has judged,
// inputs as people give them. Sources stand beside the checks; the rest is usage of the trade, no source.

#include "support/catch.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "base/number.h"
#include "bench/vectors.h"
#include "standards/cell_code.h"
#include "standards/cell_limits.h"

using namespace benchleaf;
using bench::Code;

namespace {

bench::Result ask(const std::string& request) { return test::workshop().ask(request); }

double millimetres(const base::Quantity& quantity) { return quantity.value_in(base::Unit::millimetre).value_or(0); }

/// A measure so far down from the largest to the smallest.
double down(const base::Quantity& most, const base::Quantity& least, double part) {
  return millimetres(most) - part * (millimetres(most) - millimetres(least));
}

std::string text(double value, int decimals) { return base::fixed_text(value, decimals); }

bool is_of_size(const bench::CellItem& cell, const model::CellSizeLimit& limit) {
  const auto& figures = test::workshop().figures;
  const auto* diameter = figures.find(cell.record + "#size.diameter");
  const auto* height = figures.find(cell.record + "#size.height");
  return standards::same_size({diameter->high.value_or(*diameter->value), height->high.value_or(*height->value)},
                              {millimetres(limit.diameter_max), millimetres(limit.height_max)});
}

/// Whether the handbook has a cell of 1.55 V of this size.
bool has_silver(const model::CellSizeLimit& limit) {
  const auto& base = test::workshop().base;
  return std::any_of(base.cells.begin(), base.cells.end(), [&](const auto& one) {
    bench::CellItem item;
    item.record = "cell/" + one.first;
    return one.second.system == "silver-oxide" && is_of_size(item, limit);
  });
}

void check_measured(const std::string& size, const std::string& voltage, const model::CellSizeLimit& limit) {
  const auto result = ask("cell-swap; " + size + voltage);
  INFO(size << voltage << (result.refusal ? result.refusal->reason : std::string()));
  REQUIRE_FALSE(result.refusal);
  CHECK(is_of_size(result.cells.front(), limit));
  for (const auto& cell : result.cells) {
    if (cell.verdict == Code::use) CHECK(std::abs(cell.voltage.value.value_or(0) - 1.5) < 0.1);
  }
}

}  // namespace

TEST_CASE(
    "every size of table 4.9a, down its tolerance, in mm and inches: the right cell first (Linden's Handbook of Batteries)") {
  int sizes = 0;
  for (const auto& limit : test::workshop().schema.tables.cell_size_limits) {
    if (!has_silver(limit)) continue;
    ++sizes;
    for (const double part : {0.0, 0.25, 0.5, 0.75, 1.0}) {
      const double across = down(limit.diameter_max, limit.diameter_min, part);
      const double high = down(limit.height_max, limit.height_min, part);
      for (const char* voltage : {"", "; voltage=1.55 V"}) {
        INFO(limit.size << " " << part);
        check_measured("diameter=" + text(across, 3) + " mm; height=" + text(high, 3) + " mm", voltage, limit);
        check_measured("diameter=" + text(across / 25.4, 4) + " in; height=" + text(high / 25.4, 4) + " in", voltage, limit);
      }
    }
  }
  CHECK(sizes == static_cast<int>(test::workshop().schema.tables.cell_size_limits.size()) - 1);
}

// R56 is the one size of the table that no cell on file has, of any system.
TEST_CASE("a measured cell of a size that is not on file is named by its size, and is the same size as none") {
  for (const auto& limit : test::workshop().schema.tables.cell_size_limits) {
    if (has_silver(limit)) continue;
    CHECK(limit.size == "R56");
    for (const double part : {0.0, 0.5, 1.0}) {
      const std::string across = text(down(limit.diameter_max, limit.diameter_min, part), 3);
      const std::string high = text(down(limit.height_max, limit.height_min, part), 3);
      const auto result = ask("cell-swap; diameter=" + across + " mm; height=" + high + " mm");
      for (const auto& cell : result.cells) CHECK(cell.size != Code::same_size);
      REQUIRE(result.find("size") != nullptr);
      CHECK(result.code("size") == Code::not_known);
      CHECK(result.find("size")->printed.rfind("R56, ", 0) == 0);
    }
  }
}

TEST_CASE("two voltages of one size: the voltage is asked for and nothing is to be used") {
  const auto unknown = ask("cell-swap; diameter=9.5 mm; height=2.7 mm");
  REQUIRE_FALSE(unknown.refusal);
  for (const auto& cell : unknown.cells) CHECK(cell.verdict != Code::use);
  CHECK(std::any_of(unknown.not_known.begin(), unknown.not_known.end(), [](const auto& one) { return one.what == "voltage"; }));
  CHECK(unknown.cautions.front().first);
  const auto low = ask("cell-swap; diameter=9.5 mm; height=2.7 mm; voltage=1.55 V");
  CHECK(low.cells.front().record.rfind("cell/sr927", 0) == 0);
  const auto high = ask("cell-swap; diameter=9.5 mm; height=2.7 mm; voltage=3 V");
  CHECK(high.cells.front().record == "cell/cr927");
}

TEST_CASE("a worn cell of .31 by .21 in is one of 7.9 by 5.4 mm") {
  const auto worn = ask("cell-swap; diameter=.31 in; height=.21 in; voltage=1.55 V");
  REQUIRE_FALSE(worn.refusal);
  CHECK(worn.cells.front().record.rfind("cell/sr754", 0) == 0);
  CHECK(worn.cells.front().size == Code::same_size);
}

namespace {

/// Whether a statement is among those of a result, or one that takes its place (annex III of Regulation (EC) No 1272/2008).
bool carries(const bench::Result& result, const std::string& statement) {
  static const std::multimap<std::string, std::string> kTakenPlace = {{"H315", "H314"}, {"H318", "H314"}, {"H319", "H314"},
                                                                      {"H319", "H318"}, {"H411", "H410"}, {"H400", "H410"}};
  const auto has = [&](const std::string& code) {
    return std::any_of(result.hazards.begin(), result.hazards.end(),
                       [&](const auto& one) { return one.statement == code && one.verdict == Code::certain; });
  };
  const auto [first, last] = kTakenPlace.equal_range(statement);
  return has(statement) || std::any_of(first, last, [&](const auto& pair) { return has(pair.second); });
}

}  // namespace

TEST_CASE("each substance on file, alone: classes of its own, or not known, never none by silence") {
  const auto& shop = test::workshop();
  for (const auto& [id, substance] : shop.base.substances) {
    INFO(id);
    const auto result = ask("mixture-class; part=" + id + ":100");
    REQUIRE_FALSE(result.refusal);
    const bool tabled = std::any_of(shop.schema.tables.find("annex-vi-entries")->rows.begin(),
                                    shop.schema.tables.find("annex-vi-entries")->rows.end(),
                                    [&id = id](const auto& row) { return row.cells.at("substance") == id; });
    const bool none = result.find("classes")->printed == "none";
    if (!substance.classes.empty() || tabled) CHECK_FALSE(result.hazards.empty());
    for (const auto& own : substance.classes) {
      if (own.below) continue;  // of weaker strengths
      INFO(own.name << " " << own.statement);
      CHECK(carries(result, own.statement));
    }
    if (substance.classes.empty() && !tabled && !none) CHECK(result.find("classes")->code == Code::not_known);
    if (none) CHECK((id == "water" || id == "sodium-bicarbonate" || id == "polydimethylsiloxane"));
    if (none) CHECK(result.find("classes")->trust == model::Trust::memory);
  }
}

TEST_CASE("mercury and dimethoxyethane as annex VI has them (entries 080-001-00-0 and 603-031-00-3, recalled)") {
  const auto mercury = ask("mixture-class; part=mercury:100");
  CHECK(mercury.find("signal")->printed == "danger");
  CHECK(mercury.find("statements")->printed == "H330, H360D, H372, H410");
  const auto ether = ask("mixture-class; part=dimethoxyethane:100; flash=-6 °C; boiling=84 °C");
  CHECK(ether.find("signal")->printed == "danger");
  const std::string statements = ether.find("statements")->printed;
  CHECK(statements.find("H225") != std::string::npos);
  CHECK(statements.find("H360FD") != std::string::npos);
}

TEST_CASE("what must never meet is refused before anything is summed; nonsense is refused") {
  for (const char* request :
       {"mixture-class; part=sodium-hypochlorite:3, acetic-acid:5", "mixture-class; part=sodium-hypochlorite:3, ammonia:1",
        "mixture-class; part=hydrogen-peroxide:3, acetone:10",
        "mixture-class; part=", "mixture-class; part=ethanol:70; flash=-400 °C", "mixture-class; part=ethanol:70; flash=-400",
        "mixture-class; part=acetic-acid:5; ph=15", "cell-decode; designation=SR900", "cell-decode; designation=99SR44",
        "cell-life; capacity=80 mAh; mean=0.001 µA; self-discharge=0.0001 % per year"}) {
    INFO(request);
    const auto result = ask(request);
    CHECK(result.refusal);
    CHECK(result.outputs.empty());
  }
}

TEST_CASE("bleach carries EUH206 from one per cent, and a corrosive part without a pH is flagged (annex II and annex I, 3.2.3)") {
  CHECK(ask("mixture-class; part=sodium-hypochlorite:4").find("statements")->printed.find("EUH206") != std::string::npos);
  CHECK(ask("mixture-class; part=sodium-hypochlorite:0.5").find("statements")->printed.find("EUH206") == std::string::npos);
  CHECK(ask("mixture-class; part=sodium-hypochlorite:4").find("classes")->printed.find("supplementary") == std::string::npos);
  const auto weak = ask("mixture-class; part=sodium-hydroxide:0.4");
  CHECK(std::any_of(weak.not_known.begin(), weak.not_known.end(), [](const auto& one) { return one.what == "ph"; }));
}

TEST_CASE("a groove is used or refused, never dropped") {
  CHECK(ask("gasket-fit; seat=31.85 mm; section=0.8 mm; groove-depth=0.6 mm; groove-width=1.1 mm").find("squeeze") != nullptr);
  CHECK(ask("gasket-fit; old-inside=31.85 mm; series=round-0-8; groove-depth=0.6 mm").find("squeeze") != nullptr);
  CHECK(ask("gasket-fit; seat=31.85 mm; groove-depth=0.6 mm").refusal);
  CHECK(ask("gasket-fit; seat=31.85 mm; series=round-0-8; groove-width=1.1 mm").refusal);
  CHECK(ask("gasket-fit; seat=31.85 mm; series=round-0-8; section=0.78 mm; groove-depth=0.6 mm").find("squeeze") != nullptr);
  CHECK(ask("gasket-fit; seat=31.85 mm; series=round-0-8; section=1.0 mm").refusal);
}

TEST_CASE("between two sizes both are named with their play, and an edge of the tolerance is told") {
  for (const char* seat : {"20.35", "24.25", "28.65"}) {
    const auto flat = ask(std::string("gasket-fit; seat=") + seat + " mm; series=flat-0-4");
    INFO(seat);
    REQUIRE_FALSE(flat.refusal);
    REQUIRE(flat.sizes.size() >= 1);
    if (flat.find("size") == nullptr) {
      REQUIRE(flat.sizes.size() == 2);
      CHECK(flat.sizes[0].verdict == Code::below_band);
      CHECK(flat.sizes[1].verdict == Code::above_band);
      CHECK(*flat.sizes[0].size.value > *flat.sizes[1].size.value);
    }
  }
  CHECK(ask("gasket-fit; seat=70 mm; series=flat-0-4").refusal);
}

TEST_CASE("gold marks are read whole, with the stamps that are found") {
  CHECK(ask("gold-margin; mark=G; year=1965; grade=P2500").refusal);
  CHECK(ask("gold-margin; mark=e; year=1965; grade=P2500").refusal);
  CHECK(*ask("gold-margin; mark=20 microns; grade=P2500").find("layer")->low == Approx(16));
  CHECK(*ask("gold-margin; mark=GP 20 µm; grade=P2500").find("layer")->value == Approx(20));
  CHECK(*ask("gold-margin; mark=GR10; grade=P2500").find("layer")->value == Approx(10));
  // 0.003 in of the later United States guides, from memory.
  CHECK(*ask("gold-margin; mark=GF; year=1965; grade=P2500").find("layer")->value == Approx(76.2));
  CHECK(*ask("gold-margin; mark=10K GF; year=1965; grade=P2500").find("layer")->value == Approx(76.2));
  CHECK(*ask("gold-margin; mark=RGP; year=1965; grade=P2500").find("layer")->value == Approx(12.7));
  CHECK(*ask("gold-margin; layer=20 µm; grade=P2500; fineness=14K").find("fine-gold")->value == Approx(20 * 0.585 * 13.6 / 19.3));
  for (const char* fineness : {"333", "417", "916"})
    CHECK_FALSE(ask(std::string("gold-margin; layer=20 µm; grade=P2500; fineness=") + fineness).refusal);
}

TEST_CASE("an old deposit of mercury is answered by what its record names, which is water") {
  CHECK(ask("crust-dose; residue=mercury-era-deposit; mass=10 mg; liquid=white-vinegar").refusal);
}

TEST_CASE("inputs as people give them") {
  const auto plain = ask("gasket-fit; seat=31.85; series=round-0-8");
  REQUIRE_FALSE(plain.refusal);
  CHECK(std::any_of(plain.range.begin(), plain.range.end(),
                    [](const auto& line) { return line.find("31.85 mm") != std::string::npos; }));
  CHECK(*ask("rate-drift; per-day=+0.5").find("per-day")->value == Approx(0.5));
  CHECK(*ask("rate-drift; per-day=\xE2\x88\x92"
             "0.5 s/d")
             .find("per-day")
             ->value == Approx(-0.5));
  CHECK(*ask("rate-drift; ppm=5").find("ppm")->value == Approx(5));
  CHECK_FALSE(ask("rate-drift; temperature=35 C").refusal);
  CHECK(*ask("rinse; carry-over=0.1cm3; volume=5cm3; times=3").find("left")->value ==
        Approx(*ask("rinse; carry-over=0.1 mL; volume=5 mL; times=3").find("left")->value));
  CHECK_FALSE(ask("fumes; liquid=acetone; volume=5ml; room=30m3").refusal);
  CHECK(*ask("bath-mix; ratio=1+9; volume=100 cm3").find("water")->value == Approx(90));
  CHECK_FALSE(ask("bath-mix; strength=2 %; stock=25 %; volume=600 mL").refusal);
  CHECK(*ask("bath-mix; ratio=20:1; volume=420 mL").find("concentrate")->value == Approx(20));
  const auto range = ask("bath-mix; ratio=1+9; volume=400 to 600 mL");
  CHECK(*range.find("water")->low == Approx(360));
  CHECK(*range.find("water")->high == Approx(540));
  const auto& shop = test::workshop();
  const bench::Context context{shop.schema.tables, shop.figures};
  CHECK_FALSE(bench::reckon("cell-swap", {{"", {"394", model::Trust::given, {}}}}, context).refusal);
  CHECK_FALSE(bench::reckon("cell-decode", {{"", {"SR44W", model::Trust::given, {}}}}, context).refusal);
  // It goes to the first input that takes its unit: a pressure behind a depth, a rate a month behind one in parts per million.
  CHECK_FALSE(bench::reckon("water-pressure", {{"", {"3 ATM", model::Trust::given, {}}}}, context).refusal);
  CHECK_FALSE(bench::reckon("rate-drift", {{"", {"15 s/month", model::Trust::given, {}}}}, context).refusal);
  const auto wrong = bench::reckon("water-pressure", {{"", {"3 mA", model::Trust::given, {}}}}, context);
  REQUIRE(wrong.refusal);
  CHECK(wrong.refusal->input == "depth");
}

// 8 mAh less a fifth at 1 mA: 6.4 h, by hand.
TEST_CASE("a short life is told in days and hours, and one within the hour is refused") {
  CHECK(ask("cell-life; capacity=80 mAh; mean=100 \xC2\xB5"
            "A")
            .find("life-days") != nullptr);
  const auto hours = ask("cell-life; capacity=8 mAh; mean=1 mA; self-discharge=0 % per year; margin=20 %");
  REQUIRE(hours.find("life-hours") != nullptr);
  CHECK(*hours.find("life-hours")->value == Approx(6.4).epsilon(0.001));  // a year of 8,760 h or of 365.25 d
  CHECK(ask("cell-life; capacity=8 mAh; mean=100 mA").refusal);
}

TEST_CASE("a cell that is not on file is answered with what its name says of its size, and with no other size") {
  const auto gone = ask("cell-swap; cell=SR56");
  REQUIRE(gone.refusal);
  CHECK(gone.refusal->hint.find("11.6 mm by 2.6 mm") != std::string::npos);
  CHECK(gone.refusal->hint.find("516") == std::string::npos);
}

TEST_CASE("a name alone shows the whole form, and an example never contradicts its message") {
  for (const auto& calculator : bench::calculators()) {
    const auto result = test::workshop().ask(std::string(calculator.name), {});
    INFO(calculator.name);
    REQUIRE(result.refusal);
    CHECK(result.form.size() == calculator.inputs.size());
  }
  const auto both = ask("gold-margin; layer=20 µm; mark=GP 20; grade=P2500");
  REQUIRE(both.refusal);
  CHECK(both.refusal->reason.find("for example") == std::string::npos);
  const auto zinc_air = ask("cell-swap; cell=LX44");
  REQUIRE(zinc_air.refusal);
  CHECK(zinc_air.refusal->hint.find("pr") == std::string::npos);
}

TEST_CASE("fog, lamp, seat and room: what they decide is a code") {
  CHECK(ask("fog-point; temperature=22 °C; humidity=50 %; glass=20 °C").code("verdict") == Code::fog_means_water);
  CHECK(ask("fog-point; temperature=22 °C; humidity=80 %; glass=10 °C").code("verdict") == Code::fog_from_air);
  CHECK(ask("lamp-sag; voltage=1.55 V; resistance=15 ohm; current=10 mA; least=1.2 V").code("verdict") == Code::stands);
  CHECK(ask("lamp-sag; voltage=1.55 V; resistance=60 ohm; current=10 mA; least=1.2 V").code("verdict") == Code::does_not_stand);
  const auto module = ask("lamp-sag; module=led-two-cells");
  REQUIRE_FALSE(module.refusal);
  CHECK(module.outputs.size() >= 2);
  for (const auto& output : module.outputs) CHECK_FALSE(output.record.empty());
  CHECK(ask("old-gasket; new=1.00 mm; now=0.90 mm; closed=0.75 mm").code("verdict") == Code::renew);
  CHECK(ask("old-gasket; new=1.00 mm; now=0.98 mm; closed=0.75 mm").code("verdict") == Code::keep);
  CHECK(ask("vapour; liquid=acetone; volume=1 mL; room=30 m3; air-changes=5").code("verdict") == Code::under_limit);
  CHECK(ask("vapour; liquid=acetone; volume=500 mL; room=10 m3; air-changes=1").code("verdict") == Code::over_limit);
  const auto press = ask("crystal-size; seat=30.2 mm; crystal=acrylic-press-fit");
  REQUIRE_FALSE(press.sizes.empty());
  CHECK(press.sizes.front().record == "crystal/acrylic-press-fit");
}

TEST_CASE("what has no flash point in its record is not said to catch fire (Regulation 1272/2008, annex I, table 2.6.1)") {
  // Flash points: propan-2-ol 12 °C, acetone -20 °C, acetic acid 39 °C (NFPA 497-2008, IEC 60079-20-1:2010): categories 2 and 3.
  // Vinegar of 5 % has none; of window cleaner and contact cleaner none is known, which is not none.
  const auto warns = [](const std::string& liquid) {
    const auto result = ask("fumes; liquid=" + liquid + "; volume=1 mL");
    INFO(liquid << (result.refusal ? result.refusal->reason : std::string()));
    REQUIRE_FALSE(result.refusal);
    return std::any_of(result.cautions.begin(), result.cautions.end(), [](const auto& one) { return one.first; });
  };
  for (const char* liquid : {"isopropanol", "acetone", "acetic-acid", "ethyl-spirit", "light-naphtha", "contact-cleaner"})
    CHECK(warns(liquid));
  CHECK_FALSE(warns("white-vinegar"));
  const auto breathed = ask("vapour; liquid=white-vinegar; volume=10 mL; room=30 m3");
  CHECK(std::none_of(breathed.cautions.begin(), breathed.cautions.end(),
                     [](const auto& one) { return one.first && !one.record.empty(); }));
  const auto burns = ask("vapour; liquid=acetone; volume=10 mL; room=30 m3");
  CHECK(std::any_of(burns.cautions.begin(), burns.cautions.end(),
                    [](const auto& one) { return one.first && !one.record.empty(); }));
}
