// In: units.def and dimensions.def, and the words contributors write for units. Out: units, factors, what fits what.
#include "base/unit.h"

#include <algorithm>
#include <array>
#include <map>

#include "base/ascii.h"
#include "base/id.h"

namespace benchleaf::base {

namespace {

using UnitsByText = std::map<std::string_view, Unit, std::less<>>;

std::vector<std::string_view> spellings_of(const UnitInfo& info) {
  std::vector<std::string_view> all = {info.symbol};
  std::string_view rest = info.spellings;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find('|'), rest.size());
    all.push_back(rest.substr(0, end));
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return all;
}

const UnitsByText& units_by_text() {
  static const UnitsByText units_by_word = [] {
    UnitsByText units;
    for (const UnitInfo& info : all_units()) {
      for (std::string_view text : spellings_of(info)) units.emplace(text, info.unit);
    }
    return units;
  }();
  return units_by_word;
}

void replace_all(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) {
    text.replace(at, from.size(), to);
  }
}

/// What is left of a spelling when case, powers, full stops and American endings are evened out.
std::string evened(std::string_view text) {
  constexpr std::array<std::array<std::string_view, 2>, 9> kSame = {{{"\xC2\xBA", "\xC2\xB0"},  // ordinal sign for degree
                                                                     {"\xE2\x84\x83",
                                                                      "\xC2\xB0"
                                                                      "c"},  // one-letter degree Celsius
                                                                     {"\xCE\xBC", "u"},
                                                                     {"\xC2\xB5", "u"},
                                                                     {"\xC2\xB2", "2"},
                                                                     {"\xC2\xB3", "3"},
                                                                     {"^", ""},
                                                                     {"meter", "metre"},
                                                                     {"liter", "litre"}}};
  std::string low = lower_ascii(text);
  for (const auto& [from, to] : kSame) replace_all(low, from, to);
  if (!low.empty() && low.back() == '.') low.pop_back();
  return low;
}

/// Whether the text is the name of the unit in words: `millimetres`, `degrees Celsius`, `inches`.
bool is_name(const std::string& low, const UnitInfo& info) {
  std::string name(info.name);
  std::replace(name.begin(), name.end(), '_', ' ');
  std::string single = low;
  replace_all(single, "degrees", "degree");
  replace_all(single, "inches", "inch");
  return single == name || single == name + "s";
}

}  // namespace

const std::vector<DimensionInfo>& all_dimensions() {
  static const std::vector<DimensionInfo> all = {
#define BENCHLEAF_DIMENSION(name, text, base, length, mass, time, current, temperature, amount, negative, si, example) \
  {Dimension::name, text, Dimension::base, {length, mass, time, current, temperature, amount}, negative, si, example},
#include "base/dimensions.def"
#undef BENCHLEAF_DIMENSION
  };
  return all;
}

const std::vector<UnitInfo>& all_units() {
  static const std::vector<UnitInfo> all = {
#define BENCHLEAF_UNIT(name, symbol, spellings, dimension, numerator, denominator, offset, gnu) \
  {Unit::name, #name, symbol, spellings, Dimension::dimension, numerator, denominator, offset, gnu},
#include "base/units.def"
#undef BENCHLEAF_UNIT
  };
  return all;
}

const DimensionInfo& dimension_info(Dimension dimension) { return all_dimensions().at(static_cast<std::size_t>(dimension)); }

const UnitInfo& unit_info(Unit unit) { return all_units().at(static_cast<std::size_t>(unit)); }

std::optional<Dimension> dimension_named(std::string_view text) {
  for (const DimensionInfo& info : all_dimensions()) {
    if (info.text == text) return info.dimension;
  }
  return std::nullopt;
}

std::optional<Unit> unit_named(std::string_view text) {
  const auto found = units_by_text().find(text);
  if (found == units_by_text().end()) return std::nullopt;
  return found->second;
}

std::optional<Unit> unit_meant(std::string_view text) {
  constexpr std::size_t kLongest = 40;  // of what could still be the name of a unit
  if (text.empty() || text.size() > kLongest) return std::nullopt;
  const std::string low = evened(text);
  std::vector<std::string> words;
  for (const UnitInfo& info : all_units()) {
    if (is_name(low, info)) return info.unit;
    for (std::string_view spelling : spellings_of(info)) {
      if (spelling.empty()) continue;
      if (evened(spelling) == low) return info.unit;
      words.emplace_back(spelling);
    }
  }
  const std::string nearest = nearest_word(text, words);
  if (nearest.empty()) return std::nullopt;
  return unit_named(nearest);
}

bool accepts(Dimension wanted, Dimension found) {
  if (wanted == found) return true;
  switch (wanted) {
    case Dimension::concentration:
      return found == Dimension::mass_fraction || found == Dimension::volume_fraction || found == Dimension::mass_concentration ||
             found == Dimension::amount_concentration;
    case Dimension::stress: return found == Dimension::pressure;
    case Dimension::rate: return found == Dimension::ratio;
    default: return false;
  }
}

bool convertible(Unit from, Unit to) {
  return dimension_info(unit_info(from).dimension).base == dimension_info(unit_info(to).dimension).base;
}

double to_si(double value, Unit unit) {
  const UnitInfo& info = unit_info(unit);
  return (value + info.offset) * info.numerator / info.denominator;
}

double from_si(double si, Unit unit) {
  const UnitInfo& info = unit_info(unit);
  return si * info.denominator / info.numerator - info.offset;
}

}  // namespace benchleaf::base
