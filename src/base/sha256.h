#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace benchleaf::base {

/// SHA-256 by FIPS 180-4, over bytes added piece by piece.
class Sha256 {
 public:
  void add(std::string_view bytes);
  /// The digest as 64 lower-case hexadecimal digits; nothing may be added afterwards.
  std::string finish();

 private:
  void block(const unsigned char* bytes);

  std::array<std::uint32_t, 8> state_ = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                         0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
  std::array<unsigned char, 64> pending_{};
  std::size_t pending_size_ = 0;
  std::uint64_t length_ = 0;  ///< bytes added
};

/// The digest of one text.
std::string sha256(std::string_view bytes);

}  // namespace benchleaf::base
