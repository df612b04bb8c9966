// In: an answer. Out: the same as the page's script takes it.
#include "web/c_text.h"

#include <cstdlib>
#include <cstring>

namespace benchleaf::web {

char* c_text(const std::string& text) {
  void* memory = std::malloc(text.size() + 1);
  if (memory == nullptr) return nullptr;
  std::memcpy(memory, text.c_str(), text.size() + 1);
  return static_cast<char*>(memory);
}

}  // namespace benchleaf::web
