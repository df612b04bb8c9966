// In: what stands on a page. Out: its running matter, all of it pagination artifacts.
#include "page/furniture.h"

#include <algorithm>
#include <utility>

#include "model/signs.h"
#include "page/drawing.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

/// Lays words on the page without a structure element.
class Furniture {
 public:
  Furniture(Setting& setting, Page& page) : setting_(setting), page_(page) {}

  void rule_at(Length left, Length y, Length right, double thickness, model::Ink ink) {
    add(rule(left, y, right - left, thickness, print_color(ink)));
  }
  void fill(Box box, model::Ink ink) { add(ground(box, print_color(ink))); }

  enum class From { left, right };
  /// Words from `x` to the right, or ending at `x`; gives their width.
  Length words(const model::Runs& runs, const Look& look, Length x, Length baseline, From from) {
    const Words set(setting_, runs, look, kPaginationArtifact);
    const Length width = set.natural_width(setting_);
    Strip strip = stacked(set.set(setting_, width + kPt, Look::Flush::left));
    Length own = 0;
    for (const Item& item : strip.items) {
      if (const auto* text = std::get_if<TextItem>(&item.what)) own = std::max(own, text->at.y);
    }
    shift(strip, from == From::left ? x : x - width, baseline - own);
    for (Item& item : strip.items) add(std::move(item));
    return width;
  }

  Length width(const model::Runs& runs, const Look& look) {
    return Words(setting_, runs, look, kPaginationArtifact).natural_width(setting_);
  }

  /// Words turned to run down (recto) or up (verso) the edge.
  void turned(std::string_view text, const Look& look, Point at, int quarter_turns) {
    PlainLine line = set_plain(setting_, text, look, kPaginationArtifact);
    for (Item& item : line.items) {
      auto& placed = std::get<TextItem>(item.what);
      const Length along = placed.at.x;
      placed.at = {at.x, at.y + (quarter_turns == 1 ? along : -along)};
      placed.quarter_turns = quarter_turns;
      add(std::move(item));
    }
  }

  void drawing(const model::Drawing& drawing, double scale, Length x, Length y) {
    for (Item& item : place_drawing(setting_, drawing, scale, kPaginationArtifact)) {
      shift(item, x, y);
      add(std::move(item));
    }
  }

  void add(Item item) {
    item.tag = kPaginationArtifact;
    page_.items.push_back(std::move(item));
  }

 private:
  Setting& setting_;
  Page& page_;
};

/// Outer and inner edges of the block with its note column, by side.
struct Edges {
  Length block_left, block_right, outer, inner;
  bool recto;
};

Edges edges_of(const Paper& paper, Side side) {
  const Length left = paper.block_left(side);
  const Length right = left + paper.block_width;
  const Length notes = paper.note_gap + paper.note_width;
  const bool recto = side == Side::recto;
  return {left, right, recto ? right + notes : left - notes, recto ? left : right, recto};
}

/// As many whole words of a title as fit into `most` characters.
std::string shortened(const std::string& words, std::size_t most) {
  if (words.size() <= most) return words;
  const std::size_t cut = words.rfind(' ', most);
  return words.substr(0, cut == std::string::npos || cut == 0 ? most : cut) + "\u2026";
}

void running_head(Furniture& furniture, const model::Book& book, const PageNotes& notes, const Paper& paper, const Edges& edges) {
  furniture.rule_at(std::min(edges.outer, edges.inner), paper.head_rule, std::max(edges.outer, edges.inner), 0.5,
                    model::Ink::ink);
  const Length baseline = paper.head_rule - from_mm(1.8);
  using From = Furniture::From;
  model::Runs keys;
  if (!notes.first_running.empty()) {
    constexpr std::size_t kMost = 38;
    keys.push_back(model::text_run(shortened(notes.first_running, kMost)));
    if (notes.last_running != notes.first_running) {
      model::Run between = model::text_run("\u00A0to\u00A0");
      keys.push_back(between);
      keys.push_back(model::text_run(shortened(notes.last_running, kMost)));
    }
  }
  const From outer = edges.recto ? From::right : From::left;
  const From inner = edges.recto ? From::left : From::right;
  if (!keys.empty()) furniture.words(keys, look::running_head(), edges.outer, baseline, outer);
  if (notes.chapter >= 0) {
    const model::Chapter& chapter = book.chapters.at(static_cast<std::size_t>(notes.chapter));
    furniture.words({model::text_run(std::to_string(chapter.number) + "\u2002" + chapter.title)}, look::running_chapter(),
                    edges.inner, baseline, inner);
  }
}

void folio_line(Furniture& furniture, const model::Book& book, const std::string& label, const Paper& paper, const Edges& edges) {
  using From = Furniture::From;
  const Length baseline = paper.height - paper.folio;
  const From outer = edges.recto ? From::right : From::left;
  const From inner = edges.recto ? From::left : From::right;
  const Length width = furniture.words({model::text_run(label)}, look::folio(), edges.outer, baseline, outer);
  const Length beside = edges.recto ? edges.outer - width - from_mm(3) : edges.outer + width + from_mm(3);
  furniture.words({model::text_run(book.standing_line)}, look::folio_line(), beside, baseline, outer);
  furniture.words({model::text_run("Benchleaf, edition\u00A0" + book.edition + ", " + book.date)}, look::folio_line(),
                  edges.inner, baseline, inner);
}

