// In: small pictures with a few words each. Out: one row of them, all at one scale, standing on one line.
#include <algorithm>
#include <utility>

#include "page/drawing.h"
#include "page/sheet/panel.h"
#include "page/words.h"

namespace benchleaf::page {

namespace {

constexpr double kLeastMm = 17;

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

}  // namespace

Strip set_pictures(Setting& setting, const model::Pictures& row, Length width, TagId parent) {
  if (row.pictures.empty()) return {};
  const Length gap = setting.mm(2.4);
  const std::size_t columns = per_row(setting, row.pictures.size(), width, gap);
  const Length own = (width - gap * (static_cast<Length>(columns) - 1)) / static_cast<Length>(columns);
  double widest_mm = 1;
  for (const auto& picture : row.pictures) widest_mm = std::max(widest_mm, picture.drawing->width_mm);
  const double scale = std::min(setting.scale, static_cast<double>(own) / static_cast<double>(from_mm(widest_mm)));
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
