// In: part=ID:PERCENT of each substance, and what was measured on the whole. Out: the classes of the mixture by the rules of
// addition, its label, and what no percentage decides. A range of strengths is judged at its upper end, which is the safe
// side, and the lower end is given beside it.

#include "bench/mixture_class.h"

#include <algorithm>
#include <array>
#include <utility>
#include <variant>

#include "base/id.h"
#include "base/number.h"
#include "base/quantity.h"
#include "bench/answer.h"
#include "bench/hazard_lines.h"
#include "bench/print_rule.h"
#include "bench/typed.h"
#include "standards/hazard_sentence.h"
#include "standards/mixture.h"
#include "standards/table_view.h"

namespace benchleaf::bench {
namespace {

using standards::Classification;
using standards::Mixture;
using standards::OpenQuestion;

constexpr std::string_view kName = "mixture-class";
constexpr std::string_view kAddition =
    "sum of share / limit of 1 or more classifies; a specific limit stands before the generic one";
constexpr std::string_view kSource =
    "Regulation (EC) No 1272/2008, annex I, tables 3.2.3, 3.3.3, 3.8.3, 4.1.1, and the guidance on it, 1.6.3.3.3";

/// Two ends of what was given; the same for a plain figure.
struct Ends {
  double low = 0;
  double high = 0;
};

/// One `ID:PERCENT` of the input.
struct Part {
  std::string name;
  Ends percent;
  KnownHazards hazards;
};

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

/// `5`, `5 %`, `3 to 5`, or a quantity of this unit.
std::optional<Ends> read_ends(std::string_view text, base::Unit unit, const model::Tables& tables) {
  const Typed typed = read_typed(std::string(trimmed(text)), unit, tables);
  const auto* quantity = std::get_if<base::Quantity>(&typed.read);
  if (quantity == nullptr || !quantity->has_value()) return std::nullopt;
  const auto in_unit = quantity->unit == base::Unit::one ? std::optional(quantity->stated) : quantity->in(unit);
  if (!in_unit) return std::nullopt;
  return Ends{base::tidy(in_unit->low), base::tidy(in_unit->high)};
}

std::optional<Ends> read_percent(std::string_view text, const model::Tables& tables) {
  if (auto ends = read_ends(text, base::Unit::percent_by_mass, tables)) return ends;
  return read_ends(text, base::Unit::percent, tables);
}

bool in_group(const model::Tables& tables, const std::string& group, const std::string& substance) {
  return std::any_of(tables.reactive_groups.begin(), tables.reactive_groups.end(), [&](const model::ReactiveGroup& row) {
    return row.group == group && std::find(row.members.begin(), row.members.end(), substance) != row.members.end();
  });
}

/// Two parts that must never meet are no mixture: nothing is summed.
std::optional<Refusal> must_not_meet(const std::vector<Part>& parts, const model::Tables& tables) {
  for (const auto& pair : tables.reactive_pairs) {
    if (pair.open != "never") continue;
    for (const auto& one : parts) {
      for (const auto& other : parts) {
        const bool both = one.percent.high > 0 && other.percent.high > 0 && in_group(tables, pair.one, one.hazards.substance) &&
                          in_group(tables, pair.other, other.hazards.substance);
        if (!both || &one == &other) continue;
        const std::string product = pair.product == "none" ? std::string() : ", and makes " + pair.product;
        return Refusal{"part", one.name + " must never meet " + other.name + product + ": " + pair.effect,
                       "keep them apart; where they have met, leave the room and open the window from outside"};
      }
    }
  }
  return std::nullopt;
}

std::variant<std::vector<Part>, Refusal> read_parts(const Given& given, const Context& context) {
  std::vector<Part> parts;
  std::string_view rest = given.text;
  double sum = 0;
  while (!rest.empty()) {
    const std::size_t comma = rest.find(',');
    const std::string_view one = trimmed(rest.substr(0, comma));
    rest = comma == std::string_view::npos ? std::string_view() : rest.substr(comma + 1);
    const std::size_t colon = one.find(':');
    const std::string name(trimmed(one.substr(0, colon)));
    const auto percent = colon == std::string_view::npos ? std::nullopt : read_percent(one.substr(colon + 1), context.tables);
    if (name.empty() || !percent) {
      return Refusal{"part", "'" + std::string(one) + "' is no substance with its percentage", {}};
    }
    if (percent->low < 0 || percent->high > 100) return Refusal{"part", "no share lies outside 0 to 100 %", ""};
    auto hazards = hazards_of(name, context);
    if (!hazards) {
      return Refusal{"part", "nothing is known of the classes of " + name,
                     "name it by its record or its index number; leave out what has no class"};
    }
    sum += percent->low;
    parts.push_back({name, *percent, std::move(*hazards)});
  }
  if (base::tidy(sum) > 100) return Refusal{"part", "the shares come to more than 100 %", ""};
  if (parts.empty())
    return Refusal{"part", "names nothing", "write each substance with its percentage, like acetic-acid:10", true};
  if (auto never = must_not_meet(parts, context.tables)) return *never;
  return parts;
}

std::string joined(const std::vector<std::string>& words, const char* nothing = "none") {
  std::string text;
  for (const auto& word : words) text += (text.empty() ? "" : ", ") + word;
  return text.empty() ? nothing : text;
}

/// What is measured on the whole mixture.
struct Measured {
  bool no_flash_point = false;
  std::optional<Ends> flash, boiling, ph;
};

/// Classifies one mixture.
class Sum {
 public:
  Sum(std::vector<Part> parts, Measured measured, const Inputs& inputs, const model::Tables& tables)
      : parts_(std::move(parts)), measured_(measured), inputs_(inputs), tables_(tables) {
    result_.calculator = std::string(kName);
  }

