// Work on two threads: each piece once, and an exception that reaches the caller instead of ending the program. House rule.

#include "support/catch.h"

#include <atomic>
#include <new>
#include <vector>

#include "read/two_threads.h"

using benchleaf::read::on_two_threads;

TEST_CASE("each piece is done once") {
  std::vector<int> done(1000, 0);
  on_two_threads(done.size(), [&done](std::size_t i) { ++done[i]; });
  CHECK(done == std::vector<int>(1000, 1));
  on_two_threads(0, [](std::size_t) { FAIL("no piece, no call"); });
}

TEST_CASE("what a piece throws, the caller gets, on whichever thread it was") {
  for (std::size_t thrower = 0; thrower < 8; ++thrower) {
    INFO("piece " << thrower);
    std::atomic<int> begun{0};
    CHECK_THROWS_AS(on_two_threads(8,
                                   [&](std::size_t i) {
                                     ++begun;
                                     if (i == thrower) throw std::bad_alloc();
                                   }),
                    std::bad_alloc);
    CHECK(begun >= 1);
  }
  CHECK_THROWS_AS(on_two_threads(2, [](std::size_t) { throw std::bad_alloc(); }), std::bad_alloc);
}
