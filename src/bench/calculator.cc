// In: the name of a calculator and its inputs. Out: its result. The list below is the only place that knows them all.

#include "bench/calculator.h"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <variant>

#include "base/id.h"
#include "base/quantity.h"
#include "base/utf8.h"
#include "bench/bath_mix.h"
#include "bench/cell_decode.h"
#include "bench/cell_life.h"
#include "bench/cell_swap.h"
#include "bench/crust_dose.h"
#include "bench/crystal_size.h"
#include "bench/crystal_thickness.h"
#include "bench/fog_point.h"
#include "bench/fumes.h"
#include "bench/gasket_fit.h"
#include "bench/gold_margin.h"
#include "bench/lamp_sag.h"
#include "bench/mixture_class.h"
#include "bench/old_gasket.h"
#include "bench/rate_drift.h"
#include "bench/rinse.h"
#include "bench/scratch_ladder.h"
#include "bench/screw_thread.h"
#include "bench/typed.h"
#include "bench/vapour.h"
#include "bench/water_pressure.h"
#include "model/record_ref.h"
#include "model/tables.h"

namespace benchleaf::bench {
namespace {

/// `seat=31.85 mm`
std::string example_of(const InputInfo& input) { return std::string(input.name) + "=" + std::string(input.example); }

std::vector<std::string> calculator_names() {
  std::vector<std::string> names;
  for (const auto& calculator : calculators()) names.emplace_back(calculator.name);
  return names;
}

std::vector<std::string> input_names(const Calculator& calculator) {
  std::vector<std::string> names;
  for (const auto& input : calculator.inputs) names.emplace_back(input.name);
  return names;
}

std::string nearest_or_all(std::string_view word, const std::vector<std::string>& names) {
  const std::string nearest = base::nearest_word(word, names);
  return nearest.empty() ? "there is " + base::or_list(names) : "did you mean " + nearest + "?";
}

const Calculator* calculator_named(std::string_view name) {
  for (const auto& calculator : calculators()) {
    if (calculator.name == name) return &calculator;
  }
  return nullptr;
}

/// Whatever is wrong with an input, one line names it and shows it written well.
void add_example(const Calculator& calculator, Refusal& refusal) {
  for (const auto& input : calculator.inputs) {
    if (input.name == refusal.input && refusal.show_example) refusal.reason += "; for example " + example_of(input);
  }
}

/// An input that the calculator does not take, or one that it needs and that is missing.
std::optional<Refusal> wrong_inputs(const Calculator& calculator, const Inputs& inputs) {
  const auto names = input_names(calculator);
  for (const auto& [name, given] : inputs) {
    if (std::find(names.begin(), names.end(), name) == names.end()) {
      return Refusal{name, "is no input of " + std::string(calculator.name), nearest_or_all(name, names)};
    }
  }
  if (inputs.empty() && calculator.inputs.size() > 1) {
    const std::string needs(calculator.needs);
    return Refusal{{}, "nothing was given", needs.empty() ? "fill in what is needed" : "needed: " + needs};
  }
  for (const auto& input : calculator.inputs) {
    if (!input.required || inputs.find(input.name) != inputs.end()) continue;
    const std::string name(input.name);
    return Refusal{name, "is missing: " + std::string(input.what), {}, true};
  }
  return std::nullopt;
}

/// Whether a text is a figure in a unit that an input takes, by the unit of its example.
bool reads(const InputInfo& input, const std::string& text, const model::Tables& tables) {
  const auto example = base::parse_quantity(std::string(input.example));
  const auto* usual = std::get_if<base::Quantity>(&example);
  return usual != nullptr && std::holds_alternative<base::Quantity>(read_typed(text, usual->unit, tables).read);
}

/// An input without a name is the first of the calculator that takes its unit: `3 ATM` is a pressure, not the depth before it.
/// Where none does it is the first of all, which says what is wrong; one that is given by name as well stays as it is.
Inputs named(const Calculator& calculator, const Inputs& inputs, const model::Tables& tables) {
  const auto bare = inputs.find(std::string_view());
  if (bare == inputs.end() || calculator.inputs.empty()) return inputs;
  const auto taker = std::find_if(calculator.inputs.begin(), calculator.inputs.end(),
                                  [&](const InputInfo& input) { return reads(input, bare->second.text, tables); });
  const bool is_figure =
      std::holds_alternative<base::Quantity>(base::parse_quantity(std::string(calculator.inputs.front().example)));
  const InputInfo& input = is_figure && taker != calculator.inputs.end() ? *taker : calculator.inputs.front();
  Inputs with_name = inputs;
  with_name.erase(std::string());
  with_name.emplace(std::string(input.name), bare->second);
  return with_name;
}

std::vector<FormLine> form_of(const Calculator& calculator, const Inputs& inputs) {
  std::vector<FormLine> form;
  for (const auto& input : calculator.inputs) {
    form.push_back({std::string(input.name), std::string(input.what), std::string(input.example), input.required,
                    inputs.find(input.name) != inputs.end()});
  }
  return form;
}

/// A cell of a table by the id of its fact, `table/NAME#ROW.COLUMN`.
std::optional<Ground> ground_of_table(const std::string& id, const model::Tables& tables) {
  constexpr std::string_view kTable = "table/";
  const model::FactId fact(id);
  const std::size_t point = fact.path.rfind('.');
  if (!fact.record.starts_with(kTable) || point == std::string_view::npos) return std::nullopt;
  const model::PublishedTable* table = tables.find(fact.record.substr(kTable.size()));
  if (table == nullptr) return std::nullopt;
  for (const auto& row : table->rows) {
    const auto cell = row.cells.find(fact.path.substr(point + 1));
    if (row.key != fact.path.substr(0, point) || cell == row.cells.end()) continue;
    const auto parsed = base::parse_quantity(cell->second);
    const auto* quantity = std::get_if<base::Quantity>(&parsed);
    return Ground{id, quantity == nullptr ? cell->second : base::printed(*quantity), row.trust};
  }
  return std::nullopt;
}

/// Names every fact that the outputs rest on, with its trust, once.
void add_grounds(Result& result, const Context& context) {
  for (const auto& output : result.outputs) {
    for (const auto& id : output.inputs) {
      const auto same = [&id](const Ground& ground) { return ground.fact == id; };
      if (std::any_of(result.grounds.begin(), result.grounds.end(), same)) continue;
      if (const model::Fact* fact = context.facts.find(id)) {
        result.grounds.push_back({id, fact->printed, fact->trust});
      } else if (auto ground = ground_of_table(id, context.tables)) {
        result.grounds.push_back(std::move(*ground));
      }
    }
  }
}

/// Figures and items stay, every sentence and word is replaced.
void reword(Result& result, std::string (*other)(const std::string&)) {
  for (auto& output : result.outputs) {
    if (!output.value) output.printed = other(output.printed);
  }
  for (auto* lines : {&result.working, &result.range}) {
    for (auto& line : *lines) line = other(line);
  }
  for (auto& caution : result.cautions) caution.text = other(caution.text);
  if (!result.refusal) return;
  result.refusal->reason = other(result.refusal->reason);
  result.refusal->hint = other(result.refusal->hint);
}

}  // namespace

const std::vector<Calculator>& calculators() {
  static const std::vector<Calculator> kAll = {
      cell_decode_calculator(), mixture_class_calculator(),     cell_swap_calculator(),      cell_life_calculator(),
      gasket_fit_calculator(),  crystal_thickness_calculator(), scratch_ladder_calculator(), crust_dose_calculator(),
      rinse_calculator(),       bath_mix_calculator(),          fumes_calculator(),          gold_margin_calculator(),
      rate_drift_calculator(),  water_pressure_calculator(),    crystal_size_calculator(),   lamp_sag_calculator(),
      fog_point_calculator(),   old_gasket_calculator(),        vapour_calculator(),         screw_thread_calculator(),
  };
  return kAll;
}

Result reckon(std::string_view name, const Inputs& inputs, const Context& context) {
  const Calculator* calculator = calculator_named(name);
  if (calculator == nullptr) {
    return refused(std::string(name), {"", "there is no calculator of this name", nearest_or_all(name, calculator_names())});
  }
  const Inputs given = named(*calculator, inputs, context.tables);
  auto wrong = wrong_inputs(*calculator, given);
  const bool wrong_form = wrong.has_value();
  Result result = wrong ? refused(std::string(name), std::move(*wrong)) : calculator->run(given, context);
  if (wrong_form) result.form = form_of(*calculator, given);
  if (result.refusal) add_example(*calculator, *result.refusal);
  add_grounds(result, context);
  if (context.reword != nullptr) reword(result, context.reword);
  return result;
}

std::string calculators_written(Form form) { return form == Form::json ? calculators_json() : calculators_text(); }

std::string calculators_text() {
  std::string text;
  for (const auto& calculator : calculators()) {
    text += std::string(calculator.name) + ": " + std::string(calculator.does) + "\n";
    int width = 0;
    for (const auto& input : calculator.inputs) width = std::max(width, base::display_width(example_of(input)));
    for (const auto& input : calculator.inputs) {
      const std::string example = example_of(input);
      const auto gap = static_cast<std::size_t>(width - base::display_width(example));
      text += "  " + example + std::string(gap, ' ') + (input.required ? "  needed: " : "  ") + std::string(input.what) + "\n";
    }
  }
  return text;
}

}  // namespace benchleaf::bench
