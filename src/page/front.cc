// In: the book and the numbers of its pages. Out: what stands before the first chapter.
#include "page/front.h"

#include <utility>

#include "page/anchors.h"
#include "page/blocks.h"
#include "page/drawing.h"
#include "page/furniture.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr int kContentsColumns = 2;
constexpr double kCloserStepMm = 0.05;
constexpr int kCloserSteps = 9;  // lines of 4.48 mm come down to 4.03 mm, which is still a fifth more than their type

void open_page(const Paper& paper, PageStack& stack) {
  Page page;
  page.width = paper.width;
  page.height = paper.height;
  stack.pages.push_back(std::move(page));
  stack.notes.push_back({-1, {}, {}, false, false});
}

void put(Strip strip, Length x, Length y, Page& page) {
  shift(strip, x, y);
  for (Item& item : strip.items) page.items.push_back(std::move(item));
}

/// Title low on the page, its rule above it, edition beneath; the tabs of the chapters run down the edge.
void set_cover(Setting& setting, const model::Book& book, const PartPages& parts, TagId section, PageStack& stack) {
  const Paper& paper = setting.paper;
  open_page(paper, stack);
  Page& page = stack.pages.back();
  const Length left = paper.inner;
  const Length width = from_mm(104);
  Strips lines =
      Words(setting, {model::text_run(book.title)}, look::cover_title(), setting.add_heading(1, section)).set(setting, width);
  for (Strip& line : set_paragraph(setting, {model::text_run(book.subtitle)}, look::cover_line(), width, section, from_mm(4))) {
    lines.push_back(std::move(line));
  }
  const model::Runs edition{model::text_run("Edition\u00A0" + book.edition + ", " + book.date)};
  for (Strip& line : set_paragraph(setting, edition, look::second_name(), width, section, from_mm(8)))
    lines.push_back(std::move(line));
  for (const std::string& imprint : book.imprints) {
    for (Strip& line : set_paragraph(setting, {model::text_run(imprint)}, look::second_name(), width, section, from_mm(2)))
      lines.push_back(std::move(line));
  }
  if (parts.last_of_b > 0) {
    const std::string bench = "Part\u00A0A, for the bench: print up to page\u00A0" + std::to_string(parts.last_of_a) + ".";
    const std::string reference =
        " Part\u00A0B, reference: pages " + std::to_string(parts.last_of_a + 1) + " to " + std::to_string(parts.last_of_b) + ".";
    for (Strip& line : set_paragraph(setting, {model::text_run(bench, model::Style::bold), model::text_run(reference)},
                                     look::contents_line(), width, section, from_mm(6)))
      lines.push_back(std::move(line));
  }
  const Length top = paper.block_top + paper.block_height * 52 / 100;
  page.items.push_back(rule(left, top, width, 1.5, print_color(model::Ink::ink)));
  put(stacked(std::move(lines)), left, top + from_mm(5), page);
  furnish_cover(setting, book, page);
}

/// A line of the contents: the number hangs at the left, so that the eye need not cross the page.
Strip contents_line(Setting& setting, const OutlineLine& line, const PageNumbers& numbers, Length width, TagId toc) {
  const bool chapter = line.level == 1;
  const TagId item = setting.add_tag(Role::toc_item, toc);
  const TagId link = setting.add_tag(Role::link, setting.add_tag(Role::reference, item));
  const Length indent = from_mm(11);
  const auto number = numbers.find(line.anchor);
  const std::string title = chapter ? std::to_string(line.number) + "\u2002" + line.title : line.title;
  const Look look = chapter ? look::contents_chapter() : look::contents_line();
  Strip strip = stacked(Words(setting, {model::text_run(title)}, look, link).set(setting, width - indent));
  shift(strip, indent, 0);
  if (number != numbers.end()) {
    const model::Run page = model::text_run(number->second, model::Style::bold | model::Style::accent);
    overlay(strip, stacked(Words(setting, {page}, look, link).set(setting, from_mm(8), Look::Flush::right)), 0, 0);
  }
  strip.links.push_back({{0, 0, width, strip.height}, line.anchor, title, link});
  strip.before = chapter ? from_mm(2.8) : 0;
  strip.keep_next = chapter;
  return strip;
}

/// The lines with so much less room under each.
Strips closer(Strips lines, Length by) {
  for (Strip& line : lines) {
    line.height -= by;
    for (LinkArea& link : line.links) link.box.bottom -= by;
  }
  return lines;
}

std::size_t pages_of(const Strips& title, const Strips& lines, const Paper& paper) {
  PageStack trial;
  fill_columns(title, lines, kContentsColumns, paper, -1, trial);
  return trial.pages.size();
}

/// Lines that stand closer where that saves a page, and no closer than it takes: a few lines do not begin a page.
Strips without_spill(const Strips& title, Strips lines, const Paper& paper) {
  const std::size_t pages = pages_of(title, lines, paper);
  for (int step = 1; step <= kCloserSteps; ++step) {
    Strips tried = closer(lines, from_mm(kCloserStepMm * step));
    if (pages_of(title, tried, paper) < pages) return tried;
  }
  return lines;
}

void set_contents(Setting& setting, const PageNumbers& numbers, TagId section, PageStack& stack) {
  const Length width = column_width(setting.paper.block_width, kContentsColumns);
  Strips title = Words(setting, {model::text_run("Contents")}, look::page_title(), setting.add_heading(2, section))
                     .set(setting, setting.paper.block_width);
  title.front().places.push_back({"contents", 0});
  const TagId toc = setting.add_tag(Role::toc, section);
  Strips lines;
  const std::vector<OutlineLine> outline = setting.outline;
  for (const OutlineLine& line : outline) lines.push_back(contents_line(setting, line, numbers, width, toc));
  fill_columns(title, without_spill(title, std::move(lines), setting.paper), kContentsColumns, setting.paper, -1, stack);
}

}  // namespace

Strips chapter_head(Setting& setting, const model::Chapter& chapter, TagId section) {
  model::Run number = model::text_run(std::to_string(chapter.number) + "\u2002", model::Style::accent);
  Strips lines = Words(setting, {number, model::text_run(chapter.title)}, look::page_title(), setting.add_heading(1, section))
                     .set(setting, setting.paper.block_width);
  Strip head = stacked(std::move(lines));
  head.items.push_back(rule(0, head.height + from_mm(1.6), setting.paper.block_width, 1.5, print_color(model::Ink::ink)));
  head.height += from_mm(4);
  head.places.push_back({chapter_anchor(chapter), 0});
  head.new_page = true;
  head.keep_next = true;
  return {std::move(head)};
}

PageStack set_front(Setting& setting, const model::Book& book, const PageNumbers& numbers, const PartPages& parts,
                    TagId document) {
  PageStack stack;
  const TagId section = setting.add_tag(Role::part, document);
  set_cover(setting, book, parts, section, stack);
  Galley galley;
  Target target{galley, setting.paper.block_width, section, 1, 2, false, look::body()};
  const std::size_t outline = setting.outline.size();
  set_blocks(setting, book.cover_notes, target);
  setting.outline.resize(outline);  // the front matter is not in its own contents
  if (!galley.strips.empty()) fill_pages(std::move(galley), setting.paper, -1, stack);
  set_contents(setting, numbers, section, stack);
  if (stack.pages.size() % 2 != 0) open_page(setting.paper, stack);
  return stack;
}

}  // namespace benchleaf::page
