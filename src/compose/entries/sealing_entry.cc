// In: a series of gaskets, a kind of crystal, a scale of abrasives. Out: their entries with the sizes they come in.
#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "compose/verdict_table.h"

namespace benchleaf::compose {

namespace {

constexpr std::size_t kRowsRuledOff = 5;  // in a long table of figures on paper

std::string profile_words(std::optional<model::Profile> profile) {
  return profile == model::Profile::l ? "L section" : word_of(profile) + " section";
}

void add_sizes(const Desk& desk, const model::Record& record, const std::string& path, const char* label, EntryMaker& maker) {
  Line line(desk);
  line.fact(record, path + ".from").fact(record, path + ".to", " to ").fact(record, path + ".step", ", in steps of ");
  if (!line.empty()) line.say("\u00A0").sign(desk.sign(record, path + ".from")).say(".");
  maker.run_in(label, line);
}

std::string form_words(std::optional<model::AbrasiveForm> form) {
  if (form == model::AbrasiveForm::coated) return "coated on paper or cloth";
  if (form == model::AbrasiveForm::bonded_or_loose) return "bonded or loose grain";
  return "coated, bonded or loose";
}

std::string polish_words(std::optional<model::Polish> polish) {
  if (polish == model::Polish::yes) return "Can be polished";
  if (polish == model::Polish::no) return "Cannot be polished";
  return "Can be polished within limits";
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Gasket& gasket) {
  EntryMaker maker(desk, gasket, model::Entry::Rank::small);
  Line line(desk);
  line.say(profile_words(gasket.profile) + ", ").link(gasket.material);
  maker.entry().second = line.take();
  Line seats(desk);
  for (const model::Seat seat : gasket.seats) seats.say(seats.empty() ? "for " : ", ").say(plain_words(word_of(seat)));
  if (gasket.moving) seats.say(*gasket.moving ? "; moves" : "; does not move");
  maker.entry().aliases = seats.take();
  maker.values("gasket-values", {{"Section", "section"},
                                 {"Section, spread", "section-tolerance"},
                                 {"Wall", "wall"},
                                 {"Height", "height"},
                                 {"Inside, spread", "inside-tolerance"}});
  add_sizes(desk, gasket, "inside", "Inside diameters", maker);
  maker.run_in("Tell it by", gasket.recognise);
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Crystal& crystal) {
  EntryMaker maker(desk, crystal, model::Entry::Rank::short_title);
  maker.entry().second =
      Line(desk)
          .say(sentence_case(plain_words(word_of(crystal.form))) + ", " + plain_words(word_of(crystal.fixing)) + ", ")
          .link(crystal.material)
          .take();
  maker.paragraph({model::text_run(crystal.recognise)}, model::Paragraph::Role::lead);
  maker.values("crystal-values", {{"Thickness", "thickness"}, {"Over the seat by", "oversize"}});
  add_sizes(desk, crystal, "sizes", "Sizes", maker);
  maker.run_in("Take out", crystal.remove);
  maker.run_in("Fit", crystal.fit);
  Line polish(desk);
  polish.say(polish_words(crystal.polish));
  if (!crystal.grades.empty()) polish.say(", with ").links(crystal.grades);
  maker.run_in("Polish", polish.say("."));
  maker.caution_line(crystal.cautions);
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Abrasive& abrasive) {
  EntryMaker maker(desk, abrasive, model::Entry::Rank::short_title);
  maker.entry().second = {model::text_run(form_words(abrasive.form))};
  if (!abrasive.standard.empty()) maker.entry().aliases = {model::text_run(abrasive.standard)};
  if (!abrasive.uses.empty()) maker.paragraph({model::text_run(abrasive.uses)}, model::Paragraph::Role::lead);
  maker.run_in("Marked", abrasive.mark);
  maker.run_in("Not to confuse", abrasive.not_to_confuse);
  model::Table table;
  table.name = "grades";
  using Align = model::Column::Align;
  table.columns = {column("grade", Align::left, true), column("median", Align::decimal), column("spread", Align::decimal),
                   column("largest", Align::decimal), sign_column()};
  for (std::size_t i = 0; i < abrasive.grades.size(); ++i) {
    const std::string path = "grades." + std::to_string(i);
    table.rows.push_back(
        {{cell(abrasive.grades[i].grade), cell(Line(desk).fact(abrasive, path + ".median").take()),
          cell(Line(desk).fact(abrasive, path + ".tolerance").take()), cell(Line(desk).fact(abrasive, path + ".largest").take()),
          cell(Line(desk).sign(desk.sign(abrasive, path + ".median")).take())},
         {},
         desk.on_paper() && i % kRowsRuledOff != kRowsRuledOff - 1});
  }
  maker.table(std::move(table));
  if (!desk.on_paper()) add_on_materials(desk, maker, abrasive, abrasive.on_materials);
  return maker.finish();
}

}  // namespace benchleaf::compose
