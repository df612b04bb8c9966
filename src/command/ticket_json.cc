// In: a plan. Out: one JSON object.

#include <nlohmann/json.hpp>

#include "base/quantity.h"
#include "command/ticket_written.h"
#include "ticket/plan_text.h"

namespace benchleaf::command {
namespace {

using Json = nlohmann::ordered_json;

const char* kind_word(compose::PlanLine::Kind kind) {
  switch (kind) {
    case compose::PlanLine::Kind::tick: return "tick";
    case compose::PlanLine::Kind::words: return "words";
    case compose::PlanLine::Kind::caution: return "caution";
    case compose::PlanLine::Kind::step: return "step";
  }
  return "";
}

Json needs_json(const std::vector<compose::PlanNeed>& needs) {
  Json list = Json::array();
  for (const compose::PlanNeed& need : needs) {
    Json one;
    one["record"] = need.record;
    one["size"] = base::to_terminal(need.size);
    one["count"] = need.count;
    one["words"] = base::to_terminal(need.words);
    one["note"] = base::to_terminal(need.note);
    one["instead"] = Json::array();
    for (const std::string& instead : need.instead) one["instead"].push_back(base::to_terminal(instead));
    one["in-drawer"] = need.in_drawer;
    one["place"] = need.place;
    list.push_back(std::move(one));
  }
  return list;
}

Json facts_json(const model::FactBase& facts) {
  Json list = Json::array();
  for (const model::Fact& fact : facts.all()) {
    Json one;
    one["id"] = fact.id;
    one["printed"] = base::to_terminal(fact.printed);
    if (fact.value) one["value"] = *fact.value;
    if (fact.low) one["low"] = *fact.low;
    if (fact.high) one["high"] = *fact.high;
    one["unit"] = fact.unit;
    one["trust"] = model::trust_name(fact.trust);
    list.push_back(std::move(one));
  }
  return list;
}

Json sections_json(const compose::Plan& plan, const model::KnowledgeBase& records) {
  Json sections = Json::array();
  for (const compose::PlanSection& section : plan.sections) {
    Json lines = Json::array();
    for (const compose::PlanLine& line : section.lines)
      lines.push_back({{"kind", kind_word(line.kind)}, {"text", compose::line_text(line, records)}, {"record", line.record}});
    sections.push_back({{"id", section.id}, {"title", section.title}, {"lines", std::move(lines)}});
  }
  return sections;
}

}  // namespace

std::string plan_json(const compose::Plan& plan, const model::KnowledgeBase& records,
                      const std::vector<compose::PlanNeed>* order) {
  Json root;
  root["watch"] = plan.watch;
  root["title"] = plan.title;
  root["drawer"] = plan.drawer;
  root["checks"] = Json::array();
  for (const auto& check : plan.checks)
    root["checks"].push_back({{"field", check.field}, {"what", check.what}, {"how", check.how}});
  root["needs"] = needs_json(plan.needs);
  root["jobs"] = Json::array();
  for (const auto& job : plan.jobs) root["jobs"].push_back({{"procedure", job.procedure}, {"held", job.held}});
  root["sections"] = sections_json(plan, records);
  root["facts"] = facts_json(plan.facts);
  if (order != nullptr) root["order"] = needs_json(*order);
  return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace benchleaf::command
