// In: what a reader types, or a name of a record. Out: its words, numbers apart from their units.
#include "query/words.h"

#include <algorithm>
#include <array>

#include "base/ascii.h"
#include "base/number.h"
#include "base/utf8.h"

namespace benchleaf::query {

namespace {

using base::is_digit;

constexpr std::array<double, 6> kParts = {2, 4, 8, 16, 32, 64};  // of an inch, as rules have them

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

/// Cuts a folded text into pieces of letters and figures; signs that mean something are pieces of their own.
class Cutter {
 public:
  explicit Cutter(std::string_view text) : text_(text) {}

  std::vector<std::string> pieces() {
    for (at_ = 0; at_ < text_.size();) step();
    close();
    return std::move(pieces_);
  }

 private:
  char at(std::size_t place) const { return place < text_.size() ? text_[place] : '\0'; }
  bool after_digit() const { return !piece_.empty() && is_digit(piece_.back()); }

  void step() {
    const std::size_t length = base::next_code_point(text_, at_).length;
    const std::string_view sign = text_.substr(at_, length);
    at_ += length;
    if (is_apostrophe(sign)) {
      if (after_digit()) sign_piece("\"");
      return;  // `won't` is one word
    }
    if (sign == "\u00D7" || sign == "*") return sign_piece("x");
    if (sign == "\"" || sign == "\u2033" || sign == "\u201D") return after_digit() ? sign_piece("\"") : close();
    if (sign == "\u2009" || sign == "\u00A0" || sign == "\u2013") return close();
    if (is_point(sign)) {
      piece_ += '.';
    } else if (sign == "." && is_digit(at(at_)) && begins_figure()) {
      piece_ += "0.";  // `.31x.21`
    } else if (sign == "/" && after_digit() && is_digit(at(at_))) {
      piece_ += '/';
    } else if (is_letter(sign[0]) || is_digit(sign[0])) {
      piece_ += sign == "\u03BC" ? "u" : sign;
    } else {
      close();
    }
  }

  /// Two single marks after a figure are an inch; one between letters is none.
  static bool is_apostrophe(std::string_view sign) { return sign == "'" || sign == "\u2019" || sign == "\u2032"; }

  /// Whether a figure can begin here: at the start of a piece, or behind the sign of `7.9x`.
  bool begins_figure() const {
    return piece_.empty() || (piece_.size() > 1 && piece_.back() == 'x' && is_digit(piece_[piece_.size() - 2]));
  }

  bool is_point(std::string_view sign) const {
    if ((sign != "." && sign != ",") || !after_digit() || !is_digit(at(at_))) return false;
    const std::size_t letters = piece_.find_last_not_of("0123456789./");  // of `7.9x5`, only the `5` counts
    const std::string figure = piece_.substr(letters == std::string::npos ? 0 : letters + 1);
    if (figure.find_first_of("./") != std::string::npos) return false;
    if (sign == ".") return true;
    std::size_t behind = at_;
    while (is_digit(at(behind))) ++behind;
    return behind - at_ < 3 || figure == "0";  // `7,9` and `0,311`, but `377,376` are two
  }

  void sign_piece(std::string sign) {
    close();
    if (sign == "\"" && !pieces_.empty() && pieces_.back() == "\"") return;
    pieces_.push_back(std::move(sign));
  }

  void close() {
    if (!piece_.empty()) pieces_.push_back(std::move(piece_));
    piece_.clear();
  }

