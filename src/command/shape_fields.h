#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::command {

/// One field of a record as its shape describes it, for those who write records.
struct ShapeField {
  enum class Form { scalar, list, mapping };

  std::string name;  ///< the key; empty for an entry of a list
  std::string description;
  Form form = Form::scalar;
  bool required = false;
  std::string type;                    ///< of a scalar: string, integer, number, boolean
  std::string quantity;                ///< dimension, `length`, where the value has a unit; `number` and `ratio` have none
  std::vector<std::string> words;      ///< all that may stand there, or empty
  std::vector<std::string> refers_to;  ///< kinds of record that it names
  bool needs_basis = false;
  std::string example;             ///< of a scalar, as it is written in YAML
  std::vector<ShapeField> fields;  ///< of a mapping, required ones first; of a list its one sort of entry
};

/// What a shape says of a whole record.
struct RecordShape {
  std::string kind;
  std::string description;
  std::vector<ShapeField> fields;  ///< required ones first, each in the order of the shape
};

/// Reads the text of shapes/KIND.schema.json; nothing where it is no JSON Schema of a mapping. Where a shape asks for one of
/// several sets of fields, those count as required that go with its examples.
std::optional<RecordShape> read_record_shape(std::string_view json);

/// `A length with its unit`, `One of: low, high`, `Names a tool`, or empty: what may stand in a scalar field.
std::string value_words(const ShapeField& field);

}  // namespace benchleaf::command
