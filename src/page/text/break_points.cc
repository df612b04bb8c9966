// In: a word between two spaces. Out: where it may be parted. A simple form of Unicode Standard Annex 14 for English:
// values keep their units, codes, ratios and dates stay whole, short words with a slash too (`and/or`, `mol/L`).
#include "page/text/break_points.h"

#include <hb.h>

#include <algorithm>

#include "base/utf8.h"

namespace benchleaf::page {

namespace {

constexpr std::size_t kLeastBesideHyphen = 2;
constexpr std::size_t kLeastBesideSlash = 4;

enum class Sort { letter, digit, other };

Sort sort_of(char32_t code) {
  if (code < 0x80) {
    if (code >= U'0' && code <= U'9') return Sort::digit;
    return (code >= U'a' && code <= U'z') || (code >= U'A' && code <= U'Z') ? Sort::letter : Sort::other;
  }
  switch (hb_unicode_general_category(hb_unicode_funcs_get_default(), code)) {
    case HB_UNICODE_GENERAL_CATEGORY_DECIMAL_NUMBER:
    case HB_UNICODE_GENERAL_CATEGORY_LETTER_NUMBER:
    case HB_UNICODE_GENERAL_CATEGORY_OTHER_NUMBER: return Sort::digit;
    case HB_UNICODE_GENERAL_CATEGORY_LOWERCASE_LETTER:
    case HB_UNICODE_GENERAL_CATEGORY_UPPERCASE_LETTER:
    case HB_UNICODE_GENERAL_CATEGORY_TITLECASE_LETTER:
    case HB_UNICODE_GENERAL_CATEGORY_MODIFIER_LETTER:
    case HB_UNICODE_GENERAL_CATEGORY_OTHER_LETTER:
    case HB_UNICODE_GENERAL_CATEGORY_NON_SPACING_MARK: return Sort::letter;
    default: return Sort::other;
  }
}

bool is_hyphen(char32_t code) { return code == U'-' || code == U'\u2010'; }
bool is_dash(char32_t code) { return code == U'\u2013' || code == U'\u2014'; }
bool joins_letters_only(char32_t code) { return is_hyphen(code) || is_dash(code) || code == U'/' || code == U'\u00A0'; }

struct Letter {
  char32_t code = 0;
  Sort sort = Sort::other;
  std::size_t at = 0;  ///< byte offset
};

/// The word as letters, figures and signs, with a look to both sides.
class Word {
 public:
  explicit Word(std::string_view word) : word_(word) {
    for (std::size_t at = 0; at < word.size();) {
      const base::Utf8Step step = base::next_code_point(word, at);
      letters_.push_back({step.code, sort_of(step.code), at});
      at += step.length;
    }
  }

  std::size_t size() const { return letters_.size(); }
  char32_t code(std::size_t i) const { return i < letters_.size() ? letters_[i].code : 0; }
  Sort sort(std::size_t i) const { return i < letters_.size() ? letters_[i].sort : Sort::other; }
  std::size_t byte(std::size_t i) const { return i < letters_.size() ? letters_[i].at : word_.size(); }
  std::string_view part(std::size_t from, std::size_t to) const { return word_.substr(byte(from), byte(to) - byte(from)); }

  bool has_figure() const {
    return std::any_of(letters_.begin(), letters_.end(), [](const Letter& l) { return l.sort == Sort::digit; });
  }
  bool is_address() const { return word_.find("://") != std::string_view::npos || word_.rfind("www.", 0) == 0; }

  /// First of the letters that end in front of `i`; not letters if joined to a figure there.
  std::size_t run_before(std::size_t i) const {
    std::size_t from = i;
    while (from > 0 && sort(from - 1) == Sort::letter) --from;
    const char32_t before = from > 0 ? code(from - 1) : 0;
    const bool joined =
        from > 0 && (sort(from - 1) == Sort::digit || before == U'\u2009' || before == U'\u00A0' || before == U'\u202F');
    return joined ? i : from;
  }
  /// Behind the last of the letters that begin at `i`; none if a figure follows them.
  std::size_t run_behind(std::size_t i) const {
    std::size_t to = i;
    while (sort(to) == Sort::letter) ++to;
    return sort(to) == Sort::digit ? i : to;
  }
  /// Two small letters: no formula, no `pH`, no abbreviation.
  bool is_plain(std::size_t from, std::size_t to) const {
    int small = 0;
    for (std::size_t i = from; i < to; ++i) {
      const auto category = hb_unicode_general_category(hb_unicode_funcs_get_default(), code(i));
      if (category == HB_UNICODE_GENERAL_CATEGORY_LOWERCASE_LETTER) ++small;
    }
    return small >= 2;
  }

