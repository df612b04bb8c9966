#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/fact.h"

namespace benchleaf::bench {

/// What a name stands for.
struct Resolution {
  enum class State { found, ambiguous, unknown };

  State state = State::unknown;
  std::string record;                 ///< `kind/id` where it was found
  std::vector<std::string> readings;  ///< `kind/id`s that an ambiguous name can mean
  std::vector<std::string> hints;     ///< words that an unknown name may have been meant for, the nearest first
};

/// Finds the record that an input names. `src/query` knows ids, designations, trade numbers, aliases and everyday words; what
/// bench knows by itself is `FactNames`.
class Names {
 public:
  virtual ~Names() = default;
  /// A record of one of these kinds (`cell`), which are tried in their order.
  virtual Resolution resolve(std::string_view text, const std::vector<std::string>& kinds) const = 0;
};

/// Names as the facts alone tell them: ids, `kind/id`, designations and trade numbers of cells.
class FactNames : public Names {
 public:
  explicit FactNames(const model::FactBase& facts) : facts_(facts) {}
  Resolution resolve(std::string_view text, const std::vector<std::string>& kinds) const override;

 private:
  const model::FactBase& facts_;
};

/// All records of a kind of which facts speak, `kind/id`, in their order.
std::vector<std::string> records_of(const model::FactBase& facts, std::string_view kind);

}  // namespace benchleaf::bench
