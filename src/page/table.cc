// In: a table of the book. Out: head and rows as strips; the head is repeated where the table breaks over pages.
//
// Widths: stated ones are kept; the others get their words' natural width if all fits, else a share between the least and
// the natural width. Numbers of a decimal column align on their point.
#include <algorithm>
#include <iterator>
#include <numeric>
#include <string>
#include <utility>

#include "page/blocks.h"
#include "page/column_widths.h"
#include "page/drawing.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kAboveMm = 2.0;         // from what stands before to a table
constexpr double kUnderCaptionMm = 0.8;  // from its caption
constexpr double kUnderHangingMm = 0.8;
constexpr double kWholeMm = 50;  // rows that stay on one page
constexpr double kWholeMatrixMm = 180;
/// A row taller than this many lines may break between lines; shorter ones move whole.
constexpr std::size_t kBreakableLines = 16;

std::string whole_mm(Length length) { return std::to_string((length + from_mm(1) - 1) / from_mm(1)) + " mm"; }

struct SetCell {
  Words words;
  std::shared_ptr<const model::Drawing> drawing;
  TagId tag = kLayoutArtifact;
  bool hangs = false;
  std::size_t columns = 1;  ///< 0: covered by the cell before it
  Length wide = 0;          ///< of the words on one line
  Length point = 0;         ///< of those in a decimal column, how far in their decimal point stands
};

struct Grid {
  std::vector<Length> left;
  std::vector<Length> width;
  std::vector<Length> point;    ///< widest offset of the decimal point, per column
  std::vector<Length> figures;  ///< widest figure when points are aligned, per column
};

class TableSetter {
 public:
  TableSetter(Setting& setting, const model::Table& table, Target& target) : setting_(setting), table_(table), target_(target) {}

  void run() {
    if (table_.columns.empty() || table_.rows.empty()) return;
    table_tag_ = setting_.add_tag(Role::table, target_.parent);
    set_caption();
    build_cells();
    // In the book, what hangs beside rows makes them one block: never broken over pages, and ruled off from the next.
    in_blocks_ = setting_.least_pt <= 0 && std::any_of(rows_.begin(), rows_.end(), [](const auto& row) {
                   return std::any_of(row.begin(), row.end(), [](const SetCell& cell) { return cell.hangs; });
                 });
    solve();
    place_head();
    const std::size_t first = target_.galley.strips.size();
    for (std::size_t row = 0; row < rows_.size(); ++row) place_row(row);
    keep_short(first);
  }

 private:
  void set_caption() {
    if (table_.caption.empty()) return;
    const TagId tag = setting_.add_tag(Role::caption, table_tag_);
    Strips lines = Words(setting_, table_.caption, setting_.sized(look::sub_head()), tag).set(setting_, target_.width);
    for (Strip& line : lines) line.keep_next = true;
    if (!lines.empty()) lines.front().before = from_mm(2.4);
    for (Strip& line : lines) target_.galley.strips.push_back(std::move(line));
  }

  /// A short table is not broken.
  void keep_short(std::size_t first) {
    Strips& strips = target_.galley.strips;
    Length height = 0;
    for (std::size_t i = first; i < strips.size(); ++i) height += strips[i].height;
    if (height > from_mm(is_matrix() ? kWholeMatrixMm : kWholeMm)) return;
    for (std::size_t i = first; i + 1 < strips.size(); ++i) strips[i].keep_next = true;
  }

  void build_cells() {
    has_head_ =
        std::any_of(table_.columns.begin(), table_.columns.end(), [](const auto& column) { return !column.head.empty(); });
    if (has_head_) {
      const TagId head = setting_.add_tag(Role::table_head, table_tag_);
      const TagId row = setting_.add_tag(Role::row, head);
      for (const model::Column& column : table_.columns) {
        const TagId tag = setting_.add_tag(column.head.empty() ? Role::data_cell : Role::header_cell, row);
        if (!column.head.empty()) setting_.tags.back().scope = Tag::Scope::column;
        head_.push_back({Words(setting_, column.head, setting_.sized(look::table_head()), tag), nullptr, tag, false, 1});
      }
    }
    const TagId body = setting_.add_tag(Role::table_body, table_tag_);
    for (const model::TableRow& row : table_.rows) build_row(row, setting_.add_tag(Role::row, body));
  }

