// In: findings. Out: one JSON object.
#include "report/json.h"

#include <nlohmann/json.hpp>

namespace benchleaf::report {

namespace {

using Json = nlohmann::ordered_json;

void add_place(Json& object, const base::Span& where, const base::FileTable& files) {
  object["file"] = where.file == base::kNoFile ? std::string() : files.path(where.file);
  object["line"] = where.line;
  object["column"] = where.column;
}

Json note_json(const Note& note, const base::FileTable& files) {
  Json object;
  add_place(object, note.where, files);
  object["text"] = note.text;
  return object;
}

Json finding_json(const Finding& finding, const base::FileTable& files) {
  Json object;
  object["rule"] = rule_info(finding.rule).id;
  object["severity"] = severity_name(finding.severity);
  add_place(object, finding.where, files);
  object["message"] = finding.message;
  object["hint"] = finding.hint;
  object["notes"] = Json::array();
  for (const Note& note : finding.notes) object["notes"].push_back(note_json(note, files));
  return object;
}

}  // namespace

std::string findings_json(const Findings& findings, const base::FileTable& files) {
  Json root;
  root["findings"] = Json::array();
  for (const Finding& finding : findings.all()) root["findings"].push_back(finding_json(finding, files));
  return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace benchleaf::report
