#pragma once

#include <hb.h>

#include <array>
#include <memory>
#include <string>
#include <vector>

#include "page/text/fonts.h"

namespace benchleaf::page {

inline constexpr int kFaceCount = 10;

struct FontCloser {
  void operator()(hb_font_t* font) const { hb_font_destroy(font); }
  void operator()(hb_face_t* face) const { hb_face_destroy(face); }
  void operator()(hb_blob_t* blob) const { hb_blob_destroy(blob); }
  void operator()(hb_buffer_t* buffer) const { hb_buffer_destroy(buffer); }
};
template <class T>
using HarfBuzz = std::unique_ptr<T, FontCloser>;

/// One open font. Pointed to, never moved: HarfBuzz reads `bytes` in place.
struct OpenFont {
  std::string bytes;
  HarfBuzz<hb_face_t> face;
  HarfBuzz<hb_font_t> font;  ///< scaled to font units
  FontMetrics metrics;
  bool even_figures = false;  ///< figures are of one width without being asked to
};

struct FontSet::Impl {
  std::vector<std::unique_ptr<OpenFont>> fonts;
  std::array<FontIndex, kFaceCount> index{};  ///< by Face; -1 where no file came
  bool complete = false;
};

}  // namespace benchleaf::page