  Result run() {
    const Classification high = classify(at(true), tables_);
    const Classification low = classify(at(false), tables_);
    for (const auto* end : {&high, &low}) limits_.insert(limits_.end(), end->limits.begin(), end->limits.end());
    add_end("", high);
    add_end("least-", low);
    add_undecided(high);
    add_unknown();
    for (const auto& found : high.classes) {
      result_.working.push_back(found.hazard_class + ", " + in_words(found.statement) + (found.sure ? "" : ", perhaps") + ": " +
                                found.why);
    }
    if (high.classes.empty()) result_.working.emplace_back("No share, nor a sum of them, reaches the limit of a class.");
    warn_of(high);
    result_.formulas.push_back({std::string(kAddition), std::string(kSource), model::Trust::handbook});
    result_.range.emplace_back("Shares by mass. A share by volume or by mass in volume is taken as if it were one.");
    result_.range.emplace_back("What is not named is not counted. A supplier's own data stand above this sum.");
    for (const auto& open : high.undecided) result_.cautions.push_back({"", "Not decided here: " + open.words + "."});
    return std::move(result_);
  }

  MixtureLabel label() const {
    const Classification high = classify(at(true), tables_);
    MixtureLabel made{{}, label_of(high, false, tables_), {}, high.undecided, unknown_parts()};
    for (const auto& part : parts_) made.parts.push_back({part.hazards.substance, percent_words(part.percent)});
    for (const auto& code : label_of(high, true, tables_).statements) {
      const auto& sure = made.label.statements;
      if (std::find(sure.begin(), sure.end(), code) == sure.end()) made.perhaps.push_back(code);
    }
    return made;
  }

 private:
  static std::string percent_words(const Ends& ends) {
    const auto figure = [](double value) { return base::paper_number(base::shortest_text(base::tidy(value))); };
    const std::string low = ends.low < ends.high ? figure(ends.low) + " to " : std::string();
    return low + figure(ends.high) + std::string(base::kThinSpace) + "%";
  }

  /// `H315 Causes skin irritation`
  std::string in_words(const std::string& code) const {
    const std::string sentence = standards::hazard_sentence(tables_, code);
    return sentence == code ? code : code + " " + sentence;
  }

  void add_undecided(const Classification& high) {
    std::vector<std::string> sentences;
    Code extreme = Code::none;
    for (const auto& open : high.undecided) {
      sentences.push_back(open.words);
      result_.not_known.push_back({std::string(standards::question_word(open.question)), {}});
      if (open.question == OpenQuestion::extreme_acid) extreme = Code::extreme_acid;
      if (open.question == OpenQuestion::extreme_base) extreme = Code::extreme_base;
    }
    limits_.insert(limits_.end(), high.open_limits.begin(), high.open_limits.end());
    add("undecided", joined(sentences));
    if (extreme == Code::none) return;
    add("extreme-ph",
        extreme_ph_words(extreme == Code::extreme_acid ? OpenQuestion::extreme_acid : OpenQuestion::extreme_base, tables_));
    result_.outputs.back().code = extreme;
  }

