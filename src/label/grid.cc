// In: the name of a grid, or its measures as typed. Out: where its labels lie.
#include <cmath>
#include <utility>

#include "base/id.h"
#include "base/number.h"
#include "base/unit.h"
#include "label/labels.h"
#include "model/paper_size.h"
#include "standards/table_view.h"

namespace benchleaf::label {

namespace {

constexpr double kLeastWidthMm = 20;
constexpr double kLeastHeightMm = 12;
constexpr int kMostInARow = 40;
constexpr double kSlackMm = 0.05;  // what rounded inches may come short

Refused refused(std::string why, std::string hint, const char* field) { return {std::move(why), std::move(hint), true, field}; }

/// `70x37`, `70x37mm`, `2.625x1in`: two lengths in millimetres.
std::optional<std::pair<double, double>> read_pair(std::string text) {
  double unit = 1;
  if (text.ends_with("mm")) {
    text.resize(text.size() - 2);
  } else if (text.ends_with("in")) {
    text.resize(text.size() - 2);
    unit = base::kMillimetresPerInch;
  }
  const std::size_t times = text.find('x');
  if (times == std::string::npos) return std::nullopt;
  const auto first = base::parse_decimal(text.substr(0, times));
  const auto second = base::parse_decimal(text.substr(times + 1));
  if (!first || !second || *first < 0 || *second < 0) return std::nullopt;
  return std::pair(*first * unit, *second * unit);
}

std::string mm(double length) { return base::fixed_text(length, 1, base::Trailing::cut); }

/// Puts the labels in the middle of their paper.
void centre(model::LabelGrid& grid, const model::PaperSize& paper) {
  grid.left_mm = (paper.width_mm - (grid.columns - 1) * grid.across_mm - grid.width_mm) / 2;
  grid.top_mm = (paper.height_mm - (grid.rows - 1) * grid.down_mm - grid.height_mm) / 2;
}

std::variant<model::LabelGrid, Refused> checked(model::LabelGrid grid, const model::PaperSize& paper) {
  if (grid.width_mm < kLeastWidthMm || grid.height_mm < kLeastHeightMm)
    return refused("a label of " + mm(grid.width_mm) + " x " + mm(grid.height_mm) + " mm is too small to be read",
                   "20 x 12 mm is the smallest", "label");
  if (grid.across_mm < grid.width_mm - kSlackMm || grid.down_mm < grid.height_mm - kSlackMm)
    return refused("labels of " + mm(grid.width_mm) + " x " + mm(grid.height_mm) + " mm lie over each other at a pitch of " +
                       mm(grid.across_mm) + " x " + mm(grid.down_mm) + " mm",
                   "measure from the corner of one label to that of the next", "pitch");
  const model::Mm last = grid.corner(grid.count() - 1);
  if (grid.left_mm < -kSlackMm || grid.top_mm < -kSlackMm || last.x + grid.width_mm > paper.width_mm + kSlackMm ||
      last.y + grid.height_mm > paper.height_mm + kSlackMm)
    return refused(std::to_string(grid.columns) + " x " + std::to_string(grid.rows) + " labels of " + mm(grid.width_mm) + " x " +
                       mm(grid.height_mm) + " mm do not fit on " + std::string(paper.title),
                   "count and measure the labels of the sheet", "columns");
  const model::LabelRoom room = model::room_of(grid);
  if (room.width_mm < kLeastWidthMm / 2 || room.height_mm < kLeastHeightMm / 2)
    return refused("these labels lie too near the edge of the paper to be printed on", {}, "label");
  return grid;
}

}  // namespace

std::string larger_grids(const model::LabelGrid& grid, const model::Tables& tables) {
  std::vector<std::string> names;
  for (const std::string& name : grid_names(tables)) {
    const auto other = read_grid(tables, name);
    const auto* one = std::get_if<model::LabelGrid>(&other);
    if (one != nullptr && one->width_mm > grid.width_mm && one->height_mm > grid.height_mm) names.push_back(name);
  }
  return compose::listed(names, " or ");
}

std::optional<int> read_count(const std::string& text, int most) {
  const auto count = base::parse_decimal(text);
  if (!count || *count < 1 || *count > most || *count != std::floor(*count)) return std::nullopt;
  return static_cast<int>(*count);
}

std::vector<std::string> grid_names(const model::Tables& tables) {
  std::vector<std::string> names;
  for (const auto& row : standards::rows_of(tables, "label-grids")) names.push_back(row.key);
  return names;
}

std::variant<model::LabelGrid, Refused> read_grid(const model::Tables& tables, const std::string& name) {
  const auto* row = standards::row_of(tables, "label-grids", name);
  if (row == nullptr) {
    const std::string nearest = base::nearest_word(name, grid_names(tables));
    return refused("there is no grid " + name,
                   nearest.empty() ? "grids are " + compose::listed(grid_names(tables)) + "; describe another with --label"
                                   : "did you mean " + nearest + "?",
                   "grid");
  }
  const model::PaperSize* paper = model::paper_size(standards::cell_text(*row, "paper"));
  const auto columns = read_count(standards::cell_text(*row, "columns"), kMostInARow);
  const auto rows = read_count(standards::cell_text(*row, "rows"), kMostInARow);
  const auto length = [row](const char* column) {
    return standards::cell_value(*row, column, base::Unit::millimetre).value_or(0);
  };
  if (paper == nullptr || !columns || !rows)
    return refused("the table label-grids has no paper or no count for " + name, {}, "grid");
  model::LabelGrid grid{name, std::string(paper->name), *columns,      *rows, length("width"), length("height"), 0,
                        0,    length("across"),         length("down")};
  centre(grid, *paper);
  return checked(std::move(grid), *paper);
}

std::variant<model::LabelGrid, Refused> read_grid(const GridWords& words) {
  const model::PaperSize* paper = model::paper_size(words.paper.empty() ? "a4" : words.paper);
  if (paper == nullptr || !paper->small) return refused("labels are printed on a4 or letter, not on " + words.paper, {}, "paper");
  const auto label = read_pair(words.label);
  if (!label) return refused("'" + words.label + "' is not a label size", "write width and height, like 50x30 or 2x1in", "label");
  const auto pitch = words.pitch.empty() ? label : read_pair(words.pitch);
  if (!pitch) return refused("'" + words.pitch + "' is not a pitch", "write it across and down, like 52.5x30", "pitch");
  const auto columns = read_count(words.columns, kMostInARow);
  const auto rows = read_count(words.rows, kMostInARow);
  if (!columns || !rows)
    return refused("columns and rows are whole numbers from 1 to " + std::to_string(kMostInARow), {},
                   columns ? "rows" : "columns");
  const auto corner = read_pair(words.corner);
  if (!words.corner.empty() && !corner)
    return refused("'" + words.corner + "' is not a corner", "write how far the first label lies from left and top, like 7.2x15",
                   "corner");
  model::LabelGrid grid{words.label,  std::string(paper->name), *columns, *rows, label->first, label->second, 0, 0, pitch->first,
                        pitch->second};
  centre(grid, *paper);
  if (corner) grid.left_mm = corner->first, grid.top_mm = corner->second;
  return checked(std::move(grid), *paper);
}

}  // namespace benchleaf::label
