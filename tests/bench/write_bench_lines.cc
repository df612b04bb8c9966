// In: the folders of schema and content. Out: tables and figures of records in their line formats, as the page holds them.

#include <cstdio>
#include <filesystem>

#include "bench/figure_lines.h"
#include "derive/bench_figures.h"
#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/shapes.h"
#include "read/table_reader.h"
#include "standards/table_lines.h"

int main(int argc, char** argv) {
  using namespace benchleaf;
  if (argc != 3) return 2;
  base::FileTable files;
  report::Findings findings;
  const test::DiskFiles schema(argv[1]);
  const auto shapes = read::load_shapes(schema, files, findings);
  const auto tables = read::read_tables(schema, shapes, files, findings);
  const auto base = read::read_content(test::DiskFiles(argv[2]), shapes, files, findings);
  std::fputs(standards::table_lines(tables.published).c_str(), stdout);
  std::fputs(bench::figure_lines(derive::bench_figures(base, tables)).c_str(), stdout);
  return findings.has_errors() ? 1 : 0;
}
