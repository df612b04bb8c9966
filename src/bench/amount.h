#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "base/unit.h"
#include "model/fact.h"

namespace benchleaf::bench {

/// A figure that goes into a calculation, in the unit it was asked for in: typed, stated by a record, or of a table's row.
struct Amount {
  double nominal = 0;
  double low = 0;
  double high = 0;
  bool has_ends = false;  ///< without ends a result is nominal only
  model::Trust trust = model::Trust::given;
  std::vector<std::string> facts;  ///< ids of the facts it rests on
  std::string printed;             ///< as written, set for paper; empty for what was worked out
};

/// A plain number, for what is neither typed nor published.
Amount exactly(double value);

namespace detail {
/// Everything but the three figures: trust, facts, whether there are ends.
Amount resting_on(const std::vector<Amount>& inputs);
void widen(Amount& amount, double value);
}  // namespace detail

/// `f` of the inputs. The ends are those over all corners of their intervals, which is exact where `f` is monotone in
/// each input by itself.
template <std::size_t N, typename F>
Amount over(const std::array<Amount, N>& inputs, F f) {
  Amount result = detail::resting_on({inputs.begin(), inputs.end()});
  std::array<double, N> point{};
  for (std::size_t i = 0; i < N; ++i) point.at(i) = inputs.at(i).nominal;
  result.nominal = result.low = result.high = f(point);
  if (!result.has_ends) return result;
  for (std::size_t corner = 0; corner < (std::size_t{1} << N); ++corner) {
    for (std::size_t i = 0; i < N; ++i) point.at(i) = ((corner >> i) & 1U) != 0 ? inputs.at(i).high : inputs.at(i).low;
    detail::widen(result, f(point));
  }
  return result;
}

Amount operator+(const Amount& one, const Amount& other);
Amount operator-(const Amount& one, const Amount& other);
Amount operator*(const Amount& one, const Amount& other);
/// The divisor's interval must not hold zero.
Amount operator/(const Amount& one, const Amount& other);

}  // namespace benchleaf::bench
