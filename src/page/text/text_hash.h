#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>

namespace benchleaf::page {

struct TextHash {
  using is_transparent = void;
  std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>()(text); }
};

/// What is kept of texts that come again. Looked up only, never walked: its order shows nowhere.
template <class Value>
using ByText = std::unordered_map<std::string, Value, TextHash, std::equal_to<>>;

}  // namespace benchleaf::page
