#pragma once

#include <cstddef>
#include <cstdint>

namespace benchleaf::test {

/// Numbers that are the same in every run and on every machine (xorshift).
class Draw {
 public:
  explicit Draw(std::uint64_t seed = 0x393754) : state_(seed) {}

  std::size_t below(std::size_t most) {
    state_ ^= state_ << 13;
    state_ ^= state_ >> 7;
    state_ ^= state_ << 17;
    return static_cast<std::size_t>(state_ % most);
  }

  template <typename List>
  auto& one_of(List& list) {
    return list.at(below(list.size()));
  }

 private:
  std::uint64_t state_;
};

}  // namespace benchleaf::test
