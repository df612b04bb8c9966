// In: numbers, names and texts. Out: the same as PDF 1.4 writes them (PDF Reference, third edition, section 3.2).
#include "pdf/syntax.h"

#include <array>
#include <charconv>

#include "base/utf8.h"

namespace benchleaf::pdf {

namespace {

constexpr std::string_view kHexDigits = "0123456789ABCDEF";

bool printable_ascii(char c) { return c >= ' ' && c <= '~'; }

/// What may stand in a name without an escape: visible ASCII but the delimiters and the number sign.
bool name_character(char c) { return c > ' ' && c <= '~' && std::string_view("()<>[]{}/%#").find(c) == std::string_view::npos; }

void append_hex8(std::string& out, unsigned char byte) {
  out += kHexDigits[byte >> 4];
  out += kHexDigits[byte & 0x0F];
}

}  // namespace

void append_integer(std::string& out, std::int64_t value) {
  std::array<char, 24> digits{};
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value);
  out.append(digits.data(), end.ptr);
}

void append_thousandths(std::string& out, std::int64_t value) {
  if (value < 0) out += '-';
  const std::uint64_t size = value < 0 ? 0 - static_cast<std::uint64_t>(value) : static_cast<std::uint64_t>(value);
  append_integer(out, static_cast<std::int64_t>(size / 1000));
  unsigned rest = static_cast<unsigned>(size % 1000);
  if (rest == 0) return;
  out += '.';
  for (unsigned place = 100; rest > 0; place /= 10) {
    out += static_cast<char>('0' + rest / place);
    rest %= place;
  }
}

void append_reference(std::string& out, ObjectNumber number) {
  append_integer(out, number);
  out += " 0 R";
}

void append_name(std::string& out, std::string_view name) {
  out += '/';
  for (char c : name) {
    if (name_character(c)) {
      out += c;
    } else {
      out += '#';
      append_hex8(out, static_cast<unsigned char>(c));
    }
  }
}

void append_bytes(std::string& out, std::string_view bytes) {
  out += '(';
  for (char c : bytes) {
    if (c == '(' || c == ')' || c == '\\') out += '\\';
    if (c == '\r') {
      out += "\\r";  // a bare one would be read as a line feed
    } else {
      out += c;
    }
  }
  out += ')';
}

void append_hex16(std::string& out, std::uint32_t value) {
  append_hex8(out, static_cast<unsigned char>(value >> 8 & 0xFF));
  append_hex8(out, static_cast<unsigned char>(value & 0xFF));
}

void append_utf16(std::string& out, std::string_view utf8) {
  for (char32_t code : base::code_points(utf8)) {
    if (code < 0x10000) {
      append_hex16(out, code);
    } else {
      const char32_t beyond = code - 0x10000;
      append_hex16(out, 0xD800 + (beyond >> 10));
      append_hex16(out, 0xDC00 + (beyond & 0x3FF));
    }
  }
}

void append_text(std::string& out, std::string_view utf8) {
  bool plain = true;
  for (char c : utf8) plain = plain && printable_ascii(c);
  if (plain) {
    append_bytes(out, utf8);
    return;
  }
  out += "<FEFF";
  append_utf16(out, utf8);
  out += '>';
}

void append_color(std::string& out, page::Color color) {
  const auto part = [&out](std::uint8_t value) { append_thousandths(out, (value * 1000 + 127) / 255); };
  part(color.red);
  out += ' ';
  part(color.green);
  out += ' ';
  part(color.blue);
}

void append_box(std::string& out, const page::Box& box, page::Length page_height) {
  out += '[';
  append_thousandths(out, box.left);
  out += ' ';
  append_thousandths(out, page_height - box.bottom);
  out += ' ';
  append_thousandths(out, box.right);
  out += ' ';
  append_thousandths(out, page_height - box.top);
  out += ']';
}

std::string hex_of(std::string_view bytes) {
  std::string digits;
  for (char c : bytes) append_hex8(digits, static_cast<unsigned char>(c));
  return digits;
}

}  // namespace benchleaf::pdf
