#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "model/knowledge_base.h"
#include "model/node.h"

namespace benchleaf::compose {

/// The name under which something is known in the later state.
using Named = std::function<std::string(const std::string&)>;

/// A record as it is compared.
struct Told {
  std::string reference;                  ///< `cell/sr754w`, or `handbook`
  const model::Record* record = nullptr;  ///< none for handbook.yaml
  model::Node tree;
};

/// What a record says, whoever wrote it down how: text on one line, references as `kind/id`, the prose of a page as the member
/// `body`; without its id and without what it says of its provenance, which `basis_words` tells.
/// `named` gives the later name of a record or a fact that is referred to.
Told told(const model::Record& record, const Named& named);
Told told(const model::Handbook& handbook, const Named& named);

/// What the value at a path rests on: `handbook, battery-handbook, table 4.9a, as of 2026`; empty where it states nothing.
std::string basis_words(const model::Record& record, std::string_view path);

/// A value and all below it in one line: `value: 80 mAh; load: not stated`.
std::string flat_text(const model::Node& node);
/// The same with the keys in order, to be compared.
std::string sorted_text(const model::Node& node);

}  // namespace benchleaf::compose