  void build_row(const model::TableRow& row, TagId row_tag) {
    std::vector<SetCell> cells;
    const std::size_t count = table_.columns.size();
    for (std::size_t i = 0; i < count; ++i) {
      const model::Column& column = table_.columns[i];
      const Look words = setting_.sized(look::table_cell());
      const Look look = column.row_head ? bold_of(words) : words;
      if (i >= row.cells.size()) {
        cells.push_back({Words(setting_, {}, look, row_tag), nullptr, row_tag, false, 0});
        continue;
      }
      const TagId tag = setting_.add_tag(column.row_head ? Role::header_cell : Role::data_cell, row_tag);
      if (column.row_head) setting_.tags.back().scope = Tag::Scope::row;
      const std::size_t over = i + 1 == row.cells.size() ? count - i : 1;
      if (over > 1) setting_.tags.back().set().column_span = static_cast<int>(over);
      const model::TableCell& cell = row.cells[i];
      cells.push_back({Words(setting_, cell.runs, look, tag), cell.drawing, tag, cell.hangs, over});
    }
    rows_.push_back(std::move(cells));
  }

  Length least(const SetCell& cell) const {
    return std::max(cell.words.minimum_width(setting_), cell.drawing ? from_mm(cell.drawing->width_mm) : 0);
  }
  /// Measures the words, for later too.
  Length natural(SetCell& cell) const {
    cell.wide = cell.words.natural_width(setting_);
    return std::max(cell.wide, cell.drawing ? from_mm(cell.drawing->width_mm) : 0);
  }

  void solve() {
    const std::size_t count = table_.columns.size();
    std::vector<Length> low(count, 0), high(count, 0);
    grid_.point.assign(count, 0);
    grid_.figures.assign(count, 0);
    naturals_.assign(rows_.size(), std::vector<Length>(count, 0));
    for (std::size_t i = 0; i < count; ++i) {
      if (has_head_ && !is_turned(i)) low[i] = least(head_[i]), high[i] = natural(head_[i]);
      for (std::size_t place = 0; place < rows_.size(); ++place) {
        auto& row = rows_[place];
        if (row[i].columns != 1) continue;  // what lies over several columns takes what they have
        naturals_[place][i] = natural(row[i]);
        low[i] = std::max(low[i], least(row[i]));
        high[i] = std::max(high[i], naturals_[place][i]);
        if (table_.columns[i].align == model::Column::Align::decimal && !row[i].words.empty()) {
          row[i].point = row[i].words.point_offset(setting_);
          grid_.point[i] = std::max(grid_.point[i], row[i].point);
        }
      }
      if (table_.columns[i].align == model::Column::Align::decimal) widen_for_points(i, low[i], high[i]);
      if (table_.columns[i].width_mm > 0) low[i] = high[i] = from_mm(table_.columns[i].width_mm);
      high[i] = std::max(high[i], low[i]);
    }
    share(low, high);
  }

  /// A column that aligns on points is as wide as its widest left part plus its widest right part.
  void widen_for_points(std::size_t column, Length& low, Length& high) {
    Length right = 0;
    for (const auto& row : rows_) {
      if (row[column].words.empty()) continue;
      right = std::max(right, row[column].wide - row[column].point);
    }
    grid_.figures[column] = grid_.point[column] + right;
    high = std::max(high, grid_.figures[column]);
    low = std::max(low, grid_.figures[column]);
  }

  /// Columns that may stand close do so for the sake of the least type: larger type parts them by as many millimetres as it
  /// is points larger.
  double gap_mm() const {
    if (table_.gap_mm <= 0) return kColumnGapMm;
    const double larger = setting_.least_pt > 0 ? setting_.sized(look::table_cell()).size_pt - setting_.least_pt : 0;
    return std::min(kColumnGapMm, table_.gap_mm + std::max(0.0, larger));
  }

