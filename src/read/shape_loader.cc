// In: the tree of a shape file (JSON Schema draft-07). Out: its schemas as data, or findings on what is not understood.
// An unknown keyword is an error here, though the standard lets it pass: a misspelt `requird` would check nothing.
#include "read/shape_loader.h"

#include <set>
#include <utility>

#include "model/record.h"
#include "read/canonical.h"

namespace benchleaf::read {

namespace {

using model::Member;
using model::Node;
using model::NodeType;
using report::Rule;

unsigned type_bit(std::string_view name) {
  static const std::map<std::string_view, unsigned> kBits = {
      {"null", kNull},     {"boolean", kBoolean}, {"integer", kInteger}, {"number", kNumber | kInteger},
      {"string", kString}, {"array", kArray},     {"object", kObject}};
  auto found = kBits.find(name);
  return found == kBits.end() ? 0 : found->second;
}

Choice choice_of(const Node& node) {
  std::string shown = node.is_scalar() ? node.text : canonical(node);
  return {canonical(node), shown.empty() ? std::string("nothing") : std::move(shown)};
}

/// `~1` and `~0` of a JSON pointer and `%25` of a URI fragment.
std::string unescaped(std::string_view part) {
  std::string text;
  for (std::size_t i = 0; i < part.size(); ++i) {
    if (part.at(i) == '~' && i + 1 < part.size()) {
      text += part.at(++i) == '1' ? '/' : '~';
    } else if (part.substr(i, 3) == "%25") {
      text += '%';
      i += 2;
    } else if (part.substr(i, 3) == "%22") {
      text += '"';
      i += 2;
    } else {
      text += part.at(i);
    }
  }
  return text;
}

/// The schemas that a schema applies to the same value.
std::vector<SchemaId> same_value_schemas(const Schema& schema) {
  std::vector<SchemaId> list;
  for (const std::vector<SchemaId>* forms : {&schema.all_of, &schema.any_of, &schema.one_of}) {
    list.insert(list.end(), forms->begin(), forms->end());
  }
  for (const std::optional<SchemaId>& one :
       {schema.negated, schema.condition, schema.consequence, schema.alternative, schema.reference}) {
    if (one) list.push_back(*one);
  }
  for (const auto& [key, dependency] : schema.dependencies) {
    if (const SchemaId* inner = std::get_if<SchemaId>(&dependency)) list.push_back(*inner);
  }
  return list;
}

}  // namespace

const std::map<std::string_view, ShapeLoader::Handler>& ShapeLoader::handlers() {
  using L = ShapeLoader;
  static const std::map<std::string_view, Handler> kHandlers = {{"$schema", &L::annotation},
                                                                {"$id", &L::annotation},
                                                                {"$comment", &L::annotation},
                                                                {"default", &L::annotation},
                                                                {"readOnly", &L::annotation},
                                                                {"writeOnly", &L::annotation},
                                                                {"format", &L::annotation},
                                                                {"contentMediaType", &L::annotation},
                                                                {"contentEncoding", &L::annotation},
                                                                {"title", &L::words},
                                                                {"description", &L::words},
                                                                {"examples", &L::examples},
                                                                {"definitions", &L::definitions},
                                                                {"type", &L::type},
                                                                {"enum", &L::choices},
                                                                {"const", &L::constant},
                                                                {"required", &L::required},
                                                                {"properties", &L::properties},
                                                                {"patternProperties", &L::pattern_properties},
                                                                {"additionalProperties", &L::one_schema},
                                                                {"propertyNames", &L::one_schema},
                                                                {"dependencies", &L::dependencies},
                                                                {"minProperties", &L::count},
                                                                {"maxProperties", &L::count},
                                                                {"items", &L::items},
                                                                {"additionalItems", &L::one_schema},
                                                                {"contains", &L::one_schema},
                                                                {"minItems", &L::count},
                                                                {"maxItems", &L::count},
                                                                {"uniqueItems", &L::unique_items},
                                                                {"pattern", &L::pattern},
                                                                {"minLength", &L::count},
                                                                {"maxLength", &L::count},
                                                                {"minimum", &L::bound},
                                                                {"maximum", &L::bound},
                                                                {"exclusiveMinimum", &L::bound},
                                                                {"exclusiveMaximum", &L::bound},
                                                                {"multipleOf", &L::bound},
                                                                {"allOf", &L::schema_list},
                                                                {"anyOf", &L::schema_list},
                                                                {"oneOf", &L::schema_list},
                                                                {"not", &L::one_schema},
                                                                {"if", &L::one_schema},
                                                                {"then", &L::one_schema},
                                                                {"else", &L::one_schema},
                                                                {"$ref", &L::reference},
                                                                {"x-quantity", &L::quantity},
                                                                {"x-ref", &L::record_kinds},
                                                                {"x-basis", &L::needs_basis}};
  return kHandlers;
}

std::optional<Shape> ShapeLoader::load() {
  schema(root_);
  if (!failed_) check_circles();
  if (failed_) return std::nullopt;
  return std::move(shape_);
}

Schema& ShapeLoader::at(SchemaId id) { return shape_.schemas_.at(static_cast<std::size_t>(id)); }

void ShapeLoader::fail(Rule rule, base::Span where, std::string message, std::string hint) {
  failed_ = true;
  findings_.add(rule, where, std::move(message), std::move(hint));
}

void ShapeLoader::wrong_value(const Member& member, std::string_view expected) {
  fail(Rule::shape_keyword_value, member.value.span, "the keyword \"" + member.key + "\" wants " + std::string(expected));
}

SchemaId ShapeLoader::schema(const Node& node) {
  auto [known, is_new] = known_.emplace(&node, static_cast<SchemaId>(shape_.schemas_.size()));
  if (!is_new) return known->second;
  const SchemaId id = known->second;
  shape_.schemas_.emplace_back();
  places_.push_back(node.span);
  if (node.type == NodeType::boolean) {
    at(id).always = is_true(node);
  } else if (node.type == NodeType::mapping) {
    for (const Member& member : node.members) keyword(member, id);
    if (at(id).reference) warn_of_siblings(node);
  } else {
    fail(Rule::shape_keyword_value, node.span, "a schema must be a mapping, true or false");
  }
  return id;
}

void ShapeLoader::warn_of_siblings(const Node& node) {
  static const std::set<std::string_view> kKept = {"$ref",        "$comment", "title", "description", "default",
                                                   "definitions", "x-basis",  "x-ref", "x-quantity",  "examples"};
  for (const Member& member : node.members) {
    if (kKept.count(member.key) > 0) continue;
    findings_.add(Rule::shape_ignored_keyword, member.key_span, "\"" + member.key + "\" beside $ref is ignored",
                  "put both into allOf");
  }
}

void ShapeLoader::keyword(const Member& member, SchemaId id) {
  auto handler = handlers().find(member.key);
  if (handler == handlers().end()) {
    fail(Rule::shape_keyword, member.key_span, "the shape has an unknown keyword \"" + member.key + "\"",
         "use the keywords of JSON Schema draft-07, x-quantity, x-ref or x-basis");
    return;
  }
  (this->*handler->second)(member, id);
}

void ShapeLoader::words(const Member& member, SchemaId id) {
  (member.key == "title" ? at(id).title : at(id).description) = member.value.text;
}

void ShapeLoader::examples(const Member& member, SchemaId id) {
  for (const Node& item : member.value.items) at(id).examples.push_back(item.text);
}

void ShapeLoader::definitions(const Member& member, SchemaId) {
  for (const Member& definition : member.value.members) schema(definition.value);
}

void ShapeLoader::type(const Member& member, SchemaId id) {
  std::optional<std::vector<std::string>> names = word_list(member.value);
  unsigned types = 0;
  for (const std::string& name : names.value_or(std::vector<std::string>{""})) {
    unsigned bit = type_bit(name);
    if (bit == 0) return wrong_value(member, "the name of a type or a list of them");
    types |= bit;
  }
  at(id).types = types;
}

void ShapeLoader::choices(const Member& member, SchemaId id) {
  if (member.value.items.empty()) return wrong_value(member, "a list of values");
  for (const Node& item : member.value.items) at(id).choices.push_back(choice_of(item));
}

void ShapeLoader::constant(const Member& member, SchemaId id) { at(id).constant = choice_of(member.value); }

std::optional<std::vector<std::string>> ShapeLoader::word_list(const Node& node) const {
  if (node.type == NodeType::string) return std::vector<std::string>{node.text};
  if (node.type != NodeType::sequence) return std::nullopt;
  std::vector<std::string> words;
  for (const Node& item : node.items) {
    if (item.type != NodeType::string) return std::nullopt;
    words.push_back(item.text);
  }
  return words;
}

void ShapeLoader::required(const Member& member, SchemaId id) {
  std::optional<std::vector<std::string>> names = word_list(member.value);
  if (!names || member.value.type != NodeType::sequence) return wrong_value(member, "a list of keys");
  at(id).required = std::move(*names);
}

void ShapeLoader::properties(const Member& member, SchemaId id) {
  if (member.value.type != NodeType::mapping) return wrong_value(member, "a mapping of schemas");
  for (const Member& property : member.value.members) {
    SchemaId inner = schema(property.value);
    at(id).properties.emplace(property.key, inner);
  }
}

void ShapeLoader::pattern_properties(const Member& member, SchemaId id) {
  if (member.value.type != NodeType::mapping) return wrong_value(member, "a mapping of schemas");
  for (const Member& property : member.value.members) {
    std::string error;
    std::optional<Pattern> keys = Pattern::compile(property.key, error);
    if (!keys) {
      fail(Rule::shape_pattern_subset, property.key_span, "the pattern has " + error);
      continue;
    }
    SchemaId inner = schema(property.value);
    at(id).pattern_properties.emplace_back(std::move(*keys), inner);
  }
}

void ShapeLoader::dependencies(const Member& member, SchemaId id) {
  for (const Member& one : member.value.members) {
    if (one.value.type == NodeType::sequence) {
      std::optional<std::vector<std::string>> names = word_list(one.value);
      if (!names) return wrong_value(member, "lists of keys or schemas");
      at(id).dependencies.emplace(one.key, std::move(*names));
    } else {
      SchemaId inner = schema(one.value);
      at(id).dependencies.emplace(one.key, inner);
    }
  }
}

void ShapeLoader::items(const Member& member, SchemaId id) {
  if (member.value.type != NodeType::sequence) {
    SchemaId inner = schema(member.value);
    at(id).items = inner;
    return;
  }
  std::vector<SchemaId> list;
  for (const Node& item : member.value.items) list.push_back(schema(item));
  at(id).item_list = std::move(list);
}

void ShapeLoader::pattern(const Member& member, SchemaId id) {
  std::string error;
  if (member.value.type != NodeType::string) return wrong_value(member, "a regular expression");
  at(id).pattern = Pattern::compile(member.value.text, error);
  if (!at(id).pattern) fail(Rule::shape_pattern_subset, member.value.span, "the pattern has " + error);
}

void ShapeLoader::unique_items(const Member& member, SchemaId id) {
  if (member.value.type != NodeType::boolean) return wrong_value(member, "true or false");
  at(id).unique_items = is_true(member.value);
}

void ShapeLoader::count(const Member& member, SchemaId id) {
  static const std::map<std::string_view, std::optional<std::size_t> Schema::*> kFields = {
      {"minLength", &Schema::min_length}, {"maxLength", &Schema::max_length},         {"minItems", &Schema::min_items},
      {"maxItems", &Schema::max_items},   {"minProperties", &Schema::min_properties}, {"maxProperties", &Schema::max_properties}};
  std::optional<double> value = number_of(member.value);
  if (!value || *value < 0 || *value > 1e9) return wrong_value(member, "a whole number from 0");
  at(id).*kFields.at(member.key) = static_cast<std::size_t>(*value);
}

void ShapeLoader::bound(const Member& member, SchemaId id) {
  static const std::map<std::string_view, std::optional<double> Schema::*> kFields = {
      {"minimum", &Schema::minimum},
      {"maximum", &Schema::maximum},
      {"exclusiveMinimum", &Schema::exclusive_minimum},
      {"exclusiveMaximum", &Schema::exclusive_maximum},
      {"multipleOf", &Schema::multiple_of}};
  std::optional<double> value = number_of(member.value);
  if (!value || (member.key == "multipleOf" && *value <= 0)) return wrong_value(member, "a number");
  at(id).*kFields.at(member.key) = value;
}

void ShapeLoader::one_schema(const Member& member, SchemaId id) {
  static const std::map<std::string_view, std::optional<SchemaId> Schema::*> kFields = {
      {"additionalProperties", &Schema::additional_properties},
      {"propertyNames", &Schema::property_names},
      {"additionalItems", &Schema::additional_items},
      {"contains", &Schema::contains},
      {"not", &Schema::negated},
      {"if", &Schema::condition},
      {"then", &Schema::consequence},
      {"else", &Schema::alternative}};
  SchemaId inner = schema(member.value);
  at(id).*kFields.at(member.key) = inner;
}

void ShapeLoader::schema_list(const Member& member, SchemaId id) {
  static const std::map<std::string_view, std::vector<SchemaId> Schema::*> kFields = {
      {"allOf", &Schema::all_of}, {"anyOf", &Schema::any_of}, {"oneOf", &Schema::one_of}};
  if (member.value.items.empty()) return wrong_value(member, "a list of schemas");
  std::vector<SchemaId> list;
  for (const Node& item : member.value.items) list.push_back(schema(item));
  at(id).*kFields.at(member.key) = std::move(list);
}

const Node* ShapeLoader::target(std::string_view reference) const {
  if (reference.empty() || reference.front() != '#') return nullptr;
  std::string_view rest = reference.substr(1);
  const Node* node = &root_;
  while (node != nullptr && !rest.empty()) {
    if (rest.front() != '/') return nullptr;
    std::size_t slash = rest.find('/', 1);
    std::string part = unescaped(rest.substr(1, slash == std::string_view::npos ? slash : slash - 1));
    rest = slash == std::string_view::npos ? std::string_view() : rest.substr(slash);
    // one step of at_path, which knows list places; a key with a dot in it is looked up as it is
    node = node->type == NodeType::mapping ? node->find(part) : node->at_path(part);
  }
  return node;
}

void ShapeLoader::reference(const Member& member, SchemaId id) {
  const Node* node = target(member.value.text);
  if (node == nullptr) {
    fail(Rule::shape_reference, member.value.span, "\"" + member.value.text + "\" leads to no schema of this file",
         "refer to #/definitions/NAME");
    return;
  }
  SchemaId inner = schema(*node);
  at(id).reference = inner;
}

void ShapeLoader::quantity(const Member& member, SchemaId id) {
  std::optional<std::vector<std::string>> names = word_list(member.value);
  for (const std::string& name : names.value_or(std::vector<std::string>{""})) {
    std::optional<base::Dimension> dimension = base::dimension_named(name);
    if (!dimension) return wrong_value(member, "the name of a dimension or a list of them");
    at(id).quantities.push_back(*dimension);
  }
}

void ShapeLoader::record_kinds(const Member& member, SchemaId id) {
  std::optional<std::vector<std::string>> names = word_list(member.value);
  for (const std::string& name : names.value_or(std::vector<std::string>{""})) {
    if (!model::kind_from_name(name)) return wrong_value(member, "a kind of record or a list of them");
    at(id).record_kinds.push_back(name);
  }
}

void ShapeLoader::needs_basis(const Member& member, SchemaId id) {
  if (member.value.type != NodeType::boolean) return wrong_value(member, "true or false");
  at(id).needs_basis = is_true(member.value);
}

std::optional<SchemaId> ShapeLoader::circle_from(SchemaId id, std::vector<int>& state) const {
  const auto place = static_cast<std::size_t>(id);
  state.at(place) = 1;  // 0 not seen, 1 under way, 2 done
  for (SchemaId inner : same_value_schemas(shape_.schemas_.at(place))) {
    const int seen = state.at(static_cast<std::size_t>(inner));
    if (seen == 1) return id;
    if (seen == 2) continue;
    if (std::optional<SchemaId> closing = circle_from(inner, state)) return closing;
  }
  state.at(place) = 2;
  return std::nullopt;
}

void ShapeLoader::check_circles() {
  std::vector<int> state(shape_.schemas_.size(), 0);
  for (std::size_t i = 0; i < shape_.schemas_.size(); ++i) {
    if (state.at(i) != 0) continue;
    std::optional<SchemaId> closing = circle_from(static_cast<SchemaId>(i), state);
    if (!closing) continue;
    fail(Rule::shape_reference, places_.at(static_cast<std::size_t>(*closing)),
         "this schema refers to itself for the same value, without end");
    return;
  }
}

}  // namespace benchleaf::read
