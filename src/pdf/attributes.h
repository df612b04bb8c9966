#pragma once

#include <map>
#include <string>
#include <string_view>

#include "page/display.h"

namespace benchleaf::pdf {

/// How the items of each list are numbered (`Decimal`, `Disc`, ...), for lists whose items have labels.
using ListNumbering = std::map<page::TagId, std::string_view>;
ListNumbering list_numbering(const page::Document& document);

/// Whether a head cell says which way it heads and nothing else: then it can share its attributes with its like.
bool is_plain_head(const page::Tag& tag);
/// The attributes of plain heads.
std::string scope_attributes(page::Tag::Scope scope);

/// Appends `/A<<...>>` or `/A[<<...>>]` for what the element says beyond its role: head cells, spans, the box of a
/// figure, the numbering of a list.
void append_attributes(std::string& out, const page::Tag& tag, std::string_view numbering, const page::Document& document);

}  // namespace benchleaf::pdf