Box tab_box(const Paper& paper, int number, bool recto) {
  const Length width = from_mm(10);
  const Length top = paper.block_top + paper.tab_pitch * (number - 1);
  const Length left = recto ? paper.width - width : 0;
  return {left, top, left + width, top + from_mm(19)};
}

void draw_tab(Furniture& furniture, const model::Chapter& chapter, const Box& box, bool recto) {
  furniture.fill(box, model::Ink::accent);
  const Length baseline = box.top + from_mm(1.8) + static_cast<Length>(look::tab_number().size_pt * 0.71 * kPt);
  using From = Furniture::From;
  furniture.words({model::text_run(std::to_string(chapter.number))}, look::tab_number(),
                  recto ? box.left + from_mm(2) : box.right - from_mm(2), baseline, recto ? From::left : From::right);
  if (recto) {
    furniture.turned(chapter.tab, look::tab_name(), {box.left + from_mm(2.2), box.top + from_mm(6.4)}, 1);
  } else {
    furniture.turned(chapter.tab, look::tab_name(), {box.right - from_mm(2.2), box.bottom - from_mm(1.6)}, 3);
  }
}

void thumb_tabs(Furniture& furniture, const model::Book& book, int chapter, const Paper& paper, bool recto) {
  for (std::size_t i = 0; i < book.chapters.size(); ++i) {
    const Box box = tab_box(paper, static_cast<int>(i) + 1, recto);
    if (static_cast<int>(i) == chapter) {
      draw_tab(furniture, book.chapters[i], box, recto);
    } else {
      const Length tick = from_mm(3);
      furniture.rule_at(recto ? paper.width - tick : 0, box.top, recto ? paper.width : tick, 0.25, model::Ink::ink);
    }
  }
}

void legend(Furniture& furniture, const Paper& paper, const Edges& edges) {
  const Length top = paper.block_top + paper.block_height - from_mm(10);
  furniture.rule_at(edges.block_left, top, edges.block_right, 0.5, model::Ink::ink);
  using model::Trust;
  constexpr Trust kOrder[] = {Trust::standard, Trust::handbook, Trust::dataset, Trust::trade, Trust::memory, Trust::invented};
  const Look look = look::legend();
  const Length line = look.leading();
  Length x = edges.block_left;
  Length baseline = top + from_mm(1.2) + static_cast<Length>(look.size_pt * 0.85 * kPt);
  const auto put = [&](model::Runs runs) {
    const Length width = furniture.width(runs, look);
    if (x + width > edges.block_right) {
      x = edges.block_left;
      baseline += line;
    }
    furniture.words(runs, look, x, baseline, Furniture::From::left);
    x += width + from_mm(5);
  };
  for (const Trust trust : kOrder) {
    put({model::trust_run(trust, false), model::text_run("\u2009 " + std::string(model::trust_legend(trust)))});
  }
  put({model::trust_run(Trust::memory, true), model::text_run("\u2009 " + std::string(model::derived_legend()))});
}

/// 100 mm between the end ticks; every ten a longer tick.
void check_bar(Furniture& furniture, const Paper& paper, const Edges& edges) {
  const Length y = paper.block_top + paper.block_height + from_mm(4.2);
  const Length left = edges.block_left;
  furniture.rule_at(left, y, left + from_mm(100), 0.5, model::Ink::ink);
  for (int mm = 0; mm <= 100; mm += 5) {
    model::PathShape tick = model::line({0, 0}, {0, mm % 10 == 0 ? -2.2 : -1.2});
    tick.stroke = model::Ink::ink;
    tick.stroke_mm = 0.14;
    Item item{kPaginationArtifact, place_path(tick, 1)};
    shift(item, left + from_mm(mm), y);
    furniture.add(std::move(item));
  }
  furniture.words({model::text_run("If this bar is not 100\u2009mm, trust no outline.")}, look::folio_line(), left + from_mm(103),
                  y, Furniture::From::left);
}

}  // namespace

void furnish(Setting& setting, const model::Book& book, const PageNotes& notes, Side side, const std::string& label, Page& page) {
  Furniture furniture(setting, page);
  const Edges edges = edges_of(setting.paper, side);
  running_head(furniture, book, notes, setting.paper, edges);
  folio_line(furniture, book, label, setting.paper, edges);
  thumb_tabs(furniture, book, notes.chapter, setting.paper, edges.recto);
  if (notes.signs) legend(furniture, setting.paper, edges);
  if (notes.true_size) check_bar(furniture, setting.paper, edges);
}

void furnish_cover(Setting& setting, const model::Book& book, Page& page) {
  Furniture furniture(setting, page);
  for (std::size_t i = 0; i < book.chapters.size(); ++i) {
    const Box box = tab_box(setting.paper, static_cast<int>(i) + 1, true);
    draw_tab(furniture, book.chapters[i], box, true);
    furniture.words({model::text_run(book.chapters[i].title)}, look::contents_line(), box.left - from_mm(3),
                    box.top + from_mm(1.8) + static_cast<Length>(look::tab_number().size_pt * 0.71 * kPt),
                    Furniture::From::right);
  }
}

}  // namespace benchleaf::page
