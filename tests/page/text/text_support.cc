#include "page/text/text_support.h"

#include <fstream>
#include <iterator>
#include <sstream>

namespace benchleaf::test {

namespace {

std::string value_of(const std::string& line, const std::string& key) {
  const std::size_t at = line.find(key + ": ");
  return at == std::string::npos ? std::string() : line.substr(at + key.size() + 2);
}

}  // namespace

std::string file_bytes(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

std::vector<page::FontFile> font_files() {
  std::vector<page::FontFile> files;
  std::istringstream lines(file_bytes("schema/fonts.yaml"));
  std::string role;
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind("hyphenation:", 0) == 0) break;
    if (const std::string found = value_of(line, "role"); !found.empty()) role = found;
    const std::string path = value_of(line, "path");
    const auto face = page::face_named(role);
    if (!path.empty() && face) files.push_back({*face, path.substr(path.rfind('/') + 1), file_bytes(path), {}});
  }
  return files;
}

const page::FontSet& book_fonts() {
  static const page::FontSet kFonts = [] {
    report::Findings findings;
    return page::FontSet::open(font_files(), findings);
  }();
  return kFonts;
}

const page::Hyphenator& book_hyphenator() {
  static const page::Hyphenator kHyphenator = [] {
    report::Findings findings;
    return page::Hyphenator::open(file_bytes("/usr/share/hyphen/hyph_en_GB.dic"), findings);
  }();
  return kHyphenator;
}

std::vector<page::Piece> body(const std::string& text, page::Face face) {
  page::Piece piece;
  piece.text = text;
  piece.style.face = face;
  return {piece};
}

std::string line_text(const page::SetLine& line) {
  std::string text;
  for (const page::PlacedPiece& placed : line.pieces) {
    if (const auto* item = std::get_if<page::TextItem>(&placed.what)) text += item->text;
  }
  return text;
}

double ink_end(const page::SetLine& line) {
  double end = 0;
  for (const page::PlacedPiece& placed : line.pieces) {
    if (const auto* box = std::get_if<page::InlineBox>(&placed.what)) {
      end = static_cast<double>(placed.x + box->width);
      continue;
    }
    const auto& item = std::get<page::TextItem>(placed.what);
    double x = static_cast<double>(item.at.x);
    for (const page::Glyph& glyph : item.glyphs) {
      x += static_cast<double>(glyph.advance) * static_cast<double>(item.size) / book_fonts().metrics(item.font).units_per_em +
           static_cast<double>(glyph.extra);
      if (item.text[glyph.cluster] != ' ') end = x;
    }
  }
  return end;
}

}  // namespace benchleaf::test
