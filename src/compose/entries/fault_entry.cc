// In: a symptom, a caution. Out: their entries: causes in the order in which they are tested; a hazard as its message.
#include "compose/entries/entries.h"
#include "compose/entry_maker.h"

namespace benchleaf::compose {

model::Entry make_entry(const Desk& desk, const model::Symptom& symptom) {
  EntryMaker maker(desk, symptom, model::Entry::Rank::title);
  Line shown(desk);
  for (const model::Display display : symptom.shown_by) shown.say(shown.empty() ? "" : ", ").say(display_words(display));
  maker.entry().second = shown.take();
  maker.paragraph({model::text_run(symptom.looks)}, model::Paragraph::Role::lead);
  model::Table table;
  table.name = "causes";
  table.columns = {column("test", model::Column::Align::left, true, 6), column("cause"), column("how to test it"),
                   column("what to do"), sign_column()};
  for (std::size_t i = 0; i < symptom.causes.size(); ++i) {
    const model::Symptom::Cause& cause = symptom.causes[i];
    Line cure(desk);
    cure.say(cause.cure);
    if (!cause.procedure.empty()) cure.say(" ").link(cause.procedure);
    table.rows.push_back({{cell(std::to_string(i + 1)), cell(cause.cause), cell(cause.test), cell(cure.take()),
                           cell(Line(desk).sign(desk.sign(symptom, "causes." + std::to_string(i))).take())},
                          {}});
  }
  maker.heading("Causes, the cheapest test first");
  maker.table(std::move(table));
  maker.list("Never", symptom.never);
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Caution& caution) {
  EntryMaker maker(desk, caution, model::Entry::Rank::small);
  maker.run_in("First aid", caution.first_aid);  // before all else: whoever looks it up may need it now
  if (caution.call) {
    Line line(desk);
    maker.run_in("Telephone", line.say("Poison centre ").blank(24).say(" emergency ").blank(15));
  }
  maker.add({message_of(desk, caution)});
  maker.links("Stands in", desk.uses.named_by(caution.reference(), model::Kind::procedure));
  return maker.finish();
}

}  // namespace benchleaf::compose
