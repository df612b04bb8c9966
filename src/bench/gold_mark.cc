// In: what is stamped on a case. Out: its letters, its figure, its karat.

#include "bench/gold_mark.h"

#include <algorithm>
#include <array>
#include <vector>

#include "base/ascii.h"
#include "base/number.h"

namespace benchleaf::bench {
namespace {

constexpr std::array<std::string_view, 11> kMicrometres = {"micron",    "microns",   "micrometre", "micrometres", "mic",   "mics",
                                                           "\xC2\xB5m", "\xCE\xBCm", "um",         "\xC2\xB5",    "mikron"};
constexpr std::array<std::string_view, 4> kKarat = {"k", "kt", "ct", "carat"};

template <typename List>
bool holds(const List& list, const std::string& word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Small letters, full stops between letters left out, a word begun wherever a figure begins or ends.
std::vector<std::string> words_of(const std::string& text) {
  std::vector<std::string> words(1);
  char before = ' ';
  const std::string low = base::lower_ascii(text);
  for (std::size_t i = 0; i < low.size(); ++i) {
    const char c = low[i];
    const bool in_number = c == '.' && is_digit(before) && i + 1 < low.size() && is_digit(low[i + 1]);
    if (c == ' ' || c == ',' || c == '-') {
      words.emplace_back();
    } else if (c != '.' || in_number) {
      const bool figure = is_digit(c) || in_number || c == '/';
      const bool was_figure =
          is_digit(before) || before == '/' || (before == '.' && !words.back().empty() && is_digit(words.back().front()));
      if (!words.back().empty() && figure != was_figure) words.emplace_back();
      words.back() += c;
    }
    before = c;
  }
  words.erase(std::remove(words.begin(), words.end(), std::string()), words.end());
  return words;
}

}  // namespace

GoldMark read_gold_mark(const std::string& text) {
  GoldMark mark;
  const std::vector<std::string> words = words_of(text);
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string& word = words[i];
    const std::string next = i + 1 < words.size() ? words[i + 1] : std::string();
    const auto figure = base::parse_decimal(word);
    if (word.find('/') != std::string::npos) {
      mark.by_weight = true;
    } else if (figure && holds(kKarat, next)) {
      mark.karat = word + "K";
      ++i;
    } else if (figure) {
      mark.micrometres = figure;
      mark.has_unit = holds(kMicrometres, next);
      if (mark.has_unit) ++i;
    } else {
      mark.letters += (mark.letters.empty() ? "" : " ") + word;
    }
  }
  return mark;
}

}  // namespace benchleaf::bench
