#pragma once

#include <cstddef>
#include <functional>

namespace benchleaf::read {

/// Calls `work` once for each index below `count`, on two threads where the system gives a second one. `work` must touch
/// nothing that belongs to another index; what it throws, the caller gets when both threads are done.
void on_two_threads(std::size_t count, const std::function<void(std::size_t)>& work);

}  // namespace benchleaf::read
