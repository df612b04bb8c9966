// In: labels and the grid of their sheet. Out: pages with each label within its edges.
#include "page/set_labels.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "model/paper_size.h"
#include "page/drawing.h"
#include "page/finish.h"
#include "page/strip.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kGapMm = 1.6;       // between words and drawing
constexpr double kLineGapMm = 0.5;   // between two lines of the label
constexpr double kOutlineMm = 0.09;  // a hairline

Look words_look(double size_pt) {
  Look look = look::table_cell();
  look.size_pt = size_pt;
  look.leading_pt = size_pt * 1.2;
  return look;
}

/// The words of one label in its room, or nothing but their height where there is none.
struct SetLabel {
  Strip words, foot;
  Length height = 0;  ///< that all of it takes
};

Length width_of(const std::shared_ptr<const model::Drawing>& drawing) { return drawing ? from_mm(drawing->width_mm) : 0; }
Length height_of(const std::shared_ptr<const model::Drawing>& drawing) { return drawing ? from_mm(drawing->height_mm) : 0; }

/// Paragraphs one below the other, narrow while they begin beside the drawing.
class Column {
 public:
  Column(Setting& setting, Length width, Length beside, Length drawn)
      : setting_(setting), width_(width), narrow_(width - beside), drawn_(drawn) {}

  void add(const model::Runs& runs, const Look& look, TagId parent, Length before) {
    const Length top = strips_.empty() ? 0 : height_ + before;
    Strips lines = Words(setting_, runs, look, parent).set(setting_, top < drawn_ ? narrow_ : width_);
    if (lines.empty()) return;
    lines.front().before = before;
    for (Strip& line : lines) strips_.push_back(std::move(line));
    height_ = total_height(strips_);
  }
  Strip take() { return strips_.empty() ? Strip() : stacked(std::move(strips_)); }

 private:
  Setting& setting_;
  Length width_, narrow_, drawn_;
  Strips strips_;
  Length height_ = 0;
};

SetLabel set_words(Setting& setting, const model::Label& label, const std::vector<model::Runs>& lines, const Box& room,
                   double size_pt, TagId parent) {
  const Length whole = room.right - room.left;
  const Length beside = label.beside ? width_of(label.beside) + from_mm(kGapMm) : 0;
  Look head = bold_of(words_look(size_pt * label.head_scale));
  head.leading_pt = head.size_pt;
  Column column(setting, whole, beside, height_of(label.beside));
  column.add(label.head, head, setting.add_heading(1, parent), 0);
  for (const model::Runs& line : lines)
    column.add(line, words_look(size_pt), setting.add_tag(Role::p, parent), from_mm(kLineGapMm));
  Column foot(setting, whole, 0, 0);
  for (const model::Runs& line : label.foot)
    foot.add(line, words_look(size_pt), setting.add_tag(Role::p, parent), from_mm(kLineGapMm));
  SetLabel set{column.take(), foot.take(), 0};
  const Length below = label.below ? height_of(label.below) + from_mm(kLineGapMm) : 0;
  set.height = std::max(set.words.height, height_of(label.beside)) + below + set.foot.height +
               (label.foot.empty() ? 0 : from_mm(kLineGapMm));
  return set;
}

/// Sets labels without leaving a trace in a document.
class Trial {
 public:
  explicit Trial(TextSetter& text) : setting_{text, findings_, paper_, tags_, {}, {}, {}} {}

  /// Height at a size; nothing where a word is wider than its column.
  std::optional<Length> height(const model::Label& label, const std::vector<model::Runs>& lines, const Box& room,
                               double size_pt) {
    tags_.clear();
    findings_ = {};
    const TagId root = setting_.add_tag(Role::document, kLayoutArtifact);
    const Length taken = set_words(setting_, label, lines, room, size_pt, root).height;
    return findings_.all().empty() ? std::optional(taken) : std::nullopt;
  }

 private:
  Paper paper_;
  report::Findings findings_;
  std::vector<Tag> tags_;
  Setting setting_;
};

/// How a label fits: which of its lines, and how large; 0 where neither do.
struct Fit {
  const std::vector<model::Runs>* lines = nullptr;
  double size_pt = 0;
};

