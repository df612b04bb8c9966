#pragma once

#include "model/sheet.h"
#include "page/setting.h"
#include "page/strip.h"

namespace benchleaf::page {

/// How wide a panel is set; a wide one spans `parts` columns of `column` width with `gap` between them.
struct PanelWidth {
  Length column = 0;
  Length gap = 0;
  int parts = 1;

  Length whole() const { return column * parts + gap * (parts - 1); }
};

/// A panel as one strip at the setting's scale: head, rule, blocks. A long table of a wide panel runs on side by side, one of
/// short rows within its column.
Strip set_panel(Setting& setting, const model::Panel& panel, const PanelWidth& width, TagId parent);

/// Verdicts in squares that meet, heads across turned to run up.
Strip set_matrix(Setting& setting, const model::Matrix& matrix, Length width, TagId parent);
/// Lines with blanks that run to the edge, a picture at their left.
Strip set_fields(Setting& setting, const model::Fields& fields, Length width, TagId parent);
/// Pictures in a row with their words under them.
Strip set_pictures(Setting& setting, const model::Pictures& row, Length width, TagId parent);

}  // namespace benchleaf::page
