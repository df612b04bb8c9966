// In: the raw bytes of a file and a place that the parser named. Out: the places that its events leave out: ends of
// texts in quotes, open quotes, the dash or word an empty value belongs to.
#include "read/yaml_places.h"

#include <algorithm>
#include <array>

namespace benchleaf::read {

namespace {

bool is_blank(char c) { return c == ' ' || c == '\t'; }
bool is_line_end(char c) { return c == '\n' || c == '\r'; }
bool is_space(char c) { return is_blank(c) || is_line_end(c); }

/// Whether a plain scalar ends before this place whatever its context is.
bool ends_word(std::string_view text, std::size_t place) {
  if (place >= text.size() || is_space(text.at(place))) return true;
  return std::string_view(",]}").find(text.at(place)) != std::string_view::npos;
}

/// Whether a colon at this place, blanks skipped, makes a key of what stands before it.
bool is_key_end(std::string_view text, std::size_t place) {
  while (place < text.size() && is_blank(text.at(place))) ++place;
  return place < text.size() && text.at(place) == ':' && ends_word(text, place + 1);
}

bool begins_comment(std::string_view text, std::size_t place) {
  return text.at(place) == '#' && (place == 0 || is_space(text.at(place - 1)));
}

}  // namespace

std::optional<std::size_t> end_of_quotes(std::string_view text, std::size_t place) {
  const char quote = text.at(place);
  for (std::size_t i = place + 1; i < text.size(); ++i) {
    if (quote == '"' && text.at(i) == '\\') {
      ++i;
    } else if (text.at(i) == quote) {
      bool doubled = quote == '\'' && i + 1 < text.size() && text.at(i + 1) == quote;
      if (!doubled) return i + 1;
      ++i;
    }
  }
  return std::nullopt;
}

std::optional<std::size_t> shallow_line(std::string_view text, std::size_t place, std::size_t end, int column) {
  std::size_t line = text.find('\n', place);
  while (line != std::string_view::npos && line < end) {
    std::size_t start = line + 1;
    std::size_t first = start;
    while (first < end && is_blank(text.at(first))) ++first;
    bool blank_line = first < end && is_line_end(text.at(first));
    if (first < end && !blank_line && static_cast<int>(first - start) <= column) return first;
    line = text.find('\n', start);
  }
  return std::nullopt;
}

std::optional<std::size_t> next_quote(std::string_view text, std::size_t place) {
  for (std::size_t i = place; i < text.size(); ++i) {
    if (begins_comment(text, i)) {
      i = std::min(text.find('\n', i), text.size());
    } else if (text.at(i) == '"' || text.at(i) == '\'') {
      bool opens = i == 0 || is_space(text.at(i - 1)) || std::string_view("[{,:").find(text.at(i - 1)) != std::string_view::npos;
      if (opens) return i;
    }
  }
  return std::nullopt;
}

std::size_t null_word_length(std::string_view text, std::size_t place) {
  static constexpr std::array<std::string_view, 4> kWords = {"~", "null", "Null", "NULL"};
  for (std::string_view word : kWords) {
    if (place > text.size() || text.substr(place, word.size()) != word) continue;
    std::size_t end = place + word.size();
    if (ends_word(text, end) && !is_key_end(text, end)) return word.size();
  }
  return 0;
}

std::optional<std::size_t> dash_before(std::string_view text, std::size_t place) {
  std::size_t end = std::min(place, text.size());
  while (true) {
    std::size_t break_before = end == 0 ? std::string_view::npos : text.rfind('\n', end - 1);
    std::size_t start = break_before == std::string_view::npos ? 0 : break_before + 1;
    std::size_t stop = end;
    for (std::size_t i = start; i < end; ++i) {
      if (begins_comment(text, i)) {
        stop = i;
        break;
      }
    }
    while (stop > start && is_space(text.at(stop - 1))) --stop;
    if (stop > start) {
      if (text.at(stop - 1) == '-') return stop - 1;
      return std::nullopt;
    }
    if (start == 0) return std::nullopt;
    end = start - 1;
  }
}

std::size_t plain_length(std::string_view text, std::size_t place, std::string_view value) {
  if (place >= text.size()) return 0;
  if (text.substr(place, value.size()) == value) return value.size();
  std::size_t end = place;
  while (end < text.size() && !is_line_end(text.at(end)) && !begins_comment(text, end)) ++end;
  while (end > place && is_blank(text.at(end - 1))) --end;
  return end - place;
}

std::optional<std::size_t> wrong_escape(std::string_view quoted) {
  if (quoted.empty() || quoted.front() != '"') return std::nullopt;
  for (std::size_t i = 1; i + 1 < quoted.size(); ++i) {
    if (quoted.at(i) != '\\') continue;
    if (quoted.at(i + 1) == '\'') return i;
    ++i;
  }
  return std::nullopt;
}

std::optional<std::size_t> wrong_block_head(std::string_view text, std::size_t place) {
  std::size_t at = place + 1;
  while (at < text.size() && std::string_view("+-0123456789").find(text.at(at)) != std::string_view::npos) ++at;
  if (at < text.size() && text.at(at) == '#') return at;
  const bool own_indent = text.substr(place, at - place).find_first_of("123456789") != std::string_view::npos;
  std::size_t line = text.find('\n', at);
  std::size_t deepest = 0;
  while (!own_indent && line != std::string_view::npos && line + 1 < text.size()) {
    const std::size_t first = std::min(text.find_first_not_of(' ', line + 1), text.size());
    const std::size_t indent = first - line - 1;
    const bool blank = first == text.size() || is_line_end(text.at(first));
    if (!blank) return indent > 0 && deepest > indent ? std::optional(first) : std::nullopt;
    deepest = std::max(deepest, indent);
    line = first == text.size() ? std::string_view::npos : text.find('\n', first);
  }
  return std::nullopt;
}

std::size_t end_of_block(std::string_view text, std::size_t place, int column) {
  std::size_t end = std::min(text.find('\n', place), text.size());
  while (end < text.size()) {
    const std::size_t first = std::min(text.find_first_not_of(" \t", end + 1), text.size());
    const bool belongs = first == text.size() || is_line_end(text.at(first)) || static_cast<int>(first - end) - 1 > column;
    if (!belongs) return end;
    end = std::min(text.find('\n', first), text.size());
  }
  return end;
}

std::optional<std::size_t> wrong_comment(std::string_view text,
                                         const std::vector<std::pair<std::size_t, std::size_t>>& scalars) {
  auto scalar = scalars.begin();
  for (std::size_t i = text.find('#'); i != std::string_view::npos; i = text.find('#', i)) {
    while (scalar != scalars.end() && scalar->second <= i) ++scalar;
    if (scalar != scalars.end() && scalar->first <= i) {
      i = scalar->second;
    } else if (i > 0 && std::string_view("]},[{\"'").find(text.at(i - 1)) != std::string_view::npos) {
      return i;
    } else {
      i = begins_comment(text, i) ? std::min(text.find('\n', i), text.size()) : i + 1;
    }
  }
  return std::nullopt;
}

}  // namespace benchleaf::read
