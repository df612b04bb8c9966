// In: the text of a quantity. Out: the quantity, or the first fault with the place it stands at and how to write it well.
// Forms: NUMBER [UNIT] | NUMBER to NUMBER [UNIT] | NUMBER UNIT ±NUMBER | NUMBER UNIT +NUMBER -NUMBER | a state word.
#include <algorithm>
#include <array>
#include <utility>

#include "base/ascii.h"
#include "base/number.h"
#include "base/quantity.h"
#include "base/quantity_words.h"
#include "base/utf8.h"

namespace benchleaf::base {

namespace {

constexpr int kMostMends = 4;  ///< faults in one text that a hint may put right
constexpr std::size_t kLongestText = 200;

using Result = std::variant<Quantity, QuantityError>;

/// In quotes, and well-formed whatever was typed.
std::string quoted(std::string_view text) { return "\"" + to_utf8(code_points(text)) + "\""; }

/// A stretch of the text between two spaces.
struct Word {
  std::string_view text;
  std::size_t offset = 0;
};

class QuantityReader {
 public:
  QuantityReader(std::string_view text, int mends) : text_(text), mends_(mends) {}

  Result run() {
    quantity_.written = std::string(text_);
    if (check_spaces() && !read_state() && !error_ && split() && read_figures() && read_unit() && read_tolerance()) work_out();
    if (error_) return *error_;
    return quantity_;
  }

 private:
  bool check_spaces();
  bool read_state();
  bool split();
  bool read_figures();
  bool read_first(const Word& word);
  bool read_range_end();
  bool refuse_second_word(const Word& word);
  bool read_number_word(const Word& word, std::string_view number, std::size_t figure);
  bool read_unit();
  bool refuse_unit(const std::string& unit, std::size_t first, std::size_t last);
  bool refuse_second_unit(std::size_t to);
  bool read_tolerance();
  bool read_plus_and_minus();
  bool refuse_tolerance(const Word& word, std::string message, const std::string& better);
  void work_out();

  std::string join(std::size_t first, std::size_t last) const;
  /// The text with `better` in place of the words from first to before last.
  std::string with(std::size_t first, std::size_t last, const std::string& better) const;
  /// A text that ought to be right: itself, or what its own hint says, or nothing.
  std::string mended(const std::string& text) const;
  bool fail(QuantityFault fault, std::size_t offset, std::size_t bytes, std::string message, std::string hint = {});
  bool fail(QuantityFault fault, const Word& word, std::string message, std::string hint = {}) {
    return fail(fault, word.offset, word.text.size(), std::move(message), std::move(hint));
  }

