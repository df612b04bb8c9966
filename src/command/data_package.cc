// In: the handbook's title and edition, the text of facts.jsonl. Out: datapackage.json, which describes it.

#include "command/data_package.h"

#include <nlohmann/json.hpp>

#include "base/sha256.h"

namespace benchleaf::command {
namespace {

using Json = nlohmann::ordered_json;

Json field(const char* name, const char* type, const char* description) {
  return {{"name", name}, {"type", type}, {"description", description}};
}

Json trusts() {
  using model::Trust;
  Json words = Json::array();
  for (const Trust trust :
       {Trust::standard, Trust::handbook, Trust::dataset, Trust::trade, Trust::memory, Trust::invented, Trust::given})
    words.push_back(model::trust_name(trust));
  return words;
}

Json fields() {
  Json id = field("id", "string", "Record and path: kind/id#path; of a table table/NAME#row.column.");
  id["constraints"] = {{"required", true}, {"unique", true}};
  Json trust = field("trust", "string", "How far to trust the value.");
  trust["constraints"] = {{"required", true}, {"enum", trusts()}};
  return Json::array({id, field("value", "number", "In the unit; none for words."),
                      field("low", "number", "Lower end of an interval, in the unit."),
                      field("high", "number", "Upper end of an interval, in the unit."),
                      field("unit", "string", "Symbol of the unit; empty for words and plain numbers."),
                      field("printed", "string", "As the handbook prints it."), trust,
                      field("derived", "boolean", "Calculated, not recorded."),
                      field("inputs", "array", "Ids of the facts that a derived one rests on."),
                      field("source", "string", "Record of the source and place, or the formula."),
                      field("overlay", "string", "Name of the overlay that the record comes from.")});
}

}  // namespace

std::string data_package(const model::Handbook& handbook, const std::string& facts) {
  const Json resource = {{"name", "facts"},
                         {"path", "facts.jsonl"},
                         {"title", "Every value of the handbook, recorded or derived"},
                         {"format", "jsonl"},
                         {"mediatype", "application/jsonl"},
                         {"encoding", "utf-8"},
                         {"bytes", facts.size()},
                         {"hash", "sha256:" + base::sha256(facts)},
                         {"schema", {{"fields", fields()}, {"primaryKey", "id"}}}};
  const Json licence = {{"name", "CC-BY-4.0"},
                        {"path", "https://creativecommons.org/licenses/by/4.0/legalcode"},
                        {"title", "Creative Commons Attribution 4.0 International"}};
  const Json package = {
      {"profile", "data-package"},   {"name", "benchleaf-facts"},          {"title", handbook.title},
      {"version", handbook.edition}, {"licenses", Json::array({licence})}, {"resources", Json::array({resource})}};
  return package.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace benchleaf::command
