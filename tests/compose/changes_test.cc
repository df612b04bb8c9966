// What two states say differently, in memory: which entry of a list is which, what is a basis, what rounding hides. By hand.

#include "support/catch.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "compose/changes/changes.h"
#include "compose/changes/list_pairs.h"
#include "compose/real_book.h"

using namespace benchleaf;
using compose::Change;
using compose::ListEntry;

namespace {

/// `0-0 1-x x-1`: places in both lists, x for none.
std::string pairs(const std::vector<ListEntry>& before, const std::vector<ListEntry>& after) {
  std::string text;
  for (const auto& pair : compose::pair_entries(before, after)) {
    text += (text.empty() ? "" : " ") + (pair.before ? std::to_string(*pair.before) : "x") + "-" +
            (pair.after ? std::to_string(*pair.after) : "x");
  }
  return text;
}

std::vector<ListEntry> letters(const std::string& text) {
  std::vector<ListEntry> entries;
  for (const char c : text) entries.push_back({std::string(1, c), {}});
  return entries;
}

using Files = std::map<std::string, std::string>;

const char* const kHandbook =
    "title: A tiny handbook\nedition: \"1\"\ndate: 2026-11\nlanguage: en-GB\nformat: 1\npapers: [a4]\n"
    "chapters:\n  - { id: cells, number: 1, title: Cells, tab: Cells, kinds: [cell] }\n";

std::string cell(const std::string& basis) {
  return "id: sr754w\ndesignation: SR754W\nsystem: silver-oxide\nsize: { diameter: 7.9 mm, height: 5.4 mm }\nnominal: 1.55 V\n" +
         basis;
}

/// `basis size.diameter: memory -> trade`, a line each.
std::vector<std::string> stated(const Files& before, const Files& after) {
  const test::MadeBook one = test::book_of(before), other = test::book_of(after);
  REQUIRE_FALSE(one.findings.has_errors());
  REQUIRE_FALSE(other.findings.has_errors());
  const auto changes = compose::compare({one.records, one.tables, one.derived}, {other.records, other.tables, other.derived});
  std::vector<std::string> lines;
  for (const Change& change : changes.stated) {
    std::string fields;
    for (const auto& field : change.fields) fields += " " + field;
    lines.push_back(std::string(compose::how_name(change.how)) + " " + change.id + fields + ": " + change.before + " -> " +
                    change.after);
  }
  return lines;
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("entries of two lists: equal ones in order stand fast") {
  CHECK(pairs(letters("abc"), letters("abc")) == "0-0 1-1 2-2");
  CHECK(pairs(letters("ac"), letters("abc")) == "0-0 x-1 1-2");
  CHECK(pairs(letters("abc"), letters("ac")) == "0-0 1-x 2-1");
  CHECK(pairs(letters("abxcd"), letters("abycd")) == "0-0 1-1 2-2 3-3 4-4");  // one for one: the same entry, altered
  CHECK(pairs(letters("ab"), letters("ba")) == "0-x 1-0 x-1");
  CHECK(pairs({}, letters("a")) == "x-0");
  CHECK(pairs(letters("a"), {}) == "0-x");
  CHECK(pairs({}, {}).empty());
}

TEST_CASE("entries with a name are found by it, wherever they stand") {
  const std::vector<ListEntry> before = {{"brass, ok", "brass"}, {"glass, ok", "glass"}};
  const std::vector<ListEntry> after = {{"steel, ok", "steel"}, {"glass, never", "glass"}, {"brass, never", "brass"}};
  CHECK(pairs(before, after) == "x-0 1-1 0-2");
}

TEST_CASE("lists too long for the table of the longest run are still told in full") {
  std::vector<ListEntry> before, after;
  for (int i = 0; i < 3000; ++i) {
    before.push_back({"before " + std::to_string(i), {}});
    after.push_back({"after " + std::to_string(i), {}});
  }
  const auto found = compose::pair_entries(before, after);
  REQUIRE(found.size() == 3000);
  CHECK(found.back().before == 2999);
  CHECK(found.back().after == 2999);
}

TEST_CASE("a state says the same as itself") {
  const test::MadeBook& book = test::real_book();
  const compose::State state{book.records, book.tables, book.derived};
  CHECK(book.records.all().size() > 400);
  CHECK(compose::compare(state, state).empty());
}

TEST_CASE("a basis that covers the same values is the same, however it is written; another is told once for all it covers") {
  const Files whole = {{"handbook.yaml", kHandbook}, {"cell/sr754w.yaml", cell("basis:\n  size: { trust: memory }\n")}};
  Files parts = whole;
  parts["cell/sr754w.yaml"] = cell("basis:\n  size.diameter: { trust: memory }\n  size.height: { trust: memory }\n");
  CHECK(stated(whole, parts).empty());
  Files other = whole;
  other["cell/sr754w.yaml"] = cell("basis:\n  size: { trust: trade }\n");
  CHECK(stated(whole, other) == Lines{"basis cell/sr754w#basis.size.diameter size.diameter size.height: memory -> trade"});
  Files half = whole;
  half["cell/sr754w.yaml"] = cell("basis:\n  size.diameter: { trust: memory }\n  size.height: { trust: trade }\n");
  CHECK(stated(whole, half) == Lines{"basis cell/sr754w#basis.size.height size.height: memory -> trade"});
}

TEST_CASE("the file of the handbook is a record like others") {
  const Files before = {{"handbook.yaml", kHandbook}, {"cell/sr754w.yaml", cell("basis:\n  size: { trust: memory }\n")}};
  Files after = before;
  after["handbook.yaml"].replace(after["handbook.yaml"].find("\"1\""), 3, "\"2\"");
  CHECK(stated(before, after) == Lines{"altered handbook#edition: 1 -> 2"});
}

TEST_CASE("what takes the name of a removed record is not that record") {
  const Files before = {{"handbook.yaml", kHandbook},
                        {"cell/sr754w.yaml", cell("basis:\n  size: { trust: memory }\n")},
                        {"cell/lr754.yaml",
                         "id: lr754\ndesignation: LR754\nsystem: alkaline\n"
                         "size: { diameter: 7.9 mm, height: 5.4 mm }\nnominal: 1.5 V\nbasis:\n  size: { trust: memory }\n"}};
  Files after = before;
  after.erase("cell/lr754.yaml");
  after["cell/sr754w.yaml"] = cell("basis:\n  size: { trust: memory }\naliases: [lr754]\n");
  CHECK(stated(before, after) == Lines{"removed cell/lr754: LR754 -> ", "added cell/sr754w#aliases:  -> lr754"});
}
