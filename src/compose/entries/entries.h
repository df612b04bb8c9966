#pragma once

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// One record to its entry; each kind says what its reader asks first.
model::Entry make_entry(const Desk& desk, const model::Cell& cell);
model::Entry make_entry(const Desk& desk, const model::Module& module);
model::Entry make_entry(const Desk& desk, const model::Gasket& gasket);
model::Entry make_entry(const Desk& desk, const model::Crystal& crystal);
model::Entry make_entry(const Desk& desk, const model::Material& material);
model::Entry make_entry(const Desk& desk, const model::Part& part);
model::Entry make_entry(const Desk& desk, const model::Tool& tool);
model::Entry make_entry(const Desk& desk, const model::Substance& substance);
model::Entry make_entry(const Desk& desk, const model::Residue& residue);
model::Entry make_entry(const Desk& desk, const model::Chemistry& chemistry);
model::Entry make_entry(const Desk& desk, const model::Abrasive& abrasive);
model::Entry make_entry(const Desk& desk, const model::Caution& caution);
model::Entry make_entry(const Desk& desk, const model::Procedure& procedure);
model::Entry make_entry(const Desk& desk, const model::Symptom& symptom);
model::Entry make_entry(const Desk& desk, const model::Term& term);
model::Entry make_entry(const Desk& desk, const model::Source& source);
model::Entry make_entry(const Desk& desk, const model::Chart& chart);
model::Entry make_entry(const Desk& desk, const model::Watch& watch);
model::Entry make_entry(const Desk& desk, const model::Stock& stock);

}  // namespace benchleaf::compose