Fit fit_of(Trial& trial, const model::Label& label, const Box& room) {
  for (const auto* lines : {&label.lines, &label.brief}) {
    if (lines == &label.brief && label.brief.empty()) break;
    for (double size = model::kMostLabelPt; size >= model::kLeastLabelPt; size -= model::kLabelStepPt) {
      const auto taken = trial.height(label, *lines, room, size);
      if (taken && *taken <= room.bottom - room.top) return {lines, size};
    }
  }
  return {label.brief.empty() ? &label.lines : &label.brief, 0};
}

void put(Strip strip, Length x, Length y, Page& page) {
  shift(strip, x, y);
  for (Item& item : strip.items) page.items.push_back(std::move(item));
}

void put_drawing(Setting& setting, const model::Drawing& drawing, Length x, Length y, TagId parent, Page& page) {
  const TagId figure = setting.add_figure(parent, drawing.alt);
  for (Item& item : place_drawing(setting, drawing, 1, figure)) {
    shift(item, x, y);
    page.items.push_back(std::move(item));
  }
}

Box room_at(const model::LabelGrid& grid, int place) {
  const model::Mm corner = grid.corner(place);
  const model::LabelInset inset = model::inset_of(grid);
  return {from_mm(corner.x + inset.side_mm), from_mm(corner.y + inset.end_mm), from_mm(corner.x + grid.width_mm - inset.side_mm),
          from_mm(corner.y + grid.height_mm - inset.end_mm)};
}

void put_label(Setting& setting, const model::Label& label, const Fit& fit, const Box& room, TagId root, Page& page) {
  const TagId part = setting.add_tag(Role::sect, root);
  SetLabel set = set_words(setting, label, *fit.lines, room, fit.size_pt, part);
  const Length foot = room.bottom - set.foot.height;
  put(std::move(set.words), room.left, room.top, page);
  if (label.beside) put_drawing(setting, *label.beside, room.right - width_of(label.beside), room.top, part, page);
  if (label.below) put_drawing(setting, *label.below, room.left, foot - height_of(label.below), part, page);
  put(std::move(set.foot), room.left, foot, page);
}

void put_outlines(const model::LabelGrid& grid, Page& page) {
  for (int place = 0; place < grid.count(); ++place) {
    const model::Mm corner = grid.corner(place);
    model::PathShape edge = model::rectangle(corner, grid.width_mm, grid.height_mm);
    edge.stroke = model::Ink::second_ink;
    edge.stroke_mm = kOutlineMm;
    page.items.push_back({kLayoutArtifact, place_path(edge, 1)});
  }
}

Page sheet_of(const model::LabelSheets& sheets, std::size_t number) {
  const model::PaperSize& paper = *model::paper_size(sheets.grid.paper);
  Page page;
  page.width = from_mm(paper.width_mm);
  page.height = from_mm(paper.height_mm);
  page.label = std::to_string(number);
  if (sheets.outlines) put_outlines(sheets.grid, page);
  return page;
}

}  // namespace

LabelDocument set_labels(const model::LabelSheets& sheets, const FontSet& fonts, const Hyphenator* hyphenator,
                         report::Findings& findings) {
  TextSetter text(fonts, hyphenator);
  LabelDocument result;
  Document& document = result.document;
  document.title = sheets.title;
  document.language = sheets.language;
  document.iso_date = sheets.iso_date;
  document.duplex = Duplex::one_side;
  const Paper no_book;
  Setting setting{text, findings, no_book, document.tags, {}, {}, {}};
  const TagId root = setting.add_tag(Role::document, kLayoutArtifact);
  Trial trial(text);
  int place = sheets.first;
  for (const model::Label& label : sheets.labels) {
    if (document.pages.empty() || place == sheets.grid.count()) {
      if (!document.pages.empty()) place = 0;
      document.pages.push_back(sheet_of(sheets, document.pages.size() + 1));
    }
    const Box room = room_at(sheets.grid, place++);
    const Fit fit = fit_of(trial, label, room);
    if (fit.size_pt > 0) {
      put_label(setting, label, fit, room, root, document.pages.back());
      continue;
    }
    const Length high = room.bottom - room.top;
    const Length taken = trial.height(label, *fit.lines, room, model::kLeastLabelPt).value_or(2 * high);
    result.misfits.push_back({label.title, static_cast<double>(taken - high) / static_cast<double>(from_mm(1))});
  }
  box_figures(document);
  prune_tags(document);
  return result;
}

}  // namespace benchleaf::page
