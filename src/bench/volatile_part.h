#pragma once

#include <string>

#include "bench/answer.h"
#include "bench/ask.h"

namespace benchleaf::bench {

/// What of a liquid goes into the air: one substance, and how much of it a millilitre of the liquid holds.
struct VolatilePart {
  std::string substance;  ///< `substance/ID`
  Amount strength;        ///< g/mL
  Amount molar_mass;      ///< g/mol
};

/// Litres of vapour at the bench out of so many millilitres of the liquid.
Amount vapour_of(Ask& ask, const VolatilePart& part, const Amount& millilitres);

/// A substance as it is bottled: pure, so many grams a millilitre.
VolatilePart pure_substance(Ask& ask, const std::string& substance);

/// The part at `path` (`made-of.0`) of a liquid, by its stated strength in whatever unit; where none is stated all of the liquid
/// is reckoned, and `answer` says so.
VolatilePart part_of_liquid(Ask& ask, Answer& answer, const std::string& liquid, const std::string& path);

/// Whether the vapour of a liquid catches fire at the bench, by the flash point that its record states and the table of
/// flammable categories. Where it states none, or that it is not known, the vapour is taken to burn.
bool catches_fire(const Ask& ask, const std::string& liquid);

/// Grams in a millilitre of a liquid of so many per cent by volume, mass in volume or mass, whichever the record states; the
/// rest of it is taken as water. Nothing where it states none.
std::optional<Amount> grams_a_millilitre(Ask& ask, const std::string& liquid, const std::string& path,
                                         const std::string& substance);

}  // namespace benchleaf::bench
