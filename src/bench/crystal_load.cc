// In: inputs of a flat crystal, its material's record, the tables of loads and coefficients. Out: stress, sag, least thickness.

#include "bench/crystal_load.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/number.h"
#include "bench/answer.h"

namespace benchleaf::bench {
namespace {

using base::Unit;
using standards::Edge;

constexpr Plausible kSpan{2, 80};           // mm
constexpr Plausible kModulus{10, 1200000};  // MPa
constexpr Plausible kPoisson{0, 0.5};
constexpr Plausible kStrength{1, 3000};      // MPa
constexpr Plausible kPressure{0.00001, 10};  // MPa
constexpr double kSquareRatio = 1;
constexpr double kMostThickness = 20;  // mm
constexpr int kHalvings = 60;

void read_material(Ask& ask, CrystalPlate& plate) {
  const bool own = ask.has("modulus") || ask.has("poisson") || ask.has("strength");
  plate.safety = exactly(1);
  if (!own || ask.has("material")) {
    if (ask.has("material")) {
      plate.material = ask.record("material", {"material"});
    } else {
      ask.fail("material", "is missing, and so are modulus, poisson and strength");
    }
    if (ask.failed()) return;
    plate.modulus = ask.needed("material", plate.material, "modulus", Unit::megapascal);
    plate.poisson = ask.needed("material", plate.material, "poisson", Unit::one);
    plate.strength = ask.needed("material", plate.material, "strength", Unit::megapascal);
    plate.safety = ask.needed("material", plate.material, "safety-factor", Unit::one);
  }
  if (ask.has("modulus") || plate.material.empty()) plate.modulus = ask.amount("modulus", Unit::megapascal, kModulus);
  if (ask.has("poisson") || plate.material.empty()) plate.poisson = ask.amount("poisson", Unit::one, kPoisson);
  if (ask.has("strength") || plate.material.empty()) plate.strength = ask.amount("strength", Unit::megapascal, kStrength);
}

void read_load(Ask& ask, CrystalPlate& plate) {
  if (ask.has("pressure")) {
    if (ask.has("load")) ask.fail("load", "cannot stand beside pressure");
    plate.load = "pressure";
    plate.pressure = ask.amount("pressure", Unit::megapascal, kPressure);
    return;
  }
  plate.load = ask.choice("load", {"thumb", "press", "splash"}, "thumb");
  if (plate.load == "splash") {
    plate.pressure = ask.row("crystal-loads", plate.load, "pressure", Unit::megapascal);
    return;
  }
  plate.force = ask.row("crystal-loads", plate.load, "force", Unit::newton);
  plate.patch = ask.row("crystal-loads", plate.load, "patch", Unit::millimetre);
}

}  // namespace

CrystalPlate read_crystal(Ask& ask) {
  CrystalPlate plate;
  const bool sides = ask.has("width") || ask.has("length");
  plate.disc = ask.choice("shape", {"disc", "rectangle"}, sides ? "rectangle" : "disc") == "disc";
  if (plate.disc) {
    if (sides) ask.fail(ask.has("width") ? "width" : "length", "belongs to a rectangle: a disc has a diameter");
    plate.width = plate.length = ask.amount("diameter", Unit::millimetre, kSpan);
  } else {
    if (ask.has("diameter")) ask.fail("diameter", "belongs to a disc: a rectangle has width and length");
    plate.width = ask.amount("width", Unit::millimetre, kSpan);
    plate.length = ask.amount("length", Unit::millimetre, kSpan);
    if (plate.width.nominal > plate.length.nominal) std::swap(plate.width, plate.length);
  }
  read_load(ask, plate);
  if (!ask.failed()) read_material(ask, plate);
  return plate;
}

CrystalModel::CrystalModel(Ask& ask, const CrystalPlate& plate, Edge edge) : plate_(plate), edge_(edge) {
  if (plate.disc || edge == Edge::simple) return;
  const model::PublishedTable* table = ask.table("plate-coefficients");
  if (table == nullptr) {
    ask.fail("", "the table plate-coefficients is missing");
    return;
  }
  const std::string head = plate.pressure ? "uf" : "cf";
  for (const auto& key : ask.row_keys("plate-coefficients")) {
    Row row;
    row.ratio = base::parse_decimal(key).value_or(1);
    row.coefficients.stress = ask.row("plate-coefficients", key, head + "-stress", Unit::one).nominal;
    row.coefficients.sag = ask.row("plate-coefficients", key, head + "-sag", Unit::one).nominal;
    if (head == "cf") row.coefficients.edge = ask.row("plate-coefficients", key, "cf-edge", Unit::one).nominal;
    row.facts = "table/plate-coefficients#" + key + "." + head + "-";
    rows_.push_back(row);
  }
}

bool CrystalModel::reaches(const CrystalPlate& plate) const {
  // A longer one is stressed more than the last row says, so that to reckon it by that row would be too kind.
  return plate.disc || edge_ == Edge::simple || (!rows_.empty() && plate.length.high <= rows_.back().ratio * plate.width.low);
}

const standards::NavierSums& CrystalModel::sums_for(double width, double length) const {
  const auto known = sums_.find({width, length});
  if (known != sums_.end()) return known->second;
  const double patch = plate_.patch ? plate_.patch->nominal / 2 : 0;
  return sums_.emplace(std::pair(width, length), standards::navier_sums(width, length, patch)).first->second;
}

Amount CrystalModel::resting_on_rows(Amount amount, const char* column) const {
  const double ratio = std::max(plate_.length.nominal / plate_.width.nominal, kSquareRatio);
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const bool last_below = rows_[i].ratio <= ratio && (i + 1 == rows_.size() || rows_[i + 1].ratio > ratio);
    const bool first_above = i > 0 && rows_[i].ratio > ratio && rows_[i - 1].ratio < ratio;
    if (last_below || first_above) amount.facts.push_back(rows_[i].facts + column);
  }
  return amount;
}

