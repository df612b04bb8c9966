#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/tables.h"

namespace benchleaf::compose {

/// One state of the content and all that follows from it; neither holds an error.
struct State {
  const model::KnowledgeBase& records;
  const model::Tables& tables;
  const derive::Derived& derived;
};

/// One thing that two states say differently.
struct Change {
  enum class Of {
    record,   ///< a whole record
    value,    ///< a fact of a record: a quantity, a number, a code word
    words,    ///< prose of a record, or what it refers to
    table,    ///< a cell of a published table
    derived,  ///< what is worked out
    chart     ///< a row of a bench chart
  };
  enum class How { added, removed, altered, basis };

  Of of = Of::value;
  How how = How::altered;
  std::string id;                    ///< `cell/sr754w`, `cell/sr754w#size.height`; of a row `chart/cells#By number: 393`
  std::string before, after;         ///< as printed; for a basis: trust, source, place
  std::string basis;                 ///< what an added value rests on, or a removed one did; may be empty
  std::vector<std::string> fields;   ///< for a basis: the paths that rest on it; `id` is `cell/sr754w#basis.size`
  std::vector<std::string> because;  ///< for what is derived: ids of the stated changes that it follows from
};

/// In the order of kinds, records and paths.
struct Changes {
  std::vector<Change> stated;
  std::vector<Change> derived;
  bool empty() const { return stated.empty() && derived.empty(); }
};

/// What `after` says otherwise than `before`: records and their fields, cells of tables, what calculators and relations make of
/// them (those of the handbook and those of derive::usual_answers), rows of charts. A record that names its former id among its
/// aliases is the same record. Order of keys, line ends within text, quotes, comments and names that lead to the same record
/// are no difference.
Changes compare(const State& before, const State& after);

/// `altered`, `basis`; `value`, `chart`: as JSON has them.
std::string_view how_name(Change::How how);
std::string_view of_name(Change::Of of);

}  // namespace benchleaf::compose
