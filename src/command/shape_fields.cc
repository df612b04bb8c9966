// In: a shape, as JSON Schema. Out: its fields in words, for drafts and for the manual.

#include "command/shape_fields.h"

#include <algorithm>
#include <functional>
#include <set>

#include <nlohmann/json.hpp>

#include "base/id.h"

namespace benchleaf::command {
namespace {

using Json = nlohmann::ordered_json;
using Form = ShapeField::Form;

/// The schemas of a group, `properties`; none where it is missing.
const Json& group_at(const Json& schema, const char* key) {
  static const Json kNone = Json::object();
  const auto found = schema.find(key);
  return found == schema.end() ? kNone : *found;
}

std::string text_at(const Json& schema, const char* key) {
  const auto found = schema.find(key);
  return found != schema.end() && found->is_string() ? found->get<std::string>() : std::string();
}

std::vector<std::string> words_at(const Json& schema, const char* key) {
  std::vector<std::string> words;
  const auto found = schema.find(key);
  if (found == schema.end() || !found->is_array()) return words;
  for (const auto& word : *found) words.push_back(word.is_string() ? word.get<std::string>() : word.dump());
  return words;
}

bool is_plain_start(char c) { return std::string_view("-?:,[]{}#&*!|>'\"%@` ").find(c) == std::string_view::npos; }

/// Whether a reader of YAML takes the text for the same text without quotes.
bool is_plain(const std::string& text) {
  static const std::set<std::string> kOther = {"true", "false", "null", "yes", "no", "on", "off", "~"};
  if (text.empty() || !is_plain_start(text.front()) || text.back() == ':' || text.back() == ' ' || kOther.count(text) > 0)
    return false;
  const bool number = text.find_first_not_of("0123456789.+-eE:_") == std::string::npos;
  return !number && text.find(": ") == std::string::npos && text.find(" #") == std::string::npos &&
         text.find_first_of(",[]{}") == std::string::npos;
}

std::string as_yaml(const Json& value) {
  if (!value.is_string()) return value.dump();
  const std::string text = value.get<std::string>();
  return is_plain(text) ? text : Json(text).dump();  // a JSON string is a double-quoted one of YAML
}

/// Whether the examples of the fields meet the condition of an `if`.
bool holds(const Json& condition, const Json& properties) {
  for (const auto& [name, wanted] : group_at(condition, "properties").items()) {
    const auto field = properties.find(name);
    if (field == properties.end() || !field->contains("examples")) return false;
    const Json& example = field->at("examples").at(0);
    const Json allowed = wanted.contains("const") ? Json::array({wanted.at("const")}) : wanted.value("enum", Json::array());
    if (std::find(allowed.begin(), allowed.end(), example) == allowed.end()) return false;
  }
  return true;
}

std::set<std::string> required_of(const Json& schema) {
  std::set<std::string> names;
  const auto add = [&names](const Json& part) {
    for (auto& name : words_at(part, "required")) names.insert(std::move(name));
  };
  add(schema);
  if (schema.contains("oneOf")) add(schema.at("oneOf").at(0));
  if (schema.contains("if")) {
    const char* branch = holds(schema.at("if"), group_at(schema, "properties")) ? "then" : "else";
    if (schema.contains(branch)) add(schema.at(branch));
  }
  return names;
}

ShapeField field_of(std::string name, const Json& schema, const std::string& sample);

/// Required ones first. `sample` stands for a name that the writer chooses.
std::vector<ShapeField> fields_of(const Json& schema, const std::string& sample) {
  const std::set<std::string> required = required_of(schema);
  std::vector<ShapeField> fields;
  for (const auto& [name, child] : group_at(schema, "properties").items()) {
    fields.push_back(field_of(name, child, sample));
    fields.back().required = required.count(name) > 0;
  }
  std::stable_partition(fields.begin(), fields.end(), [](const ShapeField& field) { return field.required; });
  for (const auto& [pattern, child] : group_at(schema, "patternProperties").items()) {
    fields.push_back(field_of(sample, child, sample));
    fields.back().required = true;
  }
  return fields;
}

ShapeField field_of(std::string name, const Json& schema, const std::string& sample) {
  ShapeField field;
  field.name = std::move(name);
  field.description = text_at(schema, "description");
  field.type = text_at(schema, "type");
  if (field.type == "object") {
    field.form = Form::mapping;
    field.fields = fields_of(schema, sample);
  } else if (field.type == "array") {
    field.form = Form::list;
    field.fields.push_back(field_of({}, group_at(schema, "items"), sample));
  } else {
    field.quantity = text_at(schema, "x-quantity");
    field.words = words_at(schema, "enum");
    field.refers_to = words_at(schema, "x-ref");
    field.needs_basis = schema.value("x-basis", false);
    const auto examples = schema.find("examples");
    if (examples != schema.end() && !examples->empty()) field.example = as_yaml(examples->at(0));
  }
  return field;
}

/// Path of the first field that needs a basis, else of the title.
std::string first_with_basis(const Json& schema, const std::string& path) {
  for (const auto& [name, child] : group_at(schema, "properties").items()) {
    const std::string own = path.empty() ? name : path + "." + name;
    if (child.value("x-basis", false)) return own;
    const std::string below = first_with_basis(child, own);
    if (!below.empty()) return below;
  }
  return {};
}

}  // namespace

std::optional<RecordShape> read_record_shape(std::string_view json) {
  const Json schema = Json::parse(json, nullptr, false);
  if (schema.is_discarded() || !schema.is_object() || text_at(schema, "type") != "object") return std::nullopt;
  const std::string sample = first_with_basis(schema, {});
  return RecordShape{text_at(schema, "title"), text_at(schema, "description"),
                     fields_of(schema, sample.empty() ? "title" : sample)};
}

std::string value_words(const ShapeField& field) {
  if (!field.words.empty()) return "One of: " + base::or_list(field.words);
  if (!field.refers_to.empty()) return "Id of a record: " + base::or_list(field.refers_to);
  if (field.quantity == "number" || field.quantity == "ratio") return "A plain number, in quotes";
  if (!field.quantity.empty()) return "With its unit (" + field.quantity + ")";
  if (field.type == "integer") return "A whole number";
  if (field.type == "number") return "A number";
  return field.type == "boolean" ? "true or false" : std::string();
}

}  // namespace benchleaf::command
