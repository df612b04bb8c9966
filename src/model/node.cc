// In: a tree as read from one file. Out: look-ups in it. The tree is plain data; only the two walks live here.
#include "model/node.h"

#include <utility>

namespace benchleaf::model {

namespace {

/// The place in a list that `text` names, or -1: digits only, no sign, short enough never to overflow.
int list_place(std::string_view text) {
  if (text.empty() || text.size() > 6) return -1;
  int place = 0;
  for (char c : text) {
    if (c < '0' || c > '9') return -1;
    place = place * 10 + (c - '0');
  }
  return place;
}

const Node* step(const Node& node, std::string_view name) {
  if (node.type == NodeType::mapping) return node.find(name);
  if (node.type != NodeType::sequence) return nullptr;
  int place = list_place(name);
  if (place < 0 || static_cast<std::size_t>(place) >= node.items.size()) return nullptr;
  return &node.items.at(static_cast<std::size_t>(place));
}

}  // namespace

const Node* Node::find(std::string_view key) const {
  for (const Member& member : members) {
    if (member.key == key) return &member.value;
  }
  return nullptr;
}

const Node* Node::at_path(std::string_view path) const {
  if (path.empty()) return this;
  const Node* node = this;
  for (std::size_t begin = 0; node != nullptr;) {
    const std::size_t dot = path.find('.', begin);
    node = step(*node, path.substr(begin, dot - begin));
    if (dot == std::string_view::npos) break;
    begin = dot + 1;
  }
  return node;
}

Node* Node::at_path(std::string_view path) { return const_cast<Node*>(std::as_const(*this).at_path(path)); }

}  // namespace benchleaf::model
