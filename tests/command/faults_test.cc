// Faults of disk, folders and signals under a whole run of bind: the last good output stays as it was, the error is clear,
// the next bind succeeds. House rules, no outside source; the faults are made by fault_library.cc and by limits of the system.

#include "support/catch.h"

#include <signal.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>

#include "command/bound_folder.h"

namespace fs = std::filesystem;
using benchleaf::test::Run;
using benchleaf::test::RunWith;
using benchleaf::test::tree;
using benchleaf::test::Workshop;
using Tree = std::map<std::string, std::string>;

namespace {

constexpr const char* kOwn = "notes.txt";  // a file of the user's beside the output

/// A workshop with the output of edition 1 in `out`, and the tree that edition 2 gives.
struct Editions {
  Editions() {
    REQUIRE(shop.bind("out").code == 0);
    std::ofstream(shop.path() / "out" / kOwn) << "mine";
    std::ofstream(shop.path() / "out/handbook" / kOwn) << "mine too";
    old_tree = tree(shop.path() / "out");
    shop.set_edition("2");
    fs::copy(shop.path() / "out", shop.path() / "other", fs::copy_options::recursive);
    REQUIRE(shop.bind("other").code == 0);
    new_tree = tree(shop.path() / "other");
    REQUIRE(old_tree != new_tree);
    REQUIRE(old_tree.count("handbook/MANIFEST") == 1);
    REQUIRE(new_tree.count(std::string("handbook/") + kOwn) == 1);
  }
  void put_old_back() const {
    fs::remove_all(shop.path() / "out");
    fs::create_directory(shop.path() / "out");
    for (const auto& [path, bytes] : old_tree) {
      if (bytes == "folder") {
        fs::create_directories(shop.path() / "out" / path);
      } else {
        fs::create_directories((shop.path() / "out" / path).parent_path());
        std::ofstream(shop.path() / "out" / path, std::ios::binary) << bytes;
      }
    }
  }
  Tree now() const { return tree(shop.path() / "out"); }

  Workshop shop;
  Tree old_tree, new_tree;
};

/// The tree without what a killed run was still making.
Tree without_left_overs(Tree files) {
  std::erase_if(files, [](const auto& file) { return file.first.rfind(".new-", 0) == 0; });
  return files;
}

/// Calls and bytes of a whole run.
std::pair<long, long> measure(const Editions& editions) {
  editions.put_old_back();
  const std::string file = (editions.shop.path() / "count").string();
  REQUIRE(editions.shop.bind("out", {"count " + file}).code == 0);
  CHECK(editions.now() == editions.new_tree);
  std::istringstream text(benchleaf::test::bytes_of(file));
  long calls = 0, bytes = 0;
  text >> calls >> bytes;
  return {calls, bytes};
}

}  // namespace

namespace {

/// The next bind after a fault leaves the new edition, as if nothing had been.
void next_bind_succeeds(const Editions& editions) {
  CHECK(editions.shop.bind("out").code == 0);
  CHECK(editions.now() == editions.new_tree);
}

/// Kills at 200 points; after every `stride`-th the next run is made as well.
void kill_at_points(long stride) {
  const Editions editions;
  const long calls = measure(editions).first;
  REQUIRE(calls > 200);
  int killed = 0, old_whole = 0;
  std::set<long> points;
  for (long i = 1; i <= 200; ++i) points.insert(i * calls / 200);
  REQUIRE(points.size() == 200);
  for (const long point : points) {
    INFO("killed at call " << point << " of " << calls);
    editions.put_old_back();
    killed += editions.shop.bind("out", {"kill " + std::to_string(point)}).signal == SIGKILL ? 1 : 0;
    const Tree now = without_left_overs(editions.now());
    CHECK((now == editions.old_tree || now == editions.new_tree));
    old_whole += now == editions.old_tree ? 1 : 0;
    if (killed % stride == 0) next_bind_succeeds(editions);
  }
  CHECK(killed == 200);
  // behind the exchange the run only clears the old folder away
  CHECK(old_whole >= 100);
}

/// Fills the disk after 50 numbers of bytes, in the same way.
void fill_disk(long stride) {
  const Editions editions;
  const long bytes = measure(editions).second;
  REQUIRE(bytes > 50);
  for (long i = 0; i < 50; ++i) {
    const long room = i * bytes / 50;
    INFO("room for " << room << " of " << bytes << " bytes");
    editions.put_old_back();
    const Run run = editions.shop.bind("out", {"full " + std::to_string(room)});
    CHECK(run.code == 2);
    CHECK(run.err.find("No space left on device") != std::string::npos);
    CHECK(editions.now() == editions.old_tree);
    if (i % stride == 0) next_bind_succeeds(editions);
  }
}

constexpr long kNow = 5;  // the next run after every fifth fault; after each with ctest -C wide -R every

}  // namespace

