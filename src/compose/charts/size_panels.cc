// In: cells and their sizes. Out: the way in by size: lay the cell on its ring, read along its height.
#include <algorithm>
#include <array>
#include <utility>

#include "compose/charts/panels.h"
#include "compose/entry_maker.h"
#include "compose/figures/cell_drawing.h"
#include "compose/line.h"

namespace benchleaf::compose {

namespace {

/// Where a cell stands in the row of its size.
enum Place { silver_low, silver_high, bench_test, lithium, other, kPlaces };

/// Heads of the columns that have a cell at all.
constexpr std::array<const char*, kPlaces> kHeads = {"low", "high", "test only", "3\u2009V", "other"};

/// Where no record answers: a gap would read as a number that was left out.
constexpr const char* kNoneOnFile = "\u2013";

using Row = std::array<model::Runs, kPlaces>;

Place place_of(const model::Cell& cell) {
  if (is_lithium(cell)) return lithium;
  if (cell.system == "alkaline") return bench_test;
  if (cell.system != "silver-oxide") return other;
  return cell.drain == model::Drain::low ? silver_low : cell.drain == model::Drain::high ? silver_high : other;
}

/// `SR754` of SR754SW: what names the size and the system.
std::string size_name(const model::Cell& cell) {
  const std::size_t end = cell.designation.find_last_of("0123456789");
  return end == std::string::npos ? cell.designation : cell.designation.substr(0, end + 1);
}

bool holds(const model::References& list, const std::string& reference) {
  return std::find(list.begin(), list.end(), reference) != list.end();
}

/// One size: its cells by place, and what they are called.
struct Size {
  const model::Cell* first = nullptr;
  Row row;
  model::Runs name;
};

/// How much of a size is said.
enum class Detail {
  numbers,  ///< what it is sold as
  charges,  ///< what each cell holds besides, and the short name of the size
};

std::string system_words(const model::Cell& cell) {
  return cell.system == "mercuric-oxide" ? "mercury" : plain_words(cell.system);
}

model::Run line_break() {
  model::Run run;
  run.kind = model::Run::Kind::line_break;
  return run;
}

/// An alkaline cell is bought by its consumer number; everything else by the number of its entry.
const std::string& number_of(const model::Cell& cell) {
  return cell.system == "alkaline" && !cell.consumer_number.empty() ? cell.consumer_number : cell_key(cell);
}

void say_charge(const Desk& desk, const model::Cell& cell, model::Runs& runs) {
  const model::Fact* charge = desk.fact(cell, "capacity");
  if (charge == nullptr) return;
  if (is_lithium(cell)) {
    runs.push_back(model::text_run("\u2002"));
    runs.push_back(model::fact_run(*charge, model::Style::caption));
  } else {
    runs.push_back(line_break());
    runs.push_back(figure_run(*charge, model::Style::caption));
  }
  mark_doubt(desk, runs, cell, "capacity");
}

/// `SR754` of SR754SW, `SR48` small below it.
model::Runs size_names(const model::Cell& cell, Detail detail) {
  const std::string size = size_name(cell);
  model::Runs names{model::text_run(size, model::Style::one_line)};
  if (detail == Detail::charges && !cell.short_form.empty() && cell.short_form != size) {
    names.push_back(line_break());
    names.push_back(model::text_run(cell.short_form, model::Style::caption));
  }
  return names;
}

void say_cell(const Desk& desk, Size& size, const model::Cell& cell, Detail detail) {
  if (size.first == nullptr) size.first = &cell;
  const Place place = place_of(cell);
  model::Runs& runs = size.row[static_cast<std::size_t>(place)];
  if (!runs.empty()) runs.push_back(place == other || detail == Detail::charges ? line_break() : model::text_run(" "));
  // A designation without a number is wider than the numbers and is found in the column of sizes.
  const bool numbered = place == lithium || !cell.trade_number.empty() || !cell.consumer_number.empty();
  runs.push_back(model::text_run(number_of(cell), numbered ? model::Style::number : model::Style::bold));
  if (place == other) runs.push_back(model::text_run("\u00A0" + system_words(cell)));
  if (detail == Detail::charges) say_charge(desk, cell, runs);
  if (place < bench_test && size.name.empty()) size.name = size_names(cell, detail);
}

/// Whether a row shows the cell. A list names the sizes by one of their cells; a cell that fits the size is then never left out,
/// or its blank place would read as "does not exist". What is no drop-in is shown where it is named.
bool is_shown(const model::Cell& cell, const model::References& list) {
  if (list.empty() || is_lithium(cell) || holds(list, cell.reference())) return true;
  return cell.status != model::CellStatus::withdrawn && (cell.system == "silver-oxide" || cell.system == "alkaline");
}

std::vector<Size> sizes_of(const Desk& desk, const Wanted& wanted, bool of_lithium, Detail detail) {
  const auto& list = wanted.records;
  std::vector<Size> sizes;
  for (const derive::SizeFamily& family : desk.derived.relations.sizes()) {
    if (!list.empty() &&
        std::none_of(family.cells.begin(), family.cells.end(), [&list](const auto& one) { return holds(list, one); }))
      continue;
    Size size;
    for (const std::string& reference : family.cells) {
      const model::Cell* cell = desk.cell(reference);
      if (cell != nullptr && is_lithium(*cell) == of_lithium && is_shown(*cell, list)) say_cell(desk, size, *cell, detail);
    }
    if (size.first != nullptr && desk.fact(*size.first, "size.diameter") != nullptr) sizes.push_back(std::move(size));
  }
  return sizes;
}

/// The plan of a cell with little paper round it, so that columns stand close.
constexpr double kRoundRingMm = 0.3;
constexpr double kGapMm = 1.0;

model::TableCell ring(const model::Fact& across) {
  model::TableCell cell;
  cell.runs = {figure_run(across, model::Style::look_up)};
  cell.drawing = cell_outline(across, kRoundRingMm);
  cell.hangs = true;
  return cell;
}

class SizeTable {
 public:
  /// Lithium cells are wide and flat: beside their names a section has no room and tells little.
  SizeTable(const Desk& desk, const std::vector<Size>& sizes) : desk_(desk), sections_(!is_lithium(*sizes.front().first)) {
    for (const Size& size : sizes) {
      names_ = names_ || !size.name.empty();
      for (std::size_t place = 0; place < kPlaces; ++place) used_[place] = used_[place] || !size.row[place].empty();
    }
  }

