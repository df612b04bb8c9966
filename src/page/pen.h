#pragma once

#include <string_view>
#include <vector>

#include "model/book.h"
#include "page/setting.h"

namespace benchleaf::page {

/// Draws on a page what no reader is told: running matter, legends, bars, guides.
class Pen {
 public:
  enum class From { left, right };

  Pen(Setting& setting, Page& page) : setting_(setting), page_(page) {}

  void rule_at(Length left, Length y, Length right, double thickness, model::Ink ink);
  void fill(Box box, model::Ink ink);
  /// Words from `x` to the right, or ending at `x`; gives their width.
  Length words(const model::Runs& runs, const Look& look, Length x, Length baseline, From from);
  Length width(const model::Runs& runs, const Look& look);
  /// Words turned to run down (1) or up (3) the page.
  void turned(std::string_view text, const Look& look, Point at, int quarter_turns);
  void drawing(const model::Drawing& drawing, double scale, Length x, Length y);
  void path(const model::PathShape& shape, Length x, Length y);
  /// 100 mm between the end ticks, every ten a longer tick, standing on `y`.
  void check_bar(Length left, Length y);
  /// What the trust signs say, in as many lines as the box takes; gives the lower end of the last.
  Length legend(Box box, const Look& look, const std::vector<model::Trust>& trusts, bool derived = true);

 private:
  void add(Item item);

  Setting& setting_;
  Page& page_;
};

/// Every level, the strongest first.
std::vector<model::Trust> all_trusts();

}  // namespace benchleaf::page
