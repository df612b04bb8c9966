// In: lines to fill in. Out: a strip in which every line runs to the edge, its blanks as wide as its words let them be.
#include <algorithm>
#include <utility>

#include "page/drawing.h"
#include "page/sheet/panel.h"
#include "page/words.h"

namespace benchleaf::page {

namespace {

constexpr double kLineMm = 5.4;         // room for a pencil
constexpr double kLeastBlankMm = 8;     // for the shortest blank of a line
constexpr double kPictureShare = 0.26;  // of the width
constexpr double kPictureGapMm = 3;

double in_mm(Length length) { return static_cast<double>(length) / static_cast<double>(from_mm(1)); }

/// Blanks by their shares of what the words leave, a hair less, so that nothing wraps.
model::Runs stretched(Setting& setting, model::Runs runs, const Look& look, Length width) {
  constexpr double kHairMm = 0.4;
  double shares = 0;
  double least = 0;
  model::Runs words = runs;
  for (model::Run& run : words) {
    if (run.kind != model::Run::Kind::blank) continue;
    shares += run.blank_mm;
    least = least == 0 ? run.blank_mm : std::min(least, run.blank_mm);
    run.blank_mm = 0;
  }
  const double left = in_mm(width - Words(setting, words, look, kLayoutArtifact).natural_width(setting)) - kHairMm;
  if (left < 0 || left * least < kLeastBlankMm * shares)
    setting.findings.add(report::Rule::page_too_wide, {},
                         "the line '" + (runs.empty() ? std::string() : runs.front().text) + "' leaves too little room to write",
                         "put some of it on another line");
  if (shares <= 0) return runs;
  for (model::Run& run : runs) {
    if (run.kind == model::Run::Kind::blank) run.blank_mm *= std::max(0.0, left) / shares;
  }
  return runs;
}

}  // namespace

Strip set_fields(Setting& setting, const model::Fields& fields, Length width, TagId parent) {
  const Look look = setting.sized(look::table_cell());
  const Length left =
      fields.picture == nullptr ? 0 : static_cast<Length>(static_cast<double>(width) * kPictureShare) + from_mm(kPictureGapMm);
  const Length step = std::max(from_mm(kLineMm), static_cast<Length>(look.leading_pt * kPt)) + setting.row_air;
  Strip whole;
  for (const model::Runs& line : fields.lines) {
    const Words words(setting, stretched(setting, line, look, width - left), look, setting.add_tag(Role::p, parent));
    Strip set = stacked(words.set(setting, width - left));
    const Length drop = step - std::min(step, set.height);
    overlay(whole, std::move(set), left, whole.height + drop);
    whole.height += step;
  }
  if (fields.picture == nullptr) return whole;
  const double wide = in_mm(left) - kPictureGapMm;
  const double scale = std::min(wide / fields.picture->width_mm, in_mm(whole.height) / fields.picture->height_mm);
  const TagId figure = setting.add_figure(parent, fields.picture->alt);
  for (Item& item : place_drawing(setting, *fields.picture, scale, figure)) whole.items.push_back(std::move(item));
  return whole;
}

}  // namespace benchleaf::page