TEST_CASE("bind killed at 200 points: the old output is whole, or the new one where the run was over, and the next succeeds") {
  kill_at_points(kNow);
}

TEST_CASE("the next bind succeeds after every kill and every full disk", "[.every]") {
  kill_at_points(1);
  fill_disk(1);
}

TEST_CASE("bind killed at each call around the exchange of the folders") {
  const Editions editions;
  const auto is_new_after = [&](long point) {
    INFO("killed at call " << point);
    editions.put_old_back();
    REQUIRE(editions.shop.bind("out", {"kill " + std::to_string(point)}).signal == SIGKILL);
    const Tree now = without_left_overs(editions.now());
    REQUIRE((now == editions.old_tree || now == editions.new_tree));
    return now == editions.new_tree;
  };
  long still_old = 1, already_new = measure(editions).first;
  REQUIRE_FALSE(is_new_after(still_old));
  REQUIRE(is_new_after(already_new));
  while (already_new - still_old > 1) {
    const long middle = (still_old + already_new) / 2;
    (is_new_after(middle) ? already_new : still_old) = middle;
  }
  for (long point = still_old - 8; point <= already_new + 8; ++point) CHECK(is_new_after(point) == (point >= already_new));
}

TEST_CASE("bind on a disk that is full after so many bytes: the old output to the byte, and the next bind succeeds") {
  fill_disk(kNow);
}

TEST_CASE("a limit on the size of files is an error, not the end of the program") {
  const Editions editions;
  RunWith with;
  with.largest_file = 2000;
  editions.put_old_back();
  const Run run = editions.shop.bind("out", with);
  CHECK(run.code == 2);
  CHECK(run.err.find("File too large") != std::string::npos);
  CHECK(editions.now() == editions.old_tree);
}

TEST_CASE("a stop signal in mid-run ends the program by that signal, with the output whole and nothing left over") {
  const Editions editions;
  const long calls = measure(editions).first;
  int old_whole = 0, renewed = 0;
  for (long i = 1; i <= 40; ++i) {
    const long point = i * calls / 40;
    INFO("stopped at call " << point << " of " << calls);
    editions.put_old_back();
    const Run run = editions.shop.bind("out", {"stop " + std::to_string(point)});
    CHECK(run.signal == SIGTERM);
    const Tree now = editions.now();
    CHECK((now == editions.old_tree || now == editions.new_tree));
    (now == editions.old_tree ? old_whole : renewed) += 1;
  }
  CHECK(old_whole >= 20);
  CHECK(renewed >= 1);
}

TEST_CASE("a hang-up that the user ignores does not stop the run") {
  const Editions editions;
  editions.put_old_back();
  RunWith with;
  with.ignores_hang_up = true;
  CHECK(editions.shop.bind("out", with).code == 0);
  CHECK(editions.now() == editions.new_tree);
}

TEST_CASE("a folder that may not be written into, one of another user, and a place where none can be made") {
  const Editions editions;
  RunWith nobody;
  nobody.as_nobody = true;
  // as root the folder is another user's; as anybody else it is one's own and locked
  if (geteuid() != 0) fs::permissions(editions.shop.path() / "out", fs::perms::owner_read | fs::perms::owner_exec);
  const Run run = editions.shop.bind("out", nobody);
  CHECK(run.code == 2);
  CHECK(run.err.find("benchleaf: cannot write into out: Permission denied") != std::string::npos);
  CHECK(editions.now() == editions.old_tree);
  fs::permissions(editions.shop.path() / "out", fs::perms::owner_all);

  const Run other = editions.shop.bind("/usr/share/benchleaf-out", nobody);
  CHECK(other.code == 2);
  CHECK(other.err.find("cannot make the folder /usr/share/benchleaf-out: Permission denied") != std::string::npos);
  CHECK_FALSE(fs::exists("/usr/share/benchleaf-out"));
}

