// In: a procedure. Out: its entry: what to lay out, what to know first, the steps with what each puts on what; a grave
// caution directly above the step that it guards.
#include <algorithm>

#include "compose/entries/entries.h"
#include "compose/entry_maker.h"

namespace benchleaf::compose {

namespace {

using model::Style;

class ProcedureSetter {
 public:
  ProcedureSetter(const Desk& desk, const model::Procedure& procedure)
      : desk_(desk), procedure_(procedure), maker_(desk, procedure, model::Entry::Rank::title) {}

  model::Entry make() {
    maker_.entry().aliases = Line(desk_).fact(procedure_, "time").take();
    if (!procedure_.purpose.empty()) maker_.paragraph({model::text_run(procedure_.purpose)}, model::Paragraph::Role::lead);
    maker_.messages(procedure_.cautions);
    add_layout();
    add_steps();
    maker_.run_in("Done when", procedure_.done);
    maker_.list("Stop if", procedure_.stop);
    maker_.links("Then", procedure_.next);
    maker_.links("Asked for by", desk_.uses.named_by(procedure_.reference(), model::Kind::symptom));
    return maker_.finish();
  }

 private:
  void add_layout() {
    maker_.list("Before", procedure_.before);
    maker_.heading("Lay out");
    maker_.links("Tools", procedure_.tools);
    maker_.links("Liquids and abrasives", liquids());
    maker_.links("Still in the case", procedure_.inside);
    for (const model::Procedure::Slot& slot : procedure_.slots) {
      Line line(desk_);
      maker_.run_in(sentence_case(plain_words(slot.name)), line.say(slot.asks + " ").links(slot.allowed));
    }
  }

  /// What the steps put on something, each once, in the order of the steps.
  model::References liquids() const {
    model::References found;
    for (const model::Procedure::Step& step : procedure_.steps) {
      for (const model::RecordRef& liquid : step.with) {
        if (liquid.text().front() != '$' && std::find(found.begin(), found.end(), liquid) == found.end()) found.push_back(liquid);
      }
    }
    return found;
  }

  /// Cautions that stand one after the other are set the gravest first, then the step that they guard.
  void add_steps() {
    model::References waiting;
    int number = 0;
    for (const model::Procedure::Step& step : procedure_.steps) {
      if (!step.caution.empty()) {
        waiting.push_back(step.caution);
        continue;
      }
      maker_.messages(waiting);
      waiting.clear();
      model::Step made;
      made.number = ++number;
      made.runs = Line(desk_).say(step.text).take();
      if (!step.see.empty()) made.runs.push_back(model::text_run(" " + step.see, Style::italic));
      made.proof = proof(step);
      maker_.add({std::move(made)});
    }
    maker_.messages(waiting);
  }

  model::Runs proof(const model::Procedure::Step& step) const {
    Line line(desk_);
    add_named(line, "with", step.with);
    if (!step.grade.empty()) line.say(" " + step.grade);
    add_named(line, "on", step.on);
    add_named(line, "reaches", step.reaches);
    add_named(line, "meets", step.meets);
    if (step.rinse) line.say(line.empty() ? "" : "  ").say("rinse", Style::bold);
    add_named(line, "using", step.tools);
    return line.take();
  }

  void add_named(Line& line, const char* word, const model::References& references) const {
    if (references.empty()) return;
    line.say(line.empty() ? "" : "  ").say(word, Style::bold).say(" ");
    bool first = true;
    for (const model::RecordRef& reference : references) {
      line.say(first ? "" : ", ");
      first = false;
      if (reference.text().front() == '$')
        line.say(plain_words(reference.text().substr(1)), Style::italic);
      else
        line.name(reference);
    }
  }

  const Desk& desk_;
  const model::Procedure& procedure_;
  EntryMaker maker_;
};

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Procedure& procedure) { return ProcedureSetter(desk, procedure).make(); }

}  // namespace benchleaf::compose
