// In: words of a query. Out: the same, with those parted that were typed without a space.
#include "query/parted.h"

#include <algorithm>

#include "base/ascii.h"
#include "query/cells.h"

namespace benchleaf::query {

namespace {

constexpr std::size_t kShortestPart = 3;  // letters
constexpr std::size_t kShortestTwo = 8;   // letters of two words in one
constexpr std::size_t kMostRuns = 5;      // of letters and of figures in one word

bool has_digit(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

/// Letters and figures apart: `364`, `or`, `363`.
std::vector<std::string> runs_of(std::string_view text) {
  std::vector<std::string> runs;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (i == 0 || base::is_digit(text[i]) != base::is_digit(text[i - 1])) runs.emplace_back();
    runs.back() += text[i];
  }
  return runs;
}

}  // namespace

bool Parter::says_something(const Word& word) const {
  const std::string stem = stem_of(word.text);
  if (vocabulary_.is(word, Use::craft)) return false;
  if (vocabulary_.is_any(word) || !vocabulary_.like(stem).empty()) return true;
  return word.text.size() >= kShortestPart && (!names_.of_key(stem).empty() || texts_().has(word));
}

/// The longest names of cells and the words between them; nothing where a part is neither.
std::vector<Word> Parter::at_figures(const Word& word) const {
  const std::vector<std::string> runs = runs_of(word.text);
  std::vector<Word> parts;
  if (runs.size() > kMostRuns) return {word};
  for (std::size_t at = 0; at < runs.size();) {
    std::size_t taken = 0;
    for (std::size_t end = runs.size(); end > at && taken == 0; --end) {
      std::string joined;
      for (std::size_t i = at; i < end; ++i) joined += runs[i];
      const bool figures = end == at + 1 && base::is_digit(joined[0]);
      const std::vector<Word> one = words_of(joined);
      if (one.size() != 1) continue;
      const bool named = has_digit(joined) && (is_cell_name(joined, names_) || texts_().has(one.front()));
      if (!named && !figures && (end > at + 1 || !says_something(one.front()))) continue;
      parts.push_back(one.front());
      taken = end - at;
    }
    if (taken == 0) return {word};
    at += taken;
  }
  return parts;
}

/// Two words, parted where the shorter is longest.
std::vector<Word> Parter::between_letters(const Word& word) const {
  std::vector<Word> best{word};
  std::size_t longest = 0;
  for (std::size_t at = kShortestPart; at + kShortestPart <= word.text.size(); ++at) {
    const Word one{Word::Sort::word, word.text.substr(0, at), 0}, other{Word::Sort::word, word.text.substr(at), 0};
    const std::size_t shorter = std::min(at, word.text.size() - at);
    if (shorter <= longest || !says_something(one) || !says_something(other)) continue;
    longest = shorter;
    best = {one, other};
  }
  return best;
}

std::vector<Word> Parter::parts_of(const Word& word) const {
  if (word.sort != Word::Sort::word || vocabulary_.is_any(word)) return {word};
  if (has_digit(word.text))
    return is_cell_name(word.text, names_) || texts_().has(word) ? std::vector<Word>{word} : at_figures(word);
  const std::string stem = stem_of(word.text);
  if (!names_.of_key(stem).empty() || !vocabulary_.like(stem).empty()) return {word};
  const bool long_enough = word.text.size() >= kShortestTwo;
  const bool plain = std::all_of(word.text.begin(), word.text.end(), [](char c) { return c >= 'a' && c <= 'z'; });
  return long_enough && plain && !texts_().knows(word) ? between_letters(word) : std::vector<Word>{word};
}

std::vector<Word> Parter::parted(const std::vector<Word>& words) const {
  std::vector<Word> out;
  for (const Word& word : words) {
    for (Word& part : parts_of(word)) out.push_back(std::move(part));
  }
  return out;
}

}  // namespace benchleaf::query
