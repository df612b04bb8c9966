// In: independent pieces of work. Out: all of them done. Results are joined by index, so the order of work shows nowhere.
#include "read/two_threads.h"

#include <atomic>
#include <system_error>
#include <thread>

namespace benchleaf::read {

void on_two_threads(std::size_t count, const std::function<void(std::size_t)>& work) {
  std::atomic<std::size_t> next{0};
  auto take = [&] {
    for (std::size_t i = next++; i < count; i = next++) work(i);
  };
  std::thread other;
  try {
    if (count > 1) other = std::thread(take);
  } catch (const std::system_error&) {
    // no second thread to be had: the first does it all
  }
  take();
  if (other.joinable()) other.join();
}

}  // namespace benchleaf::read
