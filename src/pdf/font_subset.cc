// In: a font file and the glyphs in use. Out: the font program to embed. Glyphs are numbered anew: with no gap in the
// numbers every number up to the last is a glyph of the program, which is what a complete CIDSet has to say.
#include "pdf/font_subset.h"

#include <hb-subset.h>

#include <array>
#include <memory>

namespace benchleaf::pdf {

namespace {

/// Layout, names and hints are for programs that set text; PDF asks for glyf, head, hhea, hmtx, loca and maxp.
constexpr std::array kDroppedTables = {
    HB_TAG('B', 'A', 'S', 'E'), HB_TAG('D', 'S', 'I', 'G'), HB_TAG('F', 'F', 'T', 'M'), HB_TAG('G', 'D', 'E', 'F'),
    HB_TAG('G', 'P', 'O', 'S'), HB_TAG('G', 'S', 'U', 'B'), HB_TAG('J', 'S', 'T', 'F'), HB_TAG('L', 'T', 'S', 'H'),
    HB_TAG('O', 'S', '/', '2'), HB_TAG('P', 'C', 'L', 'T'), HB_TAG('V', 'D', 'M', 'X'), HB_TAG('c', 'm', 'a', 'p'),
    HB_TAG('g', 'a', 's', 'p'), HB_TAG('h', 'd', 'm', 'x'), HB_TAG('k', 'e', 'r', 'n'), HB_TAG('m', 'e', 't', 'a'),
    HB_TAG('n', 'a', 'm', 'e'), HB_TAG('p', 'o', 's', 't'), HB_TAG('v', 'h', 'e', 'a'), HB_TAG('v', 'm', 't', 'x')};

template <auto destroy>
struct Release {
  template <typename Handle>
  void operator()(Handle* handle) const {
    destroy(handle);
  }
};
using Blob = std::unique_ptr<hb_blob_t, Release<hb_blob_destroy>>;
using Face = std::unique_ptr<hb_face_t, Release<hb_face_destroy>>;
using Input = std::unique_ptr<hb_subset_input_t, Release<hb_subset_input_destroy>>;
using Plan = std::unique_ptr<hb_subset_plan_t, Release<hb_subset_plan_destroy>>;

Input make_input(const std::vector<std::uint32_t>& glyphs) {
  Input input(hb_subset_input_create_or_fail());
  if (!input) return input;
  hb_set_t* wanted = hb_subset_input_glyph_set(input.get());
  hb_set_add(wanted, 0);
  for (std::uint32_t glyph : glyphs) hb_set_add(wanted, glyph);
  hb_set_t* dropped = hb_subset_input_set(input.get(), HB_SUBSET_SETS_DROP_TABLE_TAG);
  for (hb_tag_t tag : kDroppedTables) hb_set_add(dropped, tag);
  hb_subset_input_set_flags(input.get(), HB_SUBSET_FLAGS_NOTDEF_OUTLINE | HB_SUBSET_FLAGS_NO_HINTING);
  return input;
}

/// The old number of each new glyph, from 0 up to the last.
std::vector<std::uint32_t> old_glyphs(const hb_subset_plan_t* plan) {
  const hb_map_t* old_of = hb_subset_plan_new_to_old_glyph_mapping(plan);
  std::vector<std::uint32_t> glyphs;
  for (std::uint32_t next = 0; hb_map_has(old_of, next); ++next) glyphs.push_back(hb_map_get(old_of, next));
  return glyphs;
}

}  // namespace

FontSubset subset_font(const std::string& font, const std::vector<std::uint32_t>& glyphs) {
  FontSubset subset;
  const Blob whole(hb_blob_create(font.data(), static_cast<unsigned>(font.size()), HB_MEMORY_MODE_READONLY, nullptr, nullptr));
  const Face face(hb_face_create(whole.get(), 0));
  const Input input = make_input(glyphs);
  if (!input) return subset;
  const Plan plan(hb_subset_plan_create_or_fail(face.get(), input.get()));
  if (!plan) return subset;
  const Face reduced(hb_subset_plan_execute_or_fail(plan.get()));
  if (!reduced) return subset;
  const Blob program(hb_face_reference_blob(reduced.get()));
  unsigned size = 0;
  const char* data = hb_blob_get_data(program.get(), &size);
  if (data == nullptr || size == 0) return subset;
  subset.bytes.assign(data, size);
  subset.old_glyphs = old_glyphs(plan.get());
  return subset;
}

}  // namespace benchleaf::pdf
