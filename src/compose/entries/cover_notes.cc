// In: the handbook's head and its sources. Out: the notes after the cover, cautions first.
#include "compose/entries/cover_notes.h"

#include "compose/entries/prose.h"
#include "compose/entry_maker.h"
#include "compose/provenance.h"
#include "model/signs.h"

namespace benchleaf::compose {

namespace {

/// A verdict with the sentence that says what the reader does about it.
model::TableRow verdict_row(const Desk& desk, model::Verdict verdict, const char* meaning) {
  const model::Style style = verdict == model::Verdict::with_limits ? model::Style::plain : model::Style::bold;
  return {{cell(Line(desk).verdict(verdict, std::string(model::verdict_words(verdict)), style).take()), cell(meaning)}, {}};
}

model::Block verdict_legend(const Desk& desk) {
  model::Table table;
  table.name = "verdict-signs";
  table.columns = {column("verdict"), column("says")};
  table.rows.push_back(verdict_row(desk, model::Verdict::never, "It does harm; there is no careful way."));
  table.rows.push_back(verdict_row(desk, model::Verdict::with_limits, "It does no harm within the limits that stand beside it."));
  table.rows.push_back(verdict_row(desk, model::Verdict::use, "No harm is known from ordinary use at the bench."));
  return {std::move(table)};
}

}  // namespace

model::Blocks cover_notes(const Desk& desk) {
  const model::Handbook& handbook = desk.records.handbook;
  const auto say = [](std::string text) { return paragraph_block({model::text_run(std::move(text))}); };
  model::Blocks blocks;
  blocks.push_back(heading_block(2, "What this book does not replace"));
  blocks.push_back(
      say("This book does not replace local codes, the safety data sheet of what stands on your bench, or licensed practice. "
          "Where they say something else, they win. In an accident call the emergency number first and read afterwards."));
  if (!handbook.scope.empty()) blocks.push_back(say(handbook.scope));
  blocks.push_back(heading_block(2, "Who answers for what"));
  if (!handbook.promise.empty()) blocks.push_back(say(handbook.promise));
  blocks.push_back(
      say("The records answer for what they state and name where they have it from. The calculation answers for what follows "
          "from them. "
          "The reader answers for the watch: measure before you cut, and try on a scrap what is not on file."));
  blocks.push_back(heading_block(2, "How to read the signs"));
  blocks.push_back(say(
      "A sign stands beside each value, or at the edge for a group of them. The leaf is published, and less ink means weaker. "
      "The ring is said or recalled. The cross is made up. A value that was worked out is as weak as the weakest value that went "
      "in."));
  blocks.push_back(trust_legend());
  blocks.push_back(verdict_legend(desk));
  blocks.push_back(
      say("Danger, warning, caution and notice speak of a step at the bench. The words on a bottle are another system and speak "
          "of the liquid."));
  for (model::Block& block : overlay_notes(desk)) blocks.push_back(std::move(block));
  return blocks;
}

}  // namespace benchleaf::compose
