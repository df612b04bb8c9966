// In: the display list of a handbook. Out: its words that overlap or stand in the margins. A word's box is as wide as its
// advances without a space at the end, and as high as small letters are, so that lines set close do not touch.
#include "support/text_boxes.h"

#include <algorithm>

#include "page/packed.h"

namespace benchleaf::test {

namespace {

using page::Length;

constexpr Length kTouch = page::kPt / 3;  // neighbours may share their side bearings

struct Word {
  page::Box box;
  std::string text;
  bool turned = false;
};

Length width_of(const page::TextItem& item, const page::FontSet& fonts) {
  std::int64_t units = 0;
  Length extra = 0;
  std::size_t last = item.glyphs.size();
  while (last > 0 && item.glyphs[last - 1].cluster < item.text.size() && item.text[item.glyphs[last - 1].cluster] == ' ') --last;
  for (std::size_t i = 0; i < last; ++i) {
    units += item.glyphs[i].advance;
    extra += item.glyphs[i].extra;
  }
  return units * item.size / fonts.metrics(item.font).units_per_em + extra;
}

/// Whether nothing of a text leaves ink: blanks of any width (U+00A0, U+2000 to U+200A, U+202F).
bool is_blank(const std::string& text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::string three = text.substr(at, 3);
    if (text[at] == ' ') {
      ++at;
    } else if (text.compare(at, 2, "\xC2\xA0") == 0) {
      at += 2;
    } else if (three == "\xE2\x80\xAF" || (three >= "\xE2\x80\x80" && three <= "\xE2\x80\x8A")) {
      at += 3;
    } else {
      return false;
    }
  }
  return true;
}

std::vector<Word> words_on(const page::Page& page, const page::FontSet& fonts) {
  std::vector<Word> words;
  page::for_each_item(page, [&](const page::Item& item) {
    const auto* text = std::get_if<page::TextItem>(&item.what);
    if (text == nullptr || is_blank(text->text)) return;
    const Length width = width_of(*text, fonts);
    if (width <= 0) return;
    const Length up = text->size / 2;
    page::Box box{text->at.x, text->at.y - up, text->at.x + width, text->at.y};
    if (text->quarter_turns == 1) box = {text->at.x, text->at.y, text->at.x + up, text->at.y + width};
    if (text->quarter_turns == 3) box = {text->at.x - up, text->at.y - width, text->at.x, text->at.y};
    words.push_back({box, text->text, text->quarter_turns != 0});
  });
  return words;
}

bool overlap(const page::Box& one, const page::Box& other) {
  return std::min(one.right, other.right) - std::max(one.left, other.left) > kTouch &&
         std::min(one.bottom, other.bottom) - std::max(one.top, other.top) > kTouch;
}

bool within(const page::Box& box, const page::Box& area) {
  return box.left >= area.left - kTouch && box.right <= area.right + kTouch && box.top >= area.top && box.bottom <= area.bottom;
}

/// The areas for words on a page.
std::vector<page::Box> areas_of(const page::Paper& paper, bool recto) {
  const Length block = recto ? paper.inner : paper.width - paper.inner - paper.block_width;
  const Length left = block;
  const Length right = block + paper.block_width;
  const Length foot = paper.block_top + paper.block_height;
  const Length tab = page::from_mm(10);
  return {{left, 0, right, paper.head_rule},
          {left, paper.block_top, right, foot},
          {left, foot, right, paper.height - paper.folio + page::kPt},
          {recto ? paper.width - tab : 0, paper.block_top, recto ? paper.width : tab, foot}};
}

void find_overlaps(const std::string& where, std::vector<Word> words, std::vector<std::string>& faults) {
  std::sort(words.begin(), words.end(), [](const Word& one, const Word& other) { return one.box.top < other.box.top; });
  for (std::size_t i = 0; i < words.size(); ++i) {
    for (std::size_t j = i + 1; j < words.size() && words[j].box.top < words[i].box.bottom; ++j) {
      if (overlap(words[i].box, words[j].box))
        faults.push_back(where + "'" + words[i].text + "' and '" + words[j].text + "' overlap");
    }
  }
}

}  // namespace

std::vector<std::string> box_faults(const page::Document& document, const page::FontSet& fonts, const page::Paper& paper) {
  std::vector<std::string> faults;
  for (std::size_t number = 0; number < document.pages.size(); ++number) {
    const page::Page& page = document.pages[number];
    const std::string where = paper.name + " page " + page.label + ": ";
    const std::vector<Word> words = words_on(page, fonts);
    find_overlaps(where, words, faults);
    if (number == 0) continue;
    const std::vector<page::Box> areas = areas_of(paper, number % 2 == 0);
    for (const Word& word : words) {
      const auto holds = [&word](const page::Box& area) { return within(word.box, area); };
      if (std::none_of(areas.begin(), areas.end(), holds)) faults.push_back(where + "'" + word.text + "' stands in the margin");
    }
  }
  return faults;
}

}  // namespace benchleaf::test
