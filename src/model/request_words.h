#pragma once

#include <string>
#include <string_view>

#include "model/node.h"

namespace benchleaf::model {

/// The word that a mapping of a page's request has under a key; empty where it has none, or a list or a mapping.
inline std::string word_of(const Node& mapping, std::string_view key) {
  const Node* word = mapping.find(key);
  return word == nullptr || !word->is_scalar() ? std::string() : word->text;
}

}  // namespace benchleaf::model
