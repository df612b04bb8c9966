// In: a result, or the list of calculators. Out: one JSON object, the same at the terminal and in the page.

#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "bench/calculator.h"
#include "bench/json_text.h"
#include "bench/result.h"

namespace benchleaf::bench {
namespace {

void add_output(JsonText& json, const Output& output) {
  json.open_object().member("name", output.name).member("label", output.label);
  json.key("value").number(output.value).key("low").number(output.low).key("high").number(output.high);
  json.member("unit", output.unit).member("code", code_word(output.code)).member("record", output.record);
  json.member("printed", base::to_terminal(output.printed));
  json.member("trust", model::trust_name(output.trust)).key("inputs").open_array();
  for (const auto& input : output.inputs) json.text(input);
  json.close().close();
}

void add_figure(JsonText& json, std::string_view name, const Figure& figure) {
  json.key(name);
  if (!figure.value) {
    json.null();
    return;
  }
  json.open_object().key("value").number(figure.value).key("low").number(figure.low).key("high").number(figure.high);
  json.member("unit", figure.unit).member("printed", base::to_terminal(figure.printed));
  json.member("trust", model::trust_name(figure.trust)).close();
}

void add_item(JsonText& json, const CellItem& cell) {
  json.member("record", cell.record).member("name", cell.name).member("verdict", code_word(cell.verdict));
  json.member("size", code_word(cell.size)).member("system", code_word(cell.system)).member("drain", code_word(cell.drain));
  add_figure(json, "voltage", cell.voltage);
  add_figure(json, "lower", cell.lower);
  json.member("trust", model::trust_name(cell.trust));
}

void add_item(JsonText& json, const Rung& rung) {
  json.member("scale", rung.scale).member("grade", rung.grade);
  add_figure(json, "grain", rung.grain);
  add_figure(json, "removal", rung.removal);
}

void add_item(JsonText& json, const SizeItem& one) {
  json.member("record", one.record);
  add_figure(json, "size", one.size);
  json.member("measure", code_word(one.measure));
  add_figure(json, "share", one.share);
  json.member("verdict", code_word(one.verdict)).key("nearest").flag(one.nearest);
}

void add_item(JsonText& json, const HazardItem& hazard) {
  json.member("class", hazard.hazard_class).member("statement", hazard.statement).member("verdict", code_word(hazard.verdict));
}

void add_item(JsonText& json, const NotKnown& lack) { json.member("what", lack.what).member("subject", lack.subject); }

template <typename Item>
void add_items(JsonText& json, std::string_view name, const std::vector<Item>& items) {
  json.key(name).open_array();
  for (const auto& item : items) {
    json.open_object();
    add_item(json, item);
    json.close();
  }
  json.close();
}

void add_lines(JsonText& json, std::string_view name, const std::vector<std::string>& lines) {
  json.key(name).open_array();
  for (const auto& line : lines) json.text(base::to_terminal(line));
  json.close();
}

void add_formulas(JsonText& json, const Result& result) {
  json.key("formulas").open_array();
  for (const auto& formula : result.formulas) {
    json.open_object().member("text", formula.text).member("source", formula.source);
    json.member("trust", model::trust_name(formula.trust)).close();
  }
  json.close().key("grounds").open_array();
  for (const auto& ground : result.grounds) {
    json.open_object().member("fact", ground.fact).member("printed", base::to_terminal(ground.printed));
    json.member("trust", model::trust_name(ground.trust)).close();
  }
  json.close();
}

/// First those that stand before the figures.
void add_cautions(JsonText& json, const Result& result) {
  json.key("cautions").open_array();
  for (const bool first : {true, false}) {
    for (const auto& caution : result.cautions) {
      if (caution.first != first) continue;
      json.open_object().member("record", caution.record).member("text", base::to_terminal(caution.text));
      json.key("first").flag(caution.first).close();
    }
  }
  json.close();
}

}  // namespace

std::string result_json(const Result& result) {
  JsonText json;
  json.open_object().member("calculator", result.calculator);
  add_cautions(json, result);
  json.key("outputs").open_array();
  for (const auto& output : result.outputs) add_output(json, output);
  json.close();
  add_items(json, "cells", result.cells);
  add_items(json, "rungs", result.rungs);
  add_items(json, "sizes", result.sizes);
  add_items(json, "hazards", result.hazards);
  add_items(json, "not-known", result.not_known);
  add_lines(json, "working", result.working);
  add_formulas(json, result);
  add_lines(json, "holds", result.range);
  json.key("form").open_array();
  for (const auto& one : result.form) {
    json.open_object().member("name", one.name).member("what", one.what).member("example", one.example);
    json.key("required").flag(one.required).key("given").flag(one.given).close();
  }
  json.close().key("refusal");
  if (!result.refusal) return json.null().close().done();
  json.open_object().member("input", result.refusal->input).member("reason", result.refusal->reason);
  return json.member("hint", result.refusal->hint).close().close().done();
}

std::string calculators_json() {
  JsonText json;
  json.open_object().key("calculators").open_array();
  for (const auto& calculator : calculators()) {
    json.open_object().member("name", calculator.name).member("does", calculator.does).key("inputs").open_array();
    for (const auto& input : calculator.inputs) {
      json.open_object().member("name", input.name).member("what", input.what).member("example", input.example);
      json.key("required").flag(input.required).close();
    }
    json.close().close();
  }
  return json.close().close().done();
}

}  // namespace benchleaf::bench
