// In: the folder of schema as the only argument. Out: its tables in their line format, as bind will put them into the page.

#include <cstdio>
#include <filesystem>

#include "read/disk_files.h"
#include "read/shapes.h"
#include "read/table_reader.h"
#include "standards/table_lines.h"

int main(int argc, char** argv) {
  using namespace benchleaf;
  if (argc != 2) return 2;
  base::FileTable files;
  report::Findings findings;
  const test::DiskFiles schema(argv[1]);
  const auto shapes = read::load_shapes(schema, files, findings);
  const auto tables = read::read_tables(schema, shapes, files, findings);
  std::fputs(standards::table_lines(tables.published).c_str(), stdout);
  return findings.has_errors() ? 1 : 0;
}
