// In: independent pieces of work. Out: all of them done. Results are joined by index, so the order of work shows nowhere.
#include "read/two_threads.h"

#include <atomic>
#include <exception>
#include <functional>
#include <system_error>
#include <thread>

namespace benchleaf::read {

void on_two_threads(std::size_t count, const std::function<void(std::size_t)>& work) {
  std::atomic<std::size_t> next{0};
  // What a thread throws would end the program: each keeps its own, and the caller gets it when both are done.
  auto take = [&](std::exception_ptr& thrown) {
    try {
      for (std::size_t i = next++; i < count; i = next++) work(i);
    } catch (...) {
      thrown = std::current_exception();
      next = count;
    }
  };
  std::exception_ptr first, second;
  std::thread other;
  try {
    if (count > 1) other = std::thread(take, std::ref(second));
  } catch (const std::system_error&) {
    // no second thread to be had: the first does it all
  }
  take(first);
  if (other.joinable()) other.join();
  for (const std::exception_ptr& thrown : {first, second}) {
    if (thrown) std::rethrow_exception(thrown);
  }
}

}  // namespace benchleaf::read
