// reckon: one calculator at the terminal, or the list of them.

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

#include "base/quantity.h"
#include "bench/calculator.h"
#include "command/commands.h"
#include "command/workbench.h"
#include "derive/bench_figures.h"

namespace benchleaf::command {
namespace {

using Json = nlohmann::ordered_json;

Json number_or_null(const std::optional<double>& number) { return number ? Json(*number) : Json(nullptr); }

Json output_json(const bench::Output& output) {
  Json json;
  json["name"] = output.name;
  json["label"] = output.label;
  json["value"] = number_or_null(output.value);
  json["low"] = number_or_null(output.low);
  json["high"] = number_or_null(output.high);
  json["unit"] = output.unit;
  json["printed"] = base::to_terminal(output.printed);
  json["trust"] = model::trust_name(output.trust);
  json["inputs"] = output.inputs;
  return json;
}

Json texts_json(const std::vector<std::string>& lines) {
  Json json = Json::array();
  for (const auto& line : lines) json.push_back(base::to_terminal(line));
  return json;
}

std::string result_json(const bench::Result& result) {
  Json json;
  json["calculator"] = result.calculator;
  json["outputs"] = Json::array();
  for (const auto& output : result.outputs) json["outputs"].push_back(output_json(output));
  json["working"] = texts_json(result.working);
  json["formulas"] = Json::array();
  for (const auto& formula : result.formulas) {
    json["formulas"].push_back({{"text", formula.text}, {"source", formula.source}, {"trust", model::trust_name(formula.trust)}});
  }
  json["grounds"] = Json::array();
  for (const auto& ground : result.grounds) {
    json["grounds"].push_back(
        {{"fact", ground.fact}, {"printed", base::to_terminal(ground.printed)}, {"trust", model::trust_name(ground.trust)}});
  }
  json["holds"] = texts_json(result.range);
  json["cautions"] = Json::array();
  for (const auto& caution : result.cautions) {
    json["cautions"].push_back({{"record", caution.record}, {"text", caution.text}, {"first", caution.first}});
  }
  json["refusal"] = nullptr;
  if (result.refusal) {
    json["refusal"] = {{"input", result.refusal->input}, {"reason", result.refusal->reason}, {"hint", result.refusal->hint}};
  }
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string list_json() {
  Json json;
  json["calculators"] = Json::array();
  for (const auto& calculator : bench::calculators()) {
    Json entry;
    entry["name"] = calculator.name;
    entry["does"] = calculator.does;
    entry["inputs"] = Json::array();
    for (const auto& input : calculator.inputs) {
      entry["inputs"].push_back(
          {{"name", input.name}, {"what", input.what}, {"example", input.example}, {"required", input.required}});
    }
    json["calculators"].push_back(std::move(entry));
  }
  return json.dump(2) + "\n";
}

}  // namespace

int run_reckon(const ReckonOptions& options, const CommonOptions& common, Terminal& terminal) {
  if (options.name.empty()) {
    terminal.data(options.json ? list_json() : bench::calculators_text());
    return terminal.finish(kExitGood);
  }
  auto opened = open_records(common);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  auto& workbench = std::get<Workbench>(opened);
  terminal.findings(workbench.findings, workbench.files);
  if (workbench.findings.has_errors()) return kExitFindings;

  bench::Inputs inputs;
  for (const auto& [key, value] : options.inputs) inputs.emplace(key, bench::Given{value, model::Trust::given, {}});
  const model::FactBase figures = derive::bench_figures(workbench.base, workbench.tables);
  const bench::Result result = bench::reckon(options.name, inputs, {workbench.tables, figures});
  terminal.data(options.json ? result_json(result) : bench::result_text(result));
  return terminal.finish(result.refusal ? kExitFindings : kExitGood);
}

}  // namespace benchleaf::command
