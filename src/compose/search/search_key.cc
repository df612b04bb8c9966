// In: what a reader types, or a name of a record. Out: the words that stand in the index of the search.
#include "compose/search/search_key.h"

#include <algorithm>

#include "base/ascii.h"
#include "base/utf8.h"

namespace benchleaf::compose {

namespace {

constexpr std::size_t kShortestWithSlip = 4;

bool is_word_byte(char c) { return base::is_digit(c) || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

/// Signs that mean `by` between two measures.
bool is_times(std::string_view piece) { return piece == "\u00D7" || piece == "*"; }

/// Figures, words and signs, one after the other; blanks and marks part them.
std::vector<std::string> pieces_of(const std::string& folded) {
  std::vector<std::string> pieces;
  std::string word;
  const auto close = [&] {
    if (!word.empty()) pieces.push_back(std::move(word));
    word.clear();
  };
  for (std::size_t at = 0; at < folded.size();) {
    const std::size_t length = base::next_code_point(folded, at).length;
    const std::string_view piece = std::string_view(folded).substr(at, length);
    const bool point =
        piece == "." && !word.empty() && base::is_digit(word.back()) && at + 1 < folded.size() && base::is_digit(folded[at + 1]);
    if (is_times(piece)) {
      close();
      pieces.emplace_back("x");
    } else if (piece == "\"" && !word.empty() && base::is_digit(word.back())) {
      close();
      pieces.emplace_back("in");
    } else if (piece == "\u03BC") {
      word += 'u';  // micro is typed as u
    } else if (point || (is_word_byte(piece[0]) && piece != "\u2009" && piece != "\u00A0")) {
      word += piece;
    } else {
      close();
    }
    at += length;
  }
  close();
  return pieces;
}

bool is_figure(const std::string& word) {
  return !word.empty() && std::all_of(word.begin(), word.end(), [](char c) { return base::is_digit(c) || c == '.'; });
}

bool is_letters(const std::string& word) {
  return !word.empty() && std::all_of(word.begin(), word.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

bool is_unit(const std::string& word) { return word == "mm" || word == "in" || word == "inch" || word == "inches"; }

/// Letters behind the figures of a designation (IEC 60086-1): drain and electrolyte.
bool is_suffix(const std::string& word) { return word == "w" || word == "sw" || word == "s" || word == "p" || word == "c"; }

std::string without_end_zeros(std::string figure) {
  if (figure.find('.') == std::string::npos) return figure;
  while (figure.back() == '0') figure.pop_back();
  if (figure.back() == '.') figure.pop_back();
  return figure;
}

/// `7.9x5.4mm` to `7.9`, `x`, `5.4`, `mm`; words with letters before their figures stay whole.
std::vector<std::string> split_measures(const std::vector<std::string>& pieces) {
  std::vector<std::string> parts;
  for (const std::string& piece : pieces) {
    const std::size_t figures = piece.find_first_not_of("0123456789.");
    if (figures == 0 || figures == std::string::npos) {
      parts.push_back(figures == 0 ? piece : without_end_zeros(piece));
      continue;
    }
    std::size_t letters = figures;
    while (letters < piece.size() && !base::is_digit(piece[letters])) ++letters;
    const std::string unit = piece.substr(figures, letters - figures);
    if (unit != "x" && unit != "mm" && unit != "mmx" && unit != "in" && unit != "inx") {
      parts.push_back(piece);
      continue;
    }
    parts.push_back(without_end_zeros(piece.substr(0, figures)));
    parts.push_back(unit.substr(0, 2));
    if (unit.size() == 3) parts.emplace_back("x");
    if (letters < piece.size()) {
      for (std::string& rest : split_measures({piece.substr(letters)})) parts.push_back(std::move(rest));
    }
  }
  return parts;
}

/// Reads the parts of a size from `at`: figure, unit or not, sign, figure, unit or not. Nothing taken: zero.
std::size_t size_parts(const std::vector<std::string>& parts, std::size_t at, std::string& word) {
  std::size_t next = at;
  bool inches = false;
  const auto is = [&](const char* what) { return next < parts.size() && parts[next] == what; };
  const auto take_figure = [&] {
    if (next >= parts.size() || !is_figure(parts[next])) return false;
    word += parts[next++];
    return true;
  };
  const auto pass_unit = [&] {
    inches = inches || is("in");
    if (is("mm") || is("in")) ++next;
  };
  if (!take_figure()) return 0;
  pass_unit();
  if (!is("x") && !is("by")) return 0;
  ++next;
  word += 'x';
  if (!take_figure()) return 0;
  pass_unit();
  if (inches) word += "in";
  return next - at;
}

}  // namespace

std::vector<std::string> search_words(std::string_view text) {
  const std::vector<std::string> parts = split_measures(pieces_of(base::fold(text)));
  std::vector<std::string> words;
  for (std::size_t at = 0; at < parts.size();) {
    std::string size;
    if (const std::size_t taken = size_parts(parts, at, size)) {
      words.push_back(std::move(size));
      at += taken;
      continue;
    }
    const bool more = at + 1 < parts.size();
    const bool measure = more && is_figure(parts[at]) && is_unit(parts[at + 1]);
    const bool code = more && is_letters(parts[at]) && parts[at].size() <= 2 && is_figure(parts[at + 1]);
    words.push_back(measure ? parts[at] + parts[at + 1].substr(0, 2) : code ? parts[at] + parts[at + 1] : parts[at]);
    at += measure || code ? 2 : 1;
    if (!code || at >= parts.size() || !is_suffix(parts[at])) continue;
    words.back() += parts[at++];
  }
  return words;
}

bool says_something(std::string_view word) {
  return word.size() > 2 || word.find_first_of("0123456789") != std::string_view::npos;
}

std::string joined_words(const std::vector<std::string>& words) {
  std::string joined;
  for (const std::string& word : words) joined += (joined.empty() ? "" : " ") + word;
  return joined;
}

std::vector<std::string> one_slip_forms(const std::string& word) {
  std::vector<std::string> forms;
  if (is_figure(word) || base::count_code_points(word) < kShortestWithSlip || word.find('.') != std::string::npos) return forms;
  for (std::size_t at = 0; at < word.size();) {
    const std::size_t length = base::next_code_point(word, at).length;
    forms.push_back(word.substr(0, at) + word.substr(at + length));
    at += length;
  }
  std::sort(forms.begin(), forms.end());
  forms.erase(std::unique(forms.begin(), forms.end()), forms.end());
  return forms;
}

}  // namespace benchleaf::compose
