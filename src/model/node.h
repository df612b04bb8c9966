#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "base/span.h"

namespace benchleaf::model {

enum class NodeType { null, boolean, integer, number, string, sequence, mapping };

struct Member;

/// One value of a record file as it was written: immutable once read, and each value knows where it stands.
struct Node {
  NodeType type = NodeType::null;
  bool quoted = false;          ///< written in quotes, so a string whatever it looks like
  std::string text;             ///< the scalar as written, without quotes
  base::Span span;              ///< of the value; an empty value is placed at its key
  std::vector<Node> items;      ///< of a sequence
  std::vector<Member> members;  ///< of a mapping, in file order, keys unique
  std::shared_ptr<const base::Quantity>
      quantity;  ///< what `text` says where the shape asks for a quantity and it is one, or none

  /// The member with this key, or nullptr.
  const Node* find(std::string_view key) const;
  /// Walks `a.b.2.c` (list places count from 0), or nullptr.
  const Node* at_path(std::string_view path) const;
  Node* at_path(std::string_view path);
  bool is_scalar() const { return type != NodeType::sequence && type != NodeType::mapping; }
};

struct Member {
  std::string key;
  base::Span key_span;
  Node value;
};

}  // namespace benchleaf::model