  std::vector<std::string> unknown_parts() const {
    std::vector<std::string> names;
    for (const auto& part : parts_) {
      if (!part.hazards.known && part.percent.high > 0) names.push_back(part.name);
    }
    return names;
  }

  /// What stands in place of `none` while a part is not known.
  const char* nothing() const { return unknown_parts().empty() ? "none" : "not known"; }

  /// A part of which nobody has said anything: whatever was summed is the least that holds.
  void add_unknown() {
    const auto names = unknown_parts();
    if (names.empty()) return;
    add("not-known", joined(names));
    result_.outputs.back().code = Code::not_known;
    for (auto& output : result_.outputs) output.trust = model::Trust::memory;
    for (const auto& part : parts_) {
      if (!part.hazards.known && part.percent.high > 0)
        result_.not_known.push_back({"classes", "substance/" + part.hazards.substance});
    }
    result_.cautions.push_back({"",
                                "Of " + joined(names) +
                                    " no classes are known here, which is not none: what stands below is the least that "
                                    "holds. Read the sheet of its supplier.",
                                true});
  }

  void warn_of(const Classification& classification) {
    const auto burns = [](const standards::FoundClass& found) { return found.statement == "H314" || found.statement == "H318"; };
    if (std::any_of(classification.classes.begin(), classification.classes.end(), burns))
      result_.cautions.push_back({"", "It can burn skin and eyes: glasses and gloves on before the bottle is opened.", true});
  }

  Mixture at(bool high) const {
    Mixture mixture;
    for (const auto& part : parts_) {
      mixture.parts.push_back({part.name, high ? part.percent.high : part.percent.low, part.hazards.lines, part.hazards.m_acute,
                               part.hazards.m_chronic, part.hazards.acid_or_base});
    }
    mixture.no_flash_point = measured_.no_flash_point;
    // A lower flash point is the more dangerous.
    if (measured_.flash) mixture.flash_point = high ? measured_.flash->low : measured_.flash->high;
    if (measured_.boiling) mixture.boiling = high ? measured_.boiling->low : measured_.boiling->high;
    if (measured_.ph) mixture.ph_low = measured_.ph->low;
    if (measured_.ph) mixture.ph_high = measured_.ph->high;
    return mixture;
  }

  void add_end(const std::string& prefix, const Classification& classification) {
    const auto sure = label_of(classification, false, tables_);
    const auto all = label_of(classification, true, tables_);
    std::vector<std::string> classes;
    for (const auto& found : classification.classes) {
      const bool supplementary = found.statement.substr(0, 3) == "EUH";  // a statement, and no class
      if (found.sure && !supplementary) classes.push_back(found.hazard_class);
      if (prefix.empty())
        result_.hazards.push_back({found.hazard_class, found.statement, found.sure ? Code::certain : Code::perhaps});
    }
    const bool open = unknown_parts().empty() && !classification.undecided.empty();
    if (prefix.empty()) add_list("classes", classes, open ? "none decided" : nothing());
    add_list(prefix + "statements", sure.statements, nothing());
    add_list(prefix + "perhaps", all.statements, nothing());
    add_list(prefix + "signal", sure.signal == "none" ? std::vector<std::string>() : std::vector{sure.signal}, nothing());
    add_list(prefix + "pictograms", sure.pictograms, nothing());
  }

  /// An empty list is not known while a part is not.
  void add_list(const std::string& name, const std::vector<std::string>& words, const char* otherwise) {
    add(name, joined(words, otherwise));
    if (words.empty() && !unknown_parts().empty()) result_.outputs.back().code = Code::not_known;
  }

  void add(const std::string& name, std::string printed) {
    Output output = make_output(kName, name);
    output.printed = std::move(printed);
    output.trust = model::Trust::handbook;
    for (const auto& [key, given] : inputs_) {
      output.trust = model::weaker(output.trust, given.trust);
      if (!given.fact.empty()) output.inputs.push_back(given.fact);
    }
    for (const auto& part : parts_) {
      output.trust = model::weaker(output.trust, part.hazards.trust);
      output.inputs.insert(output.inputs.end(), part.hazards.inputs.begin(), part.hazards.inputs.end());
    }
    for (const auto& limit : limits_) {
      output.trust = model::weaker(output.trust, limit.trust);
      if (std::find(output.inputs.begin(), output.inputs.end(), limit.fact) == output.inputs.end())
        output.inputs.push_back(limit.fact);
    }
    output.formula = std::string(kAddition) + " [" + std::string(kSource) + "]";
    result_.outputs.push_back(std::move(output));
  }

