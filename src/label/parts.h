#pragma once

#include <string>

#include "label/labels.h"

namespace benchleaf::label {

/// `Bought June 2025`, or the word and a blank to write on where the date is not known.
model::Runs dated(std::string word, const std::string& date);
/// A line of plain words.
model::Runs line_of(std::string words, model::Style style = model::Style::plain);

/// A label for the bottle of a liquid.
model::Label bottle_of(const compose::Desk& desk, const model::Chemistry& liquid, const Thing& thing,
                       const model::LabelRoom& room);
/// A label for a bag of cells.
model::Label cell_bag(const compose::Desk& desk, const model::Cell& cell, const Thing& thing, const model::LabelRoom& room);
model::Label gasket_bag(const compose::Desk& desk, const model::Gasket& series, const Thing& thing, const model::LabelRoom& room);
model::Label crystal_bag(const compose::Desk& desk, const model::Crystal& crystal, const Thing& thing,
                         const model::LabelRoom& room);
model::Label abrasive_bag(const compose::Desk& desk, const model::Abrasive& abrasive, const Thing& thing);
/// A watch that others take parts from.
model::Label donor_bag(const compose::Desk& desk, const model::Watch& watch);
/// Anything else that lies in a drawer.
model::Label plain_bag(const compose::Desk& desk, const model::Record& record, const Thing& thing);

/// A figure without its unit: `7.9`; empty where the record does not state it in millimetres.
std::string figure_mm(const std::optional<base::Quantity>& quantity);

}  // namespace benchleaf::label
