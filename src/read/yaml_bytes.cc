// In: the bytes of a record or page. Out: whether a parser may see them. The parsers replace, skip or accept in silence
// what is refused here, and a reader at the bench cannot see it.
#include "read/yaml_bytes.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <optional>
#include <string>
#include <utility>

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

  std::vector<base::Span> run() {
    for (std::size_t i = 0; i < source_.line_count(); ++i) line(i);
    return std::move(places_);
  }

 private:
  void tell(Rule rule, std::size_t place, std::size_t bytes, std::string message, std::string hint) {
    places_.push_back(source_.span(place, bytes));
    findings_.add(rule, places_.back(), std::move(message), std::move(hint));
  }

  void line(std::size_t index) {
    const std::string_view text = source_.line(index);
    const std::size_t start = source_.line_start(index);
    const bool ascii = std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
    if (ascii) return;
    std::size_t at = 0;
    std::size_t word = 0;
    bool latin = false, other = false;
    while (at < text.size()) {
      const base::Utf8Step step = base::next_code_point(text, at);
      if (const CodeRange* range = hidden(step.code)) {
        return tell(Rule::yaml_hidden_character, start + at, step.length,
                    "found " + std::string(range->what) + " (" + code_words(step.code) + ")",
                    "write an ordinary space, or nothing");
      }
      const bool letter = is_latin(step.code) || is_look_alike(step.code);
      const bool digit = step.code >= '0' && step.code <= '9';  // a code mixes digits in, so they end no word
      if (!letter && !digit) latin = other = false;
      if (letter && !latin && !other) word = at;
      latin = latin || is_latin(step.code);
      other = other || is_look_alike(step.code);
      at += step.length;
      if (!latin || !other) continue;
      return tell(Rule::yaml_mixed_script, start + word, at - word,
                  "found a word with letters of two scripts that look alike, the last being " + code_words(step.code),
                  "type the word anew on a Latin keyboard");
    }
    if (!base::is_nfc(text)) {
      tell(Rule::yaml_composed, start, text.size(), "found a letter and its accent as two characters, expected one (NFC)",
           "type the letter anew");
    }
  }

  const SourceText& source_;
  report::Findings& findings_;
  std::vector<base::Span> places_;
};

/// The first control character, or a carriage return that ends no line.
std::optional<std::size_t> first_control(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text.at(i));
    const bool line_end = byte == '\r' && i + 1 < text.size() && text.at(i + 1) == '\n';
    const bool allowed = byte == '\t' || byte == '\n' || line_end;
    if ((byte < 0x20 && !allowed) || byte == 0x7F) return i;
    const bool high = byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text.at(i + 1)) < 0xA0;
    if (high) return i;  // U+0080 to U+009F
  }
  return std::nullopt;
}

}  // namespace

bool check_encoding(const SourceText& source, report::Findings& findings) {
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
  std::optional<std::size_t> place = first_control(text);
  if (!place) return true;
  const base::Utf8Step step = base::next_code_point(text, *place);
  const bool carriage = step.code == '\r';
  findings.add(Rule::yaml_control_character, source.span(*place, step.length),
               carriage ? "found a carriage return inside a line" : "found the control character " + code_words(step.code),
               carriage ? "end lines with a line feed" : "take it out");
  return false;
}

std::vector<base::Span> check_characters(const SourceText& source, report::Findings& findings) {
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
