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
  const fs::path book = out / "handbook";
  put(book / "html/old.html", "old page");
  put(book / "handbook-a4.pdf", "old pdf");
  put(book / "notes.txt", "mine");
  put(book / "photos/dial.txt", "mine too");
  fs::create_symlink("notes.txt", book / "link");
  put(out / "build/log", "of another program");
  {
    OutputFolder folder(out);
    REQUIRE(folder.problem().empty());
    CHECK(folder.write("html/index.html", "new page"));
    CHECK(folder.write("handbook-a4.pdf", "new pdf"));
    CHECK(folder.write("MANIFEST", "names"));
    CHECK(get(book / "handbook-a4.pdf") == "old pdf");
    CHECK(folder.commit());
  }
  CHECK(get(book / "handbook-a4.pdf") == "new pdf");
  CHECK(get(book / "html/index.html") == "new page");
  CHECK_FALSE(fs::exists(book / "html/old.html"));
  CHECK(get(book / "notes.txt") == "mine");
  CHECK(get(book / "photos/dial.txt") == "mine too");
  CHECK(fs::read_symlink(book / "link") == "notes.txt");
  CHECK(get(book / "MANIFEST") == "names");
  CHECK(get(out / "build/log") == "of another program");
  CHECK(count_entries(book) == 6);
  CHECK(count_entries(out) == 2);
}

TEST_CASE("a run that ends without a commit leaves the last good output as it was") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  put(out / "handbook/handbook-a4.pdf", "good pdf");
  put(out / "handbook/MANIFEST", "good names");
  {
    OutputFolder folder(out);
    CHECK(folder.write("handbook-a4.pdf", "half a"));
  }
  CHECK(get(out / "handbook/handbook-a4.pdf") == "good pdf");
  CHECK(get(out / "handbook/MANIFEST") == "good names");
  CHECK(count_entries(out) == 1);
}

TEST_CASE("a commit that fails leaves what was there") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  fs::path kept;
  SECTION("because somebody cleans up under our feet") {
    kept = out / "handbook/a.pdf";
    put(kept, "good");
    OutputFolder folder(out);
    CHECK(folder.write("a.pdf", "new"));
    fs::remove_all(out / (".new-" + std::to_string(getpid())));
    CHECK_FALSE(folder.commit());
    CHECK(folder.problem().find("cannot") == 0);
  }
  SECTION("because a file of that name is somebody's own") {
    kept = out / "handbook";
    put(kept, "good");
    OutputFolder folder(out);
    CHECK(folder.write("a.pdf", "new"));
    CHECK_FALSE(folder.commit());
    CHECK(folder.problem().find("cannot replace") == 0);
  }
  CHECK(get(kept) == "good");
  CHECK(count_entries(out) == 1);
}

TEST_CASE("left-overs of dead runs go, those of living ones and look-alikes stay") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  const std::string dead = ".new-" + std::to_string(dead_process());
  const std::string alive = ".new-" + std::to_string(getppid());
  put(out / dead / "handbook-a4.pdf", "half");
  put(out / (dead + "-old") / "handbook-a4.pdf", "old");
  put(out / alive / "handbook-a4.pdf", "being written");
  put(out / ".new-year" / "card.txt", "mine");
  {
    OutputFolder folder(out);
    REQUIRE(folder.problem().empty());
  }
  CHECK_FALSE(fs::exists(out / dead));
  CHECK_FALSE(fs::exists(out / (dead + "-old")));
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
