// In: a quantity that was read, or figures that were derived. Out: values in another unit, and the printed forms.
#include "base/quantity.h"

#include <cmath>

#include "base/ascii.h"
#include "base/number.h"

namespace benchleaf::base {

namespace {

constexpr std::string_view kNotStated = "not stated";
constexpr std::string_view kNotKnown = "not known";
constexpr std::string_view kNone = "none";

/// The unit behind a figure: words take a plural, symbols do not.
std::string unit_text(Unit unit, bool plural) {
  const bool word = unit == Unit::month || unit == Unit::year;
  return std::string(unit_info(unit).symbol) + (word && plural ? "s" : "");
}

/// ` mm`, with thin spaces.
std::string unit_behind(Unit unit, bool plural) {
  if (unit == Unit::one) return {};
  std::string text = unit_text(unit, plural);
  for (std::size_t at = text.find(' '); at != std::string::npos; at = text.find(' ', at)) text.replace(at, 1, kThinSpace);
  return std::string(kThinSpace) + text;
}

}  // namespace

std::optional<Interval> Quantity::in(Unit other) const {
  if (!has_value() || !convertible(unit, other)) return std::nullopt;
  if (unit == other) return stated;
  const bool shifted = unit_info(other).offset != 0;
  const auto convert = [this, other, shifted](double value) {
    const double converted = from_si(to_si(value, unit), other);
    // a difference of two large numbers leaves noise above the last digits
    return tidy(shifted ? std::round(converted * 1e9) / 1e9 : converted);
  };
  return Interval{convert(stated.nominal), convert(stated.low), convert(stated.high)};
}

std::optional<double> Quantity::value_in(Unit other) const {
  const std::optional<Interval> interval = in(other);
  if (!interval) return std::nullopt;
  return interval->nominal;
}

std::string printed(std::string_view figure, Unit unit) { return paper_number(figure) + unit_behind(unit, figure != "1"); }

std::string printed_range(std::string_view low, std::string_view high, Unit unit) {
  return paper_number(low) + " to " + paper_number(high) + unit_behind(unit, true);
}

std::string printed(const Quantity& quantity) {
  const auto& [first, second, third] = quantity.figures;
  switch (quantity.form) {
    case QuantityForm::value: return printed(first, quantity.unit);
    case QuantityForm::range: return printed_range(first, second, quantity.unit);
    case QuantityForm::toleranced: {
      const std::string nominal = printed(first, quantity.unit) + " ";
      if (second == third) return nominal + "\xC2\xB1" + paper_number(second);
      return nominal + "+" + paper_number(second) + " " + std::string(kMinus) + paper_number(third);
    }
    case QuantityForm::not_stated: return std::string(kNotStated);
    case QuantityForm::not_known: return std::string(kNotKnown);
    case QuantityForm::none: return std::string(kNone);
  }
  return {};
}

std::string terminal(const Quantity& quantity) { return to_terminal(printed(quantity)); }

std::string to_terminal(std::string_view printed) {
  std::string text;
  while (!printed.empty()) {
    if (printed.substr(0, kMinus.size()) == kMinus) {
      text += '-';
      printed.remove_prefix(kMinus.size());
    } else if (printed.substr(0, kThinSpace.size()) == kThinSpace) {
      printed.remove_prefix(kThinSpace.size());
      const bool grouping = !text.empty() && is_digit(text.back()) && !printed.empty() && is_digit(printed.front());
      if (!grouping) text += ' ';
    } else {
      text += printed.front();
      printed.remove_prefix(1);
    }
  }
  return text;
}

}  // namespace benchleaf::base
