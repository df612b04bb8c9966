// In: verdicts of things across on things down. Out: squares that meet without gaps: a white cross on ink where it never
// may, a wave where it needs care, a dot where it does no harm, nothing where nothing is known.
#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/signs.h"
#include "page/drawing.h"
#include "page/sheet/panel.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kWidestSquareMm = 16;
constexpr double kMarkMm = 3.4;
constexpr double kDotMm = 0.62;
constexpr double kBesideHeadMm = 1.6;
constexpr double kGroupGapMm = 1.4;
constexpr double kBesidePageMm = 1.2;

class MatrixSetter {
 public:
  MatrixSetter(Setting& setting, const model::Matrix& matrix, Length width, TagId parent)
      : setting_(setting), matrix_(matrix), width_(width), look_(setting.sized(look::table_cell())) {
    table_above_ = matrix.groups.empty() ? parent : setting.add_tag(Role::div, parent);
    table_ = setting.add_tag(Role::table, parent);
  }

  Strip set() {
    add_row_heads();
    solve();
    add_group_heads();
    add_column_heads();
    const TagId body = setting_.add_tag(Role::table_body, table_);
    for (std::size_t row = 0; row < matrix_.rows.size(); ++row) add_row(row, setting_.add_tag(Role::row, body));
    return std::move(strip_);
  }

 private:
  /// Their widest decides where the squares begin and end; what they are told under comes with their row.
  void add_row_heads() {
    for (const model::Matrix::Row& row : matrix_.rows) {
      head_width_ = std::max(head_width_, Words(setting_, row.head, look_, kLayoutArtifact).natural_width(setting_));
      if (row.page.empty()) continue;
      const Words page(setting_, row.page, setting_.sized(look::table_cell()), kLayoutArtifact);
      page_width_ = std::max(page_width_, page.natural_width(setting_) + setting_.mm(kBesidePageMm));
    }
  }

  void solve() {
    const auto count = static_cast<Length>(std::max<std::size_t>(1, matrix_.columns.size()));
    const Length head = head_width_ + setting_.mm(kBesideHeadMm);
    const Length gap = setting_.mm(kGroupGapMm);
    Length gaps = 0;
    for (std::size_t i = 1; i < matrix_.columns.size(); ++i) gaps += starts_group(i) ? gap : 0;
    const Length room = width_ - head * (matrix_.heads_at_both_ends ? 2 : 1) - gaps - page_width_;
    side_ = std::min(room / count, setting_.mm(kWidestSquareMm));
    pitch_ = static_cast<Length>(look_.size_pt * kLookUpScale * 1.22 * kPt) + setting_.row_air;
    Length x = head;
    for (std::size_t i = 0; i < matrix_.columns.size(); ++i) {
      if (i > 0 && starts_group(i)) x += gap;
      left_.push_back(x);
      x += side_;
    }
    right_ = x;
  }

  bool starts_group(std::size_t column) const {
    const auto& groups = matrix_.groups;
    return column < groups.size() && (column == 0 || groups[column] != groups[column - 1]);
  }

  std::size_t end_of_group(std::size_t column) const {
    do ++column;
    while (column < matrix_.columns.size() && !starts_group(column));
    return column;
  }

  /// Where a kind's name begins over its columns: at their left, or ending at their right where it is longer than they are wide
  /// and nothing else stands there. Nothing where it has no room.
  std::optional<Length> name_left(Length name, Length left, Length right, Length taken, bool is_last) const {
    const Length gap = setting_.mm(kGroupGapMm);
    if (is_last || name <= right - left + gap) return left;
    if (right - name >= taken + gap) return right - name;
    return std::nullopt;
  }

  /// The kind of things over their columns, where it fits above them.
  void add_group_heads() {
    if (matrix_.groups.empty()) return;
    const Look look = bold_of(setting_.sized(look::table_head()));
    const Length height = look.leading() + setting_.mm(1.2);
    Length taken = 0;
    for (std::size_t i = 0; i < matrix_.columns.size(); i = end_of_group(i)) {
      const Length right = left_[end_of_group(i) - 1] + side_;
      PlainLine name = set_plain(setting_, matrix_.groups[i], look, setting_.add_tag(Role::p, table_above_));
      if (const auto left = name_left(name.width, left_[i], right, taken, end_of_group(i) == matrix_.columns.size())) {
        taken = *left + name.width;
        for (Item& item : name.items) {
          shift(item, *left, look.leading() - setting_.mm(0.8));
          strip_.items.push_back(std::move(item));
        }
      }
      strip_.items.push_back(rule(left_[i], height - setting_.mm(1.0), right - left_[i], 1, print_color(model::Ink::ink)));
    }
    group_height_ = height;
  }

