// In: the records and the files they stand in. Out: slips, drawn with a fixed seed.

#include <algorithm>
#include <functional>
#include <regex>
#include <set>

#include "base/ascii.h"
#include "slips/places.h"
#include "slips/slip.h"
#include "support/draw.h"

namespace benchleaf::test {
namespace {

using base::is_digit;
using model::Node;

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

bool has_digit(const std::string& text) { return std::any_of(text.begin(), text.end(), is_digit); }

/// Two neighbouring digits change places, also over a decimal point: 5.4 as 4.5.
std::optional<std::string> transposed(const std::string& text, Draw& draw) {
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  for (std::size_t i = 0; i + 1 < text.size(); ++i) {
    std::size_t next = i + 1;
    if (text[next] == '.' && next + 1 < text.size()) ++next;
    if (is_digit(text[i]) && is_digit(text[next]) && text[i] != text[next]) pairs.emplace_back(i, next);
  }
  if (pairs.empty()) return std::nullopt;
  std::string changed = text;
  const auto& [one, other] = draw.one_of(pairs);
  std::swap(changed[one], changed[other]);
  return changed;
}

/// One of the numbers of a text times ten or by ten, as a wrong decimal point makes it.
std::optional<std::string> point_moved(const std::string& text, Draw& draw) {
  static const std::regex kNumber("[0-9]+([.][0-9]+)?");
  std::vector<std::pair<std::size_t, std::string>> numbers;
  for (std::sregex_iterator at(text.begin(), text.end(), kNumber), end; at != end; ++at) {
    if (at->str().find_first_not_of("0.") != std::string::npos) numbers.emplace_back(at->position(), at->str());
  }
  if (numbers.empty()) return std::nullopt;
  const auto [place, number] = draw.one_of(numbers);
  std::string digits = number;
  std::size_t point = std::min(digits.find('.'), digits.size());
  if (point < digits.size()) digits.erase(point, 1);
  if (draw.below(2) == 0) {
    if (++point > digits.size()) digits += '0';
  } else if (--point == 0) {
    digits.insert(0, 1, '0');
    ++point;
  }
  if (point < digits.size()) digits.insert(point, 1, '.');
  while (digits.size() > 1 && digits[0] == '0' && digits[1] != '.') digits.erase(0, 1);
  std::string changed = text;
  return changed.replace(place, number.size(), digits);
}

/// Units that a hand takes for each other.
std::optional<std::string> unit_swapped(const std::string& text, Draw& draw) {
  static const std::vector<std::pair<std::string, std::vector<std::string>>> kTaken = {
      {"mm", {"cm", "µm", "in"}},  {"µm", {"mm", "nm"}}, {"mAh", {"Ah", "mA"}}, {"V", {"mV"}},
      {"µA", {"mA", "nA"}},        {"mA", {"µA", "A"}},  {"°C", {"°F", "K"}},   {"g/mL", {"kg/m3"}},
      {"g/cm3", {"kg/m3"}},        {"GPa", {"MPa"}},     {"MPa", {"GPa"}},      {"g/mol", {"g"}},
      {"% w/w", {"% v/v", "g/L"}}, {"% v/v", {"% w/w"}}, {"% w/v", {"% w/w"}},  {"%", {"‰"}},
      {"s", {"min", "ms"}},        {"min", {"h", "s"}},  {"kohm", {"ohm"}},     {"a", {"month"}},
      {"g/L", {"% w/w"}},          {"d", {"h"}},         {"mol/L", {"g/L"}},
  };
  const std::size_t unit = text.find_last_of("0123456789");
  if (unit == std::string::npos || unit + 2 >= text.size() || text[unit + 1] != ' ') return std::nullopt;
  const std::string own = text.substr(unit + 2);
  for (const auto& [from, to] : kTaken) {
    if (from == own) return text.substr(0, unit + 2) + draw.one_of(to);
  }
  return std::nullopt;
}

std::optional<std::string> letter_changed(const std::string& text, Draw& draw) {
  std::vector<std::size_t> letters;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (is_letter(text[i])) letters.push_back(i);
  }
  if (letters.empty()) return std::nullopt;
  std::string changed = text;
  char& letter = changed[draw.one_of(letters)];
  const char first = letter >= 'a' ? 'a' : 'A';
  constexpr std::size_t kLetters = 26;
  letter =
      static_cast<char>(first + (letter - first + 1 + static_cast<int>(draw.below(kLetters - 1))) % static_cast<int>(kLetters));
  return changed;
}

/// H315 as H314 or H316; also EUH066, P210, GHS05, the sign M004 and its like.
std::optional<std::string> code_off(const std::string& text, Draw& draw) {
  static const std::regex kCode("(H|EUH|P|GHS|M|E|F|W)([0-9]{2,3})");
  std::smatch found;
  if (!std::regex_match(text, found, kCode)) return std::nullopt;
  const std::string digits = found[2];
  const int number = std::stoi(digits) + (draw.below(2) == 0 ? 1 : -1);
  if (number < 0) return std::nullopt;
  std::string changed = std::to_string(number);
  while (changed.size() < digits.size()) changed.insert(0, 1, '0');
  return found[1].str() + changed;
}

/// Draws slips of all kinds over one content.
class Maker {
 public:
  Maker(const model::KnowledgeBase& base, const FileTexts& content) : base_(base), content_(content), places_(places_of(base)) {}

