// In: a folded word. Out: its stem: the endings of English that make no other thing of it are taken off, and what Britain and
// America spell differently by rule is spelt one way.
#include <algorithm>
#include <array>
#include <utility>

#include "query/words.h"

namespace benchleaf::query {

namespace {

constexpr std::size_t kShortest = 4;

bool ends_with(std::string_view word, std::string_view end) {
  return word.size() >= end.size() && word.substr(word.size() - end.size()) == end;
}

bool has_vowel(std::string_view text) { return text.find_first_of("aeiouy") != std::string_view::npos; }

bool is_plain(std::string_view word) {
  return std::all_of(word.begin(), word.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

/// `s` of the plural and of the third person.
void cut_plural(std::string& word) {
  if (ends_with(word, "ies") && word.size() > 4) {
    word.replace(word.size() - 3, 3, "y");
  } else if (ends_with(word, "sses") || ends_with(word, "xes") || ends_with(word, "ches") || ends_with(word, "shes") ||
             ends_with(word, "zes")) {
    word.resize(word.size() - 2);
  } else if (ends_with(word, "s") && !ends_with(word, "ss") && !ends_with(word, "us") && !ends_with(word, "is")) {
    word.pop_back();
  }
}

/// `fitted` to `fit`, `stopping` to `stop`; `press` keeps its two.
void undouble(std::string& word) {
  const std::size_t size = word.size();
  const bool twice = size > 3 && word[size - 1] == word[size - 2];
  if (twice && std::string_view("lsz").find(word.back()) == std::string_view::npos) word.pop_back();
}

void cut_verb(std::string& word) {
  for (const std::string_view end : {"ing", "ed"}) {
    if (!ends_with(word, end) || ends_with(word, "eed")) continue;
    const std::string_view rest = std::string_view(word).substr(0, word.size() - end.size());
    if (rest.size() < 3 || !has_vowel(rest)) continue;
    word.resize(rest.size());
    undouble(word);
    return;
  }
}

/// Spellings of both sides of the ocean, by ending.
void spell_one_way(std::string& word) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 5> kEnds = {
      {{"our", "or"}, {"tre", "ter"}, {"ize", "ise"}, {"izer", "iser"}, {"iz", "is"}}};
  for (const auto& [end, same] : kEnds) {
    if (word.size() > end.size() + 2 && ends_with(word, end))
      return void(word.replace(word.size() - end.size(), end.size(), same));
  }
}

}  // namespace

std::string stem_of(std::string_view text) {
  std::string word(text);
  if (word.size() < kShortest || !is_plain(word)) return word;
  cut_plural(word);
  cut_verb(word);
  if (ends_with(word, "ement") && word.size() > 8) word.resize(word.size() - 4);  // `replacement` and `replace`
  spell_one_way(word);
  if (word.size() >= kShortest && word.back() == 'e') word.pop_back();
  return word;
}

}  // namespace benchleaf::query
