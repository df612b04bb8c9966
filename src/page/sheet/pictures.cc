// In: small pictures with a few words each. Out: one row of them, all at one scale, standing on one line.
#include <algorithm>
#include <utility>

#include "page/drawing.h"
#include "page/sheet/panel.h"
#include "page/words.h"

namespace benchleaf::page {

namespace {

constexpr double kLeastMm = 17;
constexpr double kTrueSizeGapMm = 2.5;
/// How much larger pictures become with the air that rows get.
constexpr double kAirToScaleMm = 10;

/// As many to a row as stay wide enough for their words; the rows as even as can be.
std::size_t per_row(const Setting& setting, std::size_t count, Length width, Length gap) {
  const auto most = static_cast<std::size_t>(std::max<Length>(1, (width + gap) / (setting.mm(kLeastMm) + gap)));
  const std::size_t rows = (count + most - 1) / most;
  return (count + rows - 1) / rows;
}

Strip picture_strip(Setting& setting, const model::Pictures::Picture& picture, double scale, Length tallest, Length width,
                    TagId parent) {
  const TagId group = setting.add_tag(Role::div, parent);
  const TagId figure = setting.add_figure(group, picture.drawing->alt);
  Strip whole;
  for (Item& item : place_drawing(setting, *picture.drawing, scale, figure)) {
    shift(item, 0, tallest - from_mm(picture.drawing->height_mm * scale));
    whole.items.push_back(std::move(item));
  }
  Strip words = stacked(set_paragraph(setting, picture.words, setting.sized(look::table_cell()), width, group, 0));
  const Length top = tallest + setting.mm(0.8);
  whole.height = top + words.height;
  overlay(whole, std::move(words), 0, top);
  return whole;
}

void refuse_width(Setting& setting, const model::Drawing& drawing, Length over) {
  setting.findings.add(report::Rule::page_too_wide, {},
                       "\"" + drawing.alt + "\" is wider than its column by " + std::to_string(over / from_mm(1) + 1) + " mm",
                       "make the panel wide: what is laid on is never scaled");
}

/// How many of them stand in each row: as many rows as they need, the rows as even as can be.
std::size_t true_size_per_row(const model::Pictures& row, Length width) {
  std::size_t rows = 1;
  Length left = 0;
  for (const auto& picture : row.pictures) {
    const Length own = from_mm(picture.drawing->width_mm);
    if (left > 0 && left + own > width) left = 0, ++rows;
    left += own + from_mm(kTrueSizeGapMm);
  }
  return (row.pictures.size() + rows - 1) / rows;
}

/// What things are laid on, each at its own size, spread over the width.
Strip set_true_size(Setting& setting, const model::Pictures& row, Length width, TagId parent) {
  const std::size_t each = true_size_per_row(row, width);
  Strip whole;
  Length widest = 0;
  for (const auto& picture : row.pictures) widest = std::max(widest, from_mm(picture.drawing->width_mm));
  if (widest > width) refuse_width(setting, *row.pictures.front().drawing, widest - width);
  const auto gaps = static_cast<Length>(each - 1);
  const Length step = gaps > 0 ? std::max(from_mm(1), (width - widest) / gaps) : 0;
  Length top = 0;
  for (std::size_t i = 0; i < row.pictures.size(); ++i) {
    const model::Drawing& drawing = *row.pictures[i].drawing;
    if (i > 0 && i % each == 0) top = whole.height + from_mm(kTrueSizeGapMm) + setting.row_air;
    const TagId figure = setting.add_figure(parent, drawing.alt);
    for (Item& item : place_drawing(setting, drawing, 1, figure)) {
      shift(item, step * static_cast<Length>(i % each), top);
      whole.items.push_back(std::move(item));
    }
    whole.height = std::max(whole.height, top + from_mm(drawing.height_mm));
  }
  whole.true_size = true;
  return whole;
}

}  // namespace

Strip set_pictures(Setting& setting, const model::Pictures& row, Length width, TagId parent) {
  if (row.pictures.empty()) return {};
  if (row.pictures.front().drawing->true_size) return set_true_size(setting, row, width, parent);
  const Length gap = setting.mm(2.4);
  const std::size_t columns = per_row(setting, row.pictures.size(), width, gap);
  const Length own = (width - gap * (static_cast<Length>(columns) - 1)) / static_cast<Length>(columns);
  double widest_mm = 1;
  for (const auto& picture : row.pictures) widest_mm = std::max(widest_mm, picture.drawing->width_mm);
  const double wish = setting.scale + static_cast<double>(setting.row_air) / static_cast<double>(from_mm(kAirToScaleMm));
  const double scale = std::min(wish, static_cast<double>(own) / static_cast<double>(from_mm(widest_mm)));
  Length tallest = 0;
  for (const auto& picture : row.pictures) tallest = std::max(tallest, from_mm(picture.drawing->height_mm * scale));
  Strip whole;
  Length top = 0;
  for (std::size_t i = 0; i < row.pictures.size(); ++i) {
    if (i > 0 && i % columns == 0) top = whole.height + setting.mm(1.6);
    Strip strip = picture_strip(setting, row.pictures[i], scale, tallest, own, parent);
    whole.height = std::max(whole.height, top + strip.height);
    overlay(whole, std::move(strip), static_cast<Length>(i % columns) * (own + gap), top);
  }
  return whole;
}

}  // namespace benchleaf::page
