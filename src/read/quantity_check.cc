// In: the text of a value and the dimensions it may have. Out: what is wrong with it, at the characters at fault.
#include "read/quantity_check.h"

#include <algorithm>
#include <utility>

#include "base/utf8.h"

namespace benchleaf::read {

namespace {

using base::QuantityFault;
using report::Rule;

Rule rule_of(QuantityFault fault) {
  switch (fault) {
    case QuantityFault::number:
    case QuantityFault::grouping: return Rule::quantity_number;
    case QuantityFault::spacing: return Rule::quantity_spacing;
    case QuantityFault::missing_unit:
    case QuantityFault::unknown_unit:
    case QuantityFault::mixed_units: return Rule::quantity_unit;
    case QuantityFault::range_form:
    case QuantityFault::range_order: return Rule::quantity_range;
    case QuantityFault::tolerance_form: return Rule::quantity_tolerance;
    case QuantityFault::empty:
    case QuantityFault::qualifier:
    case QuantityFault::state_word: return Rule::quantity_words;
    case QuantityFault::wrong_dimension: return Rule::quantity_dimension;
    case QuantityFault::negative: return Rule::quantity_negative;
  }
  return Rule::quantity_words;
}

/// The part of the value's span that is at fault; the whole of it where the text is not written out in one piece.
base::Span part_of(const model::Node& node, int offset, int length) {
  const int size = static_cast<int>(base::count_code_points(node.text));
  const int quotes = node.quoted ? 2 : 0;
  if (node.span.length != size + quotes || length <= 0) return node.span;
  base::Span span = node.span;
  span.column += quotes / 2 + std::min(offset, size);
  span.length = std::min(length, size - std::min(offset, size));
  return span;
}

}  // namespace

std::variant<base::Quantity, QuantityFinding> read_quantity(const model::Node& node,
                                                            const std::vector<base::Dimension>& dimensions) {
  auto parsed = base::parse_quantity(node.text, dimensions);
  auto* error = std::get_if<base::QuantityError>(&parsed);
  if (error == nullptr) return std::move(std::get<base::Quantity>(parsed));
  return QuantityFinding{rule_of(error->fault), part_of(node, error->offset, error->length), std::move(error->message),
                         std::move(error->hint)};
}

}  // namespace benchleaf::read
