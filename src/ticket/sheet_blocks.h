#pragma once

#include <memory>
#include <vector>

#include "compose/desk.h"
#include "model/book.h"
#include "ticket/sheets.h"

namespace benchleaf::ticket {

/// What the words of a ticket are set with.
struct LeafletContext {
  const compose::Desk& desk;
  const Bench& bench;
  const Sheets& sheets;
};

model::Block sheet_heading(const SheetSection& section);
/// A line as a block; a caution in full the first time, then as a strip with the page that says all of it.
model::Block line_block(const LeafletContext& context, const SheetLine& line);
model::Block picture_block(std::shared_ptr<const model::Drawing> drawing);
/// Lines one under the other; those of several cells as one table of `columns`.
void add_lines(const LeafletContext& context, const SheetSection& section, std::vector<model::Column> columns,
               model::Blocks& blocks);

}  // namespace benchleaf::ticket
