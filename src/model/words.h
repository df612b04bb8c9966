#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::model {

#define BENCHLEAF_WORD(name, text) name,
#define BENCHLEAF_LIST(Type, words) enum class Type { words };
#include "model/words.def"
#undef BENCHLEAF_LIST

/// The words of a closed list in the order of its enum, as records and shapes write them.
template <typename List>
const std::vector<std::string_view>& words_of();
#define BENCHLEAF_LIST(Type, words) \
  template <>                       \
  const std::vector<std::string_view>& words_of<Type>();
#include "model/words.def"
#undef BENCHLEAF_LIST
#undef BENCHLEAF_WORD

/// The word as it is written: `filament-lamp`.
template <typename List>
std::string word_of(List value) {
  return std::string(words_of<List>().at(static_cast<std::size_t>(value)));
}

/// The same, empty where the record says nothing.
template <typename List>
std::string word_of(const std::optional<List>& value) {
  return value ? word_of(*value) : std::string();
}

/// The place in the list of a word, or nothing for another one.
template <typename List>
std::optional<List> word_from(std::string_view text) {
  const std::vector<std::string_view>& words = words_of<List>();
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] == text) return static_cast<List>(i);
  }
  return std::nullopt;
}

/// The words of all lists, by the name of their type.
const std::vector<std::pair<std::string_view, const std::vector<std::string_view>*>>& all_words();

}  // namespace benchleaf::model