  model::Table make(const std::vector<Size>& sizes) const {
    model::Table table;
    table.gap_mm = kGapMm;
    table.columns = {column("across", model::Column::Align::left, true), column("height", model::Column::Align::left, true)};
    if (sections_) table.columns.push_back(column({}));
    if (names_) table.columns.push_back(column("size"));
    for (std::size_t place = 0; place < kPlaces; ++place) {
      if (used_[place]) table.columns.push_back(column(kHeads[place]));
    }
    std::string last;
    for (const Size& size : sizes) {
      const model::Fact& across = *desk_.fact(*size.first, "size.diameter");
      if (!table.rows.empty()) table.rows.back().joins_next = across.printed == last;
      table.rows.push_back(row(size, across.printed == last ? model::TableCell{} : ring(across)));
      last = across.printed;
    }
    return table;
  }

 private:
  model::TableRow row(const Size& size, model::TableCell first) const {
    model::TableRow row;
    row.cells.push_back(std::move(first));
    model::Runs high;
    if (const model::Fact* fact = desk_.fact(*size.first, "size.height"))
      high = {figure_run(*fact, model::Style::look_up | model::Style::one_line)};
    mark_doubt(desk_, high, *size.first, "size.height");
    row.cells.push_back(cell(std::move(high)));
    if (sections_) row.cells.push_back({{}, cell_section(desk_, *size.first), false});
    if (names_) row.cells.push_back(cell(size.name));
    for (std::size_t place = 0; place < kPlaces; ++place) {
      if (used_[place]) row.cells.push_back(cell(apart(size.row[place], static_cast<Place>(place))));
    }
    return row;
  }

  /// Where all columns are used, their numbers stand close: what is no drop-in for its neighbour keeps away from it.
  model::Runs apart(const model::Runs& numbers, Place place) const {
    if (numbers.empty() && place < lithium) return {model::text_run(kNoneOnFile)};
    if (!used_[other] || (place != bench_test && place != other)) return numbers;
    const model::Run space = model::text_run("\u2002");
    model::Runs runs;
    for (const model::Run& run : numbers) {
      if (runs.empty()) runs.push_back(space);
      runs.push_back(run);
      if (run.kind == model::Run::Kind::line_break) runs.push_back(space);
    }
    return runs;
  }

  const Desk& desk_;
  std::array<bool, kPlaces> used_{};
  bool sections_ = true;
  bool names_ = false;
};

PanelBlocks sized(const Desk& desk, const Wanted& wanted, bool of_lithium, Detail detail) {
  const std::vector<Size> sizes = sizes_of(desk, wanted, of_lithium, detail);
  if (sizes.empty()) return {};
  return {SizeTable(desk, sizes).make(sizes)};
}

}  // namespace

PanelBlocks cell_sizes(const Desk& desk, const Wanted& wanted) { return sized(desk, wanted, false, Detail::numbers); }

PanelBlocks cell_charges(const Desk& desk, const Wanted& wanted) { return sized(desk, wanted, false, Detail::charges); }

PanelBlocks lithium_sizes(const Desk& desk, const Wanted& wanted) { return sized(desk, wanted, true, Detail::numbers); }

PanelBlocks lithium_charges(const Desk& desk, const Wanted& wanted) { return sized(desk, wanted, true, Detail::charges); }

}  // namespace benchleaf::compose
