// The program as a user runs it: exit codes, where text goes, and what a failed bind leaves behind. House rules.

#include "command/run_program.h"
#include "support/catch.h"
#include "support/temporary_folder.h"

#include "command/folder_lock.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "base/sha256.h"

namespace fs = std::filesystem;
using benchleaf::test::Ran;
using benchleaf::test::text_of;
using nlohmann::json;

namespace {

/// A folder with a tiny content of one cell, and the program to run in it.
class Workplace {
 public:
  Workplace() {
    fs::copy("schema", path() / "schema", fs::copy_options::recursive);
    fs::create_directories(path() / "content/cell");
    fs::copy("tests/cases/handbook.yaml", path() / "content/handbook.yaml");
    write_cell("1.55 V");
  }

  void write_cell(const std::string& nominal) {
    std::ofstream(path() / "content/cell/sr754w.yaml")
        << "id: sr754w\ndesignation: SR754W\ntrade-number: \"393\"\nsystem: silver-oxide\n"
           "size: { diameter: 7.9 mm, height: 5.4 mm }\nnominal: "
        << nominal << "\nbasis:\n  size: { trust: memory }\n";
  }

  Ran run(const std::string& words, const std::string& environment = {}) const {
    return benchleaf::test::run_program(path(), words, environment);
  }

  const fs::path& path() const { return folder_.path(); }

 private:
  benchleaf::test::TemporaryFolder folder_{"program"};
};

std::map<std::string, std::string> tree(const fs::path& folder) {
  std::map<std::string, std::string> files;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    if (entry.is_regular_file()) files.emplace(entry.path().lexically_relative(folder).string(), text_of(entry.path()));
  }
  return files;
}

}  // namespace

TEST_CASE("check: 0 for clean, 1 for errors, 2 for what cannot be read") {
  Workplace place;
  const Ran clean = place.run("check");
  CHECK(clean.code == 0);
  CHECK(clean.out.empty());
  CHECK(clean.err == "benchleaf: checked 1 record: no problems\n");
  CHECK(place.run("check --quiet").err.find("benchleaf: checked") == std::string::npos);
  place.write_cell("1.5 V");
  const Ran bad = place.run("check");
  CHECK(bad.code == 1);
  CHECK(bad.err.find("content/cell/sr754w.yaml:6:10: error:") != std::string::npos);
  CHECK(place.run("check nowhere").code == 2);
  CHECK(place.run("check --schema nowhere").code == 2);
  CHECK(place.run("chek").code == 2);
}

TEST_CASE("check --json: one object on stdout, findings as the shape of the design has them") {
  Workplace place;
  place.write_cell("1.5 V");
  const Ran ran = place.run("check --json");
  CHECK(ran.code == 1);
  const json all = json::parse(ran.out);
  REQUIRE(all.at("findings").size() == 1);
  const json& finding = all.at("findings").front();
  for (const char* key : {"rule", "severity", "file", "line", "column", "message", "hint", "notes"}) CHECK(finding.contains(key));
  CHECK(finding.at("rule") == "cell.voltage");
  CHECK(finding.at("file") == "content/cell/sr754w.yaml");
}

TEST_CASE("check --strict: a warning counts") {
  Workplace place;
  std::ofstream(place.path() / "content/cell/sr754w.yaml", std::ios::app) << "drain: low\n";
  CHECK(place.run("check").code == 0);
  CHECK(place.run("check --strict").code == 1);
}

TEST_CASE("colour: by wish, never by accident, NO_COLOR honoured") {
  Workplace place;
  place.write_cell("1.5 V");
  CHECK(place.run("check").err.find('\x1b') == std::string::npos);
  CHECK(place.run("check --color always").err.find('\x1b') != std::string::npos);
  CHECK(place.run("check --color never").err.find('\x1b') == std::string::npos);
  CHECK(place.run("check", "NO_COLOR=1").err.find('\x1b') == std::string::npos);
}

TEST_CASE("reckon: 0 with an answer on stdout, 1 refused") {
  Workplace place;
  const Ran good = place.run("reckon cell-decode designation=SR754W");
  CHECK(good.code == 0);
  CHECK(good.out.find("cell-decode\n") == 0);
  CHECK(place.run("reckon cell-decode designation=XR1").code == 1);
  CHECK(place.run("reckon no-such").code == 1);
  CHECK(place.run("reckon").out.find("cell-decode: ") == 0);
  CHECK(place.run("reckon cell-swap cell=393").out.find("SR754W (393)") != std::string::npos);
  CHECK(place.run("reckon rinse carry-over=0.1mL volume=5mL times=3 --content nowhere").code == 0);
  const json result = json::parse(place.run("reckon cell-decode designation=SR754W --json").out);
  CHECK(result.at("refusal").is_null());
  CHECK(result.at("outputs").front().at("name") == "system");
}

