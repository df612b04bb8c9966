// In: the text of each glyph. Out: a ToUnicode map (PDF Reference, third edition, 5.9.2), from which a text is searched,
// copied and read aloud. A ligature stands for several characters.
#include "pdf/to_unicode.h"

#include <algorithm>
#include <cstddef>
#include <string_view>

#include "pdf/syntax.h"

namespace benchleaf::pdf {

namespace {

constexpr std::size_t kMostLines = 100;  ///< of one section

constexpr std::string_view kHead =
    "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
    "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
    "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n";
constexpr std::string_view kFoot = "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";

void append_hex(std::string& out, std::uint32_t code, int code_bytes) {
  std::string digits;
  append_hex16(digits, code);
  out += '<' + digits.substr(code_bytes == 1 ? 2 : 0) + '>';
}

/// So many lines from `line` on; leaves it behind them.
void append_section(std::string& out, CodeTexts::const_iterator& line, std::size_t count, int code_bytes) {
  append_integer(out, static_cast<std::int64_t>(count));
  out += " beginbfchar\n";
  for (; count > 0; --count, ++line) {
    append_hex(out, line->first, code_bytes);
    out += " <";
    append_utf16(out, line->second);
    out += ">\n";
  }
  out += "endbfchar\n";
}

}  // namespace

CodeTexts texts_by_code(const FontTexts& texts, const std::vector<std::uint32_t>& old_glyphs) {
  CodeTexts by_code;
  for (std::size_t code = 0; code < old_glyphs.size(); ++code) {
    const std::string& text = texts.text_of(old_glyphs.at(code));
    if (!text.empty()) by_code.emplace(static_cast<std::uint32_t>(code), text);
  }
  return by_code;
}

std::string to_unicode(const CodeTexts& texts, int code_bytes) {
  std::string out(kHead);
  out += "1 begincodespacerange\n";
  append_hex(out, 0, code_bytes);
  out += ' ';
  append_hex(out, 0xFFFF, code_bytes);
  out += "\nendcodespacerange\n";
  auto line = texts.begin();
  for (std::size_t left = texts.size(); left > 0;) {
    const std::size_t count = std::min(left, kMostLines);
    append_section(out, line, count, code_bytes);
    left -= count;
  }
  return out += kFoot;
}

}  // namespace benchleaf::pdf
