// In: numbers, names and texts. Out: the same as PDF 1.4 writes them (PDF Reference, third edition, section 3.2).
#include "pdf/syntax.h"

#include <array>
#include <charconv>

#include "base/utf8.h"

namespace benchleaf::pdf {

namespace {

constexpr std::string_view kHexDigits = "0123456789ABCDEF";
const std::string kByteOrderMark = "\xFE\xFF";

/// What PDFDocEncoding has behind ASCII and before Latin-1 (PDF Reference, third edition, appendix D.1): codes 0x80 to 0x8E
/// and on, of signs that texts of ours hold.
struct DocCode {
  char32_t sign;
  unsigned char code;
};
constexpr std::array<DocCode, 9> kDocCodes = {{{U'\u2022', 0x80},
                                               {U'\u2026', 0x83},
                                               {U'\u2014', 0x84},
                                               {U'\u2013', 0x85},
                                               {U'\u2212', 0x8A},
                                               {U'\u201C', 0x8D},
                                               {U'\u201D', 0x8E},
                                               {U'\u2018', 0x8F},
                                               {U'\u2019', 0x90}}};

/// The byte of a sign in PDFDocEncoding; 0 if it has none or is a control character.
unsigned char doc_code(char32_t sign) {
  if (sign >= U' ' && sign <= U'~') return static_cast<unsigned char>(sign);
  if (sign >= 0xA1 && sign <= 0xFF && sign != 0xAD) return static_cast<unsigned char>(sign);
  for (const DocCode& known : kDocCodes) {
    if (known.sign == sign) return known.code;
  }
  return 0;
}

/// What may stand in a name without an escape: visible ASCII but the delimiters and the number sign.
bool name_character(char c) { return c > ' ' && c <= '~' && std::string_view("()<>[]{}/%#").find(c) == std::string_view::npos; }

void append_hex8(std::string& out, unsigned char byte) {
  out += kHexDigits[byte >> 4];
  out += kHexDigits[byte & 0x0F];
}

/// A number given in parts of one, without zeros at the end.
void append_parts(std::string& out, std::int64_t value, unsigned parts) {
  if (value < 0) out += '-';
  const std::uint64_t size = value < 0 ? 0 - static_cast<std::uint64_t>(value) : static_cast<std::uint64_t>(value);
  append_integer(out, static_cast<std::int64_t>(size / parts));
  unsigned rest = static_cast<unsigned>(size % parts);
  if (rest == 0) return;
  out += '.';
  for (unsigned place = parts / 10; rest > 0; place /= 10) {
    out += static_cast<char>('0' + rest / place);
    rest %= place;
  }
}

template <class AppendNumber>
void append_box_by(AppendNumber append, std::string& out, const page::Box& box, page::Length page_height) {
  out += '[';
  append(out, box.left);
  out += ' ';
  append(out, page_height - box.bottom);
  out += ' ';
  append(out, box.right);
  out += ' ';
  append(out, page_height - box.top);
  out += ']';
}

/// The UTF-16 code units of a text as bytes, high byte first.
std::string utf16_bytes(const std::u32string& text) {
  std::string bytes;
  const auto add = [&bytes](char32_t unit) {
    bytes += static_cast<char>(unit >> 8);
    bytes += static_cast<char>(unit & 0xFF);
  };
  for (char32_t code : text) {
    if (code < 0x10000) {
      add(code);
    } else {
      add(0xD800 + ((code - 0x10000) >> 10));
      add(0xDC00 + ((code - 0x10000) & 0x3FF));
    }
  }
  return bytes;
}

}  // namespace

void append_integer(std::string& out, std::int64_t value) {
  std::array<char, 24> digits{};
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value);
  out.append(digits.data(), end.ptr);
}

std::int64_t rounded_quotient(std::int64_t value, std::int64_t divisor) {
  const std::int64_t half = divisor / 2;
  return value < 0 ? -((-value + half) / divisor) : (value + half) / divisor;
}

void append_thousandths(std::string& out, std::int64_t value) { append_parts(out, value, 1000); }

void append_hundredths(std::string& out, std::int64_t value) { append_parts(out, rounded_quotient(value, 10), 100); }

void append_tenths(std::string& out, std::int64_t value) { append_parts(out, rounded_quotient(value, 100), 10); }

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

void append_byte(std::string& out, char c) {
  if (c == '(' || c == ')' || c == '\\') out += '\\';
  if (c == '\r') {
    out += "\\r";  // a bare one would be read as a line feed
  } else {
    out += c;
  }
}

void append_bytes(std::string& out, std::string_view bytes) {
  out += '(';
  for (char c : bytes) append_byte(out, c);
  out += ')';
}

void append_code(std::string& out, std::uint32_t code) {
  append_byte(out, static_cast<char>(code >> 8 & 0xFF));
  append_byte(out, static_cast<char>(code & 0xFF));
}

void append_hex16(std::string& out, std::uint32_t value) {
  append_hex8(out, static_cast<unsigned char>(value >> 8 & 0xFF));
  append_hex8(out, static_cast<unsigned char>(value & 0xFF));
}

void append_utf16(std::string& out, std::string_view utf8) {
  for (char unit_half : utf16_bytes(base::code_points(utf8))) append_hex8(out, static_cast<unsigned char>(unit_half));
}

void append_text(std::string& out, std::string_view utf8) {
  const std::u32string text = base::code_points(utf8);
  // A text that begins like the byte order mark would be read as UTF-16.
  bool wide = !text.empty() && text.front() == U'\u00FE';
  std::string bytes;
  for (char32_t sign : text) {
    bytes += static_cast<char>(doc_code(sign));
    wide = wide || doc_code(sign) == 0;
  }
  append_bytes(out, wide ? kByteOrderMark + utf16_bytes(text) : bytes);
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
  append_box_by(append_thousandths, out, box, page_height);
}

void append_rough_box(std::string& out, const page::Box& box, page::Length page_height) {
  append_box_by(append_tenths, out, box, page_height);
}

void append_whole_box(std::string& out, const page::Box& box, page::Length page_height) {
  const auto append_whole = [](std::string& to, page::Length value) {
    append_integer(to, static_cast<int>((value + 500) / 1000));
  };
  append_box_by(append_whole, out, box, page_height);
}

std::string hex_of(std::string_view bytes) {
  std::string digits;
  for (char c : bytes) append_hex8(digits, static_cast<unsigned char>(c));
  return digits;
}

}  // namespace benchleaf::pdf
