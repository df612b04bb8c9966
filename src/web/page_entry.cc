// In: from the page's script: the lines of its data, then requests. Out: the answers as text.
#include "web/page_entry.h"

#include <memory>
#include <string>

#include "web/program.h"

using benchleaf::web::Program;

Program* benchleaf_open(const char* lines) { return std::make_unique<Program>(lines).release(); }

const char* benchleaf_answer(Program* program, const char* request) {
  static std::string answer;
  answer = program->answer(request);
  return answer.c_str();
}
