// In: a procedure. Out: its entry: what to lay out, what to know first, the steps with what each puts on what; a grave
// caution directly above the step that it guards.
#include <algorithm>

#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "compose/names.h"

namespace benchleaf::compose {

namespace {

using model::Style;

class ProcedureSetter {
 public:
  ProcedureSetter(const Desk& desk, const model::Procedure& procedure)
      : desk_(desk),
        procedure_(procedure),
        maker_(desk, procedure, desk.on_paper() ? model::Entry::Rank::short_title : model::Entry::Rank::title) {}

  model::Entry make() {
    maker_.entry().aliases = Line(desk_).fact(procedure_, "time").take();
    maker_.entry().whole = true;
    if (!procedure_.purpose.empty()) maker_.paragraph({model::text_run(procedure_.purpose)}, model::Paragraph::Role::lead);
    if (desk_.on_paper()) {
      add_preparations();
      add_head_messages();
      add_steps();
      add_end();
      return maker_.finish();
    }
    maker_.messages(procedure_.cautions, MessagePlace::head);
    add_layout();
    if (!procedure_.steps.empty()) maker_.heading("Steps");
    add_steps();
    maker_.run_in("Done when", procedure_.done);
    maker_.list("Stop if", procedure_.stop);
    maker_.links("Then", procedure_.next);
    maker_.links("Asked for by", desk_.uses.named_by(procedure_.reference(), model::Kind::symptom));
    return maker_.finish();
  }

 private:
  /// What holds for the whole job, in brief.
  void add_head_messages() {
    if (procedure_.cautions.empty()) return;
    maker_.add(heading_block(4, "For the whole job"));
    maker_.messages(procedure_.cautions, MessagePlace::head);
  }

  /// What must be true before the job, with a box to tick, beside what is laid out for it.
  void add_preparations() {
    model::Blocks before, lay_out;
    if (!procedure_.before.empty()) {
      before.push_back(heading_block(4, "Before"));
      for (const std::string& item : procedure_.before)
        before.push_back(paragraph_block(Line(desk_).tick().say("\u2002" + item).take(), model::Paragraph::Role::dense));
    }
    Line tools(desk_);
    for (const std::string& tool : procedure_.tools)
      tools.say(tools.empty() ? "" : "\u2002 ").tick().say("\u00A0" + unbroken(desk_.name(tool)));
    add_line(lay_out, "", tools);
    Line with(desk_);
    add_line(lay_out, "Liquids and abrasives", with.links(liquids()));
    Line inside(desk_);
    add_line(lay_out, "Still in the case", inside.names(procedure_.inside));
    for (const model::Procedure::Slot& slot : procedure_.slots) {
      Line line(desk_);
      add_line(lay_out, sentence_case(plain_words(slot.name)), line.say(slot.asks + " ").names(slot.allowed));
    }
    if (!lay_out.empty()) lay_out.insert(lay_out.begin(), heading_block(4, "Lay out"));
    model::SideBySide sides;
    if (!before.empty()) sides.columns.push_back(std::move(before));
    if (!lay_out.empty()) sides.columns.push_back(std::move(lay_out));
    if (!sides.columns.empty()) maker_.add({std::move(sides)});
  }

  void add_line(model::Blocks& blocks, const std::string& label, Line& text) const {
    if (text.empty()) return;
    Line line(desk_);
    if (!label.empty()) line.label(label);
    model::Runs runs = line.take();
    for (model::Run& run : text.take()) runs.push_back(std::move(run));
    blocks.push_back(paragraph_block(std::move(runs), model::Paragraph::Role::dense));
  }

  void add_end() {
    model::SideBySide sides;
    if (!procedure_.stop.empty()) {
      model::Blocks stop{heading_block(4, "Stop if")};
      model::List list;
      for (const std::string& item : procedure_.stop)
        list.items.push_back({paragraph_block({model::text_run(item)}, model::Paragraph::Role::dense)});
      stop.push_back({std::move(list)});
      sides.columns.push_back(std::move(stop));
    }
    model::Blocks done;
    if (!procedure_.done.empty()) {
      done.push_back(heading_block(4, "Done when"));
      done.push_back(paragraph_block({model::text_run(procedure_.done)}, model::Paragraph::Role::dense));
    }
    Line then(desk_);
    add_line(done, "Then", then.links(procedure_.next));
    if (!done.empty()) sides.columns.push_back(std::move(done));
    if (!sides.columns.empty()) maker_.add({std::move(sides)});
  }

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
      maker_.messages(waiting, MessagePlace::before_step);
      waiting.clear();
      model::Step made;
      made.number = ++number;
      made.runs = Line(desk_).say(step.text).take();
      if (desk_.on_paper()) {
        if (!step.see.empty()) made.see = Line(desk_).say("See", Style::bold).say(" " + step.see).take();
      } else {
        if (!step.see.empty()) made.runs.push_back(model::text_run(" " + step.see, Style::italic));
        made.proof = proof(step);
      }
      maker_.add({std::move(made)});
    }
    maker_.messages(waiting, MessagePlace::before_step);
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