  std::string_view text_;
  std::size_t at_ = 0;
  std::string piece_;
  std::vector<std::string> pieces_;
};

std::string without_end_zeros(std::string figure) {
  if (figure.find('.') == std::string::npos) return figure;
  while (figure.back() == '0') figure.pop_back();
  if (figure.back() == '.') figure.pop_back();
  return figure;
}

Word number_word(std::string_view figure) {
  std::string plain = without_end_zeros(std::string(figure));
  const double value = base::parse_decimal(plain).value_or(0);
  return {Word::Sort::number, std::move(plain), value};
}

/// The words that units and signs are typed as.
std::optional<Word::Sort> unit_of(std::string_view word) {
  if (word == "x" || word == "by") return Word::Sort::times;
  if (word == "mm" || word == "millimeters" || word == "millimetres" || word == "millimeter" || word == "millimetre")
    return Word::Sort::millimetre;
  if (word == "in" || word == "inch" || word == "inches" || word == "\"") return Word::Sort::inch;
  return std::nullopt;
}

/// `29/64` as one number, `395/399` as two.
void add_parted(std::string_view piece, std::vector<Word>& words) {
  const std::size_t stroke = piece.find('/');
  const Word above = number_word(piece.substr(0, stroke));
  const Word below = number_word(piece.substr(stroke + 1));
  const bool fraction =
      std::find(kParts.begin(), kParts.end(), below.value) != kParts.end() && above.value < below.value && above.value >= 1;
  if (!fraction) {
    words.push_back(above);
    words.push_back(below);
    return;
  }
  const double part = above.value / below.value;
  const bool mixed = !words.empty() && words.back().sort == Word::Sort::number && words.back().value < 10;
  if (mixed) {
    words.back().value += part;  // `1 1/4`
    words.back().text = base::shortest_text(words.back().value);
    return;
  }
  words.push_back({Word::Sort::number, base::shortest_text(part), part});
}

void add_piece(std::string_view piece, std::vector<Word>& words);

/// A piece that begins with figures: `7.9x5.4mm` is parted at its units, `626sw` stays whole.
void add_figures(std::string_view piece, std::vector<Word>& words) {
  std::size_t end = piece.find_first_not_of("0123456789./");
  if (end == std::string_view::npos) end = piece.size();
  std::size_t letters = end;
  while (letters < piece.size() && !is_digit(piece[letters])) ++letters;
  std::string_view unit = piece.substr(end, letters - end);
  const bool twice = unit == "mmx" || unit == "inx";
  if (twice) unit = unit.substr(0, 2);
  if (!unit.empty() && !unit_of(unit)) {
    words.push_back({Word::Sort::word, std::string(piece), 0});
    return;
  }
  const std::string_view figure = piece.substr(0, end);
  if (figure.find('/') != std::string_view::npos) {
    add_parted(figure, words);
  } else {
    words.push_back(number_word(figure));
  }
  if (!unit.empty()) words.push_back({*unit_of(unit), std::string(unit), 0});
  if (twice) words.push_back({Word::Sort::times, "x", 0});
  if (letters < piece.size()) add_piece(piece.substr(letters), words);
}

void add_piece(std::string_view piece, std::vector<Word>& words) {
  if (is_digit(piece[0])) return add_figures(piece, words);
  const auto unit = unit_of(piece);
  const bool measured = !words.empty() && (words.back().sort == Word::Sort::number ||
                                           (unit == Word::Sort::times && words.back().sort != Word::Sort::word));
  if (unit && measured) {
    words.push_back({*unit, std::string(piece), 0});
  } else {
    words.push_back({Word::Sort::word, std::string(piece), 0});
  }
}

}  // namespace

std::vector<Word> words_of(std::string_view text) {
  const std::string fold = folded(text);
  std::vector<Word> words;
  for (const std::string& piece : Cutter(fold).pieces()) add_piece(piece, words);
  return words;
}

std::string joined_key(const std::vector<Word>& words, std::size_t from, std::size_t to) {
  std::string key;
  for (std::size_t i = from; i < to; ++i) key += words[i].sort == Word::Sort::word ? stem_of(words[i].text) : words[i].text;
  return key;
}

std::string joined_key(std::string_view name) {
  const std::vector<Word> words = words_of(name);
  return joined_key(words, 0, words.size());
}

}  // namespace benchleaf::query
