#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "base/quantity.h"
#include "model/knowledge_base.h"
#include "model/node.h"
#include "prove/proof.h"

namespace benchleaf::prove {

/// The nominal of a stated quantity in a unit, tidied; nothing where the field is unusable, absent or states no value.
std::optional<double> stated_value(const model::Record& record, std::string_view path,
                                   const std::optional<base::Quantity>& quantity, base::Unit unit);

/// A text as a quantity that states a value; nothing for any other.
std::optional<base::Quantity> quantity_in(std::string_view text);
/// The same of a value of a record, which may be missing.
std::optional<base::Quantity> quantity_in(const model::Node* node);

/// The quantity as the terminal shows it.
std::string shown(const std::optional<base::Quantity>& quantity);

/// A figure with its unit as the terminal shows it.
std::string shown(double value, base::Unit unit);

/// Whether the record states a disagreement about the field or about what it is part of.
bool has_conflict(const model::Record& record, std::string_view field);

/// Calls `visit(path, node)` for every usable scalar of the record below its provenance, in file order.
void visit_scalars(const model::Record& record, const std::function<void(const std::string&, const model::Node&)>& visit);

/// A path with every place in a list as `*`: `steps.2.with.0` as `steps.*.with.*`.
std::string field_of(std::string_view path);

/// The text as lower case with every run of other signs than letters and digits as one space.
std::string plain_words(std::string_view text);

/// The record of a kind behind a reference `kind/id`, or nullptr.
const model::Record* record_of(const Proof& proof, model::Kind kind, const model::RecordRef& reference);

/// The share of a part of a liquid in per cent, whichever of the three kinds it is; nothing where none is stated.
std::optional<base::Interval> percent_of(const model::Chemistry& liquid, std::size_t part);

/// Whether the book is one to look for gaps in: an excerpt of a chapter leaves out what stands in the others.
bool is_whole_book(const Proof& proof);

/// `did you mean NEAREST?`, or empty.
std::string did_you_mean(const std::string& nearest);

}  // namespace benchleaf::prove
