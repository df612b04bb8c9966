// A range that goes in comes out as a range that bounds every answer within: a thousand points of each call, reckoned one by one.
// The bound is a property of intervals; no published figure.

#include "support/catch.h"

#include <map>
#include <random>
#include <string>
#include <vector>

#include "base/number.h"
#include "bench/bar.h"
#include "bench/vectors.h"

using namespace benchleaf;

namespace {

constexpr int kSamples = 1000;

/// A call with ranges in place of `{low to high}`.
struct Call {
  std::string request;
  std::vector<std::string> outputs;
};

const std::vector<Call>& calls() {
  static const std::vector<Call> kCalls = {
      {"water-pressure; depth={10 to 30} m", {"fresh", "sea"}},
      {"rinse; carry-over={0.05 to 0.2} mL; volume={3 to 6} mL; times=3", {"left", "single"}},
      {"bath-mix; ratio=1+9; volume={400 to 600} mL", {"concentrate", "water"}},
      {"bath-mix; strength={1 to 2} % w/v; stock={20 to 25} % w/v; volume=500 mL", {"concentrate", "water"}},
      {"bath-mix; liquid=propan-2-ol; strength={60 to 70} % w/w; stock={95 to 99} % v/v; volume={90 to 110} mL",
       {"concentrate", "water"}},
      {"cell-life; capacity={70 to 80} mAh; mean={1 to 2} µA; self-discharge={2 to 4} % per year; margin=20 %", {"life"}},
      {"gasket-fit; seat={31.8 to 31.9} mm; section=0.8 mm", {"ideal-inside"}},
      {"crystal-thickness; diameter={25 to 26} mm; thickness={1.5 to 1.7} mm; material=acrylic; load=thumb; edge=simple",
       {"stress", "sag"}},
      {"crystal-thickness; width={19 to 20} mm; length={24 to 28} mm; thickness={1.5 to 1.7} mm; modulus=3 GPa; "
       "poisson={0.35 to 0.39}; strength=70 MPa; pressure=0.01 MPa; edge=simple",
       {"stress", "sag"}},
      {"crystal-size; seat={30.1 to 30.3} mm; oversize={0.1 to 0.3} mm; skirt={1 to 1.4} mm; material=acrylic",
       {"crystal", "pressure", "hoop"}},
      {"crust-dose; residue=potassium-carbonate; mass={5 to 15} mg; liquid=white-vinegar; strength={4 to 6} % w/v", {"volume"}},
      {"fumes; liquid=isopropanol; volume={1 to 3} mL; room={20 to 40} m3", {"vapour", "in-room"}},
      {"vapour; liquid=acetone; volume={1 to 3} mL; room={20 to 40} m3; air-changes={0.5 to 3}", {"at-once", "quarter-hour"}},
      {"gold-margin; layer={10 to 20} µm; grade=P2500", {"margin"}},
      {"scratch-ladder; scratch={30 to 60} µm; thickness={1.5 to 1.7} mm; grades=P600,P1500", {"removal", "left"}},
      {"rate-drift; ppm={-5 to 5} ppm", {"per-day", "per-month"}},
      {"rate-drift; first={0.2 to 0.8} s; second={3.5 to 4.5} s; days={13 to 15} d; reading-error=0 s", {"per-day"}},
      {"rate-drift; wrist-hours={12 to 18} h; wrist={28 to 32} °C; table={18 to 27} °C", {"drift"}},
      {"fog-point; temperature={18 to 26} °C; humidity={40 to 60} %; plate={40 to 45} °C", {"fog-point", "fog-point-warm"}},
      {"lamp-sag; voltage={1.5 to 1.6} V; resistance={5 to 30} ohm; current={5 to 15} mA", {"sag", "under-load"}},
      {"old-gasket; new={0.98 to 1.02} mm; now={0.88 to 0.92} mm; closed={0.73 to 0.77} mm", {"set", "squeeze"}},
  };
  return kCalls;
}

/// The call with its ranges, or with a point of each.
std::string filled(const std::string& request, std::mt19937* random) {
  std::string text;
  std::size_t at = 0;
  for (std::size_t open = request.find('{'); open != std::string::npos; open = request.find('{', at)) {
    const std::size_t close = request.find('}', open);
    const std::string range = request.substr(open + 1, close - open - 1);
    text += request.substr(at, open - at);
    if (random == nullptr) {
      text += range;
    } else {
      const std::size_t to = range.find(" to ");
      const double low = std::stod(range.substr(0, to));
      const double high = std::stod(range.substr(to + 4));
      const double share = static_cast<double>((*random)() % 10001) / 10000;
      text += base::fixed_text(low + share * (high - low), 6, base::Trailing::cut);
    }
    at = close + 1;
  }
  return text + request.substr(at);
}

std::size_t rank_of_signal(const bench::Result& result, const char* output) {
  const std::string& signal = result.find(output)->printed;
  return signal == "danger" ? 2 : signal == "warning" ? 1 : 0;
}

/// Shares that are ranges: no mixture within them has a stronger signal word than the upper end, or a weaker one than the lower.
std::size_t mixtures_within(std::mt19937& random) {
  const std::string request = "mixture-class; part=acetic-acid:{5 to 30},propan-2-ol:{5 to 40}; ph=5; flash=none";
  const auto whole = test::workshop().ask(filled(request, nullptr));
  REQUIRE_FALSE(whole.refusal);
  CHECK(rank_of_signal(whole, "least-signal") < rank_of_signal(whole, "signal"));
  for (int i = 0; i < kSamples; ++i) {
    const auto point = test::workshop().ask(filled(request, &random));
    REQUIRE_FALSE(point.refusal);
    CHECK(rank_of_signal(point, "signal") <= rank_of_signal(whole, "signal"));
    CHECK(rank_of_signal(point, "least-signal") >= rank_of_signal(whole, "least-signal"));
  }
  return kSamples;
}

}  // namespace

std::map<std::string, std::size_t> test::ask_ranges() {
  std::mt19937 random(20260311);
  std::map<std::string, std::size_t> held;
  for (const auto& call : calls()) {
    INFO(call.request);
    const auto whole = test::workshop().ask(filled(call.request, nullptr));
    INFO((whole.refusal ? whole.refusal->reason : std::string()));
    REQUIRE_FALSE(whole.refusal);
    for (const auto& name : call.outputs) {
      REQUIRE(whole.find(name) != nullptr);
      REQUIRE(whole.find(name)->low);
    }
    for (int i = 0; i < kSamples; ++i) {
      const std::string request = filled(call.request, &random);
      const auto point = test::workshop().ask(request);
      if (point.refusal) continue;
      for (const auto& name : call.outputs) {
        const bench::Output* inside = point.find(name);
        if (inside == nullptr || !inside->value) continue;
        const bench::Output& ends = *whole.find(name);
        const double slip = 1e-6 * (1 + std::abs(*inside->value));
        INFO(request << " " << name << " " << *inside->value << " in " << *ends.low << " to " << *ends.high);
        CHECK((*inside->value >= *ends.low - slip && *inside->value <= *ends.high + slip));
        ++held[point.calculator];
      }
    }
  }
  held["mixture-class"] = mixtures_within(random);
  return held;
}
