// In: the text items of all pages. Out: which glyphs of which font are used, and the one text that each will stand for in
// the file. A glyph that stands for two texts (the hyphen also for U+00AD) keeps the commoner one.
#include "pdf/glyph_texts.h"

#include <algorithm>
#include <utility>

#include "page/packed.h"

namespace benchleaf::pdf {

namespace {

void add_sign(std::vector<page::SignItem>& signs, const page::SignItem& sign) {
  const auto same = [&sign](const page::SignItem& known) { return known.trust == sign.trust && known.derived == sign.derived; };
  if (std::none_of(signs.begin(), signs.end(), same)) signs.push_back(sign);
}

}  // namespace

Cluster cluster_at(const page::TextItem& item, std::size_t first) {
  Cluster cluster;
  cluster.first = first;
  cluster.last = first + 1;
  const std::size_t begin = item.glyphs.at(first).cluster;
  while (cluster.last < item.glyphs.size() && item.glyphs.at(cluster.last).cluster == begin) ++cluster.last;
  const std::size_t end = cluster.last < item.glyphs.size() ? item.glyphs.at(cluster.last).cluster : item.text.size();
  const std::string_view text = item.text;
  if (begin < end && end <= text.size()) cluster.text = text.substr(begin, end - begin);
  return cluster;
}

void FontTexts::note(std::uint32_t glyph, std::string_view text, bool counts) {
  if (glyph >= glyphs_.size()) glyphs_.resize(glyph + 1);
  std::vector<Reading>& readings = glyphs_.at(glyph);
  auto reading = std::find_if(readings.begin(), readings.end(), [text](const Reading& known) { return known.text == text; });
  if (reading == readings.end()) reading = readings.insert(readings.end(), {std::string(text), 0});
  if (counts) ++reading->count;
  const auto before = [](const Reading& a, const Reading& b) { return a.count != b.count ? a.count > b.count : a.text < b.text; };
  while (reading != readings.begin() && before(*reading, *(reading - 1))) {
    std::swap(*reading, *(reading - 1));
    --reading;
  }
}

const std::string& FontTexts::text_of(std::uint32_t glyph) const {
  static const std::string none;
  return glyph < glyphs_.size() && !glyphs_.at(glyph).empty() ? glyphs_.at(glyph).front().text : none;
}

std::vector<std::uint32_t> FontTexts::used() const {
  std::vector<std::uint32_t> glyphs;
  for (std::size_t i = 0; i < glyphs_.size(); ++i) {
    if (!glyphs_.at(i).empty()) glyphs.push_back(static_cast<std::uint32_t>(i));
  }
  return glyphs;
}

Shown gather_shown(const page::Document& document, int fonts) {
  Shown shown;
  std::vector<FontTexts>& texts = shown.texts;
  texts.resize(static_cast<std::size_t>(fonts));
  for (const page::Page& page : document.pages) {
    page::for_each_item(page, [&](const page::Item& item) {
      if (const auto* sign = std::get_if<page::SignItem>(&item.what)) add_sign(shown.signs, *sign);
      const page::TextItem* text = std::get_if<page::TextItem>(&item.what);
      if (text == nullptr) return;
      FontTexts& font = texts.at(static_cast<std::size_t>(text->font));
      for (std::size_t first = 0; first < text->glyphs.size();) {
        const Cluster cluster = cluster_at(*text, first);
        const bool alone = cluster.last - cluster.first == 1 && !cluster.text.empty();
        for (; first < cluster.last; ++first) font.note(text->glyphs.at(first).id, cluster.text, alone);
      }
    });
  }
  return shown;
}

}  // namespace benchleaf::pdf
