#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "page/display.h"

namespace benchleaf::pdf {

/// By tag: how the items of a list are numbered (`Decimal`, `Disc`, ...), for lists whose items have labels; else empty.
std::vector<std::string_view> list_numbering(const page::Document& document);

/// Appends ` /A <<...>>` or ` /A [<<...>>]` for what the element says beyond its role: head cells, spans, the box of a
/// figure, the numbering of a list.
void append_attributes(std::string& out, const page::Tag& tag, std::string_view numbering, const page::Document& document);

}  // namespace benchleaf::pdf
