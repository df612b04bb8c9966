// In: words, rules, drawings and where they stand. Out: items of a page, all of them pagination artifacts.
#include "page/pen.h"

#include <algorithm>
#include <string>
#include <utility>

#include "model/signs.h"
#include "page/drawing.h"
#include "page/words.h"

namespace benchleaf::page {

void Pen::add(Item item) {
  item.tag = kPaginationArtifact;
  page_.items.push_back(std::move(item));
}

void Pen::rule_at(Length left, Length y, Length right, double thickness, model::Ink ink) {
  add(rule(left, y, right - left, thickness, print_color(ink)));
}

void Pen::fill(Box box, model::Ink ink) { add(ground(box, print_color(ink))); }

Length Pen::words(const model::Runs& runs, const Look& look, Length x, Length baseline, From from) {
  const Words set(setting_, runs, look, kPaginationArtifact);
  const Length width = set.natural_width(setting_);
  Strip strip = stacked(set.set(setting_, width + kPt, Look::Flush::left));
  Length own = 0;
  for (const Item& item : strip.items) {
    if (const auto* text = std::get_if<TextItem>(&item.what)) own = std::max(own, text->at.y);
  }
  shift(strip, from == From::left ? x : x - width, baseline - own);
  for (Item& item : strip.items) add(std::move(item));
  return width;
}

Length Pen::width(const model::Runs& runs, const Look& look) {
  return Words(setting_, runs, look, kPaginationArtifact).natural_width(setting_);
}

void Pen::turned(std::string_view text, const Look& look, Point at, int quarter_turns) {
  PlainLine line = set_plain(setting_, text, look, kPaginationArtifact);
  turn(line, at, quarter_turns);
  for (Item& item : line.items) add(std::move(item));
}

void Pen::drawing(const model::Drawing& drawing, double scale, Length x, Length y) {
  for (Item& item : place_drawing(setting_, drawing, scale, kPaginationArtifact)) {
    shift(item, x, y);
    add(std::move(item));
  }
}

void Pen::path(const model::PathShape& shape, Length x, Length y) {
  Item item{kPaginationArtifact, place_path(shape, 1)};
  shift(item, x, y);
  add(std::move(item));
}

void Pen::check_bar(Length left, Length y) {
  rule_at(left, y, left + from_mm(100), 0.5, model::Ink::ink);
  for (int mm = 0; mm <= 100; mm += 5) {
    model::PathShape tick = model::line({0, 0}, {0, mm % 10 == 0 ? -2.2 : -1.2});
    tick.stroke = model::Ink::ink;
    tick.stroke_mm = 0.14;
    path(tick, left + from_mm(mm), y);
  }
}

Length Pen::legend(Box box, const Look& look, const std::vector<model::Trust>& trusts, bool derived) {
  std::vector<model::Runs> lines;
  for (const model::Trust trust : trusts) {
    lines.push_back({model::trust_run(trust, false), model::text_run("\u2009 " + std::string(model::trust_legend(trust)))});
  }
  if (derived) {
    lines.push_back(
        {model::trust_run(model::Trust::memory, true), model::text_run("\u2009 " + std::string(model::derived_legend()))});
  }
  Length x = box.left;
  Length baseline = box.top + static_cast<Length>(look.size_pt * 0.85 * kPt);
  for (const model::Runs& runs : lines) {
    const Length wide = width(runs, look);
    if (x > box.left && x + wide > box.right) {
      x = box.left;
      baseline += look.leading();
    }
    words(runs, look, x, baseline, From::left);
    x += wide + from_mm(5);
  }
  return baseline;
}

std::vector<model::Trust> all_trusts() {
  using model::Trust;
  return {Trust::standard, Trust::handbook, Trust::dataset, Trust::trade, Trust::memory, Trust::invented};
}

}  // namespace benchleaf::page
