// In: any node. Out: its value as a number or truth value, and a text by which equal values are equal.
#include "read/canonical.h"

#include <map>

#include "base/number.h"

namespace benchleaf::read {

namespace {

using model::Node;
using model::NodeType;

/// Length first, so that no text can look like the end of another.
std::string counted(const std::string& text) { return std::to_string(text.size()) + ":" + text; }

std::string canonical_mapping(const Node& node) {
  std::map<std::string, std::string> members;
  for (const model::Member& member : node.members) members.emplace(member.key, canonical(member.value));
  std::string text = "{";
  for (const auto& [key, value] : members) text += counted(key) + "=" + value;
  return text + "}";
}

}  // namespace

std::optional<double> number_of(const Node& node) {
  if (node.type != NodeType::integer && node.type != NodeType::number) return std::nullopt;
  return base::parse_decimal(node.text, base::Exponent::allow);
}

bool is_true(const Node& node) {
  return node.type == NodeType::boolean && (node.text.front() == 't' || node.text.front() == 'T');
}

std::string canonical(const Node& node) {
  switch (node.type) {
    case NodeType::null: return "null";
    case NodeType::boolean: return is_true(node) ? "true" : "false";
    case NodeType::integer:
    case NodeType::number: return "#" + base::shortest_text(number_of(node).value_or(0));
    case NodeType::string: return counted(node.text);
    case NodeType::mapping: return canonical_mapping(node);
    case NodeType::sequence: break;
  }
  std::string text = "[";
  for (const Node& item : node.items) text += canonical(item) + ",";
  return text + "]";
}

}  // namespace benchleaf::read
