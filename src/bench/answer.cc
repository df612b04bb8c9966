// In: amounts, words, formulas, in the order in which a calculator comes to them. Out: the result with figures rounded once.

#include "bench/answer.h"

#include <utility>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/print_rule.h"

namespace benchleaf::bench {
namespace {

constexpr int kWorkingDigits = 6;  // after the point, of a figure that was worked out and stands in the working

std::string one_line(const Formula& formula) { return formula.text + " [" + formula.source + "]"; }

}  // namespace

void Answer::formula(std::string text, std::string source, model::Trust trust) {
  result_.formulas.push_back({std::move(text), std::move(source), trust});
}

Output& Answer::add(std::string_view name, const Amount& amount) {
  Output output = make_output(result_.calculator, name);
  output.trust = amount.trust;
  output.inputs = amount.facts;
  if (!result_.formulas.empty()) {
    output.trust = model::weaker(output.trust, result_.formulas.back().trust);
    output.formula = one_line(result_.formulas.back());
  }
  result_.outputs.push_back(std::move(output));
  return result_.outputs.back();
}

Output& Answer::put(std::string_view name, const Amount& amount, base::Unit unit) {
  Output& output = add(name, amount);
  const OutputInfo* rule = print_rule(result_.calculator, name);
  if (rule == nullptr) return output;
  output.value = base::tidy(amount.nominal);
  output.unit = std::string(base::unit_info(unit).symbol);
  output.printed = base::printed(figure(*rule, *output.value), unit);
  if (!amount.has_ends) return output;
  output.low = base::tidy(amount.low);
  output.high = base::tidy(amount.high);
  const std::string low = figure(*rule, *output.low);
  const std::string high = figure(*rule, *output.high);
  const bool say_ends = low != high || low != figure(*rule, *output.value);  // `20 (20 to 20)` says nothing
  if (say_ends) output.printed += " (" + base::printed_range(low, high, unit) + ")";
  return output;
}

Output& Answer::count(std::string_view name, const Amount& amount, std::string_view things) {
  Output& output = add(name, amount);
  const OutputInfo* rule = print_rule(result_.calculator, name);
  if (rule == nullptr) return output;
  const std::string space(base::kThinSpace);
  const std::string number = figure(*rule, amount.nominal);
  output.value = base::parse_decimal(number).value_or(amount.nominal);
  output.printed = base::paper_number(number) + space + std::string(things) + (number == "1" ? "" : "s");
  if (!amount.has_ends) return output;
  const std::string low = figure(*rule, amount.low);
  const std::string high = figure(*rule, amount.high);
  output.low = base::parse_decimal(low).value_or(amount.low);
  output.high = base::parse_decimal(high).value_or(amount.high);
  if (low != high) output.printed += " (" + base::paper_number(low) + " to " + base::paper_number(high) + ")";
  return output;
}

Output& Answer::say(std::string_view name, std::string words, const Amount& rests_on) {
  Output& output = add(name, rests_on);
  output.printed = std::move(words);
  return output;
}

Output& Answer::decide(std::string_view name, Code code, std::string words, const Amount& rests_on) {
  Output& output = say(name, std::move(words), rests_on);
  output.code = code;
  return output;
}

Figure figure_of(const Amount& amount, int decimals, base::Unit unit) {
  Figure figure;
  figure.value = base::tidy(amount.nominal);
  if (amount.has_ends) figure.low = base::tidy(amount.low);
  if (amount.has_ends) figure.high = base::tidy(amount.high);
  figure.unit = std::string(base::unit_info(unit).symbol);
  figure.printed = base::printed(base::fixed_text(amount.nominal, decimals, base::Trailing::cut), unit);
  figure.trust = amount.trust;
  return figure;
}

void Answer::nominal_only(const Amount& amount, std::string_view missing) {
  if (!amount.has_ends) holds("Nominal only: no tolerance of " + std::string(missing) + " is known.");
}

std::string shown(double value, int decimals, base::Unit unit) { return base::printed(base::fixed_text(value, decimals), unit); }

std::string shown(double value, base::Unit unit) {
  return base::printed(base::fixed_text(value, kWorkingDigits, base::Trailing::cut), unit);
}

std::string shown(const Amount& amount, base::Unit unit) {
  return amount.printed.empty() ? shown(amount.nominal, unit) : amount.printed;
}

}  // namespace benchleaf::bench
