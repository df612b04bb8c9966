// In: the sides of a chart, a paper. Out: a page a side: title band, panels, foot band with check bar and legend, guides for
// the laminator.
#include "page/sheet/set_sheets.h"

#include <algorithm>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "model/signs.h"
#include "page/drawing.h"
#include "page/finish.h"
#include "page/pen.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

/// Columns may be drawn apart by so much, no more: a hole is worse than an uneven foot.
constexpr double kMostSpreadMm = 9;
constexpr double kHoleMm = 5;
constexpr double kHoleTopMm = 3.5;  // from the edge of the paper
constexpr double kCornerMm = 3;
constexpr double kCaptionPt = 9.5;

Look caption() {
  Look look = look::legend();
  look.size_pt = kCaptionPt;
  look.leading_pt = kCaptionPt * 1.2;
  look.color = print_color(model::Ink::ink);
  return look;
}

void put(Strip strip, Length x, Length y, Page& page) {
  shift(strip, x, y);
  for (Item& item : strip.items) page.items.push_back(std::move(item));
}

/// Left end of the words at the right of the title band.
Length set_imprint(Setting& setting, const model::Sheet& side, const SheetPaper& paper, Length baseline, TagId parent,
                   Page& page) {
  const Length right = paper.width - paper.edge;
  PlainLine line = set_plain(setting, side.imprint, caption(), setting.add_tag(Role::p, parent));
  const Length left = right - line.width;
  for (Item& item : line.items) {
    shift(item, left, baseline);
    page.items.push_back(std::move(item));
  }
  return left;
}

void set_title(Setting& setting, const model::Sheet& side, const SheetPaper& paper, TagId parent, Page& page) {
  const Length baseline = paper.live_top() - from_mm(4.6);
  PlainLine title = set_plain(setting, side.title, look::page_title(), setting.add_heading(1, parent));
  for (Item& item : title.items) {
    shift(item, paper.edge, baseline);
    page.items.push_back(std::move(item));
  }
  Look second = look::cover_line();
  second.size_pt = 12;
  PlainLine line = set_plain(setting, side.subtitle, second, setting.add_tag(Role::p, parent));
  const Length left = paper.edge + title.width + from_mm(4);
  const Length end = set_imprint(setting, side, paper, baseline, parent, page);
  if (left + line.width > end) {
    setting.findings.add(report::Rule::page_too_wide, {},
                         "the line '" + side.subtitle + "' does not fit beside the title of " + paper.name,
                         "shorten the subtitle of the chart");
  }
  for (Item& item : line.items) {
    shift(item, left, baseline);
    page.items.push_back(std::move(item));
  }
  page.items.push_back(rule(paper.edge, paper.live_top() - from_mm(2.4), paper.live_width(), 1.5, print_color(model::Ink::ink)));
}

/// The trust signs that stand on a sheet: only these are explained.
struct Signs {
  std::vector<model::Trust> trusts;
  bool derived = false;
};

Signs signs_on(const Page& page) {
  std::set<model::Trust> said;
  Signs signs;
  for (const Item& item : page.items) {
    const auto* sign = std::get_if<SignItem>(&item.what);
    if (sign == nullptr) continue;
    said.insert(sign->trust);
    signs.derived = signs.derived || sign->derived;
  }
  for (const model::Trust trust : all_trusts()) {
    if (said.count(trust) > 0) signs.trusts.push_back(trust);
  }
  return signs;
}

void set_foot(Pen& pen, const model::Sheet& side, const SheetPaper& paper, const Signs& signs) {
  const Length top = paper.height - paper.edge - paper.foot_band + from_mm(2.6);
  const Length right = paper.width - paper.edge;
  pen.rule_at(paper.edge, top, right, 1.5, model::Ink::ink);
  const Length bar = paper.height - paper.edge - from_mm(5);
  pen.check_bar(paper.edge, bar);
  std::string words = "100\u2009mm. If a rule disagrees, lay no cell on this print. Film: matt.";
  if (!side.addition.empty()) words += "  " + side.addition + ".";
  pen.words({model::text_run(std::move(words))}, caption(), paper.edge, bar + from_mm(4.4), Pen::From::left);
  pen.legend({paper.edge + from_mm(106), top + from_mm(1.6), right, 0}, caption(), signs.trusts, signs.derived);
}

