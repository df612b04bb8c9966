// In: findings. Out: one SARIF 2.1.0 log (OASIS), as build services read it.

#include "report/sarif.h"

#include <map>
#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

namespace benchleaf::report {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view kSchema = "https://json.schemastore.org/sarif-2.1.0.json";

/// A path as a relative URI: what a URI does not allow is written as %XX.
std::string uri_of(std::string_view path) {
  constexpr std::string_view kHex = "0123456789ABCDEF";
  constexpr std::string_view kPlain = "-._~/";
  std::string uri;
  for (const char c : path) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    if (letter || kPlain.find(c) != std::string_view::npos) {
      uri += c;
      continue;
    }
    const auto byte = static_cast<unsigned char>(c);
    uri += '%';
    uri += kHex[byte >> 4U];
    uri += kHex[byte & 15U];
  }
  return uri;
}

Json region_of(const base::Span& where) {
  Json region;
  region["startLine"] = where.line;
  if (where.column < 1) return region;
  region["startColumn"] = where.column;
  if (where.length > 0) region["endColumn"] = where.column + where.length;
  return region;
}

Json location_of(const base::Span& where, const base::FileTable& files) {
  Json physical;
  physical["artifactLocation"]["uri"] = uri_of(files.path(where.file));
  if (where.line > 0) physical["region"] = region_of(where);
  Json location;
  location["physicalLocation"] = std::move(physical);
  return location;
}

Json rule_json(const RuleInfo& info) {
  Json rule;
  rule["id"] = info.id;
  rule["shortDescription"]["text"] = info.reason;
  rule["help"]["text"] = "Rests on: " + std::string(info.source);
  rule["defaultConfiguration"]["level"] = severity_name(info.severity);
  return rule;
}

Json result_json(const Finding& finding, std::size_t rule_index, const base::FileTable& files) {
  Json result;
  result["ruleId"] = rule_info(finding.rule).id;
  result["ruleIndex"] = rule_index;
  result["level"] = severity_name(finding.severity);
  result["message"]["text"] = finding.hint.empty() ? finding.message : finding.message + ". Hint: " + finding.hint;
  result["locations"] = Json::array();
  if (finding.where.file != base::kNoFile) result["locations"].push_back(location_of(finding.where, files));
  for (const Note& note : finding.notes) {
    if (note.where.file == base::kNoFile) continue;
    Json related = location_of(note.where, files);
    related["message"]["text"] = note.text;
    result["relatedLocations"].push_back(std::move(related));
  }
  return result;
}

}  // namespace

std::string findings_sarif(const Findings& findings, const base::FileTable& files, std::string_view version) {
  Json driver;
  driver["name"] = "benchleaf";
  driver["version"] = version;
  driver["rules"] = Json::array();
  std::map<Rule, std::size_t> index;
  for (const Finding& finding : findings.all()) {
    if (!index.emplace(finding.rule, driver["rules"].size()).second) continue;
    driver["rules"].push_back(rule_json(rule_info(finding.rule)));
  }
  Json run;
  run["tool"]["driver"] = std::move(driver);
  run["columnKind"] = "unicodeCodePoints";
  run["results"] = Json::array();
  for (const Finding& finding : findings.all()) run["results"].push_back(result_json(finding, index.at(finding.rule), files));
  Json log;
  log["$schema"] = kSchema;
  log["version"] = "2.1.0";
  log["runs"] = Json::array({std::move(run)});
  return log.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace benchleaf::report
