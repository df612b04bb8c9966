#pragma once

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// A page of prose to blocks: its title as a section, its lead, its parts one level deeper, its derived blocks made. Links
/// get their page in print, links to facts without words print the fact. With `opens_chapter` the title is the chapter's.
model::Blocks page_blocks(const Desk& desk, const model::Page& page, bool opens_chapter);

/// What a derived block asks for: `show: message` with `record`, `show: published-table` with `table`,
/// `show: size-finder`, `show: trust-signs`, `show: pictures` (picture_table.h), or `show: reckoned` (derive/page_answers.h).
/// Nothing known: a finding.
model::Blocks derived_blocks(const Desk& desk, const model::Page& page, const model::DerivedRequest& request);

/// The signs of trust with their words.
model::Block trust_legend();

}  // namespace benchleaf::compose
