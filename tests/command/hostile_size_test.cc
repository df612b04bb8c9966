// Hostile sizes through the whole program: each input ends within five seconds of processor time and 256 MiB of address
// space, which the system enforces, with one finding. The bounds are those of this house; cells and rows of the tables
// follow CVE-2023-37463, the alias bomb is the one with nine anchors of nine aliases each that every account of it shows.

#include "support/catch.h"

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "command/bound_folder.h"

namespace fs = std::filesystem;
using benchleaf::test::Run;
using benchleaf::test::RunWith;
using benchleaf::test::Workshop;

namespace {

// What grows with the square of its input takes minutes at these sizes. On a machine of its own each takes under a second; one
// that is shared, or a build with sanitizers, takes several times as long.
constexpr long kSeconds = 5;
constexpr long kMebibyte = 1L << 20;
constexpr std::size_t kPage = 256 * 1024 - 16;

std::string times(std::size_t count, const std::string& text) {
  std::string all;
  all.reserve(count * text.size());
  for (std::size_t i = 0; i < count; ++i) all += text;
  return all;
}

/// A text of at most 256 kB, the most that a page may have.
std::string page_of(const std::string& text) { return times(kPage / text.size(), text); }

struct Hostile {
  std::string what;
  std::string path;
  std::string text;
  std::string rule;  ///< of the one finding; empty: the page is odd but right
};

std::string term(const std::string& more) { return "id: big\nterm: t\nmeaning: M.\n" + more; }

std::string page(const std::string& body) { return "---\nid: big\ntitle: T\nlead: L.\ntrust: memory\n---\n" + body + "\n"; }

std::vector<Hostile> records() {
  const std::string path = "content/term/big.yaml";
  std::string bomb = "a: &a [x, x, x, x, x, x, x, x, x]\n";
  for (char name = 'b'; name <= 'i'; ++name) {
    const std::string before(1, static_cast<char>(name - 1));
    bomb += std::string(1, name) + ": &" + name + " [" + times(8, "*" + before + ", ") + "*" + before + "]\n";
  }
  std::string keys, same, deep;
  for (int i = 0; i < 40000; ++i) keys += "k" + std::to_string(i) + ": 1\n";
  for (int i = 0; i < 700; ++i) deep += std::string(static_cast<std::size_t>(i), ' ') + "a:\n";
  const std::string mega = times(1000000, "x");
  return {
      {"alias bomb", path, bomb, "yaml.anchor"},
      {"aliases without an anchor", path, term("see: [" + times(1000, "*a, ") + "]\n"), "yaml.alias"},
      {"100,000 brackets", path, "note: " + times(100000, "["), "yaml.key-form"},
      {"100,000 brackets, closed", path, term("note: " + times(100000, "[") + times(100000, "]") + "\n"), "yaml.depth"},
      {"100,000 braces", path, "note: " + times(100000, "{a: "), "yaml.depth"},
      {"100,000 dashes", path, times(100000, "- "), "yaml.depth"},
      {"100,000 question marks", path, times(100000, "? "), "yaml.key-form"},
      {"keys down to level 700", path, deep, "yaml.depth"},
      {"plain text of a megabyte", path, term("note: " + mega + "\n"), "shape.length"},
      {"text in quotes of a megabyte", path, term("note: \"" + mega + "\"\n"), "shape.length"},
      {"block text of a megabyte", path, term("note: |\n" + times(15000, "  " + times(60, "x") + "\n")), "shape.length"},
      {"megabyte of escapes", path, term("note: \"" + times(160000, "\\u0041") + "\"\n"), "shape.length"},
      {"megabyte of doubled quotes", path, term("note: '" + times(500000, "''") + "'\n"), "shape.length"},
      {"quote that never closes", path, term("note: \"" + mega), "yaml.open-quote"},
      {"key of a megabyte", path, term("\"" + mega + "\": x\n"), "yaml.syntax"},  // a key has at most 1,024 characters
      {"megabyte of letters with accents", path, term("note: " + times(500000, "é") + "\n"), "shape.length"},
      {"megabyte of accents", path, term("note: e" + times(500000, "\xCC\x81") + "\n"), "yaml.composed"},
      {"id of a megabyte", path, "id: " + times(1000000, "a") + "\nterm: t\nmeaning: M.\n", "shape.length"},
      {"quantity of a megabyte", "content/material/big.yaml",
       "id: big\ntitle: T\nkind: metal\nfound-in: F.\ndensity: \"" + times(1000000, "1") + " mm\"\n", "shape.length"},
      {"number of a megabyte", path, term("note: " + times(1000000, "1") + "\n"), "yaml.number-form"},
      {"more than a mebibyte", path, term("note: " + times(kMebibyte, "x") + "\n"), "yaml.size"},
      {"40,000 keys", path, term(keys), "shape.unknown-key"},
      {"40,000 items", path, term("also: [" + times(40000, "1, ") + "]\n"), "shape.count"},
      {"500,000 items", path, term("also: [" + times(500000, "1,") + "]\n"), "yaml.nodes"},
      {"100,000 lines", path, term(times(100000, "# a\n") + "note: 1\n"), "shape.type"},
  };
}

std::vector<Hostile> pages() {
  const std::string path = "content/page/big.md";
  std::string lists, ticks;
  for (std::size_t i = 0; i < 500; ++i) lists += std::string(2 * i, ' ') + "- a\n";
  for (std::size_t i = 1; i < 700; ++i) ticks += "e" + std::string(i, '`');
  const std::string wide = times(2000, "|a") + "\n" + times(2000, "|-") + "\n" + times(2000, "|\n");
  const std::string full = times(40, "|a") + "\n" + times(40, "|-") + "\n" + times(48, "|\n") + "\n";
  return {
      {"short rows under 2,000 columns", path, page(wide), "markdown.table-size"},
      {"short rows in a quotation", path, page("> " + times(2000, "|a") + "\n> " + times(2000, "|-") + "\n> |"),
       "markdown.table-size"},
      {"short rows in tables of 2,000 cells", path, page(page_of(full)), ""},
      {"more than 256 kB", path, page(times(300000, "a")), "markdown.size"},
      {"100,000 quotations", path, page(times(100000, "> ") + "a"), "markdown.depth"},
      {"lists down to level 500", path, page(lists.substr(0, kPage)), "markdown.depth"},
      {"emphasis on 100,000 levels", path, page(times(80000, "*") + "a" + times(80000, "*")), "markdown.depth"},
      {"open CDATA", path, page(page_of("a <![CDATA[ ")), "markdown.html"},
      {"open processing instructions", path, page(page_of("a <? ")), "markdown.html"},
      {"open brackets", path, page(page_of("[")), ""},
      {"images in links in images", path, page(page_of("![[](")), ""},
      {"stars and lines", path, page(page_of("*_")), ""},
      {"ticks of every length", path, page(ticks.substr(0, kPage)), ""},
      {"headings by underlines", path, page(page_of("a\n-\n")), ""},
      {"addresses defined and not used", path, page(page_of("[a]: b\n\n")), ""},
      {"entities", path, page(page_of("&amp;")), ""},
      {"hidden entities", path, page(page_of("&#8203;")), "yaml.hidden-character"},
  };
}

/// Runs `check` under the limits and gives the rules of its findings, or how it ended.
std::string found(const Hostile& input) {
  const Workshop shop;
  const fs::path path = shop.path() / input.path;
  fs::create_directories(path.parent_path());
  std::ofstream(path, std::ios::binary) << input.text;
  RunWith with;
  with.seconds = kSeconds;
#ifndef __SANITIZE_ADDRESS__
  with.memory = 256 * kMebibyte;  // an address sanitizer takes terabytes of it for itself
#endif
  with.keeps_data = true;
  const Run run = shop.run({"check", "--json", "--quiet"}, with);
  if (run.signal != 0) return "signal " + std::to_string(run.signal);
  if (run.code != 0 && run.code != 1) return "exit " + std::to_string(run.code) + ": " + run.err;
  std::string rules;
  const auto all = nlohmann::json::parse(run.out);
  for (const auto& finding : all.at("findings")) {
    CHECK(finding.at("message").get<std::string>().size() < 400);
    rules += (rules.empty() ? "" : ", ") + finding.at("rule").get<std::string>();
  }
  return rules;
}

}  // namespace

TEST_CASE("a hostile record ends in one finding within five seconds and 256 MiB") {
  for (const Hostile& input : records()) {
    DYNAMIC_SECTION(input.what) { CHECK(found(input) == input.rule); }
  }
}

TEST_CASE("a hostile page ends in one finding, or none where it is right, within five seconds and 256 MiB") {
  for (const Hostile& input : pages()) {
    DYNAMIC_SECTION(input.what) { CHECK(found(input) == input.rule); }
  }
}
