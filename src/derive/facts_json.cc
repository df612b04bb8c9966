// In: facts. Out: facts.jsonl, one fact a line.

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

#include "derive/derive.h"

namespace benchleaf::derive {
namespace {

using Json = nlohmann::ordered_json;

Json number_or_null(const std::optional<double>& number) { return number ? Json(*number) : Json(nullptr); }

}  // namespace

std::string facts_jsonl(const model::FactBase& facts) {
  std::string text;
  for (const auto& fact : facts.all()) {
    Json line;
    line["id"] = fact.id;
    line["value"] = number_or_null(fact.value);
    line["low"] = number_or_null(fact.low);
    line["high"] = number_or_null(fact.high);
    line["unit"] = fact.unit;
    line["printed"] = fact.printed;
    line["trust"] = model::trust_name(fact.trust);
    line["derived"] = fact.derived;
    line["inputs"] = fact.inputs;
    line["source"] = fact.source;
    if (!fact.overlay.empty()) line["overlay"] = fact.overlay;
    text += line.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
  }
  return text;
}

}  // namespace benchleaf::derive
