#pragma once

#include "html/markup.h"
#include "html/setting.h"
#include "model/book.h"

namespace benchleaf::html {

/// Running text: facts as `data`, links, signs, marks. Page numbers are left out; a link without a place becomes text.
Markup set_runs(const model::Runs& runs, Setting& setting);
/// The same without links and names, for text that stands inside a link or is repeated elsewhere.
Markup set_runs_plainly(const model::Runs& runs, Setting& setting);

/// A fact's words as they are typed: `-5.4 mm`, without the spaces that align a column.
std::string plain_value(std::string_view printed);

}  // namespace benchleaf::html
