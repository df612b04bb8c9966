// In: a word of the trade, a source. Out: their entries: what the word means; what the work is and what of it was read.
#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "standards/table_view.h"

namespace benchleaf::compose {

namespace {

/// How many records rest on the source, by kind: a reader sees what falls with it.
void add_dependants(const Desk& desk, const model::Source& source, EntryMaker& maker) {
  Line line(desk);
  for (const model::Kind kind : model::all_kinds()) {
    const model::References records = desk.uses.named_by(source.reference(), kind);
    constexpr std::size_t kMostNamed = 6;
    if (records.empty()) continue;
    line.say(line.empty() ? "" : "; ");
    if (records.size() <= kMostNamed)
      line.links(records);
    else
      line.say("many " + std::string(model::kind_plural(kind)));
  }
  maker.run_in("Stands behind", line);
}

/// A licence that most sources share stands before them, not in each entry.
bool is_said_once(const Desk& desk, const std::string& licence) {
  const auto* row = standards::row_of(desk.tables, "licences", licence);
  return row != nullptr && standards::cell_text(*row, "said") == "once";
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Term& term) {
  EntryMaker maker(desk, term, model::Entry::Rank::small);
  Line also(desk);
  for (const std::string& word : term.also) also.say(also.empty() ? "" : ", ").say(word);
  if (!term.american.empty()) also.say(also.empty() ? "American: " : "; American: ").say(term.american);
  if (desk.on_paper()) {
    model::Runs meaning{model::text_run(term.meaning)};
    if (!also.empty()) {
      meaning.push_back(model::text_run(" Also "));
      for (model::Run& run : also.take()) meaning.push_back(std::move(run));
      meaning.push_back(model::text_run("."));
    }
    maker.paragraph(std::move(meaning), model::Paragraph::Role::dense);
  } else {
    maker.entry().aliases = also.take();
    maker.paragraph({model::text_run(term.meaning)});
  }
  maker.run_in("Not to confuse", term.not_to_confuse);
  maker.links("See", term.see);
  return maker.finish();
}

namespace {

/// Number, name, what it is and what of it was read: as much as a page of keys leads to.
model::Entry numbered_source(const Desk& desk, const model::Source& source, Line& what) {
  EntryMaker maker(desk, source, model::Entry::Rank::small);
  const auto number = desk.source_numbers->find(source.reference());
  if (number != desk.source_numbers->end())
    maker.entry().key = {model::text_run(std::to_string(number->second) + "\u2002" + source.title)};
  model::Runs words = what.take();
  if (!source.publication.empty()) words.push_back(model::text_run((words.empty() ? "" : ". ") + source.publication));
  if (!words.empty() && !words.back().text.empty() && words.back().text.back() != '.') words.push_back(model::text_run("."));
  if (!source.read.empty()) words.push_back(model::text_run(" Read: " + source.read));
  maker.paragraph(std::move(words), model::Paragraph::Role::note);
  return maker.finish();
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Source& source) {
  EntryMaker maker(desk, source, model::Entry::Rank::small);
  Line what(desk);
  what.say(word_of(source.work));
  for (const std::string* part : {&source.publisher, &source.edition, &source.year}) {
    if (!part->empty()) what.say(", " + *part);
  }
  if (desk.on_paper() && desk.source_numbers != nullptr) return numbered_source(desk, source, what);
  maker.entry().aliases = what.take();
  maker.paragraph({model::text_run(source.publication)});
  std::string read = source.read;
  if (!source.date_read.empty()) read += (read.empty() || read.back() == '.' ? " " : ". ") + ("Read " + source.date_read + ".");
  maker.run_in("Read", read);
  maker.run_in("Taken from it", listed(source.covers, "; ") + (source.covers.empty() ? "" : "."));
  if (!is_said_once(desk, source.licence)) maker.run_in("Licence", source.licence);
  maker.run_in("At", source.address);
  add_dependants(desk, source, maker);
  return maker.finish();
}

}  // namespace benchleaf::compose
