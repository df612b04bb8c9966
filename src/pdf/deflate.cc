// In: bytes. Out: a zlib stream of them, the same for the same zlib.
#include "pdf/deflate.h"

#include <zlib.h>

namespace benchleaf::pdf {

namespace {

constexpr int kLevel = 4;

}  // namespace

std::string deflated(std::string_view bytes) {
  uLongf size = compressBound(static_cast<uLong>(bytes.size()));
  std::string packed(size, '\0');
  // With a buffer of compressBound bytes the call can fail only for want of memory.
  const int result = compress2(reinterpret_cast<Bytef*>(packed.data()), &size, reinterpret_cast<const Bytef*>(bytes.data()),
                               static_cast<uLong>(bytes.size()), kLevel);
  packed.resize(result == Z_OK ? size : 0);
  return packed;
}

}  // namespace benchleaf::pdf
