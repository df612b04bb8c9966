// In: a symptom, a caution. Out: their entries: causes in the order in which they are tested; a hazard as its message.
#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "model/signs.h"

namespace benchleaf::compose {

model::Entry make_entry(const Desk& desk, const model::Symptom& symptom) {
  EntryMaker maker(desk, symptom, model::Entry::Rank::short_title);
  Line shown(desk);
  for (const model::Display display : symptom.shown_by) shown.say(shown.empty() ? "" : ", ").say(display_words(display));
  if (!desk.on_paper()) maker.entry().second = shown.take();
  maker.paragraph({model::text_run(symptom.looks)}, model::Paragraph::Role::lead);
  if (desk.on_paper() && !symptom.never.empty()) {
    // Before the first test: nobody reads on to the end of a table to learn what would have done harm.
    Line never(desk);
    never.verdict(model::Verdict::never, std::string(model::verdict_words(model::Verdict::never)), model::Style::bold);
    for (const std::string& words : symptom.never) never.say(" " + words + (words.back() == '.' ? "" : "."));
    maker.paragraph(never.take());
  }
  model::Table table;
  table.name = "causes";
  table.columns = {column(desk.on_paper() ? "" : "test", model::Column::Align::left, true, 6),
                   column("cause", model::Column::Align::left, desk.on_paper(), desk.on_paper() ? 42 : 0),
                   column("how to test it", model::Column::Align::left, false, desk.on_paper() ? 55 : 0), column("what to do"),
                   column(desk.on_paper() ? "job" : "", model::Column::Align::right, false, desk.on_paper() ? 11 : 3.4)};
  for (std::size_t i = 0; i < symptom.causes.size(); ++i) {
    const model::Symptom::Cause& cause = symptom.causes[i];
    Line cure(desk);
    cure.say(cause.cure);
    Line last(desk);
    if (desk.on_paper()) {
      if (desk.records.find(cause.procedure) != nullptr) last.page(cause.procedure);
    } else {
      if (!cause.procedure.empty()) cure.say(" ").link(cause.procedure);
      last.sign(desk.sign(symptom, "causes." + std::to_string(i)));
    }
    table.rows.push_back(
        {{cell(std::to_string(i + 1)), cell(cause.cause), cell(cause.test), cell(cure.take()), cell(last.take())}, {}});
  }
  if (!desk.on_paper()) maker.heading("Causes, the cheapest test first");
  maker.table(std::move(table));
  if (!desk.on_paper()) maker.list("Never", symptom.never);
  return maker.finish();
}

namespace {

/// Its sentences: a full stop before a space and a capital ends one.
std::vector<std::string> sentences_of(std::string_view text) {
  std::vector<std::string> sentences;
  std::size_t start = 0;
  for (std::size_t at = 0; at + 2 < text.size(); ++at) {
    if (text[at] != '.' || text[at + 1] != ' ' || text[at + 2] < 'A' || text[at + 2] > 'Z') continue;
    sentences.emplace_back(text.substr(start, at + 1 - start));
    start = at + 2;
  }
  if (start < text.size()) sentences.emplace_back(text.substr(start));
  return sentences;
}

/// On a screen what to do at once stands in large letters, and each sentence after it on a line of its own.
void add_first_aid(const Desk& desk, const model::Caution& caution, EntryMaker& maker) {
  if (desk.on_paper()) return maker.run_in("First aid", caution.first_aid);
  std::vector<std::string> sentences = sentences_of(caution.first_aid);
  if (sentences.empty()) return;
  maker.paragraph(Line(desk).label("First aid").say(sentences.front()).take(), model::Paragraph::Role::lead);
  model::List list;
  for (std::size_t i = 1; i < sentences.size(); ++i) list.items.push_back({paragraph_block({model::text_run(sentences[i])})});
  if (!list.items.empty()) maker.add({std::move(list)});
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Caution& caution) {
  EntryMaker maker(desk, caution, model::Entry::Rank::small);
  add_first_aid(desk, caution, maker);  // before all else: whoever looks it up may need it now
  if (caution.call && !desk.on_paper()) {
    Line line(desk);
    maker.run_in("Telephone", line.say("Poison centre ").blank(24).say(" emergency ").blank(15));
  }
  maker.add({message_of(desk, caution)});
  maker.back_links("Stands in", desk.uses.named_by(caution.reference(), model::Kind::procedure));
  return maker.finish();
}

}  // namespace benchleaf::compose
