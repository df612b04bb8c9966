// Where shapes and tables are looked for. House rule: named, beside the content, upwards, beside the program.

#include "support/catch.h"
#include "support/temporary_folder.h"

#include <filesystem>
#include <string>

#include "command/schema_folder.h"

namespace fs = std::filesystem;
using benchleaf::command::find_schema;

namespace {

/// A folder of its own as the current one, for one test.
class Scratch {
 public:
  Scratch() { fs::current_path(folder_.path()); }
  ~Scratch() { fs::current_path(before_); }
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;
  const fs::path& path() const { return folder_.path(); }

 private:
  fs::path before_ = fs::current_path();
  benchleaf::test::TemporaryFolder folder_{"schema"};
};

void make_schema(const fs::path& path) {
  fs::create_directories(path / "shapes");
  fs::create_directories(path / "tables");
}

}  // namespace

TEST_CASE("beside the content comes before upwards") {
  Scratch scratch;
  make_schema("schema");
  make_schema("book/schema");
  CHECK(find_schema("", "book/content").path == fs::path("book/schema"));
  CHECK(find_schema("", "book/content/").path == fs::path("book/schema"));
  CHECK(find_schema("", "other/content").path == fs::path("schema"));
  CHECK(find_schema("", "content").path == fs::path("schema"));
}

TEST_CASE("upwards from the current folder") {
  Scratch scratch;
  make_schema("schema");
  fs::create_directories("a/b");
  fs::current_path(scratch.path() / "a/b");
  CHECK(find_schema("", "content").path == fs::path("../../schema"));
}

TEST_CASE("a named folder is taken or refused, nothing else is looked at") {
  Scratch scratch;
  make_schema("schema");
  make_schema("mine");
  CHECK(find_schema("mine", "content").path == fs::path("mine"));
  CHECK(find_schema("absent", "content").path.empty());
  CHECK(find_schema("absent", "content").looked_at.size() == 1);
}

TEST_CASE("a folder of that name without shapes is none") {
  Scratch scratch;
  fs::create_directories("schema/tables");
  CHECK(find_schema("", "content").path.empty());
}
