#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::model {

/// How far a value may be trusted, strongest first; `given` is what the user typed.
enum class Trust { standard, handbook, dataset, trade, memory, invented, given };

/// `standard`, `handbook`, ... as contributors write it.
std::string_view trust_name(Trust trust);
std::optional<Trust> trust_from_name(std::string_view name);
/// The weaker of two; `given` counts as the strongest, since nobody but the user answers for it.
Trust weaker(Trust one, Trust other);

/// One stated or derived value with everything a page needs to print it and a reviewer needs to question it.
struct Fact {
  std::string id;               ///< `cell/sr754w#size.diameter`, `cell/sr754w#cell-decode.height`, `table/cell-systems#S.nominal`
  std::optional<double> value;  ///< nominal, in `unit`; none for words
  std::optional<double> low, high;  ///< ends of an interval, in `unit`
  std::string unit;                 ///< unit symbol as in units.def, or empty
  std::string printed;              ///< as set on paper: thin spaces, U+2212 minus
  Trust trust = Trust::memory;
  bool derived = false;             ///< worked out by us; drawn with a bar under the sign
  std::vector<std::string> inputs;  ///< ids of the facts it was worked out from
  std::string source;               ///< `source/ID, where` for a stated fact, formula with its source for a derived one
  std::string overlay = {};         ///< name of the overlay that its record comes from, or empty
};

/// All facts of a run in a stable order: by record kind, id, then path.
class FactBase {
 public:
  /// Adds a fact; an id is added once, a second one with the same id is ignored and false comes back.
  bool add(Fact fact);
  const Fact* find(std::string_view id) const;
  /// Facts whose id begins so, `cell/sr754w#`, in the order in which they were added.
  std::vector<const Fact*> beginning(std::string_view start) const;
  const std::vector<Fact>& all() const { return facts_; }

 private:
  std::vector<Fact> facts_;
  std::map<std::string, std::size_t, std::less<>> by_id_;
};

}  // namespace benchleaf::model
