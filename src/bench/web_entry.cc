// In: from the page's script: the tables and figures as lines, then requests. Out: the answers as text, in memory that the
// script frees.

#include "bench/web_entry.h"

#include <cstdlib>
#include <cstring>
#include <memory>
#include <string>

#include "bench/request.h"

using benchleaf::bench::Form;
using benchleaf::bench::Library;

Library* benchleaf_open(const char* lines) { return std::make_unique<Library>(benchleaf::bench::read_library(lines)).release(); }

char* benchleaf_reckon(const Library* library, const char* request, int json) {
  const std::string answer = benchleaf::bench::answer_request(*library, request, json != 0 ? Form::json : Form::text);
  void* memory = std::malloc(answer.size() + 1);
  if (memory == nullptr) return nullptr;
  std::memcpy(memory, answer.c_str(), answer.size() + 1);
  return static_cast<char*>(memory);
}

void benchleaf_close(Library* library) { std::unique_ptr<Library>(library).reset(); }
