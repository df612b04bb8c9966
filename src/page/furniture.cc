// In: what stands on a page. Out: its running matter, all of it pagination artifacts.
#include "page/furniture.h"

#include <algorithm>
#include <utility>

#include "page/pen.h"

namespace benchleaf::page {
namespace {

/// Outer and inner edges of the block, by side.
struct Edges {
  Length outer, inner;
  bool recto;
};

Edges edges_of(const Paper& paper, Side side) {
  const Length left = paper.block_left(side);
  const Length right = left + paper.block_width;
  return side == Side::recto ? Edges{right, left, true} : Edges{left, right, false};
}

/// As many whole words of a title as fit into `most` characters.
std::string shortened(const std::string& words, std::size_t most) {
  if (words.size() <= most) return words;
  const std::size_t cut = words.rfind(' ', most);
  return words.substr(0, cut == std::string::npos || cut == 0 ? most : cut) + "\u2026";
}

/// Behind the name of an entry that began on a page before.
model::Run continued() { return model::text_run(", continued", model::Style::italic); }

/// First and last entry of the page, each title cut after so many characters.
model::Runs running_keys(const PageNotes& notes, std::size_t most) {
  if (notes.first_running.empty()) return {};
  model::Runs keys{model::text_run(shortened(notes.first_running, most))};
  if (notes.last_running == notes.first_running) {
    if (notes.continued) keys.push_back(continued());
    return keys;
  }
  keys.push_back(model::text_run("\u00A0to\u00A0"));
  keys.push_back(model::text_run(shortened(notes.last_running, most)));
  return keys;
}

void running_head(Pen& pen, const model::Book& book, const PageNotes& notes, const Paper& paper, const Edges& edges) {
  pen.rule_at(std::min(edges.outer, edges.inner), paper.head_rule, std::max(edges.outer, edges.inner), 0.5, model::Ink::ink);
  const Length baseline = paper.head_rule - from_mm(1.8);
  using From = Pen::From;
  const From outer = edges.recto ? From::right : From::left;
  const From inner = edges.recto ? From::left : From::right;
  Length free = std::max(edges.outer, edges.inner) - std::min(edges.outer, edges.inner);
  if (notes.chapter >= 0) {
    const model::Chapter& chapter = book.chapters.at(static_cast<std::size_t>(notes.chapter));
    free -= from_mm(6) + pen.words({model::text_run(std::to_string(chapter.number) + "\u2002" + chapter.title)},
                                   look::running_chapter(), edges.inner, baseline, inner);
  }
  // Titles are cut only where both do not fit beside the chapter.
  constexpr std::size_t kLongest = 90, kShortest = 12;
  std::size_t most = kLongest;
  while (most > kShortest && pen.width(running_keys(notes, most), look::running_head()) > free) --most;
  const model::Runs keys = running_keys(notes, most);
  if (!keys.empty()) pen.words(keys, look::running_head(), edges.outer, baseline, outer);
}

std::string part_words(const model::Book& book, int chapter) {
  if (chapter < 0) return {};
  const bool bench = book.chapters.at(static_cast<std::size_t>(chapter)).part == model::BookPart::a;
  return bench ? " \u00B7 Part\u00A0A, for the bench" : " \u00B7 Part\u00A0B, reference";
}

void folio_line(Pen& pen, const model::Book& book, const std::string& label, const std::string& part, const Paper& paper,
                const Edges& edges) {
  using From = Pen::From;
  const Length baseline = paper.height - paper.folio;
  const From outer = edges.recto ? From::right : From::left;
  const From inner = edges.recto ? From::left : From::right;
  const Length width = pen.words({model::text_run(label)}, look::folio(), edges.outer, baseline, outer);
  const Length beside = edges.recto ? edges.outer - width - from_mm(3) : edges.outer + width + from_mm(3);
  pen.words({model::text_run(book.standing_line)}, look::folio_line(), beside, baseline, outer);
  pen.words({model::text_run("Benchleaf, edition\u00A0" + book.edition + ", " + book.date + part)}, look::folio_line(),
            edges.inner, baseline, inner);
}

/// As far apart as the chapters need, down the height of the block.
Box tab_box(const Paper& paper, int place, int count, bool recto) {
  constexpr double kWidthMm = 9, kHeightMm = 18, kPitchMm = 21.4;
  const Length pitch = std::min(from_mm(kPitchMm), (paper.block_height - from_mm(kHeightMm)) / std::max(1, count - 1));
  const Length top = paper.block_top + pitch * place;
  const Length left = recto ? paper.width - from_mm(kWidthMm) : 0;
  return {left, top, left + from_mm(kWidthMm), top + from_mm(kHeightMm)};
}

void draw_tab(Pen& pen, const model::Chapter& chapter, const Box& box, bool recto) {
  pen.fill(box, model::Ink::accent);
  const Length baseline = box.top + from_mm(1.8) + static_cast<Length>(look::tab_number().size_pt * 0.71 * kPt);
  using From = Pen::From;
  pen.words({model::text_run(std::to_string(chapter.number))}, look::tab_number(),
            recto ? box.left + from_mm(2) : box.right - from_mm(2), baseline, recto ? From::left : From::right);
  if (recto) {
    pen.turned(chapter.tab, look::tab_name(), {box.left + from_mm(2.2), box.top + from_mm(6.4)}, 1);
  } else {
    pen.turned(chapter.tab, look::tab_name(), {box.right - from_mm(2.2), box.bottom - from_mm(1.6)}, 3);
  }
}

void thumb_tabs(Pen& pen, const model::Book& book, int chapter, const Paper& paper, bool recto) {
  for (std::size_t i = 0; i < book.chapters.size(); ++i) {
    const Box box = tab_box(paper, static_cast<int>(i), static_cast<int>(book.chapters.size()), recto);
    if (static_cast<int>(i) == chapter) {
      draw_tab(pen, book.chapters[i], box, recto);
    } else {
      const Length tick = from_mm(3);
      pen.rule_at(recto ? paper.width - tick : 0, box.top, recto ? paper.width : tick, 0.25, model::Ink::ink);
    }
  }
}

}  // namespace

void furnish(Setting& setting, const model::Book& book, const PageNotes& notes, Side side, const std::string& label, Page& page) {
  Pen pen(setting, page);
  const Edges edges = edges_of(setting.paper, side);
  running_head(pen, book, notes, setting.paper, edges);
  folio_line(pen, book, label, part_words(book, notes.chapter), setting.paper, edges);
  thumb_tabs(pen, book, notes.chapter, setting.paper, edges.recto);
  if (!notes.true_size) return;
  const Length foot = setting.paper.block_top + setting.paper.block_height + from_mm(2.8);
  const Length left = setting.paper.block_left(side);
  pen.check_bar(left, foot);
  pen.words({model::text_run("If this bar is not 100\u2009mm, trust no outline.")}, look::folio_line(),
            left + setting.paper.block_width, foot, Pen::From::right);
}

void furnish_cover(Setting& setting, const model::Book& book, Page& page) {
  Pen pen(setting, page);
  for (std::size_t i = 0; i < book.chapters.size(); ++i) {
    const Box box = tab_box(setting.paper, static_cast<int>(i), static_cast<int>(book.chapters.size()), true);
    draw_tab(pen, book.chapters[i], box, true);
    pen.words({model::text_run(book.chapters[i].title)}, look::contents_line(), box.left - from_mm(3),
              box.top + from_mm(1.8) + static_cast<Length>(look::tab_number().size_pt * 0.71 * kPt), Pen::From::right);
  }
}

}  // namespace benchleaf::page