  std::vector<Slip> make(std::size_t most) {
    in_text(SlipKind::transposed_digits, most, transposed, copied_by_hand);
    in_text(SlipKind::point_moved, most, point_moved, is_figure);
    in_text(SlipKind::unit_swapped, most, unit_swapped, is_figure);
    in_members(SlipKind::fields_exchanged, most, [this](const MemberPlace& place) { return exchanged(place); });
    in_text(SlipKind::letter_changed, most, letter_changed, copied_by_hand);
    in_values(SlipKind::wrong_reference, most, [this](const Place& place) { return wrong_reference(place); });
    in_values(SlipKind::other_record, most, [this](const Place& place) { return named_record(place, true); });
    in_members(SlipKind::dropped_field, most, [this](const MemberPlace& place) { return dropped(place); });
    duplicates(most);
    in_values(SlipKind::neighbour_copied, most, [this](const Place& place) { return neighbour(place); });
    in_text(SlipKind::code_off_by_one, most, code_off, copied_by_hand);
    return std::move(slips_);
  }

 private:
  using Wanted = bool (*)(const Place&);

  static bool copied_by_hand(const Place& place) { return place.sort != Sort::prose; }
  static bool is_figure(const Place& place) {
    return place.sort == Sort::quantity || place.node->text.find_first_not_of("0123456789.") == std::string::npos;
  }

  const std::string& text_of(const model::Record& record) const { return content_.at(file_of(record)); }

  bool add(SlipKind kind, std::string field, const std::string& path, std::string text, std::string told) {
    if (!seen_.insert(path + "\n" + text).second) return false;
    slips_.push_back({kind, std::move(field), path, std::move(text), std::move(told)});
    return true;
  }

  bool add_value(SlipKind kind, const Place& place, const std::optional<std::string>& value) {
    if (!value || *value == place.node->text) return false;
    const auto where = stretch_of(text_of(*place.record), *place.node);
    if (!where) return false;
    std::string text = text_of(*place.record);
    text.replace(where->begin, where->end - where->begin, *value);
    return add(kind, place.field, file_of(*place.record), std::move(text),
               place.path + ": " + place.node->text + " -> " + *value);
  }

  /// Draws a field, then one of its places, until there are enough or chance gives nothing new for long.
  template <typename PlaceType, typename Make>
  void draw_from(const std::map<std::string, std::vector<PlaceType>>& all, std::size_t most, Make make) {
    std::vector<const std::vector<PlaceType>*> fields;
    for (const auto& [field, places] : all) fields.push_back(&places);
    if (fields.empty()) return;
    constexpr int kPatience = 4000;
    for (int idle = 0; most > 0 && idle < kPatience;) {
      if (make(draw_.one_of(*draw_.one_of(fields)))) {
        --most;
        idle = 0;
      } else {
        ++idle;
      }
    }
  }

  template <typename Make>
  void in_values(SlipKind kind, std::size_t most, Make make) {
    draw_from(places_.values, most, [&](const Place& place) { return add_value(kind, place, make(place)); });
  }

  void in_text(SlipKind kind, std::size_t most, std::optional<std::string> (*damage)(const std::string&, Draw&), Wanted wanted) {
    std::map<std::string, std::vector<Place>> fit;
    for (const auto& [field, places] : places_.values) {
      for (const Place& place : places) {
        if (wanted(place) && damage(place.node->text, draw_)) fit[field].push_back(place);
      }
    }
    draw_from(fit, most, [&](const Place& place) { return add_value(kind, place, damage(place.node->text, draw_)); });
  }

