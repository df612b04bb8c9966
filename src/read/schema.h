#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/unit.h"
#include "read/pattern.h"

namespace benchleaf::read {

/// Place of a schema in its Shape.
using SchemaId = int;

/// JSON types as bits, so that a schema may allow several.
enum TypeBit : unsigned {
  kNull = 1,
  kBoolean = 2,
  kInteger = 4,
  kNumber = 8,
  kString = 16,
  kArray = 32,
  kObject = 64,
};

/// A value that `enum` or `const` allows: `canonical` compares, `shown` is for messages.
struct Choice {
  std::string canonical;
  std::string shown;
};

/// One schema, its keywords read and checked. Absent keywords are empty.
struct Schema {
  std::optional<bool> always;  ///< a schema that is `true` or `false`
  std::string title;
  std::string description;
  std::vector<std::string> examples;

  unsigned types = 0;  ///< 0: any
  std::vector<Choice> choices;
  std::optional<Choice> constant;

  std::vector<std::string> required;
  std::map<std::string, SchemaId, std::less<>> properties;
  std::vector<std::pair<Pattern, SchemaId>> pattern_properties;
  std::optional<SchemaId> additional_properties;
  std::optional<SchemaId> property_names;
  std::map<std::string, std::variant<std::vector<std::string>, SchemaId>, std::less<>> dependencies;
  std::optional<std::size_t> min_properties, max_properties;

  std::optional<SchemaId> items;
  std::optional<std::vector<SchemaId>> item_list;
  std::optional<SchemaId> additional_items;
  std::optional<SchemaId> contains;
  std::optional<std::size_t> min_items, max_items;
  bool unique_items = false;

  std::optional<Pattern> pattern;
  std::optional<std::size_t> min_length, max_length;

  std::optional<double> minimum, maximum, exclusive_minimum, exclusive_maximum, multiple_of;

  std::vector<SchemaId> all_of, any_of, one_of;
  std::optional<SchemaId> negated, condition, consequence, alternative;
  std::optional<SchemaId> reference;  ///< `$ref`: by draft-07 its validating siblings are ignored

  std::vector<base::Dimension> quantities;  ///< x-quantity: dimensions it may have
  std::vector<std::string> record_kinds;    ///< x-ref: kinds it may name
  bool needs_basis = false;                 ///< x-basis
};

}  // namespace benchleaf::read
