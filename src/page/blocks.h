#pragma once

#include <span>

#include "model/book.h"
#include "page/setting.h"

namespace benchleaf::page {

/// Sets blocks one after the other into the target's galley.
void set_blocks(Setting& setting, const model::Blocks& blocks, Target& target);
void set_block(Setting& setting, const model::Block& block, Target& target);
/// The same for block `at`, in columns where it goes with others like it: prose, lists, short entries, small tables.
void set_in_columns(Setting& setting, std::span<const model::Block* const> blocks, std::size_t at, Target& target);

/// Between the columns of a table that does not say otherwise.
inline constexpr double kColumnGapMm = 2.4;

/// The kinds that need a file of their own.
void set_table(Setting& setting, const model::Table& table, Target& target);
void set_message(Setting& setting, const model::Message& message, Target& target);
/// A message in its frame, at least `least` high where the word stands above the words.
Strip message_strip(Setting& setting, const model::Message& message, Length width, TagId parent, Length least);
void set_entry(Setting& setting, const model::Entry& entry, Target& target);
void set_step(Setting& setting, const model::Step& step, Target& target);

/// The galley of blocks set into a narrower place of their own, under `parent`.
Galley set_apart(Setting& setting, const std::vector<std::shared_ptr<const model::Block>>& blocks, Length width, TagId parent,
                 int heading_level, bool beside_key = true);

}  // namespace benchleaf::page
