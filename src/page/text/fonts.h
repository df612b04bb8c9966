#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "page/display.h"
#include "report/finding.h"

namespace benchleaf::page {

/// The faces that the setters ask for; schema/fonts.yaml says which file each one is.
enum class Face {
  text,
  text_italic,
  text_bold,
  text_bold_italic,
  condensed,
  condensed_italic,
  condensed_bold,
  mono,
  symbol,
  symbol_bold
};

/// `text`, `text-italic`, ... as schema/fonts.yaml names its roles.
std::string_view face_name(Face face);
/// The face of a role, or nothing where no setter asks for that role.
std::optional<Face> face_named(std::string_view role);

/// The bytes of one font file, read by the command; `hash` is its SHA-256 in hex.
struct FontFile {
  Face face = Face::text;
  std::string file;
  std::string bytes;
  std::string hash;
};

/// In font units of `units_per_em`.
struct FontMetrics {
  int units_per_em = 1000;
  int ascent = 0;
  int descent = 0;
  int cap_height = 0;
  int x_height = 0;
  int box[4] = {0, 0, 0, 0};  ///< left, bottom, right, top
  double italic_angle = 0;
  int weight = 400;
  bool fixed_pitch = false;
  std::string postscript_name;
};

/// The open fonts of a run: shaping, glyph look-up with a fallback to the symbol face per code point, and the data that
/// an embedding writer needs. Built once, then only read.
class FontSet {
 public:
  /// Opens the files; a file that is not a usable TrueType font is a finding and the set is then not complete().
  static FontSet open(std::vector<FontFile> files, report::Findings& findings);
  FontSet(FontSet&&) noexcept;
  FontSet& operator=(FontSet&&) noexcept;
  ~FontSet();

  bool complete() const;
  int size() const;  ///< number of fonts; a FontIndex is below it
  FontIndex index(Face face) const;
  const FontMetrics& metrics(FontIndex font) const;
  const std::string& bytes(FontIndex font) const;                   ///< the whole font file
  std::int32_t advance(FontIndex font, std::uint32_t glyph) const;  ///< unkerned, font units
  /// The glyph of a code point, 0 if the font lacks it.
  std::uint32_t glyph(FontIndex font, char32_t code) const;

  struct Impl;
  const Impl& impl() const { return *impl_; }

 private:
  explicit FontSet(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf::page
