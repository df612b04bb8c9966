// In: registry numbers and formulas as written. Out: the check signs they call for, the atoms they stand for, their mass.

#include "standards/chemical_numbers.h"

#include <vector>

#include "base/ascii.h"
#include "base/number.h"
#include "standards/table_view.h"

namespace benchleaf::standards {
namespace {

constexpr std::string_view kMasses = "atomic-masses";
constexpr std::string_view kDot = "\xC2\xB7";
constexpr int kMostAtoms = 9999;

/// The digits before the last hyphen, or nothing where other signs stand among them or the check sign is not alone.
std::optional<std::vector<int>> digits_before_check(std::string_view number) {
  const std::size_t last = number.rfind('-');
  if (last == std::string_view::npos || last + 2 != number.size()) return std::nullopt;
  std::vector<int> digits;
  for (const char c : number.substr(0, last)) {
    if (c == '-') continue;
    if (!base::is_digit(c)) return std::nullopt;
    digits.push_back(c - '0');
  }
  return digits;
}

/// Reads a formula from left to right; brackets nest.
class FormulaReader {
 public:
  FormulaReader(std::string_view text, const model::Tables& tables) : text_(text), tables_(tables) {}

  std::variant<Atoms, FormulaError> read() {
    Atoms all;
    while (at_ < text_.size() && !error_) {
      const int times = count();
      for (const auto& [element, atoms] : group()) all[element] += atoms * times;
      if (error_) break;
      if (text_.substr(at_, kDot.size()) == kDot) {
        at_ += kDot.size();
      } else if (at_ < text_.size() && text_[at_] == '.') {
        ++at_;
      } else if (at_ < text_.size()) {
        fail("no element and no bracket begins here");
      }
    }
    if (!error_ && all.empty()) fail("the formula is empty");
    if (error_) return *error_;
    return all;
  }

 private:
  void fail(std::string reason) {
    if (!error_) error_ = FormulaError{at_, std::move(reason)};
  }

  int count() {
    int number = 0;
    bool any = false;
    for (; at_ < text_.size() && base::is_digit(text_[at_]); ++at_, any = true) {
      number = number * 10 + (text_[at_] - '0');
      if (number > kMostAtoms) fail("more than 9999 atoms");
      if (error_) return 1;
    }
    if (any && number == 0) fail("no atoms at all");
    return any ? number : 1;
  }

  Atoms group() {
    Atoms atoms;
    while (at_ < text_.size() && !error_) {
      const char c = text_[at_];
      if (c == '(') {
        ++at_;
        const Atoms inner = group();
        if (at_ >= text_.size() || text_[at_] != ')') fail("a bracket is not closed");
        if (error_) break;
        ++at_;
        const int times = count();
        for (const auto& [element, number] : inner) atoms[element] += number * times;
      } else if (c >= 'A' && c <= 'Z') {
        const std::string element = symbol();
        if (!error_) atoms[element] += count();
      } else {
        break;
      }
    }
    return atoms;
  }

  /// The longest symbol of the table that begins here: Co before C.
  std::string symbol() {
    for (const std::size_t length : {std::size_t{2}, std::size_t{1}}) {
      const std::string_view word = text_.substr(at_, length);
      if (word.size() != length || row_of(tables_, kMasses, word) == nullptr) continue;
      at_ += length;
      return std::string(word);
    }
    fail("no element of the table begins here");
    return {};
  }

  std::string_view text_;
  const model::Tables& tables_;
  std::size_t at_ = 0;
  std::optional<FormulaError> error_;
};

}  // namespace

std::optional<char> cas_check_digit(std::string_view number) {
  const auto digits = digits_before_check(number);
  if (!digits || digits->empty()) return std::nullopt;
  int sum = 0;
  for (std::size_t i = 0; i < digits->size(); ++i) sum += digits->at(digits->size() - 1 - i) * static_cast<int>(i + 1);
  return static_cast<char>('0' + sum % 10);
}

std::optional<char> index_check_sign(std::string_view number) {
  const auto digits = digits_before_check(number);
  constexpr std::size_t kDigits = 8;
  if (!digits || digits->size() != kDigits) return std::nullopt;
  int sum = 0;
  for (std::size_t i = 0; i < digits->size(); ++i) sum += digits->at(i) * static_cast<int>(i + 1);
  const int rest = sum % 11;
  return rest == 10 ? 'X' : static_cast<char>('0' + rest);
}

std::variant<Atoms, FormulaError> read_formula(std::string_view formula, const model::Tables& tables) {
  return FormulaReader(formula, tables).read();
}

double molar_mass(const Atoms& atoms, const model::Tables& tables) {
  double mass = 0;
  for (const auto& [element, number] : atoms) {
    const auto* row = row_of(tables, kMasses, element);
    const auto value = row == nullptr ? std::nullopt : cell_value(*row, "mass", base::Unit::gram_per_mole);
    mass += value.value_or(0) * number;
  }
  return base::tidy(mass);
}

}  // namespace benchleaf::standards
