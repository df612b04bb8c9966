#pragma once

extern "C" {

/// Answers `NAME`, then `key=value` a line, with tables in their line format. The caller frees the text.
char* benchleaf_reckon(const char* lines, const char* request);
}