TEST_CASE("a file that vanishes between two looks is told by its name, and nothing is written") {
  const Editions editions;
  editions.put_old_back();
  const Run run = editions.shop.bind("out", {"vanish cell/sr754w.yaml"});
  CHECK(run.code == 1);
  CHECK(run.err.find("content/cell/sr754w.yaml:1:1: error: the file cannot be read [content.unreadable]") != std::string::npos);
  CHECK(run.err.find("1 error") != std::string::npos);
  CHECK(editions.now() == editions.old_tree);
  const Run font = editions.shop.run({"bind", "--to", "out"}, {"vanish .ttf"});
  CHECK(font.code == 1);
  CHECK(font.err.find("[font.file]") != std::string::npos);
  CHECK(editions.now() == editions.old_tree);
}

TEST_CASE("links, files and folders in the place of the output") {
  const Editions editions;
  const fs::path& place = editions.shop.path();
  SECTION("a file where the folder should be") {
    std::ofstream(place / "file") << "mine";
    const Run run = editions.shop.bind("file");
    CHECK(run.code == 2);
    CHECK(run.err.find("cannot make the folder file") != std::string::npos);
    CHECK(benchleaf::test::bytes_of(place / "file") == "mine");
  }
  SECTION("a link to a folder is followed, for the user made it") {
    fs::create_directory_symlink("out", place / "link");
    CHECK(editions.shop.bind("link").code == 0);
    CHECK(editions.now() == editions.new_tree);
    CHECK(fs::is_symlink(place / "link"));
  }
  SECTION("a link in the place of the book is followed; a file of the user's there stays") {
    fs::create_directory(place / "elsewhere");
    std::ofstream(place / "elsewhere/index.html") << "mine";
    editions.put_old_back();
    fs::remove_all(place / "out/handbook");
    fs::create_directory_symlink("../elsewhere", place / "out/handbook");
    CHECK(editions.shop.bind("out").code == 0);
    CHECK(fs::is_symlink(place / "out/handbook"));
    CHECK(fs::exists(place / "elsewhere/MANIFEST"));
    CHECK(benchleaf::test::bytes_of(place / "elsewhere/index.html") == "mine");
  }
  SECTION("links, folders and files in the place of an entry give way") {
    fs::create_directory(place / "elsewhere");
    std::ofstream(place / "elsewhere/index.html") << "mine";
    editions.put_old_back();
    const fs::path book = place / "out/handbook";
    fs::remove(book / "MANIFEST");
    fs::create_directories(book / "MANIFEST/more");
    fs::remove_all(book / "html");
    fs::create_directory_symlink("../../elsewhere", book / "html");
    fs::remove(book / "facts.jsonl");
    fs::create_symlink("../../elsewhere/index.html", book / "facts.jsonl");
    CHECK(editions.shop.bind("out").code == 0);
    CHECK(editions.now() == editions.new_tree);
    CHECK(benchleaf::test::bytes_of(place / "elsewhere/index.html") == "mine");
  }
  SECTION("a left-over that is a link leads nobody away") {
    fs::create_directory(place / "elsewhere");
    std::ofstream(place / "elsewhere/mine.txt") << "mine";
    editions.put_old_back();
    fs::create_directory_symlink("../elsewhere", place / "out/.new-host-999999999-0123456789ab");
    CHECK(editions.shop.bind("out").code == 0);
    CHECK(without_left_overs(editions.now()) == editions.new_tree);
    CHECK(benchleaf::test::bytes_of(place / "elsewhere/mine.txt") == "mine");
  }
}

TEST_CASE("content that is no folder, or cannot be entered, is told in one line") {
  const Editions editions;
  const fs::path& place = editions.shop.path();
  std::ofstream(place / "file") << "mine";
  CHECK(editions.shop.run({"check", "file"}).code == 2);
  fs::create_symlink("nowhere", place / "dangling");
  CHECK(editions.shop.run({"check", "dangling"}).code == 2);
  fs::create_directories(place / "content/locked");
  std::ofstream(place / "content/locked/a.yaml") << "x";
  fs::permissions(place / "content/locked", fs::perms::none);
  RunWith nobody;
  nobody.as_nobody = true;
  const Run run = editions.shop.run({"check"}, nobody);
  fs::permissions(place / "content/locked", fs::perms::owner_all);
  CHECK(run.code == 2);
  CHECK(run.err == "benchleaf: the folder content cannot be read\n");
}
