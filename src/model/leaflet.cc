// In: a leaflet. Out: its blocks one after the other, for a screen, which has no pages.
#include "model/leaflet.h"

namespace benchleaf::model {

Blocks blocks_of(const Leaflet& leaflet) {
  Blocks blocks;
  for (const LeafletSheet& sheet : leaflet.sheets) {
    const std::string title =
        sheet.title.empty() || sheet.key.empty() ? sheet.key + sheet.title : sheet.key + "\u2002" + sheet.title;
    blocks.push_back({Heading{2, {text_run(title)}, sheet.anchor, {}}});
    if (!sheet.subtitle.empty()) blocks.push_back({Paragraph{{text_run(sheet.subtitle)}, Paragraph::Role::note}});
    for (const Runs& line : sheet.right) blocks.push_back({Paragraph{line, Paragraph::Role::dense}});
    for (const LeafletRow& row : sheet.rows) {
      for (const LeafletRow::Column& column : row.columns)
        blocks.insert(blocks.end(), column.blocks.begin(), column.blocks.end());
    }
  }
  return blocks;
}

}  // namespace benchleaf::model
