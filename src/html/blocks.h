#pragma once

#include <memory>
#include <span>
#include <vector>

#include "html/markup.h"
#include "html/setting.h"
#include "model/book.h"

namespace benchleaf::html {

/// Blocks in order. Steps that follow each other become one numbered list, with each message inside the step it guards;
/// entries become lines of a register that lead to their own pages, short ones stand in full.
Markup set_blocks(std::span<const model::Block> blocks, Setting& setting);
Markup set_blocks(const std::vector<std::shared_ptr<const model::Block>>& blocks, Setting& setting);

/// A heading of the page at the wanted level, or one below the last heading if that would leave a level out.
Element heading_element(int wanted_level, Setting& setting);

/// Gives a heading that nothing leads to a name, and makes it a part of the page.
void add_part(Element& heading, Setting& setting);

/// The headings of a page that is longer than three screens of a telephone, as links; nothing on a shorter one.
Markup own_contents(const Markup& content, const Setting& setting);

}  // namespace benchleaf::html