  void share(const std::vector<Length>& low, const std::vector<Length>& high) {
    const std::size_t count = low.size();
    const Length gap = from_mm(gap_mm());
    const Length room = target_.width - gap * static_cast<Length>(count - 1);
    const Length all_low = std::accumulate(low.begin(), low.end(), Length{0});
    const Length all_high = std::accumulate(high.begin(), high.end(), Length{0});
    grid_.width = all_high <= room ? high : low;
    if (all_low > room) {
      setting_.findings.add(report::Rule::page_too_wide, {},
                            "the table \"" + table_.name + "\" is wider than its column by " + whole_mm(all_low - room),
                            "leave a column out, or shorten its longest word");
    }
    Length spare = room - (all_high <= room ? all_high : all_low);
    // Columns that may stand close stand no closer than they must.
    const Length apart = std::max<Length>(0, from_mm(kColumnGapMm) - gap);
    const Length wider = count > 1 && spare > 0 ? std::min(apart, spare / static_cast<Length>(count - 1)) : 0;
    spare -= wider * static_cast<Length>(count - 1);
    if (all_high <= room) {
      // What is left goes to the last column of words, so that signs stand at the right edge.
      for (std::size_t i = count; i-- > 0;) {
        if (table_.columns[i].align == model::Column::Align::left && table_.columns[i].width_mm <= 0) {
          grid_.width[i] += spare;
          break;
        }
      }
    } else {
      widen_columns(grid_.width, high, naturals_, spare);
    }
    Length x = 0;
    for (std::size_t i = 0; i < count; ++i) {
      grid_.left.push_back(x);
      x += grid_.width[i] + gap + wider;
    }
  }

  void place_head() {
    if (!has_head_) return;
    Strip strip = laid(head_, true);
    strip.items.push_back(rule(0, strip.height + from_mm(0.5), target_.width, 0.25, print_color(model::Ink::ink)));
    strip.height += from_mm(1.1);
    strip.before = from_mm(table_.caption.empty() ? kAboveMm : kUnderCaptionMm);
    strip.keep_next = true;
    Strip repeat = strip;
    repeat.links.clear();
    repeat.places.clear();
    for (Item& item : repeat.items) item.tag = kPaginationArtifact;
    target_.galley.heads.push_back(std::move(repeat));
    head_index_ = static_cast<int>(target_.galley.heads.size()) - 1;
    target_.galley.strips.push_back(std::move(strip));
  }

  void place_row(std::size_t row) {
    const bool last = row + 1 == rows_.size();
    Strips lines = row_lines(rows_[row]);
    if (lines.empty()) return;
    give_air(lines, table_.rows[row].joins_next && !last);
    if (row == 0 && !has_head_) lines.front().before = from_mm(table_.caption.empty() ? kAboveMm : kUnderCaptionMm);
    if (!table_.rows[row].anchor.empty()) lines.front().places.push_back({table_.rows[row].anchor, 0});
    if (lines.size() <= kBreakableLines)
      lines = {stacked(std::move(lines))};
    else
      keep_lines(lines);
    Strip& end = lines.back();
    if (!last) rule_under(end, table_.rows[row].joins_next);
    if (in_blocks_) {
      for (Strip& line : lines) line.keep_next = table_.rows[row].joins_next && !last;
    } else if (rows_.size() > 1 && (row == 0 || row + 2 == rows_.size())) {
      end.keep_next = true;  // neither the first nor the last row stands alone
    }
    for (Strip& line : lines) {
      line.head = head_index_;
      target_.galley.strips.push_back(std::move(line));
    }
  }

  /// A block of rows is ruled off in ink; its rows are parted behind what hangs beside them.
  void rule_under(Strip& end, bool joins_next) {
    if (joins_next && !in_blocks_) return;
    const Length left = joins_next ? grid_.left[1] : 0;
    const bool heavy = in_blocks_ && !joins_next;
    const Length under = joins_next ? from_mm(0.3) : setting_.row_gap / 2;
    end.items.push_back(rule(left, end.height + under, target_.width - left, heavy ? 0.5 : 0.25,
                             print_color(heavy ? model::Ink::ink : model::Ink::rule)));
    end.height += 2 * under;
    if (joins_next) hanging_ -= 2 * under;
  }

