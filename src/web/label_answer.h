#pragma once

#include <string>

#include "compose/desk.h"
#include "query/bench_names.h"

namespace benchleaf::web {

/// Labels as JSON. The request has `orders`, each with the words of label::OrderWords by the names thing, part, name, ph, flash,
/// boiling, date, copies; `start`; and `grid`, or paper, label, pitch, corner, columns, rows of a sheet of one's own.
///   {refusal: {field, reason, hint}}, or {refusal: null, paper, larger, wide, high, side, end, most, least, step, count, first,
///   labels: [{order, title, sheet, place, left, top, scale, full, brief}]}
/// Lengths in mm, type in pt, from the corner of the sheet. `full` and `brief` are the label in HTML; the largest type is taken
/// at which `full` has room within `side` and `end` of its edges, else `brief`; where there is none, `larger` names grids to
/// take.
std::string answer_labels(const compose::Desk& desk, const query::BenchNames& names, const model::Node& request);

}  // namespace benchleaf::web
