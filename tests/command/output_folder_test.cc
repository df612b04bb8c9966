// Faults of writing: a run that fails or is killed leaves the last good output as it was. House rule, no outside source.

#include "support/catch.h"
#include "support/temporary_folder.h"

#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "command/folder_lock.h"
#include "command/output_folder.h"

namespace fs = std::filesystem;
using namespace benchleaf::command;
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

/// Sets the time of a folder's last change back.
void make_older(const fs::path& folder, std::chrono::hours hours) {
  fs::last_write_time(folder, fs::last_write_time(folder) - hours);
}

/// Runs `work` in `count` processes at once; how many of them it gave true.
template <typename Work>
int at_once(int count, Work work) {
  std::vector<pid_t> children;
  for (int i = 0; i < count; ++i) {
    const pid_t child = fork();
    if (child == 0) _exit(work(i) ? 0 : 1);
    children.push_back(child);
  }
  int good = 0;
  for (const pid_t child : children) {
    int status = 0;
    waitpid(child, &status, 0);
    good += WIFEXITED(status) && WEXITSTATUS(status) == 0 ? 1 : 0;
  }
  return good;
}

}  // namespace

TEST_CASE("a committed run replaces its entries and leaves the others") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  const fs::path book = out / "handbook";
  put(book / "html/old.html", "old page");
  put(book / "html/photos/mine.txt", "beside the pages");
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
    CHECK(folder.commit([](const std::string& name) { return name == "html/old.html"; }));
  }
  CHECK(get(book / "html/photos/mine.txt") == "beside the pages");
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
    for (const auto& entry : fs::directory_iterator(out)) {
      if (is_own_name(entry.path().filename().string())) fs::remove_all(entry.path());
    }
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

TEST_CASE("left-overs of dead runs go, those of living ones, fresh ones of other machines and look-alikes stay") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  const std::string dead = own_name(), alive = own_name();
  const std::string elsewhere = ".new-anotherhost-1-0123456789ab", long_ago = ".new-anotherhost-1-ba9876543210";
  put(out / dead / "handbook-a4.pdf", "half");
  put(out / (dead + "-old-handbook") / "handbook-a4.pdf", "old");
  put(out / alive / "handbook-a4.pdf", "being written");
  put(out / elsewhere / "handbook-a4.pdf", "being written on another machine");
  put(out / long_ago / "handbook-a4.pdf", "half");
  put(out / ".new-year" / "card.txt", "mine");
  put(out / "handbook/handbook-a4.pdf", "good");
  make_older(out / long_ago, std::chrono::hours(48));
  make_older(out / ".new-year", std::chrono::hours(48));
  FileLock lives;
  REQUIRE(lives.take(out / alive));
  {
    OutputFolder folder(out);
    REQUIRE(folder.claim());
  }
  CHECK_FALSE(fs::exists(out / dead));
  CHECK_FALSE(fs::exists(out / (dead + "-old-handbook")));
  CHECK_FALSE(fs::exists(out / long_ago));
  CHECK(fs::exists(out / alive));
  CHECK(fs::exists(out / elsewhere));
  CHECK(get(out / ".new-year/card.txt") == "mine");
  CHECK(get(out / "handbook/handbook-a4.pdf") == "good");
}

TEST_CASE("what a run set aside before it died comes back before anything is removed") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  put(out / (own_name() + "-old-handbook") / "handbook-a4.pdf", "last good");
  put(out / (own_name() + "-old-tickets") / "ticket.pdf", "of the tickets");
  {
    OutputFolder folder(out);
    REQUIRE(folder.claim());
    CHECK(folder.old_bytes("handbook-a4.pdf") == "last good");
  }
  CHECK(get(out / "handbook/handbook-a4.pdf") == "last good");
}

TEST_CASE("a link to a folder is followed: the folder behind it is replaced and the link stays") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out", published = scratch.path() / "www/book";
  put(published / "notes.txt", "mine");
  fs::create_directories(out);
  fs::create_directory_symlink("../www/book", out / "handbook");
  {
    OutputFolder folder(out);
    CHECK(folder.write("a.pdf", "new"));
    CHECK(folder.commit());
  }
  CHECK(fs::is_symlink(out / "handbook"));
  CHECK(get(published / "a.pdf") == "new");
  CHECK(get(published / "notes.txt") == "mine");
  fs::remove_all(published);
  OutputFolder folder(out);
  CHECK(folder.problem().find("cannot follow the link") == 0);
}

TEST_CASE("runs at once into one folder: every file of each is there, and nothing else") {
  const TemporaryFolder scratch("output");
  const fs::path out = scratch.path() / "out";
  for (int i = 0; i < 300; ++i) put(out / "tickets" / ("old-" + std::to_string(i)), "old");
  constexpr int kRuns = 8, kRounds = 6;
  for (int round = 0; round < kRounds; ++round) {
    const int good = at_once(kRuns, [&](int run) {
      OutputFolder folder(out, kTicketFolder);
      return folder.write("new-" + std::to_string(round) + "-" + std::to_string(run), "new") && folder.commit();
    });
    CHECK(good == kRuns);
  }
  CHECK(count_entries(out / "tickets") == 300 + kRuns * kRounds);
  CHECK(count_entries(out) == 1);
}

TEST_CASE("a run that cannot get the lock names who holds it") {
  const TemporaryFolder scratch("output");
  FolderLock first;
  REQUIRE(first.take(scratch.path(), 0).empty());
  const int told = at_once(1, [&](int) {
    FolderLock second;
    return second.take(scratch.path(), 0).find("another run (process " + std::to_string(getppid())) == 0;
  });
  CHECK(told == 1);
}

TEST_CASE("a folder that cannot be made is a problem, not a crash") {
  const TemporaryFolder scratch("output");
  put(scratch.path() / "file", "in the way");
  OutputFolder folder(scratch.path() / "file");
  CHECK(folder.problem().find("file") != std::string::npos);
  CHECK_FALSE(folder.write("a", "b"));
  CHECK_FALSE(folder.commit());
}