  /// Room between rows on a sheet that has it to spare; below what belongs together, what hangs beside it ends.
  void give_air(Strips& lines, bool joins_next) {
    if (setting_.row_air > 0) {
      shift(lines.front(), 0, setting_.row_air / 2);
      lines.front().height += setting_.row_air / 2;
      if (hanging_starts_) hanging_ += setting_.row_air / 2;
      lines.back().height += setting_.row_air - setting_.row_air / 2;
    }
    hanging_starts_ = false;
    hanging_ -= total_height(lines);
    if (joins_next || hanging_ <= 0) return;
    lines.back().height += hanging_;
    hanging_ = 0;
  }

  /// The lines of all cells of a row side by side: the first lines together, the second lines together, and so on.
  Strips row_lines(const std::vector<SetCell>& cells) {
    std::vector<Strips> columns;
    Length whole = 0;  // of a cell with a drawing, which no page break parts from its words
    for (std::size_t i = 0; i < cells.size(); ++i) {
      columns.push_back(cell_lines(cells[i], i, false));
      if (cells[i].drawing && !cells[i].hangs) whole = std::max(whole, total_height(columns[i]));
    }
    align_first_lines(columns);
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (!cells[i].hangs || !cells[i].drawing) continue;
      hanging_ = total_height(columns[i]) + from_mm(kUnderHangingMm);
      hanging_starts_ = true;
      columns[i] = {stacked(std::move(columns[i]))};
      columns[i].front().height = 0;
    }
    centre_pictures(cells, columns);
    Strips lines;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      Strips own = joined_down_to(whole, std::move(columns[i]));
      if (lines.size() < own.size()) lines.resize(own.size());
      for (std::size_t line = 0; line < own.size(); ++line) {
        lines[line].height = std::max(lines[line].height, own[line].height);
        overlay(lines[line], std::move(own[line]), grid_.left[i], 0);
      }
    }
    return lines;
  }

  /// A picture without words stands in the middle of the first line of its row.
  void centre_pictures(const std::vector<SetCell>& cells, std::vector<Strips>& columns) const {
    Length highest = 0;
    for (const Strips& column : columns) highest = std::max(highest, column.empty() ? 0 : column.front().height);
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (!cells[i].drawing || cells[i].hangs || !cells[i].words.empty()) continue;
      const Length down = (highest - columns[i].front().height) / 2;
      shift(columns[i].front(), 0, down);
      columns[i].front().height += down;
    }
  }

  /// Words of different size in one row stand on one line.
  static void align_first_lines(std::vector<Strips>& columns) {
    Length lowest = 0;
    for (const Strips& column : columns) {
      if (!column.empty()) lowest = std::max(lowest, column.front().baseline);
    }
    for (Strips& column : columns) {
      if (column.empty() || column.front().baseline == 0) continue;
      const Length down = lowest - column.front().baseline;
      shift(column.front(), 0, down);
      column.front().height += down;
    }
  }

  /// With the first lines made one strip, as many as `height` takes.
  static Strips joined_down_to(Length height, Strips lines) {
    std::size_t count = 0;
    for (Length y = 0; count < lines.size() && y < height; ++count) y += lines[count].height;
    if (count < 2) return lines;
    const auto end = lines.begin() + static_cast<std::ptrdiff_t>(count);
    Strip first = stacked(Strips(std::make_move_iterator(lines.begin()), std::make_move_iterator(end)));
    lines.erase(lines.begin(), end - 1);
    lines.front() = std::move(first);
    return lines;
  }

  Strip laid(const std::vector<SetCell>& cells, bool head) {
    Strip strip;
    std::vector<Strip> columns;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      columns.push_back(stacked(cell_lines(cells[i], i, head)));
      strip.height = std::max(strip.height, columns.back().height);
    }
    // Heads of several lines stand on the rule.
    for (std::size_t i = 0; i < columns.size(); ++i) {
      const Length drop = strip.height - columns[i].height;
      overlay(strip, std::move(columns[i]), grid_.left[i], drop);
    }
    return strip;
  }

  /// A head that is wider than its narrow column in a matrix runs up the page.
  bool is_turned(std::size_t column) const {
    const model::Column& one = table_.columns[column];
    return one.align == model::Column::Align::centre && one.width_mm > 0 &&
           head_[column].words.natural_width(setting_) > from_mm(one.width_mm);
  }

  bool is_matrix() const {
    for (std::size_t i = 0; has_head_ && i < table_.columns.size(); ++i) {
      if (is_turned(i)) return true;
    }
    return false;
  }

  Length width_of(const SetCell& cell, std::size_t column) const {
    const std::size_t last = std::min(column + std::max<std::size_t>(cell.columns, 1), grid_.width.size()) - 1;
    return grid_.left[last] + grid_.width[last] - grid_.left[column];
  }

  Strips cell_lines(const SetCell& cell, std::size_t column, bool head) {
    if (head && is_turned(column)) return {turned_head(cell, column)};
    const model::Column::Align align = table_.columns[column].align;
    const bool by_point = align == model::Column::Align::decimal && !head;
    Look::Flush flush = Look::Flush::left;
    if (align == model::Column::Align::right || (align == model::Column::Align::decimal && head)) flush = Look::Flush::right;
    if (align == model::Column::Align::centre) flush = Look::Flush::centre;
    Strips lines = cell.words.set(setting_, width_of(cell, column), flush);
    if (by_point && lines.size() == 1) {
      const Length free = std::max<Length>(0, grid_.width[column] - grid_.figures[column]);
      shift(lines.front(), free + grid_.point[column] - cell.point, 0);
    }
    if (cell.drawing) lines.push_back(drawing_line(cell, column));
    return lines;
  }

  /// Words that run up the page, in the middle of their column.
  Strip turned_head(const SetCell& cell, std::size_t column) const {
    const Look look = setting_.sized(look::table_head());
    PlainLine line;
    line.width = cell.words.natural_width(setting_);
    Strip words = stacked(cell.words.set(setting_, line.width + kPt, Look::Flush::left));
    for (Item& item : words.items) {
      std::get<TextItem>(item.what).at.y = 0;
      line.items.push_back(std::move(item));
    }
    Strip strip;
    strip.height = line.width + from_mm(0.8);
    const auto drop = static_cast<Length>(look.size_pt * 0.36 * kPt);
    turn(line, {grid_.width[column] / 2 + drop, strip.height - from_mm(0.4)}, 3);
    strip.items = std::move(line.items);
    return strip;
  }

  Strip drawing_line(const SetCell& cell, std::size_t column) {
    Strip strip;
    strip.true_size = cell.drawing->true_size;
    const double wide = static_cast<double>(from_mm(cell.drawing->width_mm));
    const double scale = cell.drawing->true_size ? 1.0 : std::min(1.0, static_cast<double>(grid_.width[column]) / wide);
    strip.height = from_mm(cell.drawing->height_mm * scale);
    strip.items = place_drawing(setting_, *cell.drawing, scale, setting_.add_figure(cell.tag, cell.drawing->alt));
    return strip;
  }

  Setting& setting_;
  const model::Table& table_;
  Target& target_;
  TagId table_tag_ = kLayoutArtifact;
  bool has_head_ = false;
  bool in_blocks_ = false;
  int head_index_ = -1;
  std::vector<SetCell> head_;
  std::vector<std::vector<SetCell>> rows_;
  std::vector<std::vector<Length>> naturals_;  ///< widths of the cells on one line, by row
  Grid grid_;
  Length hanging_ = 0;  ///< how far down from the next row what hangs beside rows still reaches
  bool hanging_starts_ = false;
};

}  // namespace

void set_table(Setting& setting, const model::Table& table, Target& target) { TableSetter(setting, table, target).run(); }

}  // namespace benchleaf::page
