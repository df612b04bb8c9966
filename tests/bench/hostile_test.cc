// Two hundred argument lists and more that nobody sane would write: each is answered or refused in time, and no figure comes
// without its unit.

#include "support/catch.h"

#include <chrono>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "bench/bar.h"
#include "bench/vectors.h"

using namespace benchleaf;

namespace {

const std::vector<std::string> kHostile = {"",
                                           " ",
                                           "nan",
                                           "NaN mm",
                                           "inf",
                                           "-inf mm",
                                           "1e999",
                                           "1e999 mm",
                                           "-1 mm",
                                           "0 mm",
                                           "0",
                                           "5",
                                           "5 kg",
                                           "5 V",
                                           "7,9 mm",
                                           "+5 mm",
                                           ".5 mm",
                                           "5. mm",
                                           "010 mm",
                                           "1 000 mm",
                                           "5  mm",
                                           "5 mm mm",
                                           "5 to 4 mm",
                                           "not stated",
                                           "none",
                                           "about 5 mm",
                                           "99999999999999999999999 mm",
                                           "0.0000000000000000001 mm",
                                           "5 mm ±",
                                           "± 5 mm",
                                           "5 мм",
                                           "５ mm",
                                           "5 mm\xE2\x80\x8B",
                                           "\xFF\xFE",
                                           "%s%n%x",
                                           "../../etc",
                                           "5 mm; rm -rf",
                                           "0x10 mm",
                                           "1e3 mm",
                                           "5 furlong",
                                           "-0 mm"};

std::vector<std::string> hostile_values() {
  std::vector<std::string> values = kHostile;
  values.emplace_back(10240, '9');
  values.emplace_back(10240, 'x');
  values.push_back(std::string(5000, '9') + " mm");
  values.emplace_back("1\0mm", 4);
  return values;
}

/// A good call of each calculator, whose inputs are spoilt one by one.
std::vector<std::string> good_calls() {
  return {
      "cell-decode; designation=SR754W",
      "cell-swap; diameter=7.9 mm; height=5.4 mm; voltage=1.55 V; load=1 mA; lamp=yes",
      "cell-life; capacity=80 mAh; mean=2 µA; pulse=10 mA; pulse-time=2 s; per-day=5; self-discharge=3 % per year; margin=10 %",
      "gasket-fit; seat=31.85 mm; section=0.8 mm; series=round-0-8; groove-depth=0.6 mm; groove-width=1.1 mm; moving=no",
      "crystal-thickness; width=20 mm; length=26 mm; thickness=1.5 mm; material=acrylic; load=thumb; edge=simple",
      "scratch-ladder; scratch=0.04 mm; thickness=1.5 mm; material=acrylic; grades=P800,P1200; diameter=26 mm",
      "crust-dose; residue=potassium-carbonate; mass=100 mg; liquid=white-vinegar; strength=5 % w/v",
      "rinse; carry-over=0.1 mL; volume=5 mL; times=3",
      "bath-mix; liquid=white-vinegar; ratio=1+20; volume=600 mL",
      "fumes; liquid=isopropanol; volume=1 mL; room=30 m3",
      "gold-margin; mark=GP 20; grade=P2500; fineness=585; year=1950",
      "rate-drift; ppm=5 ppm; temperature=35 °C",
      "rate-drift; first=0.5 s; second=4.0 s; days=14 d; reading-error=0.3 s; wrist-hours=16 h; wrist=30 °C; table=20 °C",
      "rate-drift; first=0.5 s; second=4.0 s; from=2026-03-01 20:00; to=2026-03-15 20:00",
      "water-pressure; depth=30 m",
      "crystal-size; seat=30.2 mm; crystal=acrylic-press-fit; skirt=1.2 mm; material=acrylic",
      "crystal-size; seat=30.2 mm; ring=crystal-l-0-4",
      "lamp-sag; cell=sr626sw; current=10 mA; cells=1; least=1.2 V; voltage=1.55 V; resistance=15 ohm; drop=0.2 V",
      "fog-point; temperature=22 °C; humidity=50 %; plate=42 °C; glass=10 °C",
      "screw-thread; diameter=0.98 mm; pitch=0.25 mm",
      "screw-thread; diameter=0.98 mm; over=2.0 mm; crests=9",
      "bath-mix; liquid=propan-2-ol; stock=99 % v/v; strength=70 % w/w; volume=100 mL",
      "old-gasket; new=1.00 mm; now=0.90 mm; closed=0.75 mm; moving=no",
      "vapour; liquid=isopropanol; volume=5 mL; room=30 m3; air-changes=2",
      "mixture-class; part=acetic-acid:10,propan-2-ol:20; ph=2.4; flash=21 °C; boiling=82 °C"};
}

/// One line names the input at fault; where the calculator has that input, the line shows it written well if its form is at
/// fault.
void check_refusal(const bench::Result& result, const std::string& text) {
  CHECK_FALSE(result.refusal->reason.empty());
  CHECK(result.outputs.empty());
  for (const auto& calculator : bench::calculators()) {
    if (calculator.name != result.calculator) continue;
    for (const auto& input : calculator.inputs) {
      if (input.name != result.refusal->input) continue;
      const std::string name(input.name);
      INFO(text.substr(0, 300));
      CHECK(text.find("refused: " + name + ": ") != std::string::npos);
      const bool shown = text.find("; for example " + name + "=") != std::string::npos;
      CHECK(shown == result.refusal->show_example);
    }
  }
}

void check_answer(const bench::Result& result) {
  const std::string text = bench::result_text(result);
  CHECK_FALSE(text.empty());
  const auto json = nlohmann::json::parse(bench::result_json(result), nullptr, false);
  CHECK_FALSE(json.is_discarded());
  if (result.refusal) check_refusal(result, text);
  for (const auto& output : result.outputs) {
    INFO(output.name << " " << output.printed);
    CHECK(output.printed.find('?') == std::string::npos);
    if (output.value) {
      CHECK(std::isfinite(*output.value));
      CHECK(output.printed.find_first_not_of("-.0123456789 ") != std::string::npos);
    }
  }
}

}  // namespace

