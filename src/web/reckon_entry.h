#pragma once

namespace benchleaf::bench {
struct Library;
}

extern "C" {

/// Reads tables and figures in their line formats, once for all answers; closed with `benchleaf_close`.
benchleaf::bench::Library* benchleaf_open(const char* lines);
/// Answers `NAME`, then `key=value` a line; an empty request with the list of calculators. `json` not 0: as JSON, else as
/// text. The caller frees the answer.
char* benchleaf_reckon(const benchleaf::bench::Library* library, const char* request, int json);
void benchleaf_close(benchleaf::bench::Library* library);
}
