// In: a leaflet, a paper, fonts. Out: its pages in two columns. One side of a sheet is read by itself at the bench, so that each
// page carries title, number and legend.
#include "page/set_leaflet.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "page/blocks.h"
#include "page/drawing.h"
#include "page/fill.h"
#include "page/finish.h"
#include "page/packed.h"
#include "page/pen.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr int kColumns = 2;
constexpr double kEdgeMm = 13;
constexpr double kTopMm = 14;
constexpr double kFootMm = 22;
constexpr double kGutterMm = 5;

/// The paper of a book without its margin for notes.
Paper without_notes(Paper paper) {
  paper.inner = from_mm(kEdgeMm);
  paper.block_width = paper.width - 2 * paper.inner;
  paper.block_top = from_mm(kTopMm);
  paper.block_height = paper.height - from_mm(kTopMm + kFootMm);
  return paper;
}

Strips title_of(Setting& setting, const model::Leaflet& leaflet, TagId part) {
  const Length width = setting.paper.block_width;
  Strips lines =
      Words(setting, {model::text_run(leaflet.title)}, look::page_title(), setting.add_heading(1, part)).set(setting, width);
  for (Strip& line : set_paragraph(setting, {model::text_run(leaflet.subtitle)}, look::cover_line(), width, part, from_mm(1))) {
    lines.push_back(std::move(line));
  }
  Strip title = stacked(std::move(lines));
  title.height += from_mm(2);
  title.items.push_back(rule(0, title.height, width, 1.5, print_color(model::Ink::ink)));
  return {std::move(title)};
}

/// Whether a section begins on this strip.
bool begins_section(const Strip& strip) { return !strip.places.empty() && strip.keep_next; }

/// Ties the lines of sections that stay whole.
void keep_whole(const std::vector<std::string>& sections, Strips& strips) {
  for (std::size_t first = 0; first < strips.size(); ++first) {
    const auto& places = strips[first].places;
    const bool wanted = std::any_of(places.begin(), places.end(), [&sections](const Place& place) {
      return std::find(sections.begin(), sections.end(), place.anchor) != sections.end();
    });
    if (!wanted) continue;
    for (std::size_t i = first; i + 1 < strips.size() && !begins_section(strips[i + 1]); ++i) strips[i].keep_next = true;
  }
}

bool has_signs(const Page& page) {
  bool found = false;
  for_each_item(page, [&found](const Item& item) { found = found || std::holds_alternative<SignItem>(item.what); });
  return found;
}

void furnish(Setting& setting, const model::Leaflet& leaflet, const std::string& label, std::size_t count, Page& page) {
  const Paper& paper = setting.paper;
  const bool signs = has_signs(page);
  Pen pen(setting, page);
  const Length left = paper.inner;
  const Length right = paper.width - paper.inner;
  const Length top = paper.height - from_mm(kFootMm - 3);
  pen.rule_at(left, top, right, 0.5, model::Ink::ink);
  if (signs) pen.legend({left, top + from_mm(1.2), right, 0}, look::legend(), all_trusts());
  const Length baseline = paper.height - from_mm(6);
  pen.words({model::text_run(leaflet.title + ", " + label + " of " + std::to_string(count))}, look::running_head(), right,
            baseline, Pen::From::right);
  pen.words({model::text_run(leaflet.imprint + ". " + leaflet.standing_line)}, look::folio_line(), left, baseline,
            Pen::From::left);
}

}  // namespace

Document set_leaflet(const model::Leaflet& leaflet, const Paper& paper, const FontSet& fonts, const Hyphenator* hyphenator,
                     report::Findings& findings) {
  TextSetter text(fonts, hyphenator);
  Document document;
  document.title = leaflet.title;
  document.subject = leaflet.subtitle;
  document.language = leaflet.language;
  document.iso_date = leaflet.iso_date;
  const Paper wide = without_notes(paper);
  Setting setting{text, findings, wide, document.tags, {}, {}, {}};
  const TagId root = setting.add_tag(Role::document, kLayoutArtifact);
  const TagId part = setting.add_tag(Role::part, root);
  const Strips title = title_of(setting, leaflet, part);
  Galley galley;
  const Length column = (wide.block_width - (kColumns - 1) * from_mm(kGutterMm)) / kColumns;
  Target target{galley, column, part, 1, 2, false, look::entry_body()};
  set_blocks(setting, leaflet.blocks, target);
  keep_whole(leaflet.whole, galley.strips);
  PageStack stack;
  fill_columns(title, galley.strips, kColumns, wide, -1, stack);
  for (std::size_t i = 0; i < stack.pages.size(); ++i) {
    stack.pages[i].label = std::to_string(i + 1);
    furnish(setting, leaflet, stack.pages[i].label, stack.pages.size(), stack.pages[i]);
  }
  join(document, {}, std::move(stack));
  for (const OutlineLine& line : setting.outline) document.bookmarks.push_back({1, line.title, line.anchor});
  box_figures(document);
  prune_tags(document);
  return document;
}

}  // namespace benchleaf::page
