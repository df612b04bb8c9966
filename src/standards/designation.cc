// In: a designation as written on a cell or typed by a user. Out: its parts, or the place and the reason it is none.
// The grammar is that of IEC 60086 as encyclopaedia and catalogue pages give it; the standard's own text was not readable.

#include "standards/designation.h"

#include <cstddef>
#include <utility>
#include <vector>

namespace benchleaf::standards {
namespace {

constexpr std::size_t kMostSeriesDigits = 2;
constexpr std::size_t kMostSizeDigits = 5;

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return c >= 'A' && c <= 'Z'; }
char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }

/// The text without spaces, in capitals, and where each character stood.
struct Compact {
  std::string text;
  std::vector<int> position;

  bool at_end(std::size_t i) const { return i >= text.size(); }
  int place(std::size_t i) const { return i < position.size() ? position[i] : (position.empty() ? 0 : position.back() + 1); }
};

bool starts_code_point(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

Compact compact(std::string_view text) {
  Compact out;
  int position = -1;
  for (const char c : text) {
    if (starts_code_point(c)) ++position;
    if (c == ' ') continue;
    out.text += upper(c);
    out.position.push_back(position);
  }
  return out;
}

std::string digits_from(const Compact& in, std::size_t& at) {
  std::string digits;
  while (!in.at_end(at) && is_digit(in.text[at])) digits += in.text[at++];
  return digits;
}

/// A letter that is easily taken for a digit, standing where the size is read.
std::string digit_for(char letter) {
  switch (letter) {
    case 'O': return "0";
    case 'I':
    case 'L': return "1";
    default: return {};
  }
}

DesignationError error_at(const Compact& in, std::size_t at, std::string reason, std::string hint = {}) {
  return {in.place(at), std::move(reason), std::move(hint)};
}

/// Everything but capitals, digits and spaces is refused before the parts are read, so that a Cyrillic letter is named as such.
std::variant<Compact, DesignationError> accepted(std::string_view text) {
  Compact in = compact(text);
  if (in.text.empty()) return DesignationError{0, "a designation is empty", "write it like SR754W"};
  for (std::size_t i = 0; i < in.text.size(); ++i) {
    if (is_letter(in.text[i]) || is_digit(in.text[i])) continue;
    const bool foreign = static_cast<unsigned char>(in.text[i]) >= 0x80U;
    return error_at(in, i,
                    foreign ? "a character outside A to Z and 0 to 9 stands in the designation"
                            : std::string("'") + in.text[i] + "' stands in the designation",
                    "use only the letters A to Z and the digits 0 to 9");
  }
  return in;
}

std::variant<std::string, DesignationError> read_system(const Compact& in, std::size_t& at) {
  if (in.at_end(at) || !is_letter(in.text[at])) return error_at(in, at, "no system letter", "write it like SR754W");
  if (in.text[at] == 'R' && !in.at_end(at + 1) && is_digit(in.text[at + 1])) {
    return error_at(in, at, "no system letter before R: that form means zinc-carbon, which no wristwatch takes",
                    "look for a letter such as S, L or C before the R");
  }
  std::string system(1, in.text[at++]);
  if (in.at_end(at) || in.text[at] != 'R') {
    return error_at(in, at, "no R after the system letter " + system + ": only round cells are known here",
                    "write it like SR754W");
  }
  ++at;
  return system;
}

std::variant<std::string, DesignationError> read_size(const Compact& in, std::size_t& at) {
  std::string size = digits_from(in, at);
  if (!in.at_end(at)) {
    const std::string digit = digit_for(in.text[at]);
    const bool more_digits = !in.at_end(at + 1) && is_digit(in.text[at + 1]);
    if (!digit.empty() && more_digits) {
      return error_at(in, at, std::string("a letter ") + in.text[at] + " stands among the digits of the size",
                      "write the digit " + digit);
    }
  }
  if (size.empty()) return error_at(in, at, "no size after R", "write two digits for a short size, three or four for a full one");
  if (size.size() == 1 || size.size() > kMostSizeDigits) {
    return error_at(in, at - size.size(), "size " + size + " has " + std::to_string(size.size()) + " digits",
                    "write two digits for a short size, three or four for a full one");
  }
  if (size.front() == '0') return error_at(in, at - size.size(), "size " + size + " begins with 0", "leave the 0 out");
  return size;
}

}  // namespace

std::string Designation::with_size(std::string_view other) const {
  return (in_series > 1 ? std::to_string(in_series) : std::string()) + system + "R" + std::string(other);
}

std::string Designation::text() const { return with_size(size) + suffix; }

std::variant<Designation, DesignationError> parse_designation(std::string_view text) {
  auto checked = accepted(text);
  if (auto* error = std::get_if<DesignationError>(&checked)) return *error;
  const Compact& in = std::get<Compact>(checked);

  Designation out;
  std::size_t at = 0;
  const std::string series = digits_from(in, at);
  if (in.at_end(at)) {
    return error_at(in, 0, series + " is a number, not a designation", "look the number up, or write a designation like SR754W");
  }
  if (series.size() > kMostSeriesDigits || (!series.empty() && series.front() == '0') || series == "1") {
    return error_at(in, 0, "'" + series + "' is no number of cells in series", "write 2 to 99, or nothing for one cell");
  }
  if (!series.empty()) out.in_series = std::stoi(series);

  auto system = read_system(in, at);
  if (auto* error = std::get_if<DesignationError>(&system)) return *error;
  out.system = std::get<std::string>(system);

  auto size = read_size(in, at);
  if (auto* error = std::get_if<DesignationError>(&size)) return *error;
  out.size = std::get<std::string>(size);

  while (!in.at_end(at)) {
    if (is_digit(in.text[at])) return error_at(in, at, "a digit stands in the suffix", "the suffix is letters only, such as SW");
    out.suffix += in.text[at++];
  }
  return out;
}

}  // namespace benchleaf::standards
