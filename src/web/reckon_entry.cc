// In: from the page's script: the tables and figures as lines, then requests. Out: the answers as text, in memory that the
// script frees.

#include "web/reckon_entry.h"

#include <memory>

#include "bench/request.h"
#include "web/c_text.h"

using benchleaf::bench::Form;
using benchleaf::bench::Library;

Library* benchleaf_open(const char* lines) { return std::make_unique<Library>(benchleaf::bench::read_library(lines)).release(); }

char* benchleaf_reckon(const Library* library, const char* request, int json) {
  return benchleaf::web::c_text(benchleaf::bench::answer_request(*library, request, json != 0 ? Form::json : Form::text));
}

void benchleaf_close(Library* library) { std::unique_ptr<Library>(library).reset(); }
