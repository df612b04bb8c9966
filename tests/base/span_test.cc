#include "base/span.h"

#include "support/catch.h"

using namespace benchleaf::base;

TEST_CASE("a file table gives lines without their ends", "[span]") {
  FileTable files;
  const FileId unix_file = files.add("content/cell/a.yaml", "id: a\n\nlast");
  const FileId dos_file = files.add("content/cell/b.yaml", "id: b\r\nend\r\n");
  CHECK(files.size() == 2);
  CHECK(files.path(unix_file) == "content/cell/a.yaml");
  CHECK(files.line(unix_file, 1) == "id: a");
  CHECK(files.line(unix_file, 2).empty());
  CHECK(files.line(unix_file, 3) == "last");
  CHECK(files.line(unix_file, 4).empty());
  CHECK(files.line(unix_file, 0).empty());
  CHECK(files.line(unix_file, -7).empty());
  CHECK(files.line(dos_file, 1) == "id: b");
  CHECK(files.line(dos_file, 2) == "end");
  CHECK(files.line(dos_file, 3).empty());
}