/// Where corners may be rounded and a hole punched, in hairlines.
void set_guides(Pen& pen, const SheetPaper& paper) {
  constexpr double kHairlineMm = 0.09;
  constexpr double kRound = 0.5523;  // of a quarter circle by one cubic
  const double r = kCornerMm;
  const double w = static_cast<double>(paper.width) / static_cast<double>(from_mm(1));
  const double h = static_cast<double>(paper.height) / static_cast<double>(from_mm(1));
  const auto corner = [&](double x, double y, double dx, double dy) {
    model::PathShape arc;
    arc.stroke = model::Ink::second_ink;
    arc.stroke_mm = kHairlineMm;
    using Op = model::PathStep::Op;
    arc.steps.push_back({Op::move, {x, y + dy * r}, {}, {}});
    arc.steps.push_back({Op::curve, {x + dx * r, y}, {x, y + dy * r * (1 - kRound)}, {x + dx * r * (1 - kRound), y}});
    pen.path(arc, 0, 0);
  };
  corner(0, 0, 1, 1);
  corner(w, 0, -1, 1);
  corner(0, h, 1, -1);
  corner(w, h, -1, -1);
  model::PathShape hole = model::circle({0, 0}, kHoleMm / 2);
  hole.stroke = model::Ink::second_ink;
  hole.stroke_mm = kHairlineMm;
  pen.path(hole, paper.width / 2, from_mm(kHoleTopMm + kHoleMm / 2));  // in the middle: one hole for both sides
}

void set_panels(Setting& setting, const SheetFit& fit, const SheetPaper& paper, TagId parent, Page& page) {
  Trial trial = set_trial(setting, fit.panels, paper, fit.words_pt, fit.columns, parent, fit.air);
  spread(trial.arrangement, trial.sizes, paper.live_height(), from_mm(kMostSpreadMm));
  for (std::size_t i = 0; i < trial.strips.size(); ++i) {
    const PanelPlace& at = trial.arrangement.places[i];
    put(std::move(trial.strips[i]), paper.edge + (trial.width.column + trial.width.gap) * at.column, paper.live_top() + at.top,
        page);
  }
}

/// A document whose sides are still to be set.
class SheetSetter {
 public:
  SheetSetter(const model::SheetSet& chart, const FontSet& fonts, const Hyphenator* hyphenator, report::Findings& findings)
      : chart_(chart), text_(fonts, hyphenator), setting_{text_, findings, no_book_, result_.document.tags, {}, {}, {}} {
    result_.document.title = chart.title;
    result_.document.language = chart.language;
    result_.document.iso_date = chart.iso_date;
    result_.document.duplex = Duplex::top_to_top;
    root_ = setting_.add_tag(Role::document, kLayoutArtifact);
  }

  SheetFit fit(const model::Sheet& side, const SheetPaper& paper) {
    return fit_side(text_, chart_, side, paper, setting_.findings);
  }

  /// Titles of the panels that this side has no room for.
  std::vector<std::string> without_room(const model::Sheet& side, const SheetPaper& paper) {
    report::Findings unsaid;
    return fit_side(text_, chart_, side, paper, unsaid).dropped;
  }

  Page page_of(const model::Sheet& side, const SheetFit& fit, const SheetPaper& paper) {
    Page page;
    page.width = paper.width;
    page.height = paper.height;
    page.label = std::to_string(result_.document.pages.size() + 1);
    const TagId part = setting_.add_tag(Role::part, root_);
    set_title(setting_, side, paper, part, page);
    set_panels(setting_, fit, paper, part, page);
    Pen pen(setting_, page);
    set_foot(pen, side, paper, signs_on(page));
    set_guides(pen, paper);
    return page;
  }

  Pen pen(Page& page) { return {setting_, page}; }

  void add(Page page, SheetFit fit) {
    result_.document.pages.push_back(std::move(page));
    result_.fits.push_back(std::move(fit));
  }

  SheetDocument take() {
    box_figures(result_.document);
    prune_tags(result_.document);
    return std::move(result_);
  }

