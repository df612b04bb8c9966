// In: a quantity that was read, and the dimensions its place asks for. Out: the quantity, or why it does not fit there.
#include <algorithm>

#include "base/id.h"
#include "base/quantity.h"
#include "base/utf8.h"

namespace benchleaf::base {

namespace {

using Dimensions = std::vector<Dimension>;

std::string with_article(std::string_view dimension) {
  const bool vowel = dimension.find_first_of("aeiou") == 0;
  return (vowel ? "an " : "a ") + std::string(dimension);
}

/// `a length or a ratio`
std::string dimension_words(const Dimensions& wanted) {
  std::vector<std::string> words;
  for (Dimension dimension : wanted) words.push_back(with_article(dimension_info(dimension).text));
  return or_list(words);
}

/// `mm, cm or m`: all units that fit, so that a hint never guesses one.
std::string unit_words(const Dimensions& wanted) {
  std::vector<std::string> words;
  for (const UnitInfo& info : all_units()) {
    const bool fits = std::any_of(wanted.begin(), wanted.end(), [&info](Dimension one) { return accepts(one, info.dimension); });
    if (fits && info.unit != Unit::one) words.emplace_back(info.symbol);
  }
  return or_list(words);
}

QuantityError whole_text(const Quantity& quantity, QuantityFault fault, std::string message, std::string hint) {
  return {fault, 0, static_cast<int>(count_code_points(quantity.written)), std::move(message), std::move(hint)};
}

QuantityError other_dimension(const Quantity& quantity, const Dimensions& wanted) {
  const std::string expected = ", expected " + dimension_words(wanted);
  const std::string units = unit_words(wanted);
  const std::string example(dimension_info(wanted.front()).example);
  if (quantity.unit == Unit::one) {
    return whole_text(quantity, QuantityFault::missing_unit, "found a number without a unit" + expected + ", such as " + example,
                      "add the unit: " + units);
  }
  return whole_text(quantity, QuantityFault::wrong_dimension,
                    "found " + with_article(dimension_info(quantity.dimension()).text) + expected + ", such as " + example,
                    units.empty() ? "write the number alone" : "give it in " + units);
}

}  // namespace

std::optional<QuantityError> check_quantity(const Quantity& quantity, const Dimensions& wanted) {
  if (!quantity.has_value() || wanted.empty()) return std::nullopt;
  const auto fitting =
      std::find_if(wanted.begin(), wanted.end(), [&quantity](Dimension one) { return accepts(one, quantity.dimension()); });
  if (fitting == wanted.end()) return other_dimension(quantity, wanted);
  if (quantity.dimension() == Dimension::temperature && to_si(quantity.stated.low, quantity.unit) < 0) {
    return whole_text(quantity, QuantityFault::negative, "found a temperature below absolute zero (-273.15 °C)", {});
  }
  if (quantity.stated.low < 0 && !dimension_info(*fitting).may_be_negative) {
    return whole_text(quantity, QuantityFault::negative,
                      "found " + with_article(dimension_info(*fitting).text) + " below zero, expected zero or more", {});
  }
  return std::nullopt;
}

std::variant<Quantity, QuantityError> parse_quantity(std::string_view text, const Dimensions& wanted) {
  std::variant<Quantity, QuantityError> result = parse_quantity(text);
  if (auto* error = std::get_if<QuantityError>(&result)) {
    const bool bare = error->fault == QuantityFault::unknown_unit && error->hint.empty();
    if (bare && !unit_words(wanted).empty()) error->hint = "known here: " + unit_words(wanted);
    return result;
  }
  if (std::optional<QuantityError> error = check_quantity(std::get<Quantity>(result), wanted)) return *error;
  return result;
}

}  // namespace benchleaf::base
