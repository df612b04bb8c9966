#pragma once

namespace benchleaf::web {
class Program;
}

extern "C" {

/// Opens the program on the lines of `benchleaf::web::page_lines`, once for all requests.
benchleaf::web::Program* benchleaf_open(const char* lines);
/// Answers a request, see web/program.h; the text holds until the next one.
const char* benchleaf_answer(benchleaf::web::Program* program, const char* request);
}
