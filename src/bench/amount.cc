// In: figures with ends and where they come from. Out: figures worked out of them, with ends, and the weakest of their trusts.

#include "bench/amount.h"

#include <algorithm>

namespace benchleaf::bench {

Amount exactly(double value) {
  Amount amount;
  amount.nominal = amount.low = amount.high = value;
  return amount;
}

namespace detail {

Amount resting_on(const std::vector<Amount>& inputs) {
  Amount amount;
  for (const auto& input : inputs) {
    amount.has_ends = amount.has_ends || input.has_ends;
    amount.trust = model::weaker(amount.trust, input.trust);
    for (const auto& fact : input.facts) {
      if (std::find(amount.facts.begin(), amount.facts.end(), fact) == amount.facts.end()) amount.facts.push_back(fact);
    }
  }
  return amount;
}

void widen(Amount& amount, double value) {
  amount.low = std::min(amount.low, value);
  amount.high = std::max(amount.high, value);
}

}  // namespace detail

Amount operator+(const Amount& one, const Amount& other) {
  return over<2>({one, other}, [](const auto& p) { return p[0] + p[1]; });
}

Amount operator-(const Amount& one, const Amount& other) {
  return over<2>({one, other}, [](const auto& p) { return p[0] - p[1]; });
}

Amount operator*(const Amount& one, const Amount& other) {
  return over<2>({one, other}, [](const auto& p) { return p[0] * p[1]; });
}

Amount operator/(const Amount& one, const Amount& other) {
  return over<2>({one, other}, [](const auto& p) { return p[0] / p[1]; });
}

}  // namespace benchleaf::bench
