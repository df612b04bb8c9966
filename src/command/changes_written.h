#pragma once

#include <string>

#include "compose/changes/changes.h"

namespace benchleaf::command {

/// How much is told of each change. In brief a change is one line, and at most ten are told for each record that was edited;
/// the working adds formulas and causes and leaves nothing out.
enum class Detail { brief, working };

/// What two states say differently, for the terminal: by record, then what is derived, then charts, then a line of counts.
std::string changes_text(const compose::Changes& changes, Detail detail);

/// The same as GFM, for the review of a proposed change: a list a section, nothing in it read as markup.
std::string changes_markdown(const compose::Changes& changes, Detail detail);

/// One JSON object: `same`, `stated` and `derived`, lists of `{of, how, id, before, after, basis, fields, because}`.
std::string changes_json(const compose::Changes& changes);

}  // namespace benchleaf::command