  std::string_view text_;
  int mends_;
  std::vector<Word> words_;
  std::size_t next_ = 0;  ///< first word not yet read
  Quantity quantity_;
  std::array<double, 3> values_{};
  std::optional<QuantityError> error_;
};

std::string QuantityReader::join(std::size_t first, std::size_t last) const {
  std::string text;
  for (std::size_t i = first; i < last; ++i) text += (text.empty() ? "" : " ") + std::string(words_.at(i).text);
  return text;
}

std::string QuantityReader::with(std::size_t first, std::size_t last, const std::string& better) const {
  std::string text = join(0, first);
  for (const std::string& part : {better, join(last, words_.size())}) {
    if (!text.empty() && !part.empty()) text += ' ';
    text += part;
  }
  return text;
}

std::string QuantityReader::mended(const std::string& text) const {
  if (mends_ >= kMostMends || text == text_) return {};
  const Result result = QuantityReader(text, mends_ + 1).run();
  if (const auto* error = std::get_if<QuantityError>(&result)) return error->hint;
  return text;
}

bool QuantityReader::fail(QuantityFault fault, std::size_t offset, std::size_t bytes, std::string message, std::string hint) {
  const int start = static_cast<int>(count_code_points(text_.substr(0, offset)));
  const int length = static_cast<int>(count_code_points(text_.substr(offset, bytes)));
  error_ = QuantityError{fault, start, length, std::move(message), std::move(hint)};
  return false;
}

bool QuantityReader::check_spaces() {
  std::string tidied;
  std::optional<std::size_t> odd;
  bool gap = true;  // a space here would stand at the start, or behind another one
  for (std::size_t at = 0; at < text_.size();) {
    const Utf8Step step = next_code_point(text_, at);
    const bool space = is_space(step.code);
    if (space && (gap || step.code != ' ') && !odd) odd = at;
    if (space && !gap) tidied += ' ';
    if (!space) tidied += text_.substr(at, step.length);
    gap = space;
    at += step.length;
  }
  if (!tidied.empty() && tidied.back() == ' ') {
    tidied.pop_back();
    if (!odd) odd = text_.size() - 1;
  }
  if (tidied.empty()) return fail(QuantityFault::empty, 0, text_.size(), "found nothing, expected a quantity");
  if (text_.size() > kLongestText) {
    return fail(QuantityFault::number, 0, text_.size(), "found a text of more than 200 bytes, expected a quantity");
  }
  if (!odd) return true;
  return fail(QuantityFault::spacing, *odd, next_code_point(text_, *odd).length,
              "found a space that does not belong, expected single, ordinary spaces", mended(tidied));
}

bool QuantityReader::read_state() {
  if (const std::optional<QuantityForm> form = state_form(text_)) {
    quantity_.form = *form;
    return true;
  }
  const std::string_view meant = state_meant(text_);
  if (meant.empty()) return false;
  return fail(QuantityFault::state_word, 0, text_.size(),
              "found " + quoted(text_) + ", expected a quantity, not stated, not known or none", std::string(meant));
}

bool QuantityReader::split() {
  for (std::size_t start = 0; start <= text_.size();) {
    const std::size_t end = std::min(text_.find(' ', start), text_.size());
    words_.push_back({text_.substr(start, end - start), start});
    start = end + 1;
  }
  const std::size_t vague = qualifier_length(words_.front().text);
  if (vague == 0) return true;
  const Word shown = {words_.front().text.substr(0, vague), 0};
  return fail(QuantityFault::qualifier, shown, "found " + quoted(shown.text) + ", expected a number",
              "state a range (4 to 5 mm) or a tolerance (4 mm +0.5 -0)");
}

bool QuantityReader::read_number_word(const Word& word, std::string_view number, std::size_t figure) {
  const ReadNumber read = read_number(number);
  const std::size_t offset = word.offset + static_cast<std::size_t>(number.data() - word.text.data());
  if (read.fault != NumberFault::none) {
    std::string hint = read.hint;
    if (!hint.empty() && hint.find(" or ") == std::string::npos) {
      const std::string before(text_.substr(0, offset));
      hint = mended(before + hint + std::string(text_.substr(offset + number.size())));
    }
    return fail(QuantityFault::number, offset, number.size(),
                "found " + std::string(fault_words(read.fault)) + " (" + std::string(number) + "), expected a number such as 7.9",
                std::move(hint));
  }
  quantity_.figures.at(figure) = std::string(number);
  quantity_.decimals = std::max(quantity_.decimals, read.decimals);
  values_.at(figure) = *read.value;
  return true;
}

/// The first word is the number; a unit or a second number may hang on it.
bool QuantityReader::read_first(const Word& word) {
  const std::size_t length = number_length(word.text);
  const std::string_view number = word.text.substr(0, length);
  const std::string_view rest = word.text.substr(length);
  if (length == 0) {
    return fail(QuantityFault::number, word, "found " + quoted(word.text) + ", expected a number");
  }
  const std::string behind = with(0, 1, "");
  const std::string tail = behind.empty() ? "" : " " + behind;
  const std::size_t dots = number.find("..");
  if (dots != std::string_view::npos && is_digit(number.front())) {
    const std::string better = std::string(number.substr(0, dots)) + " to " + std::string(number.substr(dots + 2)) + tail;
    return fail(QuantityFault::range_form, word, "found a range written with dots, expected " + quoted("to"), mended(better));
  }
  if (rest.empty()) return read_number_word(word, number, 0);
  const std::size_t dash = next_code_point(rest, 0).length;
  if (is_signed_number(rest) && is_dash(next_code_point(rest, 0).code)) {
    const std::string better = std::string(number) + " to " + std::string(rest.substr(dash)) + tail;
    return fail(QuantityFault::range_form, word, "found a range written with a dash, expected " + quoted("to"), mended(better));
  }
  if (rest.front() == '/' || rest.front() == '+') {
    return fail(QuantityFault::number, word, "found " + quoted(word.text) + ", expected a decimal number");
  }
  return fail(QuantityFault::spacing, word.offset + length, rest.size(),
              "found no space between the number and " + quoted(rest) + ", expected one",
              mended(std::string(number) + " " + std::string(rest) + tail));
}

bool QuantityReader::refuse_second_word(const Word& word) {
  const Utf8Step first = next_code_point(word.text, 0);
  const bool alone = word.text.size() == first.length;
  if ((alone && (is_dash(first.code) || first.code == 0x2026)) || word.text == "..") {
    return fail(QuantityFault::range_form, word, "found " + quoted(word.text) + " between two numbers, expected " + quoted("to"),
                mended(with(1, 2, "to")));
  }
  if (is_tolerance(word.text)) {
    const std::string message = "found the tolerance before the unit, expected it behind";
    std::size_t unit = 1;
    while (unit < words_.size() && is_tolerance(words_.at(unit).text)) ++unit;
    const std::string behind = join(unit, words_.size());
    if (behind.empty()) return true;                                              // of a plain number
    const bool clear = unit > 2 || !is_dash(next_code_point(word.text, 0).code);  // 4 -5 mm: a range?
    const std::string better = clear ? join(0, 1) + " " + behind + " " + join(1, unit) : "";
    return refuse_tolerance(word, message, better);
  }
  if (!is_digit(word.text.front())) return true;
  const bool group =
      word.text.substr(0, 3).find_first_not_of("0123456789") == std::string_view::npos && number_length(word.text) >= 3;
  return fail(QuantityFault::grouping, word,
              "found a second number " + quoted(word.text) + ", expected a unit, or a number without spaces in it",
              group ? mended(with(0, 2, std::string(words_.front().text) + std::string(word.text))) : std::string());
}

bool QuantityReader::read_range_end() {
  if (words_.size() < 3) {
    return fail(QuantityFault::range_form, words_.at(1), "found nothing behind " + quoted("to") + ", expected a number");
  }
  const Word& end = words_.at(2);
  const std::size_t length = number_length(end.text);
  if (length == 0) return fail(QuantityFault::number, end, "found " + quoted(end.text) + ", expected a number");
  if (length < end.text.size()) {
    const std::string better = std::string(end.text.substr(0, length)) + " " + std::string(end.text.substr(length));
    return fail(QuantityFault::spacing, end.offset + length, end.text.size() - length,
                "found no space between the number and " + quoted(end.text.substr(length)) + ", expected one",
                mended(with(2, 3, better)));
  }
  if (!read_number_word(end, end.text, 1)) return false;
  quantity_.form = QuantityForm::range;
  next_ = 3;
  if (values_[0] < values_[1]) return true;
  const bool same = values_[0] == values_[1];
  const std::string better =
      same ? with(0, 3, quantity_.figures[0]) : with(0, 3, quantity_.figures[1] + " to " + quantity_.figures[0]);
  return fail(
      QuantityFault::range_order, 0, end.offset + end.text.size(),
      same ? "found a range whose ends are the same" : "found a range whose first end is the higher one, expected the lower one",
      mended(better));
}

bool QuantityReader::read_figures() {
  if (!read_first(words_.front())) return false;
  quantity_.form = QuantityForm::value;
  next_ = 1;
  if (words_.size() == 1) return true;
  if (words_.at(1).text == "to") return read_range_end();
  return refuse_second_word(words_.at(1));
}

/// `4.0 mm to 4.2 mm`
bool QuantityReader::refuse_second_unit(std::size_t to) {
  const std::string first = join(next_, to);
  const bool whole = to + 1 < words_.size();
  const std::string second = whole ? join(to + 2, words_.size()) : "";
  const std::string better = join(0, next_) + " to " + join(to + 1, words_.size());
  const bool same = whole && unit_named(first) && unit_named(first) == unit_named(second);
  return fail(QuantityFault::mixed_units, words_.at(next_).offset, first.size(),
              "found the unit " + quoted(first) + " before " + quoted("to") + ", expected one unit for both ends, at the end",
              same ? mended(better) : std::string());
}

bool QuantityReader::refuse_unit(const std::string& unit, std::size_t first, std::size_t last) {
  const std::size_t offset = words_.at(first).offset;
  for (std::size_t end = last - 1; end > first; --end) {
    if (!unit_named(join(first, end))) continue;
    return fail(QuantityFault::unknown_unit, words_.at(end).offset, join(end, last).size(),
                "found " + quoted(join(end, last)) + " behind the unit, expected nothing more", mended(with(end, last, "")));
  }
  const std::optional<Unit> meant = unit_meant(unit);
  return fail(QuantityFault::unknown_unit, offset, unit.size(), "found the unknown unit " + quoted(unit),
              meant ? mended(with(first, last, std::string(unit_info(*meant).symbol))) : std::string());
}

bool QuantityReader::read_unit() {
  const std::size_t first = next_;
  std::size_t last = first;
  while (last < words_.size() && !is_tolerance(words_.at(last).text)) {
    if (words_.at(last).text == "to") return refuse_second_unit(last);
    ++last;
  }
  next_ = last;
  if (first == last) return true;
  const std::string unit = join(first, last);
  const std::optional<Unit> known = unit_named(unit);
  if (!known) return refuse_unit(unit, first, last);
  quantity_.unit = *known;
  return true;
}

bool QuantityReader::refuse_tolerance(const Word& word, std::string message, const std::string& better) {
  return fail(QuantityFault::tolerance_form, word, std::move(message), better.empty() ? better : mended(better));
}

bool QuantityReader::read_plus_and_minus() {
  const Word& plus = words_.at(next_);
  if (next_ + 1 == words_.size()) {
    return refuse_tolerance(
        plus, "found one side of a tolerance, expected +a -b or ±a",
        plus.text.front() == '+' ? std::string(text_) + " -0" : with(next_, next_ + 1, "+0 " + std::string(plus.text)));
  }
  const Word& minus = words_.at(next_ + 1);
  if (plus.text.front() != '+') {
    const bool swapped = minus.text.front() == '+' && is_signed_number(minus.text);
    return refuse_tolerance(plus, "found " + quoted(plus.text) + ", expected the plus side first",
                            swapped ? with(next_, next_ + 2, std::string(minus.text) + " " + std::string(plus.text)) : "");
  }
  if (!is_signed_number(minus.text) || !is_dash(next_code_point(minus.text, 0).code)) {
    return refuse_tolerance(minus, "found " + quoted(minus.text) + ", expected the minus side, such as -0.2", {});
  }
  const std::size_t sign = next_code_point(minus.text, 0).length;
  if (sign > 1) {
    return refuse_tolerance(minus, "found a dash or minus sign other than -",
                            with(next_ + 1, next_ + 2, "-" + std::string(minus.text.substr(sign))));
  }
  if (!read_number_word(plus, plus.text.substr(1), 1) || !read_number_word(minus, minus.text.substr(1), 2)) return false;
  next_ += 2;
  return true;
}

bool QuantityReader::read_tolerance() {
  if (next_ == words_.size()) return true;
  const Word& word = words_.at(next_);
  if (quantity_.form == QuantityForm::range) {
    return refuse_tolerance(word, "found a tolerance behind a range, expected one or the other", {});
  }
  for (std::string_view typed : {std::string_view("+/-"), std::string_view("+-")}) {
    if (!word.text.starts_with(typed)) continue;
    return refuse_tolerance(word, "found " + quoted(typed) + ", expected " + quoted(kPlusMinus),
                            with(next_, next_ + 1, std::string(kPlusMinus) + std::string(word.text.substr(typed.size()))));
  }
  if (word.text == kPlusMinus) {
    const std::string figure = next_ + 1 < words_.size() ? std::string(words_.at(next_ + 1).text) : "";
    return refuse_tolerance(word, "found a space behind ±, expected none",
                            figure.empty() ? "" : with(next_, next_ + 2, std::string(kPlusMinus) + figure));
  }
  if (word.text.starts_with(kPlusMinus)) {
    if (!read_number_word(word, word.text.substr(kPlusMinus.size()), 1)) return false;
    quantity_.figures[2] = quantity_.figures[1];
    values_[2] = values_[1];
    ++next_;
  } else if (!read_plus_and_minus()) {
    return false;
  }
  quantity_.form = QuantityForm::toleranced;
  if (next_ == words_.size()) return true;
  // the same unit once more may go; a percentage of the nominal is another matter
  const std::string more = join(next_, words_.size());
  const bool same_unit = unit_named(more) == quantity_.unit;
  return refuse_tolerance(words_.at(next_), "found " + quoted(more) + " behind the tolerance, expected nothing more",
                          same_unit ? with(next_, words_.size(), "") : "");
}

void QuantityReader::work_out() {
  Interval& stated = quantity_.stated;
  switch (quantity_.form) {
    case QuantityForm::range: stated = {tidy((values_[0] + values_[1]) / 2), values_[0], values_[1]}; break;
    case QuantityForm::toleranced: stated = {values_[0], tidy(values_[0] - values_[2]), tidy(values_[0] + values_[1])}; break;
    default: stated = {values_[0], values_[0], values_[0]}; break;
  }
}

}  // namespace

Result parse_quantity(std::string_view text) { return QuantityReader(text, 0).run(); }

}  // namespace benchleaf::base
