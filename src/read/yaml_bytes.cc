// In: the bytes of a record or page. Out: whether a parser may see them. The parsers replace, skip or accept in silence
// what is refused here, and a reader at the bench cannot see it.
#include "read/yaml_bytes.h"

#include <algorithm>
#include <array>
#include <cstdio>
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
constexpr std::array<CodeRange, 24> kHidden = {{
    {0x00A0, 0x00A0, "a no-break space"},
    {0x00AD, 0x00AD, "a soft hyphen"},
    {0x034F, 0x034F, "an invisible sign"},
    {0x061C, 0x061C, "a sign that changes the direction of text"},
    {0x115F, 0x1160, "an invisible letter"},
    {0x17B4, 0x17B5, "an invisible letter"},
    {0x180B, 0x180F, "an invisible sign"},
    {0x2000, 0x200A, "a space of another width"},
    {0x200B, 0x200D, "a sign of no width"},
    {0x200E, 0x200F, "a sign that changes the direction of text"},
    {0x2028, 0x202E, "a sign that breaks lines or changes the direction of text"},
    {0x202F, 0x202F, "a narrow no-break space"},
    {0x205F, 0x206F, "an invisible sign"},
    {0x2800, 0x2800, "an empty sign"},
    {0x3000, 0x3000, "a wide space"},
    {0x3164, 0x3164, "an invisible letter"},
    {0xE000, 0xF8FF, "a sign that means nothing outside one font"},
    {0xFE00, 0xFE0F, "a sign that changes the look of the one before"},
    {0xFEFF, 0xFEFF, "a byte-order mark"},
    {0xFFA0, 0xFFA0, "an invisible letter"},
    {0xFFF0, 0xFFFB, "an invisible sign"},
    {0xFFFE, 0xFFFF, "a code that is no character"},
    {0x1D173, 0x1D17A, "an invisible sign"},
    {0xE0000, 0x10FFFF, "an invisible sign, or one that means nothing outside one font"},
}};

/// Letters of other scripts, and shapes of Latin ones made for other ends, that a reader takes for Latin letters. Of Greek
/// only the look-alikes: a unit such as µA or kΩ stays a word of one script.
constexpr std::array<CodeRange, 9> kLookAlike = {{
    {0x0250, 0x02AF, "phonetic"},
    {0x0400, 0x058F, "Cyrillic or Armenian"},
    {0x13A0, 0x13FF, "Cherokee"},
    {0x1D00, 0x1DBF, "phonetic"},
    {0x2160, 0x2188, "Roman numeral"},
    {0x2C80, 0x2CFF, "Coptic"},
    {0xA4D0, 0xA4FF, "Lisu"},
    {0xFF10, 0xFF5A, "fullwidth"},
    {0x1D400, 0x1D7FF, "mathematical"},
}};

template <std::size_t N>
const CodeRange* range_of(const std::array<CodeRange, N>& ranges, char32_t code) {
  auto found = std::find_if(ranges.begin(), ranges.end(),
                            [code](const CodeRange& range) { return code >= range.first && code <= range.last; });
  return found == ranges.end() ? nullptr : &*found;
}

bool is_latin(char32_t code) {
  bool ascii = (code >= 'A' && code <= 'Z') || (code >= 'a' && code <= 'z');
  return ascii || (code >= 0xC0 && code <= 0x24F && code != 0xD7 && code != 0xF7);
}

bool is_look_alike(char32_t code) {
  static constexpr std::u32string_view kGreek = U"ΑΒΕΖΗΙΚΜΝΟΡΤΥΧονρτυχ";
  return range_of(kLookAlike, code) != nullptr || kGreek.find(code) != std::u32string_view::npos;
}

/// Forms of Latin letters and digits that no text here is written in.
bool is_disguise(char32_t code) { return (code >= 0xFF01 && code <= 0xFF5E) || (code >= 0x1D400 && code <= 0x1D7FF); }

bool is_control(char32_t code) { return code < 0x20 || (code >= 0x7F && code < 0xA0); }

/// Looks for a word that mixes Latin letters or digits with letters that look like them, over the characters of one line.
class ScriptCheck {
 public:
  /// True at the letter that makes the word mixed, or that no word may hold; `word()` is where the word began.
  bool is_mixed_at(char32_t code, std::size_t place) {
    const bool plain = is_latin(code) || (code >= '0' && code <= '9');  // a code mixes digits in, so they end no word
    const bool look_alike = is_look_alike(code);
    if (!plain && !look_alike) {
      plain_ = look_alike_ = false;
      return false;
    }
    if (!plain_ && !look_alike_) word_ = place;
    plain_ = plain_ || plain;
    look_alike_ = look_alike_ || look_alike;
    if (look_alike) stranger_ = code;
    return (plain_ && look_alike_) || is_disguise(code);
  }
  std::size_t word() const { return word_; }
  char32_t stranger() const { return stranger_; }

 private:
  std::size_t word_ = 0;
  char32_t stranger_ = 0;  ///< the last letter that looks like another
  bool plain_ = false, look_alike_ = false;
};

/// Looks at the characters of one text, which is known to be UTF-8, and tells the first fault of each line.
class CharacterCheck {
 public:
  CharacterCheck(const SourceText& source, report::Findings& findings) : source_(source), findings_(findings) {}

  std::vector<base::Span> run() {
    for (std::size_t i = 0; i < source_.line_count(); ++i) {
      const std::string_view line = source_.line(i);
      const bool ascii = std::all_of(line.begin(), line.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
      if (ascii) continue;
      std::optional<CharacterFault> fault = find_character_fault(line);
      if (!fault) continue;
      places_.push_back(source_.span(source_.line_start(i) + fault->place, fault->bytes));
      findings_.add(fault->rule, places_.back(), std::move(fault->message), std::move(fault->hint));
    }
    return std::move(places_);
  }

 private:
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

std::optional<CharacterFault> find_character_fault(std::string_view text) {
  ScriptCheck scripts;
  for (std::size_t at = 0; at < text.size();) {
    const base::Utf8Step step = base::next_code_point(text, at);
    if (is_control(step.code) && step.code != '\t' && step.code != '\n') {
      return CharacterFault{Rule::yaml_control_character, at, step.length,
                            "found the control character " + code_words(step.code), "take it out"};
    }
    if (const CodeRange* range = range_of(kHidden, step.code)) {
      return CharacterFault{Rule::yaml_hidden_character, at, step.length,
                            "found " + std::string(range->what) + " (" + code_words(step.code) + ")",
                            "write an ordinary space, or nothing"};
    }
    const bool mixed = scripts.is_mixed_at(step.code, at);
    at += step.length;
    if (!mixed) continue;
    return CharacterFault{Rule::yaml_mixed_script, scripts.word(), at - scripts.word(),
                          "found a word with " + code_words(scripts.stranger()) + ", which only looks like a Latin letter or a digit",
                          "type the word anew on a Latin keyboard"};
  }
  if (base::is_nfc(text)) return std::nullopt;
  return CharacterFault{Rule::yaml_composed, 0, text.size(),
                        "found a letter and its accent as two characters, expected one (NFC)", "type the letter anew"};
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
