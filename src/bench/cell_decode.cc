// In: designation= of a round cell. Out: what it stands for, by the published tables of letters, codes and short sizes.

#include "bench/cell_decode.h"

#include <initializer_list>
#include <optional>
#include <utility>

#include "base/id.h"
#include "base/number.h"
#include "base/quantity.h"
#include "bench/names.h"
#include "bench/print_rule.h"
#include "model/tables.h"
#include "standards/cell_code.h"
#include "standards/designation.h"

namespace benchleaf::bench {
namespace {

using model::Trust;
using standards::CellCode;

constexpr std::string_view kName = "cell-decode";
constexpr std::string_view kGrammar =
    "[cells in series] SYSTEM R SIZE [suffix]; SIZE = diameter code, then height in tenths of a millimetre, both cut off, not "
    "rounded";

/// A row of a table as an input of an output: one of its columns, and its trust.
struct Row {
  const model::RowOrigin& origin;
  std::string_view column;
};

/// `sodium-hydroxide` as words.
std::string in_words(std::string id) {
  for (char& c : id) {
    if (c == '-') c = ' ';
  }
  return id;
}

/// Fills a result from a read designation.
class Decoder {
 public:
  Decoder(const Given& given, const CellCode& code) : given_(given), code_(code) { result_.calculator = std::string(kName); }

  Result run() {
    add_system();
    add_size();
    add_forms();
    add_suffix();
    add_working();
    const auto& source = code_.system->origin;
    result_.formulas.push_back({std::string(kGrammar), source.source, source.trust});
    result_.range.emplace_back("Round cells. A code stands for one largest diameter; digits 16 may be a cell of 1.65 mm.");
    add_cautions();
    return std::move(result_);
  }

 private:
  /// An output that rests on the designation and on rows of tables; its trust is the weakest of them.
  Output& add(std::string_view name, std::string printed, std::initializer_list<Row> rows) {
    Output output = make_output(kName, name);
    output.printed = std::move(printed);
    output.trust = given_.trust;
    if (!given_.fact.empty()) output.inputs.push_back(given_.fact);
    for (const auto& row : rows) {
      output.inputs.push_back(row.origin.id + "." + std::string(row.column));
      output.trust = model::weaker(output.trust, row.origin.trust);
    }
    output.formula = std::string(kGrammar) + " [" + (rows.size() == 0 ? code_.system->origin : rows.begin()->origin).source + "]";
    result_.outputs.push_back(std::move(output));
    return result_.outputs.back();
  }

  void add_voltage(std::string_view name, std::string_view column, const base::Quantity& one_cell) {
    const auto volts = one_cell.in(base::Unit::volt);
    const OutputInfo* rule = print_rule(kName, name);
    if (!volts || rule == nullptr) return;
    const double value = base::tidy(volts->nominal * code_.designation.in_series);
    Output& output = add(name, base::printed(figure(*rule, value), base::Unit::volt), {{code_.system->origin, column}});
    output.value = value;
    output.unit = std::string(base::unit_info(base::Unit::volt).symbol);
  }

  void add_system() {
    add("system", code_.system->name, {{code_.system->origin, "name"}});
    if (code_.designation.in_series > 1) {
      Output& cells = add("cells", std::to_string(code_.designation.in_series) + " cells", {});
      cells.value = code_.designation.in_series;
    }
    add_voltage("nominal", "nominal", code_.system->nominal);
    if (code_.system->end) add_voltage("end-voltage", "end", *code_.system->end);
  }

  void add_size() {
    const auto diameter = code_.diameter->tolerance.in(base::Unit::millimetre);
    if (diameter) {
      Output& output = add("diameter", base::printed(code_.diameter->tolerance), {{code_.diameter->origin, "tolerance"}});
      output.value = diameter->nominal;
      output.low = diameter->low;
      output.high = diameter->high;
      output.unit = std::string(base::unit_info(base::Unit::millimetre).symbol);
      rest_on_short_form(output);
    }
    const OutputInfo* rule = print_rule(kName, "height");
    if (rule == nullptr) return;
    const standards::HeightRange range = standards::height_range(code_.tenths);
    Output& height = add("height",
                         base::printed(figure(*rule, range.low), base::Unit::millimetre) + " up to, not including, " +
                             base::printed(figure(*rule, range.below), base::Unit::millimetre),
                         {});
    height.low = range.low;
    height.high = range.below;
    height.unit = std::string(base::unit_info(base::Unit::millimetre).symbol);
    rest_on_short_form(height);
    if (code_.long_height) height.trust = model::weaker(height.trust, Trust::memory);
    if (!code_.designation.short_form()) height.trust = model::weaker(height.trust, code_.system->origin.trust);
  }

  /// Where the digits are those of a short size, its row is an input as well.
  void rest_on_short_form(Output& output) const {
    if (!code_.designation.short_form()) return;
    output.inputs.push_back(code_.short_form->origin.id + ".long");
    output.trust = model::weaker(output.trust, code_.short_form->origin.trust);
  }

  void add_forms() {
    if (code_.designation.short_form()) {
      add("long-form", code_.designation.with_size(code_.long_size) + code_.designation.suffix,
          {{code_.short_form->origin, "long"}});
    } else if (code_.short_form != nullptr) {
      add("short-form", code_.designation.with_size(code_.short_form->short_size), {{code_.short_form->origin, "short"}});
    }
  }

