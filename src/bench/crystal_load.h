#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "bench/ask.h"
#include "standards/plate.h"
#include "standards/rectangle.h"

namespace benchleaf::bench {

/// A flat crystal as a plate: shape, spans, material, load. Lengths in mm, stress in MPa, force in N.
struct CrystalPlate {
  bool disc = true;
  Amount width;          ///< diameter of the disc, short side of the rectangle: the free span
  Amount length;         ///< long side; as the width for a disc
  std::string material;  ///< `material/ID`, or empty where the figures were given
  Amount modulus, poisson, strength;
  Amount safety;                       ///< factor that is asked for
  std::string load;                    ///< thumb, press, splash, or pressure
  std::optional<Amount> pressure;      ///< MPa
  std::optional<Amount> force, patch;  ///< N, mm diameter
};

/// Reads all but the thickness.
CrystalPlate read_crystal(Ask& ask);

/// Stress and sag of a plate at one point of its inputs.
struct CrystalPoint {
  double width = 0, length = 0, thickness = 0, modulus = 0, poisson = 0, load = 0;
};

/// Reckons a plate with one edge: discs in closed form, rectangles on simple supports by Navier's series, clamped ones by the
/// published coefficients, which come out of the tables once.
class CrystalModel {
 public:
  CrystalModel(Ask& ask, const CrystalPlate& plate, standards::Edge edge);
  standards::PlateResult at(const CrystalPoint& point) const;
  /// False for a clamped rectangle that is longer than the published coefficients go.
  bool reaches(const CrystalPlate& plate) const;
  /// The amount with the rows of coefficients, `stress` or `sag`, that it came out of; a disc has none.
  Amount resting_on_rows(Amount amount, const char* column) const;

 private:
  struct Row {
    double ratio = 1;
    standards::PlateCoefficients coefficients;
    std::string facts;  ///< `table/plate-coefficients#1.2.us-`
  };
  standards::PlateCoefficients coefficients_for(double ratio) const;
  const standards::NavierSums& sums_for(double width, double length) const;

  const CrystalPlate& plate_;
  standards::Edge edge_;
  std::vector<Row> rows_;
  mutable std::map<std::pair<double, double>, standards::NavierSums> sums_;  ///< a series of many terms, once for each size
};

/// The least thickness, mm, at which the plate keeps its safety, or nothing where none up to 20 mm does.
std::optional<Amount> least_thickness(const CrystalModel& model, const CrystalPlate& plate);

/// Stress and sag with the ends of all inputs.
struct CrystalAnswer {
  Amount stress;
  Amount sag;
};
CrystalAnswer load_crystal(const CrystalModel& model, const CrystalPlate& plate, const Amount& thickness);

}  // namespace benchleaf::bench
