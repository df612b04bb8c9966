#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/quantity.h"
#include "bench/calculator.h"
#include "compose/desk.h"
#include "model/label_sheet.h"
#include "query/bench_names.h"

namespace benchleaf::label {

/// A record that gets a label. What is not known is a blank on it.
struct Thing {
  model::RecordRef record;
  std::optional<base::Quantity> size;  ///< inside of a gasket, size of a crystal
  std::string grade;                   ///< of an abrasive
  std::string made;                    ///< month of making: `2025-06`
  std::string date;                    ///< bought, or filled
  std::string place;                   ///< where it is kept
};

/// What is mixed at the bench and has no record.
struct Mixture {
  std::string name;
  bench::Inputs inputs;  ///< of mixture-class
  std::string date;      ///< on which it was mixed
};

/// Why there is no label.
struct Refused {
  std::string why;
  std::string hint;        ///< one action, or empty
  bool bad_call = false;   ///< what was typed cannot be read
  std::string field = {};  ///< what of it: thing, size, part, name, date, copies, start, grid or a field of GridWords; or empty
};

using Made = std::variant<model::Label, Refused>;

/// A label for a bag or a drawer, or for the bottle of a liquid.
Made label_of(const compose::Desk& desk, const Thing& thing, const model::LabelRoom& room);
/// A label for the bottle of a mixture: its words and diamonds are those of mixture-class, which may refuse it.
Made label_of(const compose::Desk& desk, const Mixture& mixture, const model::LabelRoom& room);

/// What a drawer holds, in its order; nothing of what has run out.
std::vector<Thing> things_in(const model::Stock& drawer);

/// `393`, `isopropanol`, `round-0-7:28` (inside in mm, or with a unit), `fepa-p:P800`.
std::variant<Thing, Refused> read_thing(const compose::Desk& desk, const query::BenchNames& names, const std::string& words);

/// A grid of the table label-grids by its name.
std::variant<model::LabelGrid, Refused> read_grid(const model::Tables& tables, const std::string& name);

/// A grid that a user describes, in millimetres or in inches.
struct GridWords {
  std::string paper;                 ///< a4, letter
  std::string label, pitch, corner;  ///< `50x30mm`; pitch empty: label against label; corner empty: centred on the paper
  std::string columns, rows;
};
std::variant<model::LabelGrid, Refused> read_grid(const GridWords& words);

/// Names of the grids on file whose labels are larger on both sides.
std::string larger_grids(const model::LabelGrid& grid, const model::Tables& tables);

/// One label, or several alike.
struct Order {
  std::variant<Thing, Mixture> what;
  int copies = 1;
};
/// The same as it is typed.
struct OrderWords {
  std::string thing;                                          ///< as read_thing takes it; or
  std::string parts;                                          ///< of a mixture, as mixture-class takes them
  std::string name;                                           ///< of the mixture
  std::vector<std::pair<std::string, std::string>> measured;  ///< ph, flash, boiling of the mixture
  std::string date, copies = "1";
};
std::variant<Order, Refused> read_order(std::variant<Thing, Mixture> what, const OrderWords& words);  ///< date and copies alone
std::variant<Order, Refused> read_order(const compose::Desk& desk, const query::BenchNames& names, const OrderWords& words);

/// All that was ordered from the place `start` on, counted from 1, or why nothing is printed.
std::variant<model::LabelSheets, Refused> sheets_of(const compose::Desk& desk, model::LabelGrid grid, const std::string& start,
                                                    const std::vector<Order>& orders);

/// A whole number from 1 to `most`, or nothing.
std::optional<int> read_count(const std::string& text, int most);

/// Names of the grids on file.
std::vector<std::string> grid_names(const model::Tables& tables);

}  // namespace benchleaf::label
