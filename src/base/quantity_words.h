#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "base/quantity.h"

namespace benchleaf::base {

// How the words of a quantity are told apart; used by the reader of quantities alone.

inline constexpr std::string_view kPlusMinus = "\xC2\xB1";

/// A hyphen, a minus sign or a dash of any length.
bool is_dash(char32_t code);
/// A space of any kind that stands inside a line, or a line end.
bool is_space(char32_t code);
/// A sign, a dash or ± with a digit or a point behind it.
bool is_signed_number(std::string_view word);
/// The same, or a tolerance typed with `+/-`.
bool is_tolerance(std::string_view word);
/// Bytes of the number that a word begins with, sign and faulty points and commas included.
std::size_t number_length(std::string_view word);

/// `not stated`, `not known`, `none`, or nothing.
std::optional<QuantityForm> state_form(std::string_view text);
/// The state word that a text such as `n/a` or `Not known` stands for, or empty.
std::string_view state_meant(std::string_view text);
/// Bytes of a word or sign at the start of a word that makes a number vague (`about`, `<`), or 0.
std::size_t qualifier_length(std::string_view word);

}  // namespace benchleaf::base
