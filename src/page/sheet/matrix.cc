// In: verdicts of things across on things down. Out: squares that meet without gaps: a white cross on ink where it never
// may, a wave where it needs care, a dot where it does no harm, nothing where nothing is known.
#include <algorithm>
#include <string>
#include <utility>

#include "model/signs.h"
#include "page/drawing.h"
#include "page/sheet/panel.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kWidestSquareMm = 16;
constexpr double kMarkMm = 3.4;
constexpr double kDotMm = 0.62;

class MatrixSetter {
 public:
  MatrixSetter(Setting& setting, const model::Matrix& matrix, Length width, TagId parent)
      : setting_(setting), matrix_(matrix), width_(width), look_(setting.sized(look::table_cell())) {
    table_ = setting.add_tag(Role::table, parent);
  }

  Strip set() {
    add_row_heads();
    solve();
    add_column_heads();
    const TagId body = setting_.add_tag(Role::table_body, table_);
    for (std::size_t row = 0; row < matrix_.rows.size(); ++row) add_row(row, setting_.add_tag(Role::row, body));
    return std::move(strip_);
  }

 private:
  /// Their widest decides where the squares begin; what they are told under comes with their row.
  void add_row_heads() {
    for (const model::Matrix::Row& row : matrix_.rows) {
      head_width_ = std::max(head_width_, Words(setting_, row.head, look_, kLayoutArtifact).natural_width(setting_));
    }
  }

  void solve() {
    const auto count = static_cast<Length>(std::max<std::size_t>(1, matrix_.columns.size()));
    left_ = head_width_ + setting_.mm(1.6);
    side_ = std::min((width_ - left_) / count, setting_.mm(kWidestSquareMm));
    pitch_ = static_cast<Length>(look_.size_pt * kLookUpScale * 1.22 * kPt) + setting_.row_air;
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
    strip_.height += setting_.mm(0.8);
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const Length middle = left_ + static_cast<Length>(i) * side_ + side_ / 2;
      const Length drop = static_cast<Length>(look_.size_pt * kLookUpScale * 0.36 * kPt);
      turn(lines[i], {middle + drop, strip_.height - setting_.mm(0.8)}, 3);
      for (Item& item : lines[i].items) strip_.items.push_back(std::move(item));
    }
    strip_.items.push_back(rule(0, strip_.height, right(), 0.25, print_color(model::Ink::ink)));
  }

  Length right() const { return left_ + side_ * static_cast<Length>(matrix_.columns.size()); }

  void add_row(std::size_t at, TagId row) {
    const Length top = strip_.height;
    const TagId head = setting_.add_tag(Role::header_cell, row);
    setting_.tags.back().scope = Tag::Scope::row;
    Strip words = stacked(Words(setting_, matrix_.rows[at].head, look_, head).set(setting_, head_width_ + kPt));
    const Length down = (pitch_ - words.height) / 2;
    overlay(strip_, std::move(words), 0, top + down);
    for (std::size_t i = 0; i < matrix_.columns.size(); ++i) {
      const TagId cell = setting_.add_tag(Role::data_cell, row);
      if (i < matrix_.rows[at].cells.size() && matrix_.rows[at].cells[i]) {
        add_square(*matrix_.rows[at].cells[i], {left_ + static_cast<Length>(i) * side_, top}, cell);
      }
    }
    strip_.height += pitch_;
    strip_.items.push_back(rule(0, strip_.height, right(), 0.25, print_color(model::Ink::rule)));
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
  TagId table_ = kLayoutArtifact;
  Strip strip_;
  Length head_width_ = 0;
  Length left_ = 0;
  Length side_ = 0;
  Length pitch_ = 0;
};

}  // namespace

Strip set_matrix(Setting& setting, const model::Matrix& matrix, Length width, TagId parent) {
  return MatrixSetter(setting, matrix, width, parent).set();
}

}  // namespace benchleaf::page
