#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/node.h"
#include "read/schema.h"
#include "read/shape.h"
#include "report/finding.h"

namespace benchleaf::read {

/// Reads the keywords of one shape file. Every schema in it is read once, wherever it is referred to from.
class ShapeLoader {
 public:
  ShapeLoader(const model::Node& root, report::Findings& findings) : root_(root), findings_(findings) {}

  std::optional<Shape> load();

 private:
  using Handler = void (ShapeLoader::*)(const model::Member&, SchemaId);
  static const std::map<std::string_view, Handler>& handlers();

  SchemaId schema(const model::Node& node);
  void keyword(const model::Member& member, SchemaId id);
  void warn_of_siblings(const model::Node& node);
  Schema& at(SchemaId id);
  void fail(report::Rule rule, base::Span where, std::string message, std::string hint = {});
  void wrong_value(const model::Member& member, std::string_view expected);

  void annotation(const model::Member&, SchemaId) {}
  void words(const model::Member& member, SchemaId id);
  void examples(const model::Member& member, SchemaId id);
  void definitions(const model::Member& member, SchemaId id);
  void type(const model::Member& member, SchemaId id);
  void choices(const model::Member& member, SchemaId id);
  void constant(const model::Member& member, SchemaId id);
  void required(const model::Member& member, SchemaId id);
  void properties(const model::Member& member, SchemaId id);
  void pattern_properties(const model::Member& member, SchemaId id);
  void dependencies(const model::Member& member, SchemaId id);
  void items(const model::Member& member, SchemaId id);
  void pattern(const model::Member& member, SchemaId id);
  void unique_items(const model::Member& member, SchemaId id);
  void count(const model::Member& member, SchemaId id);
  void bound(const model::Member& member, SchemaId id);
  void one_schema(const model::Member& member, SchemaId id);
  void schema_list(const model::Member& member, SchemaId id);
  void reference(const model::Member& member, SchemaId id);
  void quantity(const model::Member& member, SchemaId id);
  void record_kinds(const model::Member& member, SchemaId id);
  void needs_basis(const model::Member& member, SchemaId id);

  std::optional<std::vector<std::string>> word_list(const model::Node& node) const;
  const model::Node* target(std::string_view reference) const;
  void check_circles();
  /// The schema that closes a circle reached from `id` without going into a part of the value, or nothing.
  std::optional<SchemaId> circle_from(SchemaId id, std::vector<int>& state) const;

  const model::Node& root_;
  report::Findings& findings_;
  Shape shape_;
  std::map<const model::Node*, SchemaId> known_;
  std::vector<base::Span> places_;  ///< of each schema
  bool failed_ = false;
};

}  // namespace benchleaf::read
