#pragma once

#include "model/fact.h"

namespace benchleaf::model {
struct KnowledgeBase;
struct Tables;
}  // namespace benchleaf::model

namespace benchleaf::derive {

/// What the calculators answer about each record when it is asked what a bench asks of it, as derived facts
/// `RECORD#CALCULATOR.ASKED.OUTPUT`; a refusal is the output `refused`. The handbook prints none of them, so they stand in no
/// facts.jsonl: they are there to be held against those of another state of the content.
///   cell      cell-swap: what goes in its place
///   module    cell-life with each of its cells, months
///   gasket    gasket-fit on a seat as large as the largest inside of the series, mm
///   watch     gasket-fit on its seat, mm; scratch-ladder for its scratch, mm
///   residue   crust-dose of the usual crust by each liquid that answers it, swabs and mL
///   chemistry fumes of the usual spill, L
///   material  crystal-thickness of a free disc of the usual span under a thumb, mm
model::FactBase usual_answers(const model::KnowledgeBase& base, const model::Tables& tables);

}  // namespace benchleaf::derive
