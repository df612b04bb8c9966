// The corpus of one fuzz target, and inputs that once broke it, replayed as an ordinary test: FUZZ_TARGET names it. Each
// must come back; what must hold of any input stands in the target itself.

#include "support/catch.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "fuzz/property.h"

namespace fs = std::filesystem;

namespace {

int replay(const fs::path& folder) {
  int count = 0;
  if (!fs::exists(folder)) return count;
  for (const auto& entry : fs::directory_iterator(folder)) {
    std::ifstream in(entry.path(), std::ios::binary);
    const std::string bytes(std::istreambuf_iterator<char>(in), {});
    INFO(entry.path().string());
    CHECK(LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()) == 0);
    ++count;
  }
  return count;
}

}  // namespace

TEST_CASE("the corpus and past crashers of " FUZZ_TARGET) {
  CHECK(replay("tests/fuzz/corpus/" FUZZ_TARGET) >= 5);
  replay("tests/fuzz/crashers/" FUZZ_TARGET);
}
