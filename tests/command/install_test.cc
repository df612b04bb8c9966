// cmake --install and the Debian package: what they hold, and that the program finds its content from any folder. Outside
// readers: cmake, cpack, dpkg-deb. The packages it must name are those that schema/fonts.yaml names and the libraries that ldd
// lists.

#include "command/run_program.h"
#include "support/catch.h"
#include "support/temporary_folder.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace fs = std::filesystem;
using benchleaf::test::Ran;
using benchleaf::test::text_of;

namespace {

Ran run(const fs::path& folder, const std::string& command) { return benchleaf::test::run_program(folder, command, {}, "env"); }

/// Everything installed below a folder, once for all tests.
class Installed {
 public:
  static const Installed& instance() {
    static const Installed kInstalled;
    return kInstalled;
  }

  fs::path at(const std::string& name) const { return folder_.path() / "root/usr" / name; }
  Ran program(const fs::path& where, const std::string& words) const {
    return benchleaf::test::run_program(where, words, {}, at("bin/benchleaf").string());
  }

 private:
  Installed() {
    const Ran ran = run(folder_.path(), "DESTDIR='" + (folder_.path() / "root").string() +
                                            "' cmake --install '" BENCHLEAF_BUILD "' --prefix /usr");
    INFO(ran.out << ran.err);
    REQUIRE(ran.code == 0);
  }
  benchleaf::test::TemporaryFolder folder_{"installed"};
};

std::set<std::string> names_below(const fs::path& folder) {
  std::set<std::string> names;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    if (entry.is_regular_file()) names.insert(entry.path().lexically_relative(folder).generic_string());
  }
  return names;
}

std::string package_in(const fs::path& folder) {
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (entry.path().extension() == ".deb") return entry.path().filename();
  }
  return {};
}

}  // namespace

TEST_CASE("installed: program, schema, content, completions, manual, licence; nothing hidden, nothing of the editor") {
  const Installed& installed = Installed::instance();
  CHECK(names_below(installed.at("share/benchleaf/schema")) == names_below("schema"));
  CHECK(names_below(installed.at("share/benchleaf/content")) == names_below("content"));
  for (const char* name :
       {"bin/benchleaf", "share/benchleaf/LICENSE", "share/doc/benchleaf/copyright", "share/benchleaf/program.js",
        "share/bash-completion/completions/benchleaf", "share/zsh/vendor-completions/_benchleaf", "share/man/man1/benchleaf.1.gz",
        "share/man/man5/benchleaf-record.5.gz", "share/doc/benchleaf/changelog.gz"}) {
    INFO(name);
    CHECK(fs::exists(installed.at(name)));
  }
  CHECK(text_of(installed.at("share/benchleaf/LICENSE")) == text_of("LICENSE"));
}

TEST_CASE("installed, and run from a folder with nothing in it: find, reckon, bind") {
  const Installed& installed = Installed::instance();
  const benchleaf::test::TemporaryFolder elsewhere("elsewhere");
  const Ran found = installed.program(elsewhere.path(), "find 393");
  CHECK(found.code == 0);
  CHECK(found.out.find("393 SR754W\n") != std::string::npos);
  const Ran reckoned = installed.program(elsewhere.path(), "reckon cell-swap cell=393");
  CHECK(reckoned.code == 0);
  CHECK(reckoned.out.find("SR754W (393)") != std::string::npos);
  const Ran bound = installed.program(elsewhere.path(), "bind --only chart,html --paper a4");
  INFO(bound.err);
  CHECK(bound.code == 0);
  CHECK(fs::exists(elsewhere.path() / "out/handbook/chart-one-sheet-a4.pdf"));
  CHECK(fs::exists(elsewhere.path() / "out/handbook/html/assets/program.js"));
  const Ran version = installed.program(elsewhere.path(), "--version");
  CHECK(version.out == "benchleaf " BENCHLEAF_PROJECT_VERSION "\n");
}

TEST_CASE("a content in the current folder, --content and --schema win over what was installed") {
  const Installed& installed = Installed::instance();
  const benchleaf::test::TemporaryFolder elsewhere("elsewhere");
  fs::copy("tests/cases/clean/content", elsewhere.path() / "content", fs::copy_options::recursive);
  fs::copy("tests/cases/handbook.yaml", elsewhere.path() / "content/handbook.yaml");
  fs::copy(elsewhere.path() / "content", elsewhere.path() / "mine", fs::copy_options::recursive);
  const auto count = [&](const std::string& words) { return installed.program(elsewhere.path(), "check " + words).err; };
  CHECK(count("").find("checked 9 records") != std::string::npos);
  fs::remove_all(elsewhere.path() / "content");
  CHECK(count("").find("checked 9 records") == std::string::npos);
  CHECK(count("--content mine").find("checked 9 records") != std::string::npos);
  CHECK(installed.program(elsewhere.path(), "check --schema nowhere").code == 2);
  CHECK(installed.program(elsewhere.path(), "draft cell sr41w").code == 2);  // nothing is written into what was installed
}

TEST_CASE("the package: the same bytes at any time, what it needs, nothing of this machine") {
  const benchleaf::test::TemporaryFolder folder("package");
  const std::string pack = "cpack --config '" BENCHLEAF_BUILD "/CPackConfig.cmake' -B ";
  std::vector<std::string> packages;
  for (const char* where : {"one", "other"}) {
    const Ran ran = run(folder.path(), "-u SOURCE_DATE_EPOCH " + pack + (folder.path() / where).string());
    INFO(ran.out << ran.err);
    REQUIRE(ran.code == 0);
    packages.push_back((folder.path() / where / package_in(folder.path() / where)).string());
  }
  CHECK(text_of(packages[0]) == text_of(packages[1]));
  CHECK(fs::path(packages[0]).filename().string().rfind("benchleaf_" BENCHLEAF_PROJECT_VERSION, 0) == 0);

  const std::string needs = run(folder.path(), "dpkg-deb -f " + packages[0] + " Depends").out;
  std::set<std::string> wanted = {"libyaml-cpp",  "libhpdf",      "libharfbuzz0b", "libhyphen",
                                  "libcmark-gfm", "libutf8proc2", "zlib1g",        "libc6"};
  const std::string fonts = text_of("schema/fonts.yaml");
  const std::regex line("package: (\\S+)");
  for (auto at = std::sregex_iterator(fonts.begin(), fonts.end(), line); at != std::sregex_iterator(); ++at)
    wanted.insert((*at)[1]);
  CHECK(wanted.count("hyphen-en-gb") == 1);
  for (const auto& package : wanted) {
    INFO(needs);
    INFO(package);
    CHECK(needs.find(package) != std::string::npos);
  }
  const std::string list = run(folder.path(), "TZ=UTC dpkg-deb -c " + packages[0]).out;
  CHECK(list.find("./usr/bin/benchleaf") != std::string::npos);
  CHECK(list.find("./usr/share/man/man5/benchleaf-record.5.gz") != std::string::npos);
  const std::regex date("date: ([0-9]{4}-[0-9]{2})");
  std::smatch edition;
  const std::string handbook = text_of("content/handbook.yaml");
  REQUIRE(std::regex_search(handbook, edition, date));
  std::istringstream lines(list);
  for (std::string entry; std::getline(lines, entry);) {
    INFO(entry);
    CHECK(entry.find(" " + edition[1].str() + "-01 00:00 ") != std::string::npos);
    CHECK(entry.find(" root/root ") != std::string::npos);
  }
}
