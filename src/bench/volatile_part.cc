// In: a liquid or a substance. Out: what of it goes into the air, by its stated strength.

#include "bench/volatile_part.h"

#include <array>
#include <optional>
#include <variant>

#include "base/quantity.h"
#include "standards/flammable.h"

#include "bench/solution_strength.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr double kPercent = 100;
constexpr double kWater = 1;  // g/mL, of what is not the substance

Amount density_of(Ask& ask, const std::string& substance) {
  return ask.needed("liquid", substance, "density", Unit::gram_per_millilitre);
}

}  // namespace

Amount vapour_of(Ask& ask, const VolatilePart& part, const Amount& millilitres) {
  const Amount molar_volume = ask.row("physical-constants", "molar-volume", "value", Unit::litre_per_mole);
  return millilitres * part.strength / part.molar_mass * molar_volume;
}

bool catches_fire(const Ask& ask, const std::string& liquid) {
  const auto parsed = base::parse_quantity(ask.word(liquid, "flash-point"));
  const auto* flash = std::get_if<base::Quantity>(&parsed);
  if (flash == nullptr) return true;
  if (flash->form == base::QuantityForm::none) return false;
  const auto degrees = flash->in(Unit::degree_celsius);
  return !degrees || standards::flammable_category(ask.tables(), degrees->low, std::nullopt) != nullptr;
}

std::optional<Amount> grams_a_millilitre(Ask& ask, const std::string& liquid, const std::string& path,
                                         const std::string& substance) {
  const std::string field = path + ".strength";
  if (const auto by_volume = ask.stated(liquid, field, Unit::percent_by_volume))
    return *by_volume / exactly(kPercent) * density_of(ask, substance);
  if (const auto in_volume = ask.stated(liquid, field, Unit::percent_mass_by_volume)) return *in_volume / exactly(kPercent);
  const auto by_mass = ask.stated(liquid, field, Unit::percent_by_mass);
  if (!by_mass) return std::nullopt;
  if (const auto grams = grams_in_millilitre(ask, {*by_mass, Unit::percent_by_mass}, substance)) return grams;
  const auto stated = ask.stated(substance, "density", Unit::gram_per_millilitre);
  const Amount density = stated.value_or(exactly(kWater));
  return over<2>({*by_mass, density}, [](const auto& p) {
    const double share = p[0] / kPercent;
    return share / (share / p[1] + (1 - share) / kWater);
  });
}

VolatilePart pure_substance(Ask& ask, const std::string& substance) {
  VolatilePart part;
  part.substance = substance;
  part.strength = density_of(ask, substance);
  part.molar_mass = ask.needed("liquid", substance, "molar-mass", Unit::gram_per_mole);
  return part;
}

VolatilePart part_of_liquid(Ask& ask, Answer& answer, const std::string& liquid, const std::string& path) {
  VolatilePart part;
  part.substance = ask.word(liquid, path + ".substance");
  part.molar_mass = ask.needed("liquid", part.substance, "molar-mass", Unit::gram_per_mole);
  if (const auto strength = grams_a_millilitre(ask, liquid, path, part.substance)) {
    part.strength = *strength;
    answer.step(ask.title(part.substance) + " in it: " + ask.word(liquid, path + ".strength"));
    return part;
  }
  part.strength = density_of(ask, part.substance);
  answer.lacks("strength", liquid);
  answer.holds("The share of " + ask.title(part.substance) + " in the liquid is not stated: all of the liquid is reckoned.");
  return part;
}

}  // namespace benchleaf::bench
