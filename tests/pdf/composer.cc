// In: words and places. Out: a display list. The text is shaped by HarfBuzz itself.
#include "composer.h"

#include <hb.h>

#include <fstream>
#include <iterator>
#include <map>
#include <memory>
#include <stdexcept>
#include <utility>

namespace benchleaf::pdf {

namespace {

std::string read_file(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  if (!stream) throw std::runtime_error("a test needs the file " + path);
  return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

/// `role: path` of each entry of schema/fonts.yaml; what is no font has its key as its role, `profile`.
std::map<std::string, std::string> font_paths() {
  std::ifstream lines("schema/fonts.yaml");
  std::map<std::string, std::string> paths;
  std::string role;
  for (std::string line; std::getline(lines, line);) {
    const auto value_of = [&line](std::string_view key) {
      const std::size_t at = line.find(key);
      return at == std::string::npos ? std::string() : line.substr(at + key.size());
    };
    if (line == "hyphenation:" || line == "profile:") role = line.substr(0, line.size() - 1);
    if (const std::string name = value_of("- role: "); !name.empty()) role = name;
    if (const std::string path = value_of(" path: "); !path.empty()) paths[role] = path;
  }
  return paths;
}

template <auto destroy>
struct Release {
  template <typename Handle>
  void operator()(Handle* handle) const {
    destroy(handle);
  }
};

std::vector<page::Glyph> shape(const std::string& font_bytes, const std::string& text) {
  const std::unique_ptr<hb_blob_t, Release<hb_blob_destroy>> blob(
      hb_blob_create(font_bytes.data(), static_cast<unsigned>(font_bytes.size()), HB_MEMORY_MODE_READONLY, nullptr, nullptr));
  const std::unique_ptr<hb_face_t, Release<hb_face_destroy>> face(hb_face_create(blob.get(), 0));
  const std::unique_ptr<hb_font_t, Release<hb_font_destroy>> font(hb_font_create(face.get()));
  const std::unique_ptr<hb_buffer_t, Release<hb_buffer_destroy>> buffer(hb_buffer_create());
  hb_buffer_add_utf8(buffer.get(), text.data(), static_cast<int>(text.size()), 0, static_cast<int>(text.size()));
  hb_buffer_guess_segment_properties(buffer.get());
  hb_shape(font.get(), buffer.get(), nullptr, 0);
  unsigned count = 0;
  const hb_glyph_info_t* infos = hb_buffer_get_glyph_infos(buffer.get(), &count);
  const hb_glyph_position_t* positions = hb_buffer_get_glyph_positions(buffer.get(), &count);
  std::vector<page::Glyph> glyphs(count);
  for (unsigned i = 0; i < count; ++i) {
    glyphs[i] = {infos[i].codepoint, positions[i].x_advance, positions[i].x_offset, positions[i].y_offset, 0, infos[i].cluster};
  }
  return glyphs;
}

}  // namespace

page::FontSet open_test_fonts() {
  std::vector<page::FontFile> files;
  for (const auto& [role, path] : font_paths()) {
    if (const auto face = page::face_named(role)) files.push_back({*face, path, read_file(path), {}});
  }
  report::Findings findings;
  page::FontSet fonts = page::FontSet::open(std::move(files), findings);
  if (!fonts.complete()) throw std::runtime_error("a test needs the fonts that schema/fonts.yaml names");
  return fonts;
}

std::string read_test_profile() { return read_file(font_paths().at("profile")); }

Composer::Composer(const page::FontSet& fonts) : fonts_(fonts) {
  document.title = "A trial of µ and ≥";
  document.subject = "Invented pages";
  document.language = "en-GB";
  document.iso_date = "2026-11-01";
  document.tags.push_back({});
  document.tags.front().role = page::Role::document;
}

int Composer::add_page(std::string label) {
  page::Page page;
  page.width = 595'276;
  page.height = 841'890;
  page.label = std::move(label);
  document.pages.push_back(std::move(page));
  return static_cast<int>(document.pages.size()) - 1;
}

page::TagId Composer::add_tag(page::Role role, page::TagId parent) {
  page::Tag tag;
  tag.role = role;
  tag.parent = parent;
  document.tags.push_back(std::move(tag));
  return static_cast<page::TagId>(document.tags.size()) - 1;
}

page::TextItem& Composer::add_text(int page, page::TagId tag, page::Point at, const std::string& text, const Style& style) {
  page::TextItem item;
  item.font = fonts_.index(style.face);
  item.size = style.size;
  item.at = at;
  item.color = style.color;
  item.quarter_turns = style.quarter_turns;
  item.text = text;
  item.glyphs = shape(fonts_.bytes(item.font), text);
  this->page(page).items.push_back({tag, std::move(item)});
  return std::get<page::TextItem>(this->page(page).items.back().what);
}

page::TextItem& Composer::add_text(int page, page::TagId tag, page::Point at, const std::string& text) {
  return add_text(page, tag, at, text, Style{});
}

void Composer::add_path(int page, page::TagId tag, page::PathItem path) {
  this->page(page).items.push_back({tag, std::move(path)});
}

void Composer::add_rectangle(int page, page::TagId tag, const page::Box& box, page::Color fill) {
  using Op = page::PathSegment::Op;
  page::PathItem path;
  path.segments = {{Op::move, {box.left, box.top}, {}, {}},
                   {Op::line, {box.right, box.top}, {}, {}},
                   {Op::line, {box.right, box.bottom}, {}, {}},
                   {Op::line, {box.left, box.bottom}, {}, {}},
                   {Op::close, {}, {}, {}}};
  path.fill = fill;
  add_path(page, tag, std::move(path));
}

double width_of(const page::TextItem& item, const page::FontSet& fonts) {
  double width = 0;
  for (const page::Glyph& glyph : item.glyphs) {
    width += static_cast<double>(glyph.advance) * static_cast<double>(item.size) / fonts.metrics(item.font).units_per_em;
    width += static_cast<double>(glyph.extra);
  }
  return width;
}

}  // namespace benchleaf::pdf
