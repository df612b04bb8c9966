#pragma once

#include "page/fill.h"
#include "page/front.h"
#include "page/setting.h"

namespace benchleaf::page {

/// Puts the page numbers into the slots of a stack; what a number leaves of its slot is taken up by the line, which
/// breaks where it did. A slot whose place is nowhere is a finding.
void fill_slots(Setting& setting, const PageNumbers& numbers, PageStack& stack);

}  // namespace benchleaf::page
