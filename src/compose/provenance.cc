// In: the records and the overlays that some come from. Out: the mark of such a record, and the list of all of them.
#include "compose/provenance.h"

#include "compose/entry_maker.h"
#include "compose/imprint.h"

namespace benchleaf::compose {

namespace {

/// Where the book has no entry of the record, its reference stands for it.
void add_list(const Desk& desk, const std::string& label, const std::vector<const model::Record*>& records,
              model::Blocks& blocks) {
  if (records.empty()) return;
  Line line(desk);
  line.label(label);
  bool first = true;
  for (const model::Record* record : records) {
    line.say(first ? "" : ", ").link(record->reference()).say(" (" + std::string(model::kind_name(record->kind)) + ")");
    first = false;
  }
  blocks.push_back(paragraph_block(line.say(".").take()));
}

}  // namespace

std::string provenance_words(const model::KnowledgeBase& records, const model::Record& record) {
  const model::Overlay* overlay = records.overlay_of(record);
  if (overlay == nullptr) return {};
  return (record.replaced == nullptr ? "Added by " : "Replaced by ") + overlay->name;
}

model::Block provenance_mark(const model::KnowledgeBase& records, const model::Record& record) {
  return paragraph_block({model::text_run(provenance_words(records, record) + ".", model::Style::bold)},
                         model::Paragraph::Role::note);
}

model::Blocks overlay_notes(const Desk& desk) {
  model::Blocks blocks;
  for (std::size_t i = 0; i < desk.records.overlays.size(); ++i) {
    const model::Overlay& overlay = desk.records.overlays[i];
    std::vector<const model::Record*> replaced, added;
    for (const model::Record* record : desk.records.all()) {
      if (record->overlay == i) (record->replaced == nullptr ? added : replaced).push_back(record);
    }
    blocks.push_back(heading_block(2, "What " + overlay.name + " answers for"));
    blocks.push_back(paragraph_block(
        {model::text_run(overlay.imprint + ", " + printed_date(overlay.date) +
                         ". Each of these entries says so at its head; for the rest of the book nothing was changed.")}));
    if (!overlay.note.empty()) blocks.push_back(paragraph_block({model::text_run(overlay.note)}));
    add_list(desk, "Replaced", replaced, blocks);
    add_list(desk, "Added", added, blocks);
  }
  return blocks;
}

}  // namespace benchleaf::compose
