// In: lengths that were measured. Out: the cells and the series of gaskets and crystals that have them.
#include <algorithm>
#include <cmath>

#include "base/number.h"
#include "model/knowledge_base.h"
#include "query/cells.h"
#include "query/sizes.h"
#include "standards/cell_code.h"
#include "standards/table_view.h"

namespace benchleaf::query {

namespace {

constexpr double kExact = 0.005;
constexpr model::Profile kCommonProfile = model::Profile::round;  // stands before the others where both fit

std::optional<double> mm_of(const std::optional<base::Quantity>& quantity) {
  if (!quantity || !quantity->has_value()) return std::nullopt;
  const auto found = quantity->in(base::Unit::millimetre);
  return found ? std::optional(base::tidy(found->high)) : std::nullopt;
}

/// By how much a new cell may be smaller than its largest measures.
struct Room {
  double across = 0;
  double high = 0;
  double swelling = 0;
};

Room room_of(const model::Tables& tables) {
  Room room;
  for (const model::CellSizeLimit& limit : tables.cell_size_limits) {
    const auto span = [](const base::Quantity& most, const base::Quantity& least) {
      return most.value_in(base::Unit::millimetre).value_or(0) - least.value_in(base::Unit::millimetre).value_or(0);
    };
    room.across = std::max(room.across, base::tidy(span(limit.diameter_max, limit.diameter_min)));
    room.high = std::max(room.high, base::tidy(span(limit.height_max, limit.height_min)));
  }
  const auto* rule = standards::row_of(tables, "bench-rules", "cell-swelling");
  if (rule != nullptr) room.swelling = standards::cell_value(*rule, "value", base::Unit::millimetre).value_or(0);
  return room;
}

/// How well a measure fits a length of a cell: 0 the same, 1 within what a new one may lack, 2 a little less, in case the cell
/// that was measured has swollen, 3 not at all.
int fit_of(const Measure& measure, double length, double lack, double swelling, double tolerance) {
  const double over = base::tidy(measure.mm - length);
  if (std::abs(over) <= tolerance + measure.slack + kExact) return 0;
  if (over < 0 && -over <= lack + measure.slack) return 1;
  return over > 0 && over <= swelling + measure.slack ? 2 : 3;
}

struct Fitting {
  const model::Cell* cell;
  int fit;
  double apart;
  double across, high;
};

/// A cell and how it fits all that was measured; the worst fit counts.
std::optional<Fitting> fitting(const model::Cell& cell, const std::vector<Measure>& measures, const Room& room) {
  const auto across = mm_of(cell.size.diameter), high = mm_of(cell.size.height);
  if (!across || !high) return std::nullopt;
  Fitting one{&cell, 0, 0, *across, *high};
  for (const Measure& measure : measures) {
    const bool may_be_wide = measure.role != Measure::Role::high, may_be_high = measure.role != Measure::Role::wide;
    const int wide = may_be_wide ? fit_of(measure, *across, room.across, room.swelling, 0) : 3;
    const int tall = may_be_high ? fit_of(measure, *high, room.high, room.swelling, standards::kHeightTolerance) : 3;
    one.fit = std::max(one.fit, std::min(wide, tall));
    one.apart += std::abs(measure.mm - (wide <= tall ? *across : *high));
  }
  return one;
}

std::vector<Fitting> fittings(const std::vector<Measure>& measures, const model::KnowledgeBase& records, const Room& room) {
  std::vector<Fitting> list;
  for (const auto& [id, cell] : records.cells) {
    if (const auto one = fitting(cell, measures, room); one && one->fit < 3) list.push_back(*one);
  }
  return list;
}

bool holds(const model::SizeRange& range, double mm) {
  const auto from = mm_of(range.from), to = mm_of(range.to);
  return from && to && mm >= *from - kExact && mm <= *to + kExact;
}

int fits_gasket(const model::Gasket& gasket, const std::vector<Measure>& measures) {
  int fits = 0;
  for (const Measure& measure : measures) {
    bool section = false;
    for (const auto* length : {&gasket.section, &gasket.wall, &gasket.height}) {
      const auto mm = mm_of(*length);
      section = section || (mm && std::abs(*mm - measure.mm) <= kExact + measure.slack);
    }
    if (section) fits += 2;
    if (!section && holds(gasket.inside, measure.mm)) fits += 1;
  }
  return fits;
}

}  // namespace

CellsOfSize cells_of_size(const std::vector<Measure>& measures, const model::KnowledgeBase& records,
                          const model::Tables& tables) {
  const Room room = room_of(tables);
  std::vector<Fitting> list = fittings(measures, records, room);
  if (measures.size() == 2 && std::none_of(list.begin(), list.end(), [](const auto& one) { return one.fit < 2; })) {
    const std::vector<Measure> turned{{measures[0].role, measures[1].mm, measures[1].slack},
                                      {measures[1].role, measures[0].mm, measures[0].slack}};
    if (std::vector<Fitting> other = fittings(turned, records, room); !other.empty()) list = std::move(other);
  }
  int best = 3;
  for (const Fitting& one : list) best = std::min(best, one.fit);
  std::stable_sort(list.begin(), list.end(), [&tables](const Fitting& one, const Fitting& other) {
    if (one.fit != other.fit) return one.fit < other.fit;
    if (one.fit == 0 && (one.apart <= kExact) != (other.apart <= kExact)) return one.apart <= kExact;
    if (one.fit == 1 && std::abs(one.apart - other.apart) > kExact) return one.apart < other.apart;
    if (one.fit == 2 && one.across != other.across) return one.across > other.across;
    if (one.fit == 2 && one.high != other.high) return one.high > other.high;
    return is_likelier(*one.cell, *other.cell, tables);
  });
  CellsOfSize found;
  for (const Fitting& one : list) (one.fit == best ? found.cells : found.smaller).push_back(one.cell);
  if (best == 0)
    std::erase_if(found.smaller, [&](const model::Cell* cell) {
      return std::any_of(list.begin(), list.end(), [cell](const Fitting& one) { return one.cell == cell && one.fit == 1; });
    });
  return found;
}

std::vector<SeriesOfSize> series_of_size(const std::vector<Measure>& measures, const model::KnowledgeBase& records) {
  std::vector<std::pair<int, SeriesOfSize>> list;
  for (const auto& [id, gasket] : records.gaskets) {
    const int fits = fits_gasket(gasket, measures);
    if (fits > 0) list.emplace_back(gasket.profile == kCommonProfile ? -2 * fits - 1 : -2 * fits, SeriesOfSize{&gasket, fits});
  }
  for (const auto& [id, crystal] : records.crystals) {
    int fits = 0;
    for (const Measure& measure : measures) fits += crystal.sizes && holds(*crystal.sizes, measure.mm) ? 1 : 0;
    if (fits > 0) list.emplace_back(-2 * fits, SeriesOfSize{&crystal, fits});
  }
  std::stable_sort(list.begin(), list.end(), [](const auto& one, const auto& other) { return one.first < other.first; });
  std::vector<SeriesOfSize> found;
  for (const auto& [order, series] : list) found.push_back(series);
  return found;
}

}  // namespace benchleaf::query