 private:
  std::string_view word_;
  std::vector<Letter> letters_;
};

/// Behind the sign at `i`, if words of letters stand on both sides.
void add_sign_break(const Word& word, std::size_t i, std::vector<BreakPoint>& breaks) {
  const char32_t sign = word.code(i);
  const bool slash = sign == U'/';
  if (!slash && !is_hyphen(sign) && !is_dash(sign)) return;
  const std::size_t from = word.run_before(i);
  const std::size_t to = word.run_behind(i + 1);
  const std::size_t least = slash ? kLeastBesideSlash : kLeastBesideHyphen;
  if (i - from < least || to - (i + 1) < least || !word.is_plain(from, i) || !word.is_plain(i + 1, to)) return;
  breaks.push_back({word.byte(i + 1), slash ? BreakPoint::Kind::bare : BreakPoint::Kind::visible});
}

/// An address may be parted behind its own signs, never between the slashes of `://`.
void add_address_break(const Word& word, std::size_t i, std::vector<BreakPoint>& breaks) {
  constexpr std::u32string_view kSigns = U"/-?&=_";
  if (kSigns.find(word.code(i)) == std::u32string_view::npos) return;
  if (word.sort(i + 1) != Sort::other) breaks.push_back({word.byte(i + 1), BreakPoint::Kind::bare});
}

/// Whether what joins letters at `sign` to other letters at `beyond` leaves them a word of their own.
bool stands_alone(const Word& word, std::size_t sign, std::size_t beyond) {
  return word.sort(beyond) != Sort::letter || joins_letters_only(word.code(sign));
}

void add_dictionary_breaks(const Word& word, const Hyphenator& hyphenator, std::vector<BreakPoint>& breaks) {
  for (std::size_t from = 0; from < word.size();) {
    std::size_t to = from;
    while (word.sort(to) == Sort::letter) ++to;
    const bool before = from == 0 || from == 1 || stands_alone(word, from - 1, from - 2);
    const bool behind = stands_alone(word, to, to + 1);
    if (to > from && before && behind) {
      const bool compound = (from > 0 && is_hyphen(word.code(from - 1))) || is_hyphen(word.code(to));
      for (const std::size_t at : hyphenator.breaks(word.part(from, to))) {
        breaks.push_back({word.byte(from) + at, compound ? BreakPoint::Kind::compound : BreakPoint::Kind::dictionary});
      }
    }
    from = to + 1;
  }
}

}  // namespace

bool puts_hyphen(BreakPoint::Kind kind) {
  return kind == BreakPoint::Kind::soft || kind == BreakPoint::Kind::dictionary || kind == BreakPoint::Kind::compound;
}

void append_guided(GuidedText& guided, std::string_view piece) {
  for (std::size_t at = 0; at < piece.size();) {
    if (static_cast<unsigned char>(piece[at]) < 0x80) {
      guided.text += piece[at++];
      continue;
    }
    const base::Utf8Step step = base::next_code_point(piece, at);
    switch (step.code) {
      case U'\u00AD': guided.breaks.push_back({guided.text.size(), BreakPoint::Kind::soft}); break;
      case U'\u200B': guided.breaks.push_back({guided.text.size(), BreakPoint::Kind::bare}); break;
      case U'\u2060':
      case U'\uFEFF': guided.joins.push_back(guided.text.size()); break;
      default: guided.text += base::to_utf8(step.code);
    }
    at += step.length;
  }
}

std::vector<BreakPoint> word_breaks(std::string_view text, const Hyphenator* hyphenator) {
  std::vector<BreakPoint> breaks;
  const Word word(text);
  const bool address = word.is_address();
  for (std::size_t i = 0; i < word.size(); ++i) {
    if (address) {
      add_address_break(word, i, breaks);
    } else {
      add_sign_break(word, i, breaks);
    }
  }
  if (hyphenator != nullptr && !address && !word.has_figure()) add_dictionary_breaks(word, *hyphenator, breaks);
  std::sort(breaks.begin(), breaks.end(), [](const BreakPoint& a, const BreakPoint& b) { return a.at < b.at; });
  return breaks;
}

}  // namespace benchleaf::page
