// In: a table of the book. Out: its HTML. What a column holds (prose, figures, pictures only, signs only) decides how it
// behaves on a narrow screen; the widths for paper are not used.
#include "html/table.h"

#include <algorithm>
#include <vector>

#include "html/decimals.h"
#include "html/drawings.h"
#include "html/runs.h"

namespace benchleaf::html {

namespace {

using model::Column;
using model::Run;
using model::Table;
using model::TableCell;
using model::TableRow;

/// A cell of more bytes than this reads as prose: on a phone it wants the full width.
constexpr std::size_t kProse = 40;

struct ColumnUse {
  bool prose = false;
  bool drawings_only = true;
  bool named_drawings = false;
  bool signs_only = true;
  bool verdicts = false;
  DecimalColumn decimals;
};

bool is_blank(const TableCell& cell) { return cell.runs.empty() && !cell.drawing; }

bool is_sign(const Run& run) {
  return run.kind == Run::Kind::trust_sign ||
         (run.kind == Run::Kind::text && run.text.find_first_not_of(' ') == std::string::npos);
}

void note_cell(const TableCell& cell, ColumnUse& use) {
  if (is_blank(cell)) return;
  use.prose = use.prose || model::plain_text(cell.runs).size() > kProse;
  use.drawings_only = use.drawings_only && cell.drawing && cell.runs.empty();
  use.named_drawings = use.named_drawings || (cell.drawing && !cell.runs.empty());
  use.signs_only = use.signs_only && !cell.drawing && std::all_of(cell.runs.begin(), cell.runs.end(), is_sign);
  use.verdicts = use.verdicts ||
                 std::any_of(cell.runs.begin(), cell.runs.end(), [](const Run& run) { return run.kind == Run::Kind::verdict; });
  use.decimals.widen(cell.runs);
}

class TableSetter {
 public:
  TableSetter(const Table& table, Setting& setting) : table_(table), setting_(setting) {
    std::size_t width = table.columns.size();
    for (const TableRow& row : table.rows) width = std::max(width, row.cells.size());
    columns_ = table.columns;
    columns_.resize(width);
    uses_.resize(width);
    for (const TableRow& row : table.rows) {
      for (std::size_t i = 0; i < row.cells.size(); ++i) note_cell(row.cells.at(i), uses_.at(i));
    }
    const bool any_prose = std::any_of(uses_.begin(), uses_.end(), [](const ColumnUse& use) { return use.prose; });
    const bool named_drawings = std::any_of(uses_.begin(), uses_.end(), [](const ColumnUse& use) { return use.named_drawings; });
    folds_ = any_prose && (width > 2 || named_drawings);
  }

  Markup set() {
    if (columns_.empty()) return {};
    Element body("tbody");
    for (const TableRow& row : table_.rows) body.add(set_row(row));
    const Id caption_id = Id::of_frame("caption_", std::to_string(++setting_.tables));
    Element element("table");
    if (folds_) element.in_class("folds");
    element.add(set_caption(caption_id)).add(set_head()).add(body);
    Element frame("div");
    frame.in_class("table-frame");
    if (!folds_) frame.set("role", "group").refer("aria-labelledby", caption_id).set("tabindex", "0");
    Markup out = frame.add(element);
    if (shows_true_size()) out += true_size_bar();
    return out;
  }

 private:
  Markup set_caption(const Id& id) {
    Element caption("caption");
    caption.id(id);
    // A caption that says what the heading above has just said is for readers that list tables.
    if (!table_.caption.empty()) {
      if (model::plain_text(table_.caption) == setting_.last_heading) caption.in_class("unseen");
      return caption.add(set_runs(table_.caption, setting_));
    }
    const std::string& heading = setting_.last_heading.empty() ? setting_.page.title : setting_.last_heading;
    return caption.in_class("unseen").say(heading + ", table " + std::to_string(setting_.tables));
  }

  Markup set_head() {
    const bool any = std::any_of(columns_.begin(), columns_.end(), [](const Column& column) { return !column.head.empty(); });
    if (!any) return {};
    Element row("tr");
    for (std::size_t i = 0; i < columns_.size(); ++i) row.add(set_head_cell(i));
    return Element("thead").add(row);
  }

  Markup set_head_cell(std::size_t i) {
    const Column& column = columns_.at(i);
    if (column.head.empty() && !is_sign_column(i)) return Element("td");
    Element cell("th");
    add_column_classes(cell, i);
    cell.set("scope", "col");
    if (column.head.empty()) return cell.add(Element("span").in_class("unseen").say("trust"));
    return cell.add(set_runs(column.head, setting_));
  }

  Markup set_row(const TableRow& row) {
    Element element("tr");
    if (const auto id = claim_name(row.anchor, setting_)) element.id(*id);
    for (std::size_t i = 0; i < columns_.size(); ++i)
      element.add(set_cell(i < row.cells.size() ? row.cells.at(i) : TableCell(), i));
    return element;
  }

  Markup set_cell(const TableCell& cell, std::size_t i) {
    const Column& column = columns_.at(i);
    const bool names_row = column.row_head && !is_blank(cell);
    Element element(names_row ? ElementName("th") : ElementName("td"));
    add_column_classes(element, i);
    if (names_row) element.set("scope", "row");
    if (is_labelled(i) && !is_blank(cell)) element.set("data-label", model::plain_text(column.head));
    const bool aligned = column.align == Column::Align::decimal;
    element.add(set_runs(aligned ? uses_.at(i).decimals.padded(cell.runs) : cell.runs, setting_));
    if (cell.drawing) element.add(picture(*cell.drawing));
    return element;
  }

  /// Beside words a picture may go where the screen is narrow; with no word beside it, it is what the table is for.
  bool pictures_alone() const {
    return std::all_of(uses_.begin(), uses_.end(), [](const ColumnUse& use) { return use.drawings_only; });
  }

  bool shows_true_size() const {
    return std::any_of(table_.rows.begin(), table_.rows.end(), [](const TableRow& row) {
      return std::any_of(row.cells.begin(), row.cells.end(),
                         [](const TableCell& cell) { return cell.drawing && cell.drawing->true_size; });
    });
  }

  bool is_sign_column(std::size_t i) const { return !table_.rows.empty() && uses_.at(i).signs_only; }

  /// In a folded row the key, a verdict, a sign and prose speak for themselves; a figure needs its head.
  bool is_labelled(std::size_t i) const {
    if (!folds_ || columns_.at(i).head.empty() || columns_.at(i).row_head) return false;
    return !uses_.at(i).verdicts && !uses_.at(i).signs_only && !uses_.at(i).prose;
  }

  void add_column_classes(Element& cell, std::size_t i) const {
    const ColumnUse& use = uses_.at(i);
    switch (columns_.at(i).align) {
      case Column::Align::left: break;
      case Column::Align::right: cell.in_class("right"); break;
      case Column::Align::centre: cell.in_class("centre"); break;
      case Column::Align::decimal: cell.in_class("decimal"); break;
    }
    if (table_.rows.empty()) return;
    if (use.signs_only)
      cell.in_class("signs");
    else if (use.drawings_only && !pictures_alone())
      cell.in_class("pictures");
    else if (use.named_drawings)
      cell.in_class("pictured");
    else if (use.verdicts)
      cell.in_class("verdicts");
    else if (use.prose)
      cell.in_class("prose");
  }

  const Table& table_;
  Setting& setting_;
  std::vector<Column> columns_;
  std::vector<ColumnUse> uses_;
  bool folds_ = false;
};

}  // namespace

Markup set_table(const Table& table, Setting& setting) { return TableSetter(table, setting).set(); }

}  // namespace benchleaf::html
