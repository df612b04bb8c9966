// In: a quantity as it was typed and the unit that its field is usually given in. Out: the quantity, or what is wrong with it.

#include "bench/typed.h"

#include <optional>
#include <string_view>
#include <utility>

#include "base/ascii.h"
#include "base/number.h"
#include "base/unit.h"
#include "standards/table_view.h"

namespace benchleaf::bench {
namespace {

using base::Dimension;

constexpr std::string_view kTable = "everyday-units";
constexpr std::string_view kMinus = "\xE2\x88\x92";
constexpr std::string_view kDash = "\xE2\x80\x93";

void replace_all(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
}

/// Without what carries no meaning: outer and double spaces, a plus in front, a point without its zero, the minus of print.
std::string plain(std::string text) {
  replace_all(text, kMinus, "-");
  replace_all(text, kDash, "-");
  replace_all(text, "  ", " ");
  while (!text.empty() && text.front() == ' ') text.erase(0, 1);
  while (!text.empty() && text.back() == ' ') text.pop_back();
  if (text.size() > 1 && text.front() == '+') text.erase(0, 1);
  const std::size_t sign = !text.empty() && text.front() == '-' ? 1 : 0;
  if (text.size() > sign + 1 && text[sign] == '.') text.insert(sign, "0");
  return text;
}

/// Where the unit of a text begins: behind the last space, else behind the figures: `0.1cm3`.
std::size_t unit_start(const std::string& text) {
  const std::size_t space = text.rfind(' ');
  const std::size_t from = space == std::string::npos ? 0 : space + 1;
  const std::size_t start = text.find_first_not_of("0123456789.+-", from);
  return start == std::string::npos ? text.size() : start;
}

/// `3`, or `3 to 5`, times a factor; nothing where it is neither.
std::optional<std::string> scaled(const std::string& figures, double factor) {
  const std::size_t to = figures.find(" to ");
  const auto first = base::parse_decimal(figures.substr(0, to));
  if (!first) return std::nullopt;
  if (to == std::string::npos) return base::shortest_text(base::tidy(*first * factor));
  const auto second = base::parse_decimal(figures.substr(to + 4));
  if (!second) return std::nullopt;
  return base::shortest_text(base::tidy(*first * factor)) + " to " + base::shortest_text(base::tidy(*second * factor));
}

/// `35 C` as `35 °C` where a temperature is asked for, `3 ATM` in bar where a pressure is. `typed` learns by what factor.
std::string in_unit_meant(const std::string& text, base::Unit usual, const model::Tables& tables, Typed& typed) {
  const std::size_t start = unit_start(text);
  std::string figures = text.substr(0, start);
  while (!figures.empty() && figures.back() == ' ') figures.pop_back();
  for (const auto& row : standards::rows_of(tables, kTable)) {
    if (row.key != text.substr(start)) continue;
    const auto meant = base::unit_named(standards::cell_text(row, "meant"));
    if (!meant || !base::accepts(base::unit_info(usual).dimension, base::unit_info(*meant).dimension)) continue;
    const auto factor = base::parse_decimal(standards::cell_text(row, "factor"));
    const auto number = factor ? scaled(figures, *factor) : std::nullopt;
    if (!number) continue;
    typed.fact = std::string("table/") + std::string(kTable) + "#" + row.key + ".factor";
    typed.trust = row.trust;
    return *number + " " + std::string(base::unit_info(*meant).symbol);
  }
  return text;
}

bool is_plain_number(const std::string& text) {
  const auto parsed = base::parse_quantity(text);
  const auto* quantity = std::get_if<base::Quantity>(&parsed);
  return quantity != nullptr && quantity->has_value() && quantity->unit == base::Unit::one;
}

/// Where spacing alone is at fault, the hint of the reader is what was meant: `31.85mm` is as clear as `31.85 mm`.
bool is_spacing(const base::QuantityError& error, const std::string& text) {
  return error.fault == base::QuantityFault::spacing && !error.hint.empty() &&
         base::without_spaces(error.hint) == base::without_spaces(text);
}

}  // namespace

Typed read_typed(const std::string& written, base::Unit usual, const model::Tables& tables) {
  const Dimension dimension = base::unit_info(usual).dimension;
  const std::string cleaned = plain(written);
  Typed typed;
  const std::string text = in_unit_meant(cleaned, usual, tables, typed);
  typed.read = base::parse_quantity(text, {dimension});
  if (text != cleaned) typed.note = cleaned + " was read as " + text + ".";
  const auto* error = std::get_if<base::QuantityError>(&typed.read);
  if (error == nullptr) return typed;
  if (is_spacing(*error, text)) {
    typed.read = base::parse_quantity(std::string(error->hint), {dimension});
  } else if (dimension != Dimension::number && is_plain_number(text)) {
    const std::string taken = text + " " + std::string(base::unit_info(usual).symbol);
    typed.read = base::parse_quantity(taken, {dimension});  // or what is wrong with it: too cold, below zero
    if (const auto* parsed = std::get_if<base::Quantity>(&typed.read))
      typed.note = text + " was taken as " + base::to_terminal(base::printed(*parsed)) + ".";
  }
  return typed;
}

}  // namespace benchleaf::bench
