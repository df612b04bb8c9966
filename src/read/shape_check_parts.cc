// In: a list or a mapping and its schema. Out: slips about its size, its items, its keys, each where the mistake stands.
#include <algorithm>
#include <set>
#include <string>
#include <utility>

#include "read/canonical.h"
#include "read/shape_check.h"
#include "read/shape_words.h"

namespace benchleaf::read {

namespace {

using model::Member;
using model::Node;
using report::Rule;

std::string joined(const std::string& path, const std::string& key) { return path.empty() ? key : path + "." + key; }

/// More unknown keys than this are no slips of the pen, and are told once.
constexpr std::size_t kMostUnknownKeys = 20;

/// Adds a slip where a count lies outside its bounds; false where it is above them.
bool check_count(std::size_t count, std::optional<std::size_t> least, std::optional<std::size_t> most, const std::string& what,
                 const Node& node, const std::string& path, Outcome& out) {
  std::string bound;
  if (least && count < *least) bound = "at least " + std::to_string(*least);
  if (most && count > *most) bound = "at most " + std::to_string(*most);
  if (bound.empty()) return true;
  out.slips.push_back({Slip::Weight::value,
                       Rule::shape_count,
                       node.span,
                       path,
                       "found " + std::to_string(count) + " " + what + ", expected " + bound,
                       {}});
  out.unusable.push_back(path);
  return !most || count <= *most;
}

}  // namespace

void ShapeChecker::check_list(const Schema& schema, const Node& node, const std::string& path, Outcome& out) const {
  // of a list that is too long as a whole, single items are not spoken of
  if (!check_count(node.items.size(), schema.min_items, schema.max_items, "items", node, path, out)) return;
  check_items(schema, node, path, out);
  if (schema.unique_items) {
    std::set<std::string> seen;
    for (const Node& item : node.items) {
      if (seen.insert(canonical(item)).second) continue;
      out.slips.push_back({Slip::Weight::inside, Rule::shape_unique, item.span, path,
                           "found " + describe(item) + " a second time in one list", "take one out"});
    }
  }
  if (!schema.contains) return;
  bool any = std::any_of(node.items.begin(), node.items.end(), [&](const Node& item) { return fits(*schema.contains, item); });
  if (any) return;
  out.slips.push_back({Slip::Weight::value,
                       Rule::shape_form,
                       node.span,
                       path,
                       "found no item that is " + expectation(shape_, *schema.contains),
                       {}});
}

void ShapeChecker::check_items(const Schema& schema, const Node& node, const std::string& path, Outcome& out) const {
  for (std::size_t i = 0; i < node.items.size(); ++i) {
    std::optional<SchemaId> id = schema.items;
    if (schema.item_list) {
      bool listed = i < schema.item_list->size();
      id = listed ? std::optional<SchemaId>(schema.item_list->at(i)) : schema.additional_items;
    }
    if (id) out.take(check(*id, node.items.at(i), joined(path, std::to_string(i))));
  }
}

void ShapeChecker::check_mapping(const Schema& schema, const Node& node, const std::string& path, Outcome& out) const {
  check_count(node.members.size(), schema.min_properties, schema.max_properties, "keys", node, path, out);
  std::vector<std::string> meant;  // missing keys that a misspelt one stands for
  check_members(schema, node, path, out, meant);
  for (const std::string& key : schema.required) {
    if (node.find(key) != nullptr) continue;
    bool misspelt = std::find(meant.begin(), meant.end(), key) != meant.end();
    if (misspelt) {
      out.unusable.push_back(joined(path, key));
    } else {
      missing(schema, key, node, path, {}, out);
    }
  }
  check_dependencies(schema, node, path, out);
}

/// An empty field that the record needs is to be filled in; any other may be deleted as well.
Outcome ShapeChecker::check_member(const Schema& schema, SchemaId id, const Member& member, const std::string& path) const {
  Outcome found = check(id, member.value, path);
  const bool required = std::find(schema.required.begin(), schema.required.end(), member.key) != schema.required.end();
  if (!required || member.value.type != model::NodeType::null) return found;
  for (Slip& slip : found.slips) {
    if (slip.path == path) slip.hint = "write a value: this field is required";
  }
  return found;
}

void ShapeChecker::check_members(const Schema& schema, const Node& node, const std::string& path, Outcome& out,
                                 std::vector<std::string>& meant) const {
  std::vector<const Member*> unknown;
  for (const Member& member : node.members) {
    const std::string inner = joined(path, member.key);
    bool known = false;
    auto property = schema.properties.find(member.key);
    if (property != schema.properties.end()) {
      known = true;
      out.take(check_member(schema, property->second, member, inner));
    }
    for (const auto& [keys, id] : schema.pattern_properties) {
      if (!keys.found_in(member.key)) continue;
      known = true;
      out.take(check(id, member.value, inner));
    }
    if (schema.property_names) {
      Node key;
      key.type = model::NodeType::string;
      key.text = member.key;
      key.span = member.key_span;
      out.take(check(*schema.property_names, key, inner));
    }
    if (known || !schema.additional_properties || is_refused(member.key_span)) continue;
    const Schema& additional = at(*schema.additional_properties);
    if (additional.always == false) {
      unknown.push_back(&member);
    } else {
      out.take(check(*schema.additional_properties, member.value, inner));
    }
  }
  if (unknown.size() > kMostUnknownKeys) {
    out.slips.push_back(
        {Slip::Weight::inside, Rule::shape_unknown_key, unknown.front()->key_span, path,
         "found " + std::to_string(unknown.size()) + " unknown keys, the first being " + in_marks(unknown.front()->key),
         "see the shape of the record for its keys"});
    return;
  }
  for (const Member* member : unknown) unknown_key(schema, *member, path, out, meant);
}

void ShapeChecker::unknown_key(const Schema& schema, const Member& member, const std::string& path, Outcome& out,
                               std::vector<std::string>& meant) const {
  std::vector<std::string> keys;
  for (const auto& [key, id] : schema.properties) keys.push_back(key);
  std::string nearest = likely_word(member.key, keys);
  std::string hint = "did you mean \"" + nearest + "\"?";
  if (nearest.empty()) hint = keys.empty() ? std::string() : "known here: " + one_of(keys);
  out.slips.push_back({Slip::Weight::inside, Rule::shape_unknown_key, member.key_span, path,
                       "unknown key " + in_marks(member.key), std::move(hint)});
  if (!nearest.empty()) meant.push_back(std::move(nearest));
}

void ShapeChecker::missing(const Schema& schema, const std::string& key, const Node& node, const std::string& path,
                           const std::string& why, Outcome& out) const {
  std::string hint = "add it";
  auto property = schema.properties.find(key);
  if (property != schema.properties.end() && !at(property->second).examples.empty()) {
    hint += ", for example " + key + ": " + at(property->second).examples.front();
  }
  out.slips.push_back({Slip::Weight::inside, Rule::shape_missing_key, node.span, path, "the key \"" + key + "\" is missing" + why,
                       std::move(hint)});
  out.unusable.push_back(joined(path, key));
}

void ShapeChecker::check_dependencies(const Schema& schema, const Node& node, const std::string& path, Outcome& out) const {
  for (const auto& [key, dependency] : schema.dependencies) {
    if (node.find(key) == nullptr) continue;
    if (const SchemaId* id = std::get_if<SchemaId>(&dependency)) {
      out.take(check(*id, node, path));
      continue;
    }
    for (const std::string& other : std::get<std::vector<std::string>>(dependency)) {
      if (node.find(other) == nullptr) missing(schema, other, node, path, ", which \"" + key + "\" asks for", out);
    }
  }
}

}  // namespace benchleaf::read
