// In: a strength in one kind of per cent and the substance in water. Out: its mass in volume, by the densities on file.

#include "bench/solution_strength.h"

#include <algorithm>
#include <cstddef>

#include "base/quantity.h"
#include "model/record_ref.h"
#include "standards/table_view.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kTable = "solution-densities";
constexpr double kPercent = 100;

/// Density of the substance alone: of its curve, so that both agree, else of its record.
std::optional<Amount> pure_density(const Ask& ask, const std::optional<Solution>& solution, const std::string& substance) {
  if (solution && solution->whole()) return solution->rows.back();
  if (solution) return std::nullopt;  // a solid or a gas: no share of it by volume
  return ask.stated(substance, "density", Unit::gram_per_millilitre);
}

}  // namespace

std::optional<Solution> solution_of(const Ask& ask, const std::string& substance) {
  const std::string id = model::RecordRef(substance).id();
  Solution solution;
  for (const auto& row : standards::rows_of(ask.tables(), kTable)) {
    if (standards::cell_text(row, "substance") != id) continue;
    const auto share = ask.row_if_any(std::string(kTable), row.key, "share", Unit::percent_by_mass);
    const auto density = ask.row_if_any(std::string(kTable), row.key, "density", Unit::gram_per_millilitre);
    if (!share || !density) continue;
    solution.curve.push_back({share->nominal / kPercent, density->nominal});
    solution.rows.push_back(*density);
  }
  return solution.curve.size() < 2 ? std::nullopt : std::optional(solution);
}

Amount Solution::rests_on(double from, double to) const {
  std::size_t first = 0;
  while (first + 1 < curve.size() && curve[first + 1].by_mass < from) ++first;
  std::size_t last = first + 1;
  while (last + 1 < curve.size() && curve[last].by_mass < to) ++last;
  first = first == 0 ? 0 : first - 1;  // the polynomial takes one more to either side
  last = std::min(last + 2, rows.size());
  return detail::resting_on(
      {rows.begin() + static_cast<std::ptrdiff_t>(first), rows.begin() + static_cast<std::ptrdiff_t>(last)});
}

std::optional<Strength> read_strength(Ask& ask, const char* input, Plausible plausible) {
  Strength strength;
  const std::string text = ask.text(input);
  for (const Unit unit : {Unit::percent_by_volume, Unit::percent_by_mass}) {
    if (text.ends_with(base::unit_info(unit).symbol)) strength.unit = unit;
  }
  strength.amount = ask.amount(input, strength.unit, plausible);
  return ask.failed() ? std::nullopt : std::optional(strength);
}

std::optional<Strength> stated_strength(const Ask& ask, const std::string& record, const std::string& path) {
  for (const Unit unit : {Unit::percent_mass_by_volume, Unit::percent_by_volume, Unit::percent_by_mass}) {
    if (auto amount = ask.stated(record, path, unit)) return Strength{*amount, unit};
  }
  return std::nullopt;
}

std::optional<Amount> grams_in_millilitre(const Ask& ask, const Strength& strength, const std::string& substance) {
  if (strength.unit == Unit::percent_mass_by_volume) return strength.amount / exactly(kPercent);
  const auto solution = solution_of(ask, substance);
  if (strength.unit == Unit::percent_by_volume) {
    const auto density = pure_density(ask, solution, substance);
    if (!density) return std::nullopt;
    return strength.amount / exactly(kPercent) * *density;
  }
  const double least = strength.amount.low / kPercent, most = strength.amount.high / kPercent;
  if (!solution || most > solution->curve.back().by_mass) return std::nullopt;
  return over<2>({strength.amount, solution->rests_on(least, most)},
                 [&solution](const auto& p) { return standards::grams_per_millilitre(solution->curve, p[0] / kPercent); });
}

}  // namespace benchleaf::bench