  template <typename Make>
  void in_members(SlipKind kind, std::size_t most, Make make) {
    draw_from(places_.members, most, [&](const MemberPlace& place) {
      const auto slip = make(place);
      return slip && add(kind, place.field, file_of(*place.record), slip->first, slip->second);
    });
  }

  using Damaged = std::optional<std::pair<std::string, std::string>>;  ///< the text, and what was done

  Damaged dropped(const MemberPlace& place) {
    std::string text = text_of(*place.record);
    const auto where = stretch_of_member(text, *place.mapping, place.index);
    if (!where || place.within_prose) return std::nullopt;
    text.erase(where->begin, where->end - where->begin);
    return std::pair(text, "without " + place.mapping->members.at(place.index).key);
  }

  /// The values of two neighbouring members change places; sentences are exchanged by nobody who reads them.
  Damaged exchanged(const MemberPlace& place) {
    const auto& members = place.mapping->members;
    if (place.within_prose || place.index + 1 >= members.size()) return std::nullopt;
    const Node& one = members.at(place.index).value;
    const Node& other = members.at(place.index + 1).value;
    std::string text = text_of(*place.record);
    if (!one.is_scalar() || !other.is_scalar() || one.text == other.text) return std::nullopt;
    const auto first = stretch_of(text, one), second = stretch_of(text, other);
    if (!first || !second) return std::nullopt;
    text.replace(second->begin, second->end - second->begin, one.text);
    text.replace(first->begin, first->end - first->begin, other.text);
    return std::pair(text, members.at(place.index).key + " and " + members.at(place.index + 1).key);
  }

  static bool is_reference(const Place& place) {
    return place.reference != nullptr && !place.node->text.empty() && place.node->text.front() != '$';
  }

  /// A record of a kind that the field takes, or of one that it does not take.
  std::optional<std::string> named_record(const Place& place, bool right_kind) {
    if (!is_reference(place)) return std::nullopt;
    const bool with_kind = place.node->text.find('/') != std::string::npos;
    const auto& kinds = place.reference->kinds;
    std::vector<std::string> others;
    for (const model::Record* record : base_.all()) {
      const bool fits = kinds.empty() || std::find(kinds.begin(), kinds.end(), record->kind) != kinds.end();
      if (fits == right_kind) others.push_back(with_kind ? record->reference() : record->id);
    }
    if (others.empty()) return std::nullopt;
    return draw_.one_of(others);
  }

  /// A name cut short, or a record of another kind.
  std::optional<std::string> wrong_reference(const Place& place) {
    if (!is_reference(place)) return std::nullopt;
    if (draw_.below(2) == 0) return place.node->text.substr(0, place.node->text.size() - 1);
    return named_record(place, false);
  }

  /// The figure of the same field in the next record of the kind, or in the next item of the list.
  std::optional<std::string> neighbour(const Place& place) {
    if ((place.sort != Sort::quantity && place.sort != Sort::code) || !has_digit(place.node->text)) return std::nullopt;
    const auto& all = places_.values.at(place.field);
    const std::size_t own = static_cast<std::size_t>(&place - all.data());
    if (own + 1 < all.size()) return all[own + 1].node->text;
    return own > 0 ? std::optional(all[own - 1].node->text) : std::nullopt;
  }

  void duplicates(std::size_t most) {
    std::vector<const model::Record*> records = base_.all();
    for (; most > 0 && !records.empty(); --most) {
      const std::size_t drawn = draw_.below(records.size());
      const model::Record& record = *records.at(drawn);
      records.erase(records.begin() + static_cast<std::ptrdiff_t>(drawn));
      const Node* id = record.root.find("id");
      std::string text = text_of(record);
      const auto where = id == nullptr ? std::nullopt : stretch_of(text, *id);
      if (!where) continue;
      text.replace(where->begin, where->end - where->begin, record.id + "-2");
      std::string path = file_of(record);
      path.insert(path.rfind('.'), "-2");
      add(SlipKind::duplicated_record, std::string(model::kind_name(record.kind)), path, text, "copy of " + record.reference());
    }
  }

  const model::KnowledgeBase& base_;
  const FileTexts& content_;
  Places places_;
  Draw draw_;
  std::set<std::string> seen_;
  std::vector<Slip> slips_;
};

}  // namespace

std::vector<Slip> draw_slips(const model::KnowledgeBase& base, const FileTexts& content, std::size_t most) {
  return Maker(base, content).make(most);
}

}  // namespace benchleaf::test