std::map<std::string, test::HostileTally> test::ask_hostile() {
  std::map<std::string, HostileTally> tallies;
  const auto start = std::chrono::steady_clock::now();
  for (const auto& call : good_calls()) {
    auto parts = test::split(call, "; ");
    const std::string name = parts.front();
    parts.erase(parts.begin());
    REQUIRE_FALSE(test::workshop().ask(name, parts).refusal);
    for (auto& part : parts) {
      const std::string good = part;
      const std::string key = part.substr(0, part.find('='));
      for (const auto& value : hostile_values()) {
        part = key + "=" + value;
        INFO(name << " " << key << "=" << value.substr(0, 60));
        const auto result = test::workshop().ask(name, parts);
        check_answer(result);
        ++tallies[name].asked;
        if (result.refusal) ++tallies[name].refused;
      }
      part = good;
    }
  }
  CHECK(std::chrono::steady_clock::now() - start < std::chrono::minutes(2));
  return tallies;
}

TEST_CASE("hostile names of inputs, calculators and whole requests") {
  for (const auto& value : hostile_values()) {
    check_answer(test::workshop().ask(value, {}));
    check_answer(test::workshop().ask("rinse", {value + "=1 mL"}));
    check_answer(test::workshop().ask("gasket-fit", {"seat=" + value, "bore=" + value, "old-inside=" + value}));
  }
  for (const auto& calculator : bench::calculators()) {
    INFO(calculator.name);
    CHECK(test::workshop().ask(std::string(calculator.name), {}).refusal);
  }
}

TEST_CASE("without any record a calculator names what it lacks") {
  const model::FactBase no_facts;
  const bench::Inputs inputs = {{"cell", {"sr754w", model::Trust::given, {}}}};
  const auto result = bench::reckon("cell-swap", inputs, {test::workshop().schema.tables, no_facts});
  REQUIRE(result.refusal);
  CHECK(result.refusal->input == "cell");
  CHECK(result.refusal->hint == "give the folder of the content");
}

TEST_CASE("without any table a calculator says which one is missing") {
  const model::Tables no_tables;
  const bench::Inputs inputs = {{"depth", {"30 m", model::Trust::given, {}}}};
  const auto result = bench::reckon("water-pressure", inputs, {no_tables, test::workshop().figures});
  REQUIRE(result.refusal);
  CHECK(result.refusal->reason.find("physical-constants") != std::string::npos);
}