  std::vector<Part> parts_;
  Measured measured_;
  const Inputs& inputs_;
  const model::Tables& tables_;
  std::vector<standards::LimitUsed> limits_;  ///< that the outputs which follow rest on
  Result result_;
};

/// A measured input and what of it can be.
struct MeasuredInput {
  const char* name;
  base::Unit unit;
  double least, most;
  std::optional<Ends> Measured::*into;
};

constexpr std::array<MeasuredInput, 3> kMeasured = {
    MeasuredInput{"flash", base::Unit::degree_celsius, -150, 400, &Measured::flash},
    MeasuredInput{"boiling", base::Unit::degree_celsius, -100, 600, &Measured::boiling},
    MeasuredInput{"ph", base::Unit::one, -1, 14.5, &Measured::ph}};

std::variant<Measured, Refusal> read_measured(const Inputs& inputs, const model::Tables& tables) {
  Measured measured;
  for (const auto& one : kMeasured) {
    const auto found = inputs.find(one.name);
    if (found == inputs.end()) continue;
    const std::string& text = found->second.text;
    if (one.into == &Measured::flash && text == "none") {
      measured.no_flash_point = true;
      continue;
    }
    const Typed typed = read_typed(std::string(trimmed(text)), one.unit, tables);
    if (const auto* error = std::get_if<base::QuantityError>(&typed.read))
      return Refusal{one.name, error->message, error->hint, true};
    const auto ends = read_ends(text, one.unit, tables);
    if (!ends) return Refusal{one.name, "no figure was given", {}, true};
    if (ends->low < one.least || ends->high > one.most) {
      const auto end = [&one](double value) { return base::to_terminal(shown(value, one.unit)); };
      return Refusal{one.name, text + " lies outside " + end(one.least) + " to " + end(one.most), {}};
    }
    measured.*one.into = ends;
  }
  return measured;
}

std::variant<Sum, Refusal> read_sum(const Inputs& inputs, const Context& context) {
  auto parts = read_parts(inputs.at("part"), context);
  if (auto* refusal = std::get_if<Refusal>(&parts)) return std::move(*refusal);
  auto measured = read_measured(inputs, context.tables);
  if (auto* refusal = std::get_if<Refusal>(&measured)) return std::move(*refusal);
  return Sum(std::move(std::get<std::vector<Part>>(parts)), std::get<Measured>(measured), inputs, context.tables);
}

Result mixture_class(const Inputs& inputs, const Context& context) {
  auto sum = read_sum(inputs, context);
  if (auto* refusal = std::get_if<Refusal>(&sum)) return refused(std::string(kName), std::move(*refusal));
  return std::get<Sum>(sum).run();
}

}  // namespace

std::variant<MixtureLabel, Refusal> mixture_label(const Inputs& inputs, const Context& context) {
  auto sum = read_sum(inputs, context);
  if (auto* refusal = std::get_if<Refusal>(&sum)) return std::move(*refusal);
  return std::get<Sum>(sum).label();
}

Calculator mixture_class_calculator() {
  return {kName,
          "the hazard classes of a mixture, its signal word and pictograms",
          {{"part", "each substance with its percentage by mass, parted by commas", "acetic-acid:10", true},
           {"ph", "the pH of the mixture", "2.4", false},
           {"flash", "its flash point, or none", "12 °C", false},
           {"boiling", "where it begins to boil", "82 °C", false}},
          mixture_class,
          {{"classes", "classes"},
           {"statements", "statements"},
           {"perhaps", "statements with those in doubt"},
           {"signal", "signal word"},
           {"pictograms", "pictograms"},
           {"least-statements", "statements at the lower end"},
           {"least-perhaps", "at the lower end with those in doubt"},
           {"least-signal", "signal word at the lower end"},
           {"least-pictograms", "pictograms at the lower end"},
           {"undecided", "not decided by percentages"},
           {"not-known", "classes not known of"},
           {"extreme-ph", "extreme pH"}}};
}

}  // namespace benchleaf::bench
