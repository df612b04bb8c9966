#pragma once

#include <utility>

#include "read/decode.h"

namespace benchleaf::read {

/// What decoding the fields of a record needs: which values to leave alone, and the records that its references mean.
inline DecodeContext context_of(const std::vector<std::string>& unusable, const std::vector<model::Reference>& references) {
  DecodeContext context{unusable, {}};
  for (const model::Reference& reference : references) {
    if (!reference.target.empty()) context.targets.emplace(reference.path, reference.target);
  }
  return context;
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
