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
  maker.entry().aliases = also.take();
  maker.paragraph({model::text_run(term.meaning)});
  maker.run_in("Not to confuse", term.not_to_confuse);
  maker.links("See", term.see);
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Source& source) {
  EntryMaker maker(desk, source, model::Entry::Rank::small);
  Line what(desk);
  what.say(word_of(source.work));
  for (const std::string* part : {&source.publisher, &source.edition, &source.year}) {
    if (!part->empty()) what.say(", " + *part);
  }
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