standards::PlateCoefficients CrystalModel::coefficients_for(double ratio) const {
  const double wanted = std::max(ratio, kSquareRatio);
  for (std::size_t i = 1; i < rows_.size(); ++i) {
    if (wanted > rows_[i].ratio) continue;
    const double share = (wanted - rows_[i - 1].ratio) / (rows_[i].ratio - rows_[i - 1].ratio);
    return standards::between(rows_[i - 1].coefficients, rows_[i].coefficients, share);
  }
  return rows_.empty() ? standards::PlateCoefficients{} : rows_.back().coefficients;
}

standards::PlateResult CrystalModel::at(const CrystalPoint& point) const {
  const standards::PlateMaterial material{point.modulus, point.poisson};
  const double patch = plate_.patch ? plate_.patch->nominal / 2 : 0;
  if (plate_.disc && plate_.pressure) return disc_under_pressure(point.width / 2, point.thickness, point.load, material, edge_);
  if (plate_.disc) return disc_under_patch(point.width / 2, point.thickness, point.load, patch, material, edge_);
  if (edge_ == Edge::simple)
    return standards::simple_rectangle(sums_for(point.width, point.length), point.load, point.thickness, material);
  const auto coefficients = coefficients_for(point.length / point.width);
  if (plate_.pressure) return rectangle_under_pressure(point.width, point.thickness, point.load, material, coefficients);
  return rectangle_under_patch(point.width, point.thickness, point.load, patch, material, coefficients);
}

CrystalAnswer load_crystal(const CrystalModel& model, const CrystalPlate& plate, const Amount& thickness) {
  const Amount load = plate.pressure ? *plate.pressure : *plate.force;
  const std::array<Amount, 6> inputs = {plate.width, plate.length, thickness, plate.modulus, plate.poisson, load};
  const auto point = [](const auto& p) { return CrystalPoint{p[0], p[1], p[2], p[3], p[4], p[5]}; };
  return {model.resting_on_rows(over<6>(inputs, [&](const auto& p) { return model.at(point(p)).stress; }), "stress"),
          model.resting_on_rows(over<6>(inputs, [&](const auto& p) { return model.at(point(p)).sag; }), "sag")};
}

std::optional<Amount> least_thickness(const CrystalModel& model, const CrystalPlate& plate) {
  const Amount load = plate.pressure ? *plate.pressure : *plate.force;
  const std::array<Amount, 7> inputs = {plate.width,    plate.length, plate.poisson, load,
                                        plate.strength, plate.safety, plate.modulus};
  const auto needed = [&model](const auto& p) {
    const auto holds = [&](double thickness) {
      return model.at({p[0], p[1], thickness, p[6], p[2], p[3]}).stress * p[5] <= p[4];
    };
    if (!holds(kMostThickness)) return kMostThickness * 2;
    double low = 0.001;
    double high = kMostThickness;
    for (int i = 0; i < kHalvings; ++i) {
      const double middle = (low + high) / 2;
      (holds(middle) ? high : low) = middle;
    }
    return high;
  };
  const Amount least = over<7>(inputs, needed);
  if (least.high > kMostThickness) return std::nullopt;
  return model.resting_on_rows(least, "stress");
}

}  // namespace benchleaf::bench
