// In: one word of a quantity. Out: what it is: a number, a tolerance, a state word, a word that makes a number vague.
#include "base/quantity_words.h"

#include <algorithm>
#include <array>

#include "base/ascii.h"
#include "base/utf8.h"

namespace benchleaf::base {

namespace {

struct StateWord {
  std::string_view text;
  QuantityForm form;
};
constexpr std::array<StateWord, 3> kStates = {
    {{"not stated", QuantityForm::not_stated}, {"not known", QuantityForm::not_known}, {"none", QuantityForm::none}}};
constexpr std::array<std::array<std::string_view, 2>, 11> kMeantStates = {{{"not stated", "not stated"},
                                                                           {"not known", "not known"},
                                                                           {"none", "none"},
                                                                           {"unknown", "not known"},
                                                                           {"?", "not known"},
                                                                           {"-", "not known"},
                                                                           {"n/a", "none"},
                                                                           {"nil", "none"},
                                                                           {"no", "none"},
                                                                           {"not given", "not stated"},
                                                                           {"unstated", "not stated"}}};
constexpr std::array<std::string_view, 17> kQualifiers = {"about", "ca",    "ca.",   "approx", "approx.", "around",
                                                          "circa", "over",  "under", "max",    "max.",    "up",
                                                          "from",  "below", "above", "at",     "nearly"};
// The last four: less or equal, greater or equal, almost equal, tilde operator.
constexpr std::array<std::string_view, 7> kQualifyingSigns = {
    "~", "<", ">", "\xE2\x89\xA4", "\xE2\x89\xA5", "\xE2\x89\x88", "\xE2\x88\xBC"};

/// Bytes of an exponent such as `e-3` at the start of a text, or 0.
std::size_t exponent_length(std::string_view text) {
  if (text.empty() || (text.front() != 'e' && text.front() != 'E')) return 0;
  std::size_t at = 1;
  if (at < text.size() && (text[at] == '-' || text[at] == '+')) ++at;
  const std::size_t digits = at;
  while (at < text.size() && is_digit(text[at])) ++at;
  return at > digits ? at : 0;
}

}  // namespace

bool is_dash(char32_t code) { return code == '-' || code == 0x2212 || (code >= 0x2010 && code <= 0x2014); }

bool is_space(char32_t code) {
  const bool ascii = code == ' ' || code == '\t' || code == '\n' || code == '\r';
  return ascii || code == 0xA0 || (code >= 0x2000 && code <= 0x200A) || code == 0x202F || code == 0x3000;
}

bool is_signed_number(std::string_view word) {
  if (word.empty()) return false;
  const Utf8Step sign = next_code_point(word, 0);
  if (sign.code != '+' && sign.code != 0xB1 && !is_dash(sign.code)) return false;
  return sign.length < word.size() && (is_digit(word[sign.length]) || word[sign.length] == '.');
}

bool is_tolerance(std::string_view word) {
  return is_signed_number(word) || word.starts_with(kPlusMinus) || word.starts_with("+/-") || word.starts_with("+-");
}

std::size_t number_length(std::string_view word) {
  std::size_t at = is_signed_number(word) ? next_code_point(word, 0).length : 0;
  while (at < word.size() && (is_digit(word[at]) || word[at] == '.' || word[at] == ',')) ++at;
  return at == 0 ? 0 : at + exponent_length(word.substr(at));
}

std::optional<QuantityForm> state_form(std::string_view text) {
  for (const StateWord& state : kStates) {
    if (text == state.text) return state.form;
  }
  return std::nullopt;
}

std::string_view state_meant(std::string_view text) {
  const std::string low = lower_ascii(text);
  for (const auto& [word, meant] : kMeantStates) {
    if (low == word) return meant;
  }
  return {};
}

std::size_t qualifier_length(std::string_view word) {
  for (std::string_view sign : kQualifyingSigns) {
    if (word.starts_with(sign)) return sign.size();
  }
  const bool known = std::find(kQualifiers.begin(), kQualifiers.end(), lower_ascii(word)) != kQualifiers.end();
  return known ? word.size() : 0;
}

}  // namespace benchleaf::base
