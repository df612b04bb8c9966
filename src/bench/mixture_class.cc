// In: part=ID:PERCENT of each substance, and what was measured on the whole. Out: the classes of the mixture by the rules of
// addition, its label, and what no percentage decides. A range of strengths is judged at its upper end, which is the safe
// side, and the lower end is given beside it.

#include "bench/mixture_class.h"

#include <algorithm>
#include <utility>
#include <variant>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/hazard_lines.h"
#include "bench/print_rule.h"
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
std::optional<Ends> read_ends(std::string_view text, base::Unit unit) {
  auto parsed = base::parse_quantity(trimmed(text));
  const auto* quantity = std::get_if<base::Quantity>(&parsed);
  if (quantity == nullptr || !quantity->has_value()) return std::nullopt;
  const auto in_unit = quantity->unit == base::Unit::one ? std::optional(quantity->stated) : quantity->in(unit);
  if (!in_unit) return std::nullopt;
  return Ends{base::tidy(in_unit->low), base::tidy(in_unit->high)};
}

std::optional<Ends> read_percent(std::string_view text) {
  if (auto ends = read_ends(text, base::Unit::percent_by_mass)) return ends;
  return read_ends(text, base::Unit::percent);
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
    const auto percent = colon == std::string_view::npos ? std::nullopt : read_percent(one.substr(colon + 1));
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
  return parts;
}

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const auto& word : words) text += (text.empty() ? "" : ", ") + word;
  return text.empty() ? "none" : text;
}

/// What is measured on the whole mixture.
struct Measured {
  bool no_flash_point = false;
  std::optional<Ends> flash, boiling, ph;
};

class Answer {
 public:
  Answer(std::vector<Part> parts, Measured measured, const Inputs& inputs, const model::Tables& tables)
      : parts_(std::move(parts)), measured_(measured), inputs_(inputs), tables_(tables) {
    result_.calculator = std::string(kName);
  }

  Result run() {
    const Classification high = classify(at(true), tables_);
    const Classification low = classify(at(false), tables_);
    add_end("", high);
    add_end("least-", low);
    add_undecided(high);
    for (const auto& found : high.classes) {
      result_.working.push_back(found.hazard_class + ", " + in_words(found.statement) + (found.sure ? "" : ", perhaps") + ": " +
                                found.why);
    }
    if (high.classes.empty()) result_.working.emplace_back("No share, nor a sum of them, reaches the limit of a class.");
    warn_of(high);
    result_.formulas.push_back({std::string(kAddition), std::string(kSource), model::Trust::handbook});
    result_.range.emplace_back("Shares by mass. A share by volume or by mass in volume is taken as if it were one.");
    result_.range.emplace_back("What is not named counts as having no class. A supplier's own data stand above this sum.");
    for (const auto& open : high.undecided) result_.cautions.push_back({"", "Not decided here: " + open.words + "."});
    return std::move(result_);
  }

 private:
  /// `H315 Causes skin irritation`
  std::string in_words(const std::string& code) const {
    for (const auto& row : standards::rows_of(tables_, "hazard-statements")) {
      if (row.key == code) return code + " " + standards::cell_text(row, "text");
    }
    return code;
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
    add("undecided", joined(sentences));
    if (extreme == Code::none) return;
    add("extreme-ph", extreme == Code::extreme_acid ? "2 or less" : "11.5 or more");
    result_.outputs.back().code = extreme;
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
                               part.hazards.m_chronic});
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
      if (found.sure) classes.push_back(found.hazard_class);
      if (prefix.empty())
        result_.hazards.push_back({found.hazard_class, found.statement, found.sure ? Code::certain : Code::perhaps});
    }
    if (prefix.empty()) add("classes", joined(classes));
    add(prefix + "statements", joined(sure.statements));
    add(prefix + "perhaps", joined(all.statements));
    add(prefix + "signal", sure.signal);
    add(prefix + "pictograms", joined(sure.pictograms));
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
    output.formula = std::string(kAddition) + " [" + std::string(kSource) + "]";
    result_.outputs.push_back(std::move(output));
  }

  std::vector<Part> parts_;
  Measured measured_;
  const Inputs& inputs_;
  const model::Tables& tables_;
  Result result_;
};

/// A measured input; a text that is no such quantity is a refusal.
std::optional<Refusal> read_measured(const Inputs& inputs, std::string_view name, base::Unit unit, std::optional<Ends>& into) {
  const auto found = inputs.find(name);
  if (found == inputs.end()) return std::nullopt;
  into = read_ends(found->second.text, unit);
  if (into) return std::nullopt;
  return Refusal{std::string(name), "'" + found->second.text + "' is no such value", {}};
}

Result mixture_class(const Inputs& inputs, const Context& context) {
  auto parts = read_parts(inputs.at("part"), context);
  if (auto* refusal = std::get_if<Refusal>(&parts)) return refused(std::string(kName), std::move(*refusal));
  Measured measured;
  const auto flash = inputs.find("flash");
  measured.no_flash_point = flash != inputs.end() && flash->second.text == "none";
  std::optional<Refusal> refusal;
  if (!measured.no_flash_point) {
    refusal = read_measured(inputs, "flash", base::Unit::degree_celsius, measured.flash);
  }
  if (!refusal) refusal = read_measured(inputs, "boiling", base::Unit::degree_celsius, measured.boiling);
  if (!refusal) refusal = read_measured(inputs, "ph", base::Unit::one, measured.ph);
  if (refusal) return refused(std::string(kName), std::move(*refusal));
  return Answer(std::move(std::get<std::vector<Part>>(parts)), measured, inputs, context.tables).run();
}

}  // namespace

Calculator mixture_class_calculator() {
  return {kName,
          "the hazard classes of a mixture, its signal word and pictograms",
          {{"part", "each substance with its percentage by mass, parted by commas", "acetic-acid:10", true},
           {"ph", "the pH of the mixture", "2.4", false},
           {"flash", "its flash point, or none", "12 °C", false},
           {"boiling", "where it begins to boil", "82 °C", false}},
          mixture_class};
}

}  // namespace benchleaf::bench
