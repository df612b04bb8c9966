// In: from the page's script: the tables as lines, and a request. Out: the answer as text, in memory that the script frees.

#include "bench/web_entry.h"

#include <cstdlib>
#include <cstring>
#include <string>

#include "bench/request.h"

char* benchleaf_reckon(const char* lines, const char* request, int json) {
  using benchleaf::bench::Form;
  const std::string answer = benchleaf::bench::answer_request(lines, request, json != 0 ? Form::json : Form::text);
  void* memory = std::malloc(answer.size() + 1);
  if (memory == nullptr) return nullptr;
  std::memcpy(memory, answer.c_str(), answer.size() + 1);
  return static_cast<char*>(memory);
}
