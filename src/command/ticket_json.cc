// In: a plan. Out: one JSON object.

#include <nlohmann/json.hpp>

#include "base/quantity.h"
#include "command/ticket_written.h"
#include "ticket/plan_text.h"

namespace benchleaf::command {
namespace {

using Json = nlohmann::ordered_json;

const char* kind_word(ticket::SheetLine::Kind kind) {
  switch (kind) {
    case ticket::SheetLine::Kind::key: return "key";
    case ticket::SheetLine::Kind::tick: return "tick";
    case ticket::SheetLine::Kind::words: return "words";
    case ticket::SheetLine::Kind::caution: return "caution";
    case ticket::SheetLine::Kind::step: return "step";
  }
  return "";
}

const char* purpose_word(ticket::PlanNeed::For purpose) {
  switch (purpose) {
    case ticket::PlanNeed::For::fit: return "fit";
    case ticket::PlanNeed::For::spare_of_packet: return "spare-of-packet";
    case ticket::PlanNeed::For::other_packet: return "other-packet";
  }
  return "";
}

Json needs_json(const compose::Desk& desk, const std::vector<ticket::PlanNeed>& needs) {
  Json list = Json::array();
  for (const ticket::PlanNeed& need : needs) {
    Json one;
    one["record"] = need.record.text();
    one["size"] = base::to_terminal(need.size);
    one["count"] = need.count;
    one["for"] = purpose_word(need.purpose);
    one["measured-first"] = need.to_measure;
    one["words"] = base::to_terminal(ticket::need_words(desk, need));
    one["instead"] = Json::array();
    for (const ticket::Alternative& other : need.instead)
      one["instead"].push_back({{"record", other.record.text()},
                                {"size", base::to_terminal(other.size)},
                                {"verdict", bench::code_word(other.verdict)}});
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

Json sections_json(const ticket::Sheets& sheets, const model::KnowledgeBase& records) {
  Json sections = Json::array();
  for (const ticket::SheetSection& section : sheets.all()) {
    Json lines = Json::array();
    for (const ticket::SheetLine& line : section.lines)
      lines.push_back(
          {{"kind", kind_word(line.kind)}, {"text", ticket::line_text(line, records)}, {"record", line.record.text()}});
    sections.push_back({{"id", section.id}, {"title", section.title}, {"lines", std::move(lines)}});
  }
  return sections;
}

Json jobs_json(const compose::Desk& desk, const std::vector<ticket::PlanJob>& jobs) {
  Json list = Json::array();
  for (const ticket::PlanJob& job : jobs) {
    Json causes = Json::array();
    for (const ticket::PlanCause& cause : job.causes)
      causes.push_back({{"symptom", cause.symptom.text()}, {"cause", cause.cause}});
    list.push_back({{"procedure", job.procedure.text()},
                    {"hold", job.hold.text()},
                    {"not-this-watch", job.state == ticket::PlanJob::State::not_this_watch},
                    {"held", base::to_terminal(ticket::why_waits(desk, job))},
                    {"causes", std::move(causes)}});
  }
  return list;
}

}  // namespace

std::string plan_json(const ticket::Plan& plan, const ticket::Sheets& sheets, const compose::Desk& desk,
                      const std::vector<ticket::PlanNeed>* order) {
  Json root;
  root["watch"] = plan.watch;
  root["title"] = plan.title;
  root["drawer"] = plan.drawer;
  root["one-page"] = plan.one_page;
  root["checks"] = Json::array();
  for (const auto& open : plan.questions) {
    const auto* question = desk.records.find<model::Question>(open.question);
    if (question == nullptr) continue;
    root["checks"].push_back({{"field", open.field}, {"what", question->title}, {"how", question->how}});
  }
  root["needs"] = needs_json(desk, plan.needs);
  root["jobs"] = jobs_json(desk, plan.jobs);
  root["sections"] = sections_json(sheets, desk.records);
  root["facts"] = facts_json(plan.facts);
  if (order != nullptr) root["order"] = needs_json(desk, *order);
  return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace benchleaf::command
