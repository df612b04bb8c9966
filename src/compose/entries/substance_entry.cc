// In: a substance, a residue. Out: their entries: what they are, how they are classed, what meets them, what holds them.
#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "compose/meetings.h"

namespace benchleaf::compose {

namespace {

/// `C3H6O` with its figures lowered.
model::Runs formula_runs(const std::string& formula) {
  model::Runs runs;
  for (char c : formula) {
    const model::Style style = c >= '0' && c <= '9' ? model::Style::subscript : model::Style::plain;
    if (!runs.empty() && runs.back().style == style)
      runs.back().text += c;
    else
      runs.push_back(model::text_run(std::string(1, c), style));
  }
  return runs;
}

void add_class_table(const Desk& desk, const model::Substance& substance, EntryMaker& maker) {
  model::Table table;
  table.name = "classes-of-one";
  table.columns = {column("class", model::Column::Align::left, true), column("statement"), column("from"), column("below"),
                   sign_column()};
  for (std::size_t i = 0; i < substance.classes.size(); ++i) {
    const std::string path = "classes." + std::to_string(i);
    table.rows.push_back(
        {{cell(substance.classes[i].name), cell(substance.classes[i].statement),
          cell(Line(desk).fact(substance, path + ".from").take()), cell(Line(desk).fact(substance, path + ".below").take()),
          cell(Line(desk).sign(desk.sign(substance, path)).take())},
         {}});
  }
  maker.table(std::move(table));
}

std::string acts_words(std::optional<model::ActsAs> acts) {
  return acts == model::ActsAs::neither ? "neither acid nor base" : word_of(acts);
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Substance& substance) {
  EntryMaker maker(desk, substance, model::Entry::Rank::small);
  Line also(desk);
  for (const std::string& name : substance.also_called) also.say(also.empty() ? "" : ", ").say(name);
  maker.entry().second = also.take();
  Line line(desk);
  if (!substance.formula.empty()) {
    model::Runs formula = formula_runs(substance.formula);
    formula.push_back(model::text_run(" · " + acts_words(substance.acts_as)));
    maker.entry().aliases = std::move(formula);
  } else {
    maker.entry().aliases = {model::text_run(acts_words(substance.acts_as))};
  }
  std::vector<Labelled> values{{"CAS number", "cas"},
                               {"Index number", "index-number"},
                               {"Molar mass", "molar-mass"},
                               {"Density", "density"},
                               {"Boils at", "boiling-point"},
                               {"Flash point", "flash-point"},
                               {"Burns in air from", "lower-limit"},
                               {"Burns in air to", "upper-limit"},
                               {"Equivalents", "equivalents"}};
  for (std::size_t i = 0; i < substance.acid_constants.size(); ++i)
    values.push_back({"pKa", "acid-constants." + std::to_string(i)});
  maker.values("substance-values", values);
  if (substance.gas) {
    line.link(substance.gas->what).fact(substance, "gas.moles", ", moles from one mole: ").say(".");
    maker.run_in("Sets free", line);
  }
  add_class_table(desk, substance, maker);
  maker.back_links("In", desk.uses.named_by(substance.reference(), model::Kind::chemistry, "made-of"));
  maker.back_links("Left in", desk.uses.named_by(substance.reference(), model::Kind::residue, "made-of"));
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Residue& residue) {
  EntryMaker maker(desk, residue, desk.on_paper() ? model::Entry::Rank::short_title : model::Entry::Rank::title);
  Line second(desk);
  for (const std::string& system : residue.left_by)
    second.say(second.empty() ? "left by cells of " : ", ").say(plain_words(system));
  maker.entry().second = second.take();
  maker.entry().aliases =
      Line(desk).say(residue.side == model::Side::not_known ? "side not known" : word_of(residue.side)).take();
  maker.paragraph({model::text_run(residue.looks)}, model::Paragraph::Role::lead);
  maker.messages(residue.cautions, MessagePlace::head);
  Line made(desk);
  for (std::size_t i = 0; i < residue.made_of.size(); ++i) {
    made.say(made.empty() ? "" : ", ").link(residue.made_of[i].substance);
    made.fact(residue, "made-of." + std::to_string(i) + ".share", " ");
  }
  maker.run_in("Made of", made);
  maker.links("Answered by", residue.answers);
  maker.run_in("Why", residue.why);
  std::vector<VerdictRow> rows = meeting_rows(desk, residue);
  if (!rows.empty()) {
    maker.subheading("Meeting liquids");
    add_verdicts(desk, maker, "meets", "with", std::move(rows));
  }
  maker.links("Work", desk.uses.named_by(residue.reference(), model::Kind::procedure));
  return maker.finish();
}

}  // namespace benchleaf::compose
