// In: a result. Out: its lines of text, the same at the terminal and in the page.

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "base/utf8.h"
#include "bench/result.h"

namespace benchleaf::bench {
namespace {

constexpr std::size_t kIndent = 2;
constexpr std::size_t kGap = 2;
constexpr std::size_t kWidestValue = 44;  // longer words run on, their trust behind them

std::size_t width_of(const std::string& text) { return static_cast<std::size_t>(base::display_width(text)); }

std::string padded(std::string text, std::size_t width) {
  const std::size_t now = width_of(text);
  if (now < width) text.append(width - now, ' ');
  return text;
}

std::string line(const std::string& text) { return std::string(kIndent, ' ') + text + "\n"; }

std::string refusal_text(const Result& result) {
  const Refusal& refusal = *result.refusal;
  std::string text = result.calculator + ": refused: ";
  if (!refusal.input.empty()) text += refusal.input + ": ";
  text += refusal.reason + "\n";
  if (!refusal.hint.empty()) text += line("hint: " + refusal.hint);
  return text;
}

/// Three columns: label, value, trust.
std::string outputs_text(const Result& result) {
  std::size_t label_width = 0;
  std::size_t value_width = 0;
  for (const auto& output : result.outputs) {
    label_width = std::max(label_width, width_of(output.label));
    const std::size_t width = width_of(base::to_terminal(output.printed));
    if (width <= kWidestValue) value_width = std::max(value_width, width);
  }
  std::string text;
  for (const auto& output : result.outputs) {
    const std::string value = base::to_terminal(output.printed);
    const std::string column = width_of(value) > value_width ? value + std::string(kGap, ' ') : padded(value, value_width + kGap);
    text += line(padded(output.label, label_width + kGap) + column + std::string(model::trust_name(output.trust)));
  }
  return text;
}

template <typename List, typename ToText>
std::string section(const char* head, const List& list, ToText to_text) {
  if (list.empty()) return {};
  std::string text = std::string(head) + "\n";
  for (const auto& entry : list) text += line(base::to_terminal(to_text(entry)));
  return text;
}

/// Plain arithmetic is nobody's word: its trust is `given` and is not printed.
std::string formula_text(const Formula& formula) {
  const std::string indent(2 * kIndent, ' ');
  const bool arithmetic = formula.trust == model::Trust::given;
  const std::string trust = arithmetic ? std::string() : " (" + std::string(model::trust_name(formula.trust)) + ")";
  return formula.text + "\n" + indent + "by " + formula.source + trust;
}

std::string ground_text(const Ground& ground) {
  return ground.fact + ": " + ground.printed + " (" + std::string(model::trust_name(ground.trust)) + ")";
}

std::string caution_text(const Caution& caution) {
  return caution.record.empty() ? caution.text : caution.text + " [" + caution.record + "]";
}

std::string form_text(const FormLine& one) {
  const char* const state = one.given ? "  given: " : one.required ? "  needed: " : "  ";
  return one.name + "=" + one.example + state + one.what;
}

}  // namespace

std::string result_text(const Result& result) {
  const auto same = [](const std::string& text) { return text; };
  std::vector<Caution> first;
  std::vector<Caution> others;
  for (const auto& caution : result.cautions) (caution.first ? first : others).push_back(caution);
  std::string text;
  if (result.refusal) {
    text = refusal_text(result) + section("inputs", result.form, form_text) + section("first", first, caution_text);
  } else {
    text = result.calculator + "\n" + section("first", first, caution_text);
    if (!first.empty()) text += "figures\n";
    text += outputs_text(result);
  }
  text += section("working", result.working, same);
  text += section("formula", result.formulas, formula_text);
  text += section("rests on", result.grounds, ground_text);
  text += section("holds", result.range, same);
  text += section("caution", others, caution_text);
  return text;
}

}  // namespace benchleaf::bench
