// In: the bytes of a record or page. Out: whether a parser may see them. The parsers replace, skip or accept in silence
// what is refused here, and a reader at the bench cannot see it.
#include "read/yaml_bytes.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <optional>
#include <string>

#include "base/utf8.h"

namespace benchleaf::read {

namespace {

using report::Rule;

std::string code_words(char32_t code) {
  std::array<char, 16> text{};
  std::snprintf(text.data(), text.size(), "U+%04X", static_cast<unsigned>(code));
  return text.data();
}

struct CodeRange {
  char32_t first;
  char32_t last;
  std::string_view what;
};

/// Signs that show nothing, or that turn the order of others round.
constexpr std::array<CodeRange, 12> kHidden = {{
    {0x00A0, 0x00A0, "a no-break space"},
    {0x00AD, 0x00AD, "a soft hyphen"},
    {0x061C, 0x061C, "a sign that changes the direction of text"},
    {0x115F, 0x1160, "an invisible letter"},
    {0x2000, 0x200A, "a space of another width"},
    {0x200B, 0x200D, "a sign of no width"},
    {0x200E, 0x200F, "a sign that changes the direction of text"},
    {0x2028, 0x202E, "a sign that breaks lines or changes the direction of text"},
    {0x202F, 0x202F, "a narrow no-break space"},
    {0x205F, 0x206F, "an invisible sign"},
    {0x3000, 0x3000, "a wide space"},
    {0xFEFF, 0xFEFF, "a byte-order mark"},
}};

const CodeRange* hidden(char32_t code) {
  auto found = std::find_if(kHidden.begin(), kHidden.end(),
                            [code](const CodeRange& range) { return code >= range.first && code <= range.last; });
  return found == kHidden.end() ? nullptr : &*found;
}

bool is_control(char32_t code) {
  bool allowed = code == '\t' || code == '\n' || code == '\r';
  return (code < 0x20 && !allowed) || (code >= 0x7F && code <= 0x9F);
}

bool is_latin(char32_t code) {
  bool ascii = (code >= 'A' && code <= 'Z') || (code >= 'a' && code <= 'z');
  return ascii || (code >= 0xC0 && code <= 0x24F && code != 0xD7 && code != 0xF7);
}

/// Cyrillic, and the Greek letters that look like Latin ones: a unit such as µA or kΩ stays a word of one script.
bool is_look_alike(char32_t code) {
  static constexpr std::u32string_view kGreek = U"ΑΒΕΖΗΙΚΜΝΟΡΤΥΧονρτυχ";
  return (code >= 0x400 && code <= 0x52F) || kGreek.find(code) != std::u32string_view::npos;
}

/// Looks at the characters of one text, which is known to be UTF-8, and tells the first fault of each line.
class CharacterCheck {
 public:
  CharacterCheck(const SourceText& source, report::Findings& findings) : source_(source), findings_(findings) {}

  bool run() {
    for (std::size_t i = 0; i < source_.line_count(); ++i) line(i);
    return clean_;
  }

 private:
  void tell(Rule rule, std::size_t place, std::size_t bytes, std::string message, std::string hint) {
    clean_ = false;
    findings_.add(rule, source_.span(place, bytes), std::move(message), std::move(hint));
  }

  void line(std::size_t index) {
    const std::string_view text = source_.line(index);
    const std::size_t start = source_.line_start(index);
    const bool ascii = std::all_of(text.begin(), text.end(), [](char c) { return c >= 0x20 && c < 0x7F; });
    if (ascii) return;
    std::size_t at = 0;
    std::size_t word = 0;
    bool latin = false, other = false;
    for (char32_t code : base::code_points(text)) {
      const std::size_t bytes = base::to_utf8(code).size();
      if (!one(code, start + at, bytes)) return;
      const bool letter = is_latin(code) || is_look_alike(code);
      const bool digit = code >= '0' && code <= '9';  // a code mixes digits in, so they end no word
      if (!letter && !digit) latin = other = false;
      if (letter && !latin && !other) word = at;
      latin = latin || is_latin(code);
      other = other || is_look_alike(code);
      at += bytes;
      if (!latin || !other) continue;
      return tell(Rule::yaml_mixed_script, start + word, at - word,
                  "found a word with letters of two scripts that look alike, the last being " + code_words(code),
                  "type the word anew on a Latin keyboard");
    }
    if (!base::is_nfc(text)) {
      tell(Rule::yaml_composed, start, text.size(), "found a letter and its accent as two characters, expected one (NFC)",
           "type the letter anew");
    }
  }

  bool one(char32_t code, std::size_t place, std::size_t bytes) {
    if (is_control(code)) {
      tell(Rule::yaml_control_character, place, bytes, "found the control character " + code_words(code), "take it out");
      return false;
    }
    if (code == '\r') {
      tell(Rule::yaml_control_character, place, bytes, "found a carriage return inside a line",
           "end lines with a line feed");
      return false;
    }
    const CodeRange* range = hidden(code);
    if (range == nullptr) return true;
    tell(Rule::yaml_hidden_character, place, bytes, "found " + std::string(range->what) + " (" + code_words(code) + ")",
         "write an ordinary space, or nothing");
    return false;
  }

  const SourceText& source_;
  report::Findings& findings_;
  bool clean_ = true;
};

}  // namespace

bool check_characters(const SourceText& source, report::Findings& findings) {
  const std::string_view text = source.text();
  if (text.substr(0, 3) == "\xEF\xBB\xBF") {
    findings.add(Rule::yaml_byte_order_mark, source.span(0, 0), "found a byte-order mark at the start of the file",
                 "save the file as UTF-8 without a mark");
    return false;
  }
  if (std::optional<std::size_t> place = base::first_invalid_utf8(text)) {
    findings.add(Rule::yaml_encoding, source.span(*place, 1), "found bytes that are not UTF-8", "save the file as UTF-8");
    return false;
  }
  return CharacterCheck(source, findings).run();
}

bool check_yaml_lines(const SourceText& source, report::Findings& findings) {
  bool before_content = true;
  for (std::size_t i = 0; i < source.line_count(); ++i) {
    const std::string_view line = source.line(i);
    const std::size_t first = line.find_first_not_of(" \t");
    const std::size_t tab = line.find('\t');
    if (first != std::string_view::npos && tab < first) {
      findings.add(Rule::yaml_tab_indentation, source.span(source.line_start(i) + tab, 1),
                   "found a tab in front of the line, expected spaces", "indent with spaces");
      return false;
    }
    if (first == std::string_view::npos || line.at(first) == '#') continue;
    if (before_content && line.front() == '%') {
      findings.add(Rule::yaml_directive, source.span(source.line_start(i), line.size()),
                   "found a directive, which records do not use", "take the line out");
      return false;
    }
    before_content = false;
  }
  return true;
}

}  // namespace benchleaf::read
