// In: the text of each glyph. Out: a ToUnicode map (PDF Reference, third edition, 5.9.2), from which a text is searched,
// copied and read aloud. A ligature stands for several characters.
#include "pdf/to_unicode.h"

#include <algorithm>
#include <cstddef>
#include <string_view>
#include <utility>

#include "pdf/syntax.h"

namespace benchleaf::pdf {

namespace {

constexpr std::size_t kMostLines = 100;  ///< of one section

constexpr std::string_view kHead =
    "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
    "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
    "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
    "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n";
constexpr std::string_view kFoot = "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";

using Line = std::pair<std::uint32_t, const std::string*>;

void append_section(std::string& out, const std::vector<Line>& lines, std::size_t first) {
  const std::size_t last = std::min(first + kMostLines, lines.size());
  append_integer(out, static_cast<std::int64_t>(last - first));
  out += " beginbfchar\n";
  for (std::size_t i = first; i < last; ++i) {
    out += '<';
    append_hex16(out, lines.at(i).first);
    out += "> <";
    append_utf16(out, *lines.at(i).second);
    out += ">\n";
  }
  out += "endbfchar\n";
}

}  // namespace

std::string to_unicode(const FontTexts& texts, const std::vector<std::uint32_t>& old_glyphs) {
  std::vector<Line> lines;
  for (std::size_t code = 0; code < old_glyphs.size(); ++code) {
    const std::string& text = texts.text_of(old_glyphs.at(code));
    if (!text.empty()) lines.emplace_back(static_cast<std::uint32_t>(code), &text);
  }
  std::string out(kHead);
  for (std::size_t first = 0; first < lines.size(); first += kMostLines) append_section(out, lines, first);
  return out += kFoot;
}

}  // namespace benchleaf::pdf
