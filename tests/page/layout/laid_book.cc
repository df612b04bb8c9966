#include "page/layout/laid_book.h"

#include <algorithm>
#include <map>
#include <random>
#include <tuple>

#include "page/packed.h"
#include "page/text/text_support.h"

namespace benchleaf::test {

namespace {

constexpr const char* kWords[] = {"gasket",  "lifts",   "the",     "back", "slowly", "and",   "a",
                                  "contact", "springs", "out",     "of",   "its",    "bench", "without",
                                  "light",   "so",      "nothing", "is",   "lost",   "again"};

bool is_block(page::Role role) {
  return role != page::Role::link && role != page::Role::span && role != page::Role::figure && role != page::Role::reference;
}

page::TagId block_above(const page::Document& document, page::TagId tag) {
  while (tag >= 0 && !is_block(document.tags[static_cast<std::size_t>(tag)].role)) {
    tag = document.tags[static_cast<std::size_t>(tag)].parent;
  }
  return tag;
}

page::Length ink_width(const page::TextItem& item) {
  double x = 0;
  double end = 0;
  const double unit = static_cast<double>(item.size) / book_fonts().metrics(item.font).units_per_em;
  for (const page::Glyph& glyph : item.glyphs) {
    x += glyph.advance * unit + static_cast<double>(glyph.extra);
    if (item.text[glyph.cluster] != ' ') end = x;
  }
  return static_cast<page::Length>(end);
}

}  // namespace

model::Book book_with(model::Blocks blocks) {
  model::Book book;
  book.title = "A trial";
  book.edition = "1";
  book.date = "May 2026";
  book.iso_date = "2026-05-01";
  model::Chapter chapter;
  chapter.id = "trial";
  chapter.title = "Trial";
  chapter.tab = "Trial";
  chapter.blocks = std::move(blocks);
  book.chapters.push_back(std::move(chapter));
  return book;
}

model::Block paragraph(const std::string& words) {
  return {model::Paragraph{{model::text_run(words)}, model::Paragraph::Role::body}};
}

model::Block heading(int level, const std::string& words, const std::string& anchor) {
  return {model::Heading{level, {model::text_run(words)}, anchor}};
}

std::string prose(unsigned seed, int words) {
  std::mt19937 dice(seed);
  std::string text;
  for (int i = 0; i < words; ++i) text += (i == 0 ? "" : " ") + std::string(kWords[dice() % std::size(kWords)]);
  return text;
}

Laid lay(const model::Book& book, const char* paper) {
  Laid laid;
  laid.document = page::set_book(book, page::paper_named(paper).value(), book_fonts(), &book_hyphenator(), laid.findings);
  return laid;
}

std::vector<Line> lines_of(const page::Document& document) {
  std::map<std::tuple<int, page::Length, page::TagId>, Line> lines;
  for (std::size_t number = 0; number < document.pages.size(); ++number) {
    std::vector<std::pair<page::TagId, const page::TextItem*>> items;
    const std::vector<page::Item> placed = page::items_of(document.pages[number]);
    for (const page::Item& item : placed) {
      const auto* text = std::get_if<page::TextItem>(&item.what);
      if (text != nullptr && text->quarter_turns == 0) items.emplace_back(block_above(document, item.tag), text);
    }
    std::stable_sort(items.begin(), items.end(), [](const auto& a, const auto& b) { return a.second->at.x < b.second->at.x; });
    for (const auto& [block, text] : items) {
      const page::Length right = text->at.x + ink_width(*text);
      auto [at, fresh] = lines.try_emplace({static_cast<int>(number), text->at.y, block});
      Line& line = at->second;
      if (fresh) {
        line = {static_cast<int>(number), text->at.y, text->at.x, right, block, page::Role::div, {}};
        if (block >= 0) line.role = document.tags[static_cast<std::size_t>(block)].role;
      }
      line.right = std::max(line.right, right);
      line.text += text->text;
    }
  }
  std::vector<Line> sorted;
  for (auto& [key, line] : lines) sorted.push_back(std::move(line));
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const Line& a, const Line& b) { return std::tie(a.page, a.y, a.left) < std::tie(b.page, b.y, b.left); });
  return sorted;
}

Edges block_edges(const page::Document& document, int page, const char* paper) {
  const page::Paper measures = page::paper_named(paper).value();
  int front = 0;
  while (document.pages[static_cast<std::size_t>(front)].label != "1") ++front;
  const page::Side side = (page - front) % 2 == 0 ? page::Side::recto : page::Side::verso;
  const page::Length left = measures.block_left(side);
  return {left, left + measures.block_width};
}

}  // namespace benchleaf::test
