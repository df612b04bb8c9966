#pragma once

extern "C" {

/// Answers `NAME`, then `key=value` a line, with tables and figures in their line formats; an empty request with the list of
/// calculators. `json` not 0: as JSON, else as text. The caller frees the answer.
char* benchleaf_reckon(const char* lines, const char* request, int json);
}
