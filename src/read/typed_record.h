#pragma once

#include <utility>

#include "read/decode.h"
#include "read/shape.h"

namespace benchleaf::read {

/// What decoding the fields of a record needs: which values to leave alone, and the records that its references mean.
inline DecodeContext context_of(const std::vector<std::string>& unusable, const std::vector<model::ReferencePlace>& references) {
  DecodeContext context{unusable, {}};
  for (const model::ReferencePlace& reference : references) {
    if (!reference.target.empty()) context.targets.emplace(reference.path, reference.target);
  }
  return context;
}

/// Leaves each quantity with its node in the tree of the record, where field and fact find it.
inline void keep_quantities(std::vector<FoundQuantity> quantities, model::Record& frame) {
  for (FoundQuantity& one : quantities) {
    if (model::Node* node = frame.root.at_path(one.path)) node->quantity = std::move(one.value);
    frame.quantity_paths.push_back(std::move(one.path));
  }
}

/// The typed record of a tree with its references resolved: all but the body of a page.
template <typename RecordType>
RecordType typed_record(model::Record frame) {
  RecordType record;
  static_cast<model::Record&>(record) = std::move(frame);
  const DecodeContext context = context_of(record.unusable, record.references);
  const Fields fields(record.root, {}, context);
  record.span = fields.span("id");
  decode_common(fields, context, record);
  decode(fields, record);
  return record;
}

}  // namespace benchleaf::read
