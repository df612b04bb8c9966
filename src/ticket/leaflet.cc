// In: a plan. Out: its pages: a heading for each section, boxes to tick before the lines, cautions as messages the first time and
// as one line after that.
#include "compose/entry_maker.h"
#include "compose/imprint.h"
#include "compose/uses.h"
#include "model/signs.h"
#include "ticket/plan.h"

namespace benchleaf::compose {

namespace {

constexpr const char* kCard = "card";  // goes out with the watch

model::Runs boxed(const PlanLine& line) {
  model::Runs runs;
  model::Run tick;
  tick.kind = model::Run::Kind::tick;
  runs.push_back(std::move(tick));
  runs.push_back(model::text_run("\u2002"));
  runs.insert(runs.end(), line.runs.begin(), line.runs.end());
  return runs;
}

model::Block caution_block(const Desk& desk, const model::Caution& caution, bool again) {
  if (!again) {
    model::Message message = message_of(desk, caution);
    message.hazard = {model::text_run(caution.hazard)};  // why it harms is the handbook's to say
    return {std::move(message)};
  }
  Line line(desk);
  line.say(std::string(model::message_word(caution.word)) + " ", model::Style::bold).say(caution.hazard, model::Style::bold);
  return paragraph_block(line.say(" As above.").take(), model::Paragraph::Role::dense);
}

model::Block block_of(const Desk& desk, const PlanLine& line) {
  if (line.kind == PlanLine::Kind::words) return paragraph_block(line.runs, model::Paragraph::Role::dense);
  if (line.kind != PlanLine::Kind::caution) return paragraph_block(boxed(line), model::Paragraph::Role::dense);
  const auto found = desk.records.cautions.find(line.record.substr(line.record.find('/') + 1));
  if (found == desk.records.cautions.end()) return paragraph_block({model::text_run(line.record)});
  return caution_block(desk, found->second, line.again);
}

}  // namespace

model::Leaflet ticket_leaflet(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
                              const Plan& plan, report::Findings& findings) {
  const Uses uses(records);
  const Desk desk{records, tables, derived, uses, findings};
  model::Leaflet leaflet;
  leaflet.id = plan.watch;
  leaflet.title = "Ticket " + (plan.number.empty() ? plan.watch : plan.number);
  leaflet.subtitle = plan.title;
  leaflet.imprint = imprint(records.handbook);
  if (const std::string line = overlay_line(records); !line.empty()) leaflet.imprint += ", " + line;
  leaflet.standing_line = records.handbook.standing_line;
  leaflet.language = records.handbook.language;
  leaflet.iso_date = iso_date(records.handbook);
  for (const PlanSection& section : plan.sections) {
    leaflet.blocks.push_back(heading_block(2, section.title, "section/" + section.id));
    if (section.id == kCard) leaflet.whole.push_back("section/" + section.id);
    for (const PlanLine& line : section.lines) leaflet.blocks.push_back(block_of(desk, line));
  }
  return leaflet;
}

}  // namespace benchleaf::compose
