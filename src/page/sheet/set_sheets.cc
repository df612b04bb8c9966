// In: the sides of a chart, a paper. Out: a page a side: title band, panels, foot band with check bar and legend, guides for
// the laminator.
#include "page/sheet/set_sheets.h"

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

}  // namespace

SheetDocument set_sheets(const model::SheetSet& chart, const SheetPaper& paper, const FontSet& fonts,
                         const Hyphenator* hyphenator, report::Findings& findings) {
  TextSetter text(fonts, hyphenator);
  SheetDocument result;
  Document& document = result.document;
  document.title = chart.title;
  document.language = chart.language;
  document.iso_date = chart.iso_date;
  document.duplex = Duplex::top_to_top;
  const Paper no_book;
  Setting setting{text, findings, no_book, document.tags, {}, {}, {}};
  const TagId root = setting.add_tag(Role::document, kLayoutArtifact);
  for (const model::Sheet& side : chart.sides) {
    SheetFit fit = fit_side(text, chart, side, paper, findings);
    Page page;
    page.width = paper.width;
    page.height = paper.height;
    page.label = std::to_string(document.pages.size() + 1);
    const TagId part = setting.add_tag(Role::part, root);
    set_title(setting, side, paper, part, page);
    set_panels(setting, fit, paper, part, page);
    Pen pen(setting, page);
    set_foot(pen, side, paper, signs_on(page));
    set_guides(pen, paper);
    document.pages.push_back(std::move(page));
    result.fits.push_back(std::move(fit));
  }
  box_figures(document);
  prune_tags(document);
  return result;
}

}  // namespace benchleaf::page