  void add_suffix() {
    for (const auto* suffix : code_.suffixes) {
      if (suffix->electrolyte == "not stated") continue;
      add("electrolyte", in_words(suffix->electrolyte), {{suffix->origin, "electrolyte"}});
    }
    if (code_.drain != nullptr) add("drain", code_.drain->drain, {{code_.drain->origin, "drain"}});
  }

  void add_working() {
    const auto& designation = code_.designation;
    auto& working = result_.working;
    if (designation.in_series > 1) working.push_back(std::to_string(designation.in_series) + ": cells in series");
    working.push_back(designation.system + ": " + code_.system->name + ", " + base::printed(code_.system->nominal) + " a cell");
    working.emplace_back("R: round");
    if (designation.short_form()) working.push_back(designation.size + ": short for " + code_.long_size);
    const std::string code = std::to_string(code_.diameter->code);
    working.push_back(code + ": diameter " + base::printed(code_.diameter->tolerance));
    const Output* height = result_.find("height");
    if (height != nullptr) working.push_back(code_.long_size.substr(code.size()) + ": height " + height->printed);
    for (const auto* suffix : code_.suffixes) working.push_back(suffix->letter + ": " + suffix->meaning);
  }

  void add_cautions() {
    auto& cautions = result_.cautions;
    if (code_.system->withdrawn) cautions.push_back({"", "The system is withdrawn: new cells of it are no longer sold."});
    if (code_.designation.in_series > 1) {
      cautions.push_back({"", "Diameter and height are those of one cell; the stack with its sleeve is larger."});
    }
    if (code_.long_height) cautions.push_back({"", "Three digits of height are a form from memory: measure the cell."});
    if (!code_.unknown_suffix.empty()) {
      cautions.push_back({"", "No table explains the letters " + code_.unknown_suffix + " of the suffix."});
    }
    cautions.push_back({"", "The designation says the system only when it is printed on this cell: read the cell, not a list."});
  }

  const Given& given_;
  const CellCode& code_;
  Result result_;
};

/// A code that reads well and stands for no cell: one without height, a stack taller than any.
std::optional<Refusal> no_such_cell(const CellCode& code) {
  constexpr int kLeastTenths = 5;   // of a millimetre: no round cell is thinner
  constexpr int kMostInSeries = 8;  // 12 V
  if (code.tenths < kLeastTenths) {
    return Refusal{"designation",
                   "its height digits are " + std::to_string(code.tenths) + ": no cell is " +
                       base::fixed_text(code.tenths / 10.0, 1) + " mm high",
                   "read the mark again; the last two digits are the height in tenths of a millimetre"};
  }
  if (code.designation.in_series > kMostInSeries) {
    return Refusal{"designation", std::to_string(code.designation.in_series) + " cells in one stack are not made",
                   "read the mark again; the figure before the letters is the number of cells"};
  }
  return std::nullopt;
}

Refusal refusal_of(const standards::DesignationError& error) { return {"designation", error.reason, error.hint, true}; }

std::string designation_of(const std::string& cell, const Context& context) {
  const model::Fact* fact = context.facts.find(cell + "#designation");
  return fact == nullptr ? cell : fact->printed;
}

/// The designations of the cells on file that a trade number, `AG13`, stands for; empty where it stands for none.
std::string cells_named(const std::string& text, const Context& context) {
  if (context.names == nullptr) return {};
  const Resolution named = context.names->resolve(text, {"cell"});
  std::vector<std::string> cells;
  if (named.state == Resolution::State::found) cells.push_back(designation_of(named.record, context));
  for (const std::string& cell : named.readings) cells.push_back(designation_of(cell, context));
  return base::or_list(cells);
}

Result cell_decode(const Inputs& inputs, const Context& context) {
  const Given& given = inputs.at("designation");
  const auto parsed = standards::parse_designation(given.text);
  if (const auto* error = std::get_if<standards::DesignationError>(&parsed)) {
    Refusal refusal = refusal_of(*error);
    if (const std::string cells = cells_named(given.text, context); !cells.empty())
      refusal.hint = given.text + " stands for " + cells + ": give the designation";
    return refused(std::string(kName), std::move(refusal));
  }
  const auto code = standards::read_cell_code(std::get<standards::Designation>(parsed), context.tables);
  if (const auto* error = std::get_if<standards::DesignationError>(&code)) return refused(std::string(kName), refusal_of(*error));
  if (auto wrong = no_such_cell(std::get<CellCode>(code))) return refused(std::string(kName), std::move(*wrong));
  return Decoder(given, std::get<CellCode>(code)).run();
}

}  // namespace

Calculator cell_decode_calculator() {
  return {kName,
          "what the designation of a round cell stands for",
          {{"designation", "the name on the cell", "SR754W", true}},
          cell_decode,
          {{"system", "system"},
           {"cells", "in series", 0},
           {"nominal", "nominal voltage", 2, base::Rounding::half_away, 0, 2, base::Trailing::cut},
           {"end-voltage", "spent at", 2, base::Rounding::half_away, 0, 2, base::Trailing::cut},
           {"diameter", "diameter by code"},
           {"height", "height by digits", 1},
           {"long-form", "long form"},
           {"short-form", "short form"},
           {"electrolyte", "electrolyte"},
           {"drain", "drain, by the trade"}}};
}

}  // namespace benchleaf::bench
