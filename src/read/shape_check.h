#pragma once

#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "model/node.h"
#include "read/schema.h"
#include "read/shape.h"

namespace benchleaf::read {

/// One way in which a value does not fit; it becomes a finding unless another form of the shape fits better.
struct Slip {
  enum class Weight { type, value, inside };  ///< of the value itself: its type, its value; or of a part of it
  Weight weight = Weight::inside;
  report::Rule rule;
  base::Span where;
  std::string path;
  std::string message;
  std::string hint;
};

/// What one schema says about one value.
struct Outcome {
  std::vector<Slip> slips;
  std::vector<std::string> unusable;
  std::vector<FoundReference> references;
  std::vector<std::string> basis_paths;
  std::vector<FoundQuantity> quantities;

  bool fits() const { return slips.empty(); }
  void take(Outcome other);
};

/// The engine: every function holds one value against one schema and adds to an outcome.
class ShapeChecker {
 public:
  ShapeChecker(const Shape& shape, const std::vector<base::Span>& refused);

  /// `path` of the value; `place` is where a missing key is told.
  Outcome check(SchemaId id, const model::Node& node, const std::string& path) const;

 private:
  const Schema& at(SchemaId id) const { return shape_.schemas().at(static_cast<std::size_t>(id)); }
  bool is_refused(const base::Span& place) const;
  bool fits(SchemaId id, const model::Node& node) const { return check(id, node, {}).fits(); }

  void notes(const Schema& schema, const model::Node& node, const std::string& path, Outcome& out) const;
  bool check_type(SchemaId id, const model::Node& node, const std::string& path, Outcome& out) const;
  bool check_choices(const Schema& schema, const model::Node& node, const std::string& path, Outcome& out) const;
  void check_text(SchemaId id, const model::Node& node, const std::string& path, Outcome& out) const;
  void check_number(const Schema& schema, const model::Node& node, const std::string& path, Outcome& out) const;
  void check_list(const Schema& schema, const model::Node& node, const std::string& path, Outcome& out) const;
  void check_items(const Schema& schema, const model::Node& node, const std::string& path, Outcome& out) const;
  void check_mapping(const Schema& schema, const model::Node& node, const std::string& path, Outcome& out) const;
  Outcome check_member(const Schema& schema, SchemaId id, const model::Member& member, const std::string& path) const;
  void check_members(const Schema& schema, const model::Node& node, const std::string& path, Outcome& out,
                     std::vector<std::string>& meant) const;
  void check_dependencies(const Schema& schema, const model::Node& node, const std::string& path, Outcome& out) const;
  void missing(const Schema& schema, const std::string& key, const model::Node& node, const std::string& path,
               const std::string& why, Outcome& out) const;
  void unknown_key(const Schema& schema, const model::Member& member, const std::string& path, Outcome& out,
                   std::vector<std::string>& meant) const;
  void check_combinations(SchemaId id, const model::Node& node, const std::string& path, Outcome& out) const;
  void any_form(SchemaId id, const std::vector<SchemaId>& forms, bool only_one, const model::Node& node, const std::string& path,
                Outcome& out) const;
  void best_form(SchemaId id, std::vector<Outcome> outcomes, const model::Node& node, const std::string& path,
                 Outcome& out) const;

  const Shape& shape_;
  std::set<std::pair<int, int>> refused_;  ///< line and column of keys and values that have had their finding
};

}  // namespace benchleaf::read
