#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "page/display.h"

namespace benchleaf::pdf {

/// Number of an indirect object, from 1; every generation is 0.
using ObjectNumber = int;

// Each function appends one piece of PDF text and no white space around it.

void append_integer(std::string& out, std::int64_t value);
/// A number given in thousandths: -1250 is written -1.25. Lengths are whole thousandths, so no floating number is ever printed.
void append_thousandths(std::string& out, std::int64_t value);
/// The same to the nearest hundredth (1/100 pt is 0.0035 mm) and to the nearest tenth.
void append_hundredths(std::string& out, std::int64_t value);
void append_tenths(std::string& out, std::int64_t value);
/// The nearest whole number, halves away from zero.
std::int64_t rounded_quotient(std::int64_t value, std::int64_t divisor);
/// `12 0 R`
void append_reference(std::string& out, ObjectNumber number);
/// `/Name`, with #xx for what a name may not hold.
void append_name(std::string& out, std::string_view name);
/// A string of bytes as they are, in round brackets.
void append_bytes(std::string& out, std::string_view bytes);
/// A byte as it stands inside a string in round brackets, and the two bytes of a glyph's code.
void append_byte(std::string& out, char c);
void append_code(std::string& out, std::uint32_t code);
/// A text string: in PDFDocEncoding if that has all its letters, else UTF-16 with a byte order mark.
void append_text(std::string& out, std::string_view utf8);
/// The UTF-16 code units of a text in hexadecimal digits, high byte first, with neither mark nor brackets.
void append_utf16(std::string& out, std::string_view utf8);
/// Four hexadecimal digits.
void append_hex16(std::string& out, std::uint32_t value);
/// `0.2 0.4 1`
void append_color(std::string& out, page::Color color);
/// `[left bottom right top]` on a page of this height, whose lengths grow upwards.
void append_box(std::string& out, const page::Box& box, page::Length page_height);
/// The same to the nearest tenth of a point: near enough to find a figure by.
void append_rough_box(std::string& out, const page::Box& box, page::Length page_height);
/// The same to the nearest point: near enough to click on.
void append_whole_box(std::string& out, const page::Box& box, page::Length page_height);

/// Hexadecimal digits of bytes.
std::string hex_of(std::string_view bytes);

}  // namespace benchleaf::pdf