  void add_column_heads() {
    const TagId head = setting_.add_tag(Role::table_head, table_);
    const TagId row = setting_.add_tag(Role::row, head);
    setting_.add_tag(Role::data_cell, row);
    std::vector<PlainLine> lines;
    for (const model::Runs& words : matrix_.columns) {
      const TagId tag = setting_.add_tag(Role::header_cell, row);
      setting_.tags.back().scope = Tag::Scope::column;
      const Words set(setting_, words, look_, tag);
      PlainLine line;
      line.width = set.natural_width(setting_);
      Strip strip = stacked(set.set(setting_, line.width + kPt, Look::Flush::left));
      for (Item& item : strip.items) {
        std::get<TextItem>(item.what).at.y = 0;
        line.items.push_back(std::move(item));
      }
      strip_.height = std::max(strip_.height, line.width);
      lines.push_back(std::move(line));
    }
    strip_.height += setting_.mm(0.8) + group_height_;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const Length middle = left_[i] + side_ / 2;
      const Length drop = static_cast<Length>(look_.size_pt * kLookUpScale * 0.36 * kPt);
      turn(lines[i], {middle + drop, strip_.height - setting_.mm(0.8)}, 3);
      for (Item& item : lines[i].items) strip_.items.push_back(std::move(item));
    }
    add_page_head(row);
    strip_.items.push_back(rule(0, strip_.height, whole_width(), 0.25, print_color(model::Ink::ink)));
  }

  /// Over the pages at the ends of rows.
  void add_page_head(TagId row) {
    if (page_width_ == 0) return;
    const TagId tag = setting_.add_tag(Role::header_cell, row);
    setting_.tags.back().scope = Tag::Scope::column;
    const Look look = setting_.sized(look::table_head());
    PlainLine line = set_plain(setting_, "page", look, tag);
    const Length left = whole_width() - line.width;
    const bool stands = line.width <= page_width_;
    if (!stands) turn(line, {whole_width() - setting_.mm(0.4), strip_.height - setting_.mm(0.8)}, 3);
    for (Item& item : line.items) {
      if (stands) shift(item, left, strip_.height - setting_.mm(0.8));
      strip_.items.push_back(std::move(item));
    }
  }

  Length whole_width() const {
    return right_ + (matrix_.heads_at_both_ends ? head_width_ + setting_.mm(kBesideHeadMm) : 0) + page_width_;
  }

  void add_row(std::size_t at, TagId row) {
    const Length top = strip_.height;
    const TagId head = setting_.add_tag(Role::header_cell, row);
    setting_.tags.back().scope = Tag::Scope::row;
    add_row_head(at, head, 0, top);
    for (std::size_t i = 0; i < matrix_.columns.size(); ++i) {
      const TagId cell = setting_.add_tag(Role::data_cell, row);
      if (i < matrix_.rows[at].cells.size() && matrix_.rows[at].cells[i]) {
        add_square(*matrix_.rows[at].cells[i], {left_[i], top}, cell);
      }
    }
    if (page_width_ > 0) add_page(at, setting_.add_tag(Role::data_cell, row), top);
    if (matrix_.heads_at_both_ends) add_row_head(at, kLayoutArtifact, right_ + setting_.mm(kBesideHeadMm), top);
    strip_.height += pitch_;
    const bool ends = at + 1 < matrix_.rows.size() && matrix_.rows[at + 1].group != matrix_.rows[at].group;
    strip_.items.push_back(
        rule(0, strip_.height, whole_width(), ends ? 1 : 0.25, print_color(ends ? model::Ink::ink : model::Ink::rule)));
  }

  void add_row_head(std::size_t at, TagId tag, Length left, Length top) {
    Strip words = stacked(Words(setting_, matrix_.rows[at].head, look_, tag).set(setting_, head_width_ + kPt));
    const Length down = (pitch_ - words.height) / 2;
    overlay(strip_, std::move(words), left, top + down);
  }

  void add_page(std::size_t at, TagId cell, Length top) {
    const Words words(setting_, matrix_.rows[at].page, setting_.sized(look::table_cell()), cell);
    const Length own = words.natural_width(setting_);
    Strip strip = stacked(words.set(setting_, own + kPt));
    const Length down = (pitch_ - strip.height) / 2;
    overlay(strip_, std::move(strip), whole_width() - own, top + down);
  }

  void add_square(model::Verdict verdict, Point at, TagId cell) {
    const bool never = verdict == model::Verdict::never;
    const TagId figure = setting_.add_figure(cell, std::string(model::verdict_words(verdict)));
    // A thin line of paper parts squares that stand beside each other.
    if (never) {
      const Length line = kPt / 4;
      Item square = ground({at.x + line, at.y + line, at.x + side_ - line, at.y + pitch_ - line}, print_color(model::Ink::ink));
      strip_.items.push_back(std::move(square));
    }
    const Length middle_x = at.x + side_ / 2;
    const Length middle_y = at.y + pitch_ / 2;
    if (verdict == model::Verdict::use) {
      model::PathShape dot = model::circle({0, 0}, kDotMm);
      dot.fill = model::Ink::ink;
      Item item{figure, place_path(dot, setting_.scale)};
      shift(item, middle_x, middle_y);
      strip_.items.push_back(std::move(item));
      return;
    }
    const model::Drawing mark = model::verdict_mark(verdict, never ? model::Ink::paper : model::Ink::ink);
    const double scale = kMarkMm / 10 * setting_.scale;
    for (Item& item : place_drawing(setting_, mark, scale, figure)) {
      shift(item, middle_x - from_mm(5 * scale), middle_y - from_mm(5 * scale));
      strip_.items.push_back(std::move(item));
    }
  }

  Setting& setting_;
  const model::Matrix& matrix_;
  Length width_;
  Look look_;
  TagId table_above_ = kLayoutArtifact;
  TagId table_ = kLayoutArtifact;
  Strip strip_;
  Length head_width_ = 0;
  Length page_width_ = 0;  ///< of the pages at the ends of rows, or 0
  Length group_height_ = 0;
  std::vector<Length> left_;  ///< of each column
  Length right_ = 0;          ///< of the last one
  Length side_ = 0;
  Length pitch_ = 0;
};

}  // namespace

Strip set_matrix(Setting& setting, const model::Matrix& matrix, Length width, TagId parent) {
  return MatrixSetter(setting, matrix, width, parent).set();
}

}  // namespace benchleaf::page
