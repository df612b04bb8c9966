// In: the handbook's head and its sources. Out: the notes after the cover, cautions first.
#include "compose/entries/cover_notes.h"

#include "compose/entries/prose.h"
#include "compose/entry_maker.h"
#include "compose/provenance.h"
#include "model/signs.h"

namespace benchleaf::compose {

namespace {

/// Each verdict, the gravest first, with the sentence that says what the reader does about it.
model::Block verdict_legend(const Desk& desk) {
  model::Table table;
  table.name = "verdict-signs";
  table.columns = {column("verdict"), column("says")};
  const auto& meanings = desk.records.handbook.verdicts;
  for (auto meaning = meanings.rbegin(); meaning != meanings.rend(); ++meaning) {
    const auto& [verdict, words] = *meaning;
    const model::Style style = verdict == model::Verdict::with_limits ? model::Style::plain : model::Style::bold;
    table.rows.push_back(
        {{cell(Line(desk).verdict(verdict, std::string(model::verdict_words(verdict)), style).take()), cell(words)}, {}});
  }
  return {std::move(table)};
}

}  // namespace

model::Blocks cover_notes(const Desk& desk) {
  const model::Handbook& handbook = desk.records.handbook;
  model::Blocks blocks;
  const auto say = [&blocks](const std::string& text) {
    if (!text.empty()) blocks.push_back(paragraph_block({model::text_run(text)}));
  };
  if (!handbook.not_replaced.empty() || !handbook.scope.empty())
    blocks.push_back(heading_block(2, "What this book does not replace"));
  say(handbook.not_replaced);
  say(handbook.scope);
  if (!handbook.promise.empty() || !handbook.answers.empty()) blocks.push_back(heading_block(2, "Who answers for what"));
  say(handbook.promise);
  say(handbook.answers);
  blocks.push_back(heading_block(2, "How to read the signs"));
  say(handbook.signs);
  blocks.push_back(trust_legend());
  if (!handbook.verdicts.empty()) blocks.push_back(verdict_legend(desk));
  say(handbook.signal_words);
  for (model::Block& block : overlay_notes(desk)) blocks.push_back(std::move(block));
  return blocks;
}

}  // namespace benchleaf::compose
