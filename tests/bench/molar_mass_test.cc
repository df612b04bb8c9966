// Molar masses of the substances that doses rest on, summed from their formulas with the element masses of the Blue Obelisk
// data repository (Debian package bodr).

#include "support/catch.h"

#include <cctype>
#include <fstream>
#include <map>
#include <string>

#include "bench/vectors.h"

using namespace benchleaf;

namespace {

constexpr const char* kElements = "/usr/share/bodr/elements.xml";
constexpr double kTolerance = 5e-5;  // what five chemistry libraries differ by, and a little more

/// `<scalar dataType="xsd:Integer" dictRef="bo:atomicNumber">` comes after the mass: symbols and masses by simple search.
std::map<std::string, double> element_masses() {
  std::ifstream file(kElements);
  REQUIRE(file);
  std::map<std::string, double> masses;
  std::string symbol;
  for (std::string line; std::getline(file, line);) {
    const std::size_t at = line.find("bo:symbol");
    if (at != std::string::npos) {
      const std::size_t value = line.find("value=\"") + 7;
      symbol = line.substr(value, line.find('"', value) - value);
    }
    if (line.find("\"bo:mass\"") == std::string::npos) continue;
    const std::size_t open = line.find('>') + 1;
    masses[symbol] = std::stod(line.substr(open));
  }
  return masses;
}

double mass_of(const std::string& formula, const std::map<std::string, double>& masses) {
  double sum = 0;
  for (std::size_t i = 0; i < formula.size();) {
    std::string symbol(1, formula.at(i++));
    while (i < formula.size() && std::islower(static_cast<unsigned char>(formula[i]))) symbol += formula[i++];
    std::string count;
    while (i < formula.size() && std::isdigit(static_cast<unsigned char>(formula[i]))) count += formula[i++];
    sum += masses.at(symbol) * (count.empty() ? 1 : std::stoi(count));
  }
  return sum;
}

}  // namespace

TEST_CASE("molar masses of records are those of their formulas (bodr)") {
  const auto masses = element_masses();
  REQUIRE(masses.size() > 90);
  std::size_t seen = 0;
  for (const auto& [id, substance] : test::workshop().base.substances) {
    if (substance.formula.empty() || !substance.molar_mass) continue;
    INFO(id << " " << substance.formula);
    CHECK(*substance.molar_mass->value_in(base::Unit::gram_per_mole) ==
          Approx(mass_of(substance.formula, masses)).epsilon(kTolerance));
    ++seen;
  }
  CHECK(seen >= 15);
}
