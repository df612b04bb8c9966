#pragma once

#include <nlohmann/json.hpp>

#include "model/node.h"
#include "read/canonical.h"

namespace benchleaf::test {

/// A tree of ours in the form that plain_tree.mjs gives one of npm yaml: a mapping is {"map": [[key, value], ...]}.
inline nlohmann::json plain_tree(const model::Node& node) {
  using nlohmann::json;
  switch (node.type) {
    case model::NodeType::null: return nullptr;
    case model::NodeType::boolean: return read::is_true(node);
    case model::NodeType::integer:
    case model::NodeType::number: return read::number_of(node).value_or(0);
    case model::NodeType::string: return node.text;
    case model::NodeType::mapping: {
      json pairs = json::array();
      for (const model::Member& member : node.members) pairs.push_back(json::array({member.key, plain_tree(member.value)}));
      return {{"map", std::move(pairs)}};
    }
    case model::NodeType::sequence: break;
  }
  json items = json::array();
  for (const model::Node& item : node.items) items.push_back(plain_tree(item));
  return items;
}

}  // namespace benchleaf::test
