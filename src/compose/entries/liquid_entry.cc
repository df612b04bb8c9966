// In: a liquid, paste or grease. Out: its entry: what it is for, how dangerous, what it must never touch or meet, how it is
// used and kept, where it is used.
#include <algorithm>

#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "compose/meetings.h"
#include "compose/verdict_table.h"
#include "standards/hazard_sentence.h"

namespace benchleaf::compose {

namespace {

void add_head(const Desk& desk, const model::Chemistry& chemistry, EntryMaker& maker) {
  model::Entry& entry = maker.entry();
  if (!chemistry.also_called.empty()) entry.second = {model::text_run(listed(chemistry.also_called))};
  Line line(desk);
  line.say(plain_words(word_of(chemistry.family)) + ", " + plain_words(word_of(chemistry.form)));
  const std::vector<Labelled> values{
      {" · pH ", "ph"}, {" · density ", "density"}, {" · flash point ", "flash-point"}, {" · boils at ", "boiling-point"}};
  for (const Labelled& value : values) line.fact(chemistry, value.path, value.label);
  entry.aliases = line.take();
  if (!chemistry.uses.empty()) {
    std::string uses = sentence_case(chemistry.uses.front());
    for (std::size_t i = 1; i < chemistry.uses.size(); ++i) uses += "; " + chemistry.uses[i];
    maker.paragraph({model::text_run(uses + (uses.back() == '.' ? "" : "."))}, model::Paragraph::Role::lead);
  }
}

void add_ingredients(const Desk& desk, const model::Chemistry& chemistry, EntryMaker& maker) {
  if (chemistry.made_of.empty()) return;
  model::Table table;
  table.name = "ingredients";
  table.columns = {column("made of", model::Column::Align::left, true), column("strength"), sign_column()};
  for (std::size_t i = 0; i < chemistry.made_of.size(); ++i) {
    const std::string path = "made-of." + std::to_string(i);
    const std::string& substance = chemistry.made_of[i].substance;
    table.rows.push_back({{cell(Line(desk).link(sentence_case(desk.name(substance)), substance).take()),
                           cell(Line(desk).fact(chemistry, path + ".strength").take()),
                           cell(Line(desk).sign(desk.sign(chemistry, path + ".strength")).take())},
                          {}});
  }
  maker.table(std::move(table));
}

/// Classes of the pure substances; the mixture as used may be milder, so the heading says whose they are.
void add_classes(const Desk& desk, const model::Chemistry& chemistry, EntryMaker& maker) {
  model::Table table;
  table.name = "classes";
  table.columns = {column("substance", model::Column::Align::left, true), column("class"), column("statement"), column("from"),
                   sign_column()};
  for (const model::Chemistry::Ingredient& ingredient : chemistry.made_of) {
    const model::Record* record = desk.records.find(ingredient.substance);
    if (record == nullptr || record->kind != model::Kind::substance) continue;
    const auto& substance = static_cast<const model::Substance&>(*record);
    for (std::size_t i = 0; i < substance.classes.size(); ++i) {
      const std::string path = "classes." + std::to_string(i);
      table.rows.push_back(
          {{cell(Line(desk).say(i == 0 ? sentence_case(desk.name(ingredient.substance)) : std::string()).take()),
            cell(substance.classes[i].name), cell(substance.classes[i].statement),
            cell(Line(desk).fact(substance, path + ".from").take()), cell(Line(desk).sign(desk.sign(substance, path)).take())},
           {}});
    }
  }
  if (table.rows.empty()) return;
  maker.heading("How its substances are classed");
  maker.table(std::move(table));
  maker.paragraph({model::text_run("These classes speak of each substance as such. They say nothing about a step at the bench, "
                                   "and a thinned liquid may carry fewer.")},
                  model::Paragraph::Role::note);
}

/// The sentence of a hazard statement, its code behind it: a code alone tells a reader nothing.
std::string statement_words(const Desk& desk, const std::string& code) {
  const std::string sentence = standards::hazard_sentence(desk.tables, code);
  return sentence == code ? code : sentence + "\u00A0" + code;
}

void say_classes(const Desk& desk, const model::Substance& substance, Line& line) {
  std::vector<std::string> said;
  for (std::size_t i = 0; i < substance.classes.size(); ++i) {
    const std::string& code = substance.classes[i].statement;
    if (code.empty() || std::find(said.begin(), said.end(), code) != said.end()) continue;
    line.say(said.empty() ? "" : "; ").say(statement_words(desk, code));
    line.fact(substance, "classes." + std::to_string(i) + ".from", " from ");
    said.push_back(code);
  }
  line.say(said.empty() ? "no class on file." : ".");
}

/// What it is made of, and in words how each substance is classed as such.
void add_makeup(const Desk& desk, const model::Chemistry& chemistry, EntryMaker& maker) {
  for (std::size_t i = 0; i < chemistry.made_of.size(); ++i) {
    const model::Substance* substance = desk.records.find<model::Substance>(chemistry.made_of[i].substance);
    if (substance == nullptr) continue;
    const std::string path = "made-of." + std::to_string(i) + ".strength";
    Line line(desk);
    line.say(sentence_case(desk.name(substance->reference())), model::Style::bold).fact(chemistry, path, " ");
    line.sign(desk.sign(chemistry, path)).say(": ");
    say_classes(desk, *substance, line);
    maker.paragraph(line.take(), model::Paragraph::Role::dense);
  }
}

void add_meetings(const Desk& desk, const model::Chemistry& chemistry, EntryMaker& maker) {
  std::vector<VerdictRow> rows = meeting_rows(desk, chemistry);
  if (rows.empty()) return;
  maker.subheading("Meeting other liquids and residues");
  add_verdicts(desk, maker, "meets", "with", std::move(rows));
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Chemistry& chemistry) {
  EntryMaker maker(desk, chemistry, desk.on_paper() ? model::Entry::Rank::short_title : model::Entry::Rank::title);
  add_head(desk, chemistry, maker);
  maker.messages(chemistry.cautions, MessagePlace::head);
  if (desk.on_paper()) {
    add_makeup(desk, chemistry, maker);
  } else {
    add_ingredients(desk, chemistry, maker);
    add_classes(desk, chemistry, maker);
  }
  add_on_materials(desk, maker, chemistry, chemistry.on_materials);
  add_meetings(desk, chemistry, maker);
  const std::vector<std::pair<const char*, const std::string*>> ways{{"Dilute", &chemistry.dilute},
                                                                     {"How much", &chemistry.dose},
                                                                     {"Afterwards", &chemistry.after},
                                                                     {"Keep", &chemistry.storage},
                                                                     {"Waste", &chemistry.waste}};
  bool headed = false;
  for (const auto& [label, text] : ways) {
    if (!text->empty() && !headed) maker.subheading("In use");
    headed = headed || !text->empty();
    maker.run_in(label, *text);
  }
  maker.back_links("Answers", desk.uses.named_by(chemistry.reference(), model::Kind::residue, "answers"));
  maker.back_links("Used in", desk.uses.named_by(chemistry.reference(), model::Kind::procedure));
  return maker.finish();
}

}  // namespace benchleaf::compose
