// Faults of writing: a run that fails or is killed leaves the last good output as it was. House rule, no outside source.

#include "support/catch.h"
#include "support/temporary_folder.h"

#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "command/output_folder.h"

namespace fs = std::filesystem;
using benchleaf::command::OutputFolder;
using benchleaf::test::TemporaryFolder;

namespace {

void put(const fs::path& path, const std::string& text) {
  fs::create_directories(path.parent_path());
  std::ofstream(path) << text;
}

std::string get(const fs::path& path) {
  std::ifstream in(path);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

int count_entries(const fs::path& folder) {
  int count = 0;
  for ([[maybe_unused]] const auto& entry : fs::directory_iterator(folder)) ++count;
  return count;
}

/// The id of a process that has ended.
pid_t dead_process() {
  const pid_t child = fork();
  if (child == 0) _exit(0);
  waitpid(child, nullptr, 0);
  return child;
}

}  // namespace

TEST_CASE("a committed run replaces its entries and leaves the others") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  put(out / "html/old.html", "old page");
  put(out / "handbook-a4.pdf", "old pdf");
  put(out / "notes.txt", "mine");
  {
    OutputFolder folder(out);
    REQUIRE(folder.problem().empty());
    CHECK(folder.write("html/index.html", "new page"));
    CHECK(folder.write("handbook-a4.pdf", "new pdf"));
    CHECK(folder.write("MANIFEST", "names"));
    CHECK(get(out / "handbook-a4.pdf") == "old pdf");
    CHECK(folder.commit());
  }
  CHECK(get(out / "handbook-a4.pdf") == "new pdf");
  CHECK(get(out / "html/index.html") == "new page");
  CHECK_FALSE(fs::exists(out / "html/old.html"));
  CHECK(get(out / "notes.txt") == "mine");
  CHECK(get(out / "MANIFEST") == "names");
  CHECK(count_entries(out) == 4);
}

TEST_CASE("a run that ends without a commit leaves the last good output as it was") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  put(out / "handbook-a4.pdf", "good pdf");
  put(out / "MANIFEST", "good names");
  {
    OutputFolder folder(out);
    CHECK(folder.write("handbook-a4.pdf", "half a"));
  }
  CHECK(get(out / "handbook-a4.pdf") == "good pdf");
  CHECK(get(out / "MANIFEST") == "good names");
  CHECK(count_entries(out) == 2);
}

TEST_CASE("a commit that fails half way puts the entries before it back") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  put(out / "a.pdf", "good a");
  put(out / "c.pdf", "good c");
  put(out / "MANIFEST", "good names");
  {
    OutputFolder folder(out);
    CHECK(folder.write("a.pdf", "new a"));
    CHECK(folder.write("b.pdf", "new b"));
    CHECK(folder.write("c.pdf", "new c"));
    CHECK(folder.write("MANIFEST", "new names"));
    fs::remove(out / (".new-" + std::to_string(getpid())) / "c.pdf");  // somebody cleans up under our feet
    CHECK_FALSE(folder.commit());
    CHECK(folder.problem().find("c.pdf") != std::string::npos);
  }
  CHECK(get(out / "a.pdf") == "good a");
  CHECK_FALSE(fs::exists(out / "b.pdf"));
  CHECK(get(out / "c.pdf") == "good c");
  CHECK(get(out / "MANIFEST") == "good names");
  CHECK(count_entries(out) == 3);
}

TEST_CASE("left-overs of dead runs go, those of living ones and look-alikes stay") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  const std::string dead = ".new-" + std::to_string(dead_process());
  const std::string alive = ".new-" + std::to_string(getppid());
  put(out / dead / "handbook-a4.pdf", "half");
  put(out / alive / "handbook-a4.pdf", "being written");
  put(out / ".new-year" / "card.txt", "mine");
  {
    OutputFolder folder(out);
    REQUIRE(folder.problem().empty());
  }
  CHECK_FALSE(fs::exists(out / dead));
  CHECK(fs::exists(out / alive));
  CHECK(fs::exists(out / ".new-year"));
}

TEST_CASE("a folder that cannot be made is a problem, not a crash") {
  const TemporaryFolder scratch("output");
  put(scratch.path() / "file", "in the way");
  OutputFolder folder(scratch.path() / "file");
  CHECK(folder.problem().find("file") != std::string::npos);
  CHECK_FALSE(folder.write("a", "b"));
  CHECK_FALSE(folder.commit());
}