TEST_CASE("bind --only facts: facts, the package that describes them, and MANIFEST, whose hashes hold") {
  Workplace place;
  const Ran ran = place.run("bind --only facts");
  CHECK(ran.code == 0);
  const auto files = tree(place.path() / "out/handbook");
  REQUIRE(files.size() == 3);
  CHECK(json::parse(files.at("datapackage.json")).at("resources").front().at("bytes") == files.at("facts.jsonl").size());
  const std::string hash = benchleaf::base::sha256(files.at("facts.jsonl"));
  CHECK(files.at("MANIFEST").find("file " + hash + " facts.jsonl\n") != std::string::npos);
  CHECK(files.at("MANIFEST").find("edition 1\n") != std::string::npos);
}

TEST_CASE("bind holds the hyphenation patterns against their recorded hash and names them in MANIFEST") {
  Workplace place;
  const fs::path list = place.path() / "schema/fonts.yaml";
  const std::string recorded = text_of(list);
  const std::string path = "/usr/share/hyphen/hyph_en_GB.dic";
  const std::string hash = benchleaf::base::sha256(text_of(path));
  const auto with = [&](const std::string& what, const std::string& instead) {
    std::string changed = recorded;
    REQUIRE(changed.find(what) != std::string::npos);
    std::ofstream(list) << changed.replace(changed.find(what), what.size(), instead);
    return place.run("bind --only pdf --paper a4");
  };
  const Ran other = with(hash, std::string(64, 'f'));
  CHECK(other.code == 0);
  CHECK(other.err.find("[font.version]") != std::string::npos);
  CHECK(text_of(place.path() / "out/handbook/MANIFEST").find("\nhyphenation " + hash + " hyph_en_GB.dic\n") != std::string::npos);
  const Ran missing = with(path, "/no/such/file");
  CHECK(missing.code == 1);
  CHECK(missing.err.find("install the package hyphen-en-gb") != std::string::npos);
}

TEST_CASE("a bind that is asked for nothing says so and writes nothing") {
  Workplace place;
  const Ran ran = place.run("bind --only pdf --paper a3");
  CHECK(ran.code == 2);
  CHECK(ran.err.find("nothing to write") != std::string::npos);
  CHECK_FALSE(fs::exists(place.path() / "out"));
}

TEST_CASE("check --sarif: a file whole or not at all, and the findings on the terminal all the same") {
  Workplace place;
  place.write_cell("1.5 V");
  const Ran full = place.run("check --sarif /dev/full");
  CHECK(full.code == 2);
  CHECK(full.err.find("/dev/full cannot be written") != std::string::npos);
  CHECK(full.err.find("content/cell/sr754w.yaml:") != std::string::npos);
  CHECK(place.run("check --sarif log.sarif").code == 1);
  CHECK(json::parse(text_of(place.path() / "log.sarif")).at("version") == "2.1.0");
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(place.path())) names.push_back(entry.path().filename());
  CHECK(std::count_if(names.begin(), names.end(), [](const auto& name) { return name.rfind("log.sarif", 0) == 0; }) == 1);
}

TEST_CASE("a bind that fails leaves the last good output as it was, other files too") {
  Workplace place;
  REQUIRE(place.run("bind --only facts").code == 0);
  std::ofstream(place.path() / "out/handbook/mine.txt") << "mine";
  const auto before = tree(place.path() / "out");
  place.write_cell("1.5 V");
  const Ran failed = place.run("bind --only facts");
  CHECK(failed.code == 1);
  CHECK(failed.err.find("nothing was written") != std::string::npos);
  CHECK(tree(place.path() / "out") == before);
}

TEST_CASE("a bind removes what a dead run left, and a second one gives the same bytes") {
  Workplace place;
  REQUIRE(place.run("bind --only facts").code == 0);
  const auto before = tree(place.path() / "out");
  const fs::path dead = place.path() / "out" / benchleaf::command::own_name();
  fs::create_directories(dead);
  std::ofstream(dead / "facts.jsonl") << "half";
  REQUIRE(place.run("bind --only facts").code == 0);
  CHECK(tree(place.path() / "out") == before);
}

TEST_CASE("output that cannot be written is exit 2 and one line") {
  Workplace place;
  std::ofstream(place.path() / "taken") << "a file";
  const Ran ran = place.run("bind --only facts --to taken");
  CHECK(ran.code == 2);
  CHECK(ran.err.find("taken") != std::string::npos);
  CHECK(text_of(place.path() / "taken") == "a file");
}
