#pragma once

#include <functional>
#include <optional>
#include <string>

#include "base/span.h"
#include "compose/desk.h"
#include "model/records/page.h"

namespace benchleaf::compose {

/// Why a fenced block `bench` cannot be made.
struct BlockFault {
  base::Span where;  ///< of the line at fault
  std::string message;
  std::string hint;
};

/// A key that a block does not take, a key that it lacks, a name that nothing has, an answer that a calculator refuses.
std::optional<BlockFault> block_fault(const Desk& desk, const model::Page& page, const model::DerivedRequest& request);

/// The first row of a block that cannot be made even alone, or the block where each row can. `is_made` tries a block.
BlockFault unmade_block(const model::DerivedRequest& request, const std::function<bool(const model::DerivedRequest&)>& is_made);

}  // namespace benchleaf::compose