 private:
  const model::SheetSet& chart_;
  TextSetter text_;
  SheetDocument result_;
  const Paper no_book_{};
  Setting setting_;
  TagId root_ = kLayoutArtifact;
};

/// Ticks at the corners of a card, outside it where the paper leaves room, on its edge where it does not.
void set_cut_marks(Pen& pen, const SheetPaper& card, Point at, const Page& page) {
  const Length tick = from_mm(4);
  const Length least = from_mm(1);  // what is nearer to the edge is no strip to cut off
  for (const Length x : {at.x, at.x + card.width}) {
    for (const Length y : {at.y, at.y + card.height}) {
      model::PathShape mark;
      mark.stroke = model::Ink::ink;
      mark.stroke_mm = 0.18;
      using Op = model::PathStep::Op;
      const bool above = y == at.y;
      const bool left = x == at.x;
      const double up = (above ? y >= tick : y + tick > page.height) ? -4 : 4;
      const double aside = (left ? x >= tick : x + tick > page.width) ? -4 : 4;
      if (x > least && x < page.width - least) mark.steps = {{Op::move, {0, 0}, {}, {}}, {Op::line, {0, up}, {}, {}}};
      if (y > least && y < page.height - least) {
        mark.steps.push_back({Op::move, {0, 0}, {}, {}});
        mark.steps.push_back({Op::line, {aside, 0}, {}, {}});
      }
      if (!mark.steps.empty()) pen.path(mark, x, y);
    }
  }
}

}  // namespace

namespace {

/// The sides of a chart; what has no room on the only one stands on its back, over its whole width.
std::vector<model::Sheet> sides_on(SheetSetter& setter, const model::SheetSet& chart, const SheetPaper& paper) {
  std::vector<model::Sheet> sides = chart.sides;
  if (!chart.runs_over || sides.size() != 1) return sides;
  const std::vector<std::string> dropped = setter.without_room(sides.front(), paper);
  if (dropped.empty()) return sides;
  const auto is_dropped = [&dropped](const model::Panel& panel) {
    return !panel.spare && std::find(dropped.begin(), dropped.end(), panel.title) != dropped.end();
  };
  model::Sheet back = sides.front();
  std::erase_if(back.panels, [&](const model::Panel& panel) { return !is_dropped(panel); });
  if (back.panels.empty()) return sides;
  for (model::Panel& panel : back.panels) panel.wide = true, panel.keep = 1;
  std::erase_if(sides.front().panels, is_dropped);
  sides.front().imprint += ", side\u00A01";
  back.imprint += ", side\u00A02";
  sides.push_back(std::move(back));
  return sides;
}

}  // namespace

SheetDocument set_sheets(const model::SheetSet& chart, const SheetPaper& paper, const FontSet& fonts,
                         const Hyphenator* hyphenator, report::Findings& findings) {
  SheetSetter setter(chart, fonts, hyphenator, findings);
  for (const model::Sheet& side : sides_on(setter, chart, paper)) {
    SheetFit fit = setter.fit(side, paper);
    Page page = setter.page_of(side, fit, paper);
    setter.add(std::move(page), std::move(fit));
  }
  return setter.take();
}

SheetDocument set_cards(const model::SheetSet& card, const SheetPaper& paper, const FontSet& fonts, const Hyphenator* hyphenator,
                        report::Findings& findings) {
  SheetSetter setter(card, fonts, hyphenator, findings);
  const SheetPaper own = card_paper();
  const Length count = std::max<Length>(1, paper.width / own.width);
  const Length left = (paper.width - own.width * count) / 2;
  const Length top = (paper.height - own.height) / 2;
  for (const model::Sheet& side : card.sides) {
    SheetFit fit = setter.fit(side, own);
    Page whole;
    whole.width = paper.width;
    whole.height = paper.height;
    for (Length i = 0; i < count; ++i) {
      const Point at{left + own.width * i, top};
      Page page = setter.page_of(side, fit, own);
      whole.label = page.label;
      for (Item& item : page.items) {
        shift(item, at.x, at.y);
        whole.items.push_back(std::move(item));
      }
      Pen pen = setter.pen(whole);
      set_cut_marks(pen, own, at, whole);
    }
    setter.add(std::move(whole), std::move(fit));
  }
  return setter.take();
}

}  // namespace benchleaf::page
