// Checks of the YAML subset. Outside source: YAML 1.2.2 (yaml.org), sections named at each check; what the subset
// refuses beyond that is the rule of this house, and its line and column were counted by hand.

#include "support/catch.h"

#include <string>

#include "read_support.h"

using benchleaf::model::Node;
using benchleaf::model::NodeType;
using benchleaf::test::places_and_rules;
using benchleaf::test::ReadText;

namespace {

struct Refusal {
  std::string what;
  std::string text;
  std::string expected;
};

/// Rows with one finding after which there is no tree.
const std::vector<Refusal>& fatal_refusals() {
  static const std::vector<Refusal> kRows = {
      {"anchor", "a: &x 1\nb: 2\n", "1:4 yaml.anchor"},
      {"alias without anchor", "a: 1\nb: *x\n", "2:4 yaml.alias"},
      {"anchor on a mapping", "a: &x\n  b: 1\n", "1:4 yaml.anchor"},
      {"anchor that holds itself", "&x\n- *x\n", "1:1 yaml.anchor"},
      {"tag", "a: 1\nb: !!str 2\n", "2:4 yaml.tag"},
      {"local tag on a list", "a: !mine [1]\n", "1:4 yaml.tag"},
      {"tag of no name", "a: ! 1\n", "1:4 yaml.tag"},
      {"second document", "a: 1\n---\nb: 2\n", "2:1 yaml.second-document"},
      {"text after the document", "[a]\n)\n", "2:1 yaml.second-document"},
      {"key after a list", "- a\nb: 1\n", "2:1 yaml.second-document"},
      {"directive", "%YAML 1.1\n---\na: 1\n", "1:1 yaml.directive"},
      {"list as a key", "? [a]\n: b\n", "1:3 yaml.key-form"},
      {"no key", "a: 1\n: x\n", "2:1 yaml.key-form"},
      {"nothing", "", "1:1 yaml.empty"},
      {"only a comment", "# nothing here\n", "1:1 yaml.empty"},
      {"tab in front of a line", "a:\n\tb: 1\n", "2:1 yaml.tab-indentation"},
      {"tab after spaces", "a:\n  \tb: 1\n", "2:3 yaml.tab-indentation"},
      {"open double quote", "a: \"x\nb: 3\n", "1:4 yaml.open-quote"},
      {"open double quote at the end", "a: 1\nb: \"x", "2:4 yaml.open-quote"},
      {"open quote closed by the next", "a: \"x\nb: \"y\"\n", "1:4 yaml.open-quote"},
      {"open single quote", "a: 'x\nb: 'y'\n", "1:4 yaml.open-quote"},
      {"open quote in a list", "a:\n  - \"x\n  - y\n", "2:5 yaml.open-quote"},
      {"text after a closing quote", "a: \"x\" y\nb: 1\n", "1:8 yaml.syntax"},
      {"two colons", "a: b: c\n", "1:5 yaml.syntax"},
      {"key deeper than a finished one", "a: 1\n b: 2\n", "2:3 yaml.syntax"},
      {"line between two levels", "a:\n  - x\n y: 1\n", "3:2 yaml.syntax"},
      {"open bracket", "a: [1, 2\nb: 3\n", "1:4 yaml.syntax"},
      {"open brace", "a: {x: 1\nb: 2\n", "1:4 yaml.syntax"},
      {"closing bracket alone", "a: ]\n", "1:4 yaml.syntax"},
      {"reserved sign", "a: @x\n", "1:4 yaml.syntax"},
      {"unknown escape", "a: \"\\q\"\n", "1:5 yaml.syntax"},
      {"list on the line of its key", "a: - b\n", "1:4 yaml.syntax"},
      {"two commas", "a: [1, , 2]\n", "1:8 yaml.empty-item"},
      {"byte-order mark",
       "\xEF\xBB\xBF"
       "a: 1\n",
       "1:1 yaml.byte-order-mark"},
      {"Latin-1", "a: 1\nb: caf\xE9\n", "2:7 yaml.encoding"},
      {"surrogate in UTF-8", "a: \xED\xA0\x80\n", "1:4 yaml.encoding"},
      {"overlong slash", "a: \xC0\xAF\n", "1:4 yaml.encoding"},
      {"zero byte", std::string("a: 1\nb: \0x\n", 11), "2:4 yaml.control-character"},
      {"escape character", "a: \x1B[1m\n", "1:4 yaml.control-character"},
      {"lone carriage return", "a: 1\rb: 2\n", "1:5 yaml.control-character"},
  };
  return kRows;
}

const Node& member(const ReadText& read, std::string_view key) {
  REQUIRE(read.tree.root);
  const Node* node = read.tree.root->find(key);
  REQUIRE(node != nullptr);
  return *node;
}

std::string span_of(const Node& node) {
  return std::to_string(node.span.line) + ":" + std::to_string(node.span.column) + "+" + std::to_string(node.span.length);
}

}  // namespace

TEST_CASE("what the subset refuses gives one finding at its place and no tree") {
  for (const Refusal& row : fatal_refusals()) {
    DYNAMIC_SECTION(row.what) {
      ReadText read(row.text);
      CHECK(places_and_rules(read.findings) == row.expected);
      CHECK_FALSE(read.tree.root);
      REQUIRE_FALSE(read.findings.all().empty());
      CHECK_FALSE(read.findings.all().front().message.empty());
    }
  }
}

TEST_CASE("a character that cannot be seen spoils its value and nothing else") {
  const std::vector<Refusal> rows = {
      {"no-break space", "é: x\xC2\xA0y\n", "1:5 yaml.hidden-character"},
      {"zero-width space",
       "a: 39\xE2\x80\x8B"
       "3\n",
       "1:6 yaml.hidden-character"},
      {"right-to-left override",
       "a: \xE2\x80\xAE"
       "393\n",
       "1:4 yaml.hidden-character"},
      {"Cyrillic R in a code",
       "a: 1\nb: SR\xD0\xA0"
       "754\n",
       "2:4 yaml.mixed-script"},
      {"Greek O in a word", "a: z\xCE\xBFne\n", "1:4 yaml.mixed-script"},
      {"letter and accent apart", "a: cafe\xCC\x81\n", "1:1 yaml.composed"},
  };
  for (const Refusal& row : rows) {
    DYNAMIC_SECTION(row.what) {
      ReadText read(row.text + "last: fine\n");
      CHECK(places_and_rules(read.findings) == row.expected);
      CHECK(read.tree.refused.size() >= 1);
      CHECK(member(read, "last").text == "fine");
    }
  }
  ReadText key("a\xE2\x80\x8B: 1\n");
  CHECK(key.tree.refused.size() == 1);
}

TEST_CASE("a slip that leaves the rest readable keeps the tree") {
  SECTION("duplicate key: the first holds, with a note at it") {
    ReadText read("a: 1\nb: 2\na: 3\n");
    CHECK(places_and_rules(read.findings) == "3:1 yaml.duplicate-key");
    REQUIRE(read.findings.all().front().notes.size() == 1);
    CHECK(read.findings.all().front().notes.front().where.line == 1);
    CHECK(member(read, "a").text == "1");
    CHECK(read.tree.root->members.size() == 2);
  }
  SECTION("duplicate key in braces") {
    ReadText read("a: {b: 1, b: 2}\n");
    CHECK(places_and_rules(read.findings) == "1:11 yaml.duplicate-key");
  }
  SECTION("merge key") {
    ReadText read("a: 1\n<<: {b: 2}\n");
    CHECK(places_and_rules(read.findings) == "2:1 yaml.merge-key");
    CHECK(read.tree.root->members.size() == 1);
  }
  SECTION("numbers with a zero in front, at each place") {
    ReadText read("a: 010\nb: [1, -007.5]\nc: 0\nd: 0.5\ne: \"010\"\n");
    CHECK(places_and_rules(read.findings) == "1:4 yaml.leading-zero, 2:8 yaml.leading-zero");
    CHECK(read.tree.refused.size() == 2);
  }
  SECTION("forms of number that only programs use") {
    ReadText read("a: 0x1F\nb: 0o17\nc: .inf\nd: -.INF\ne: .nan\nf: 1e3\ng: 0xZZ\nh: +5\ni: .5\nj: 5.\n");
    CHECK(places_and_rules(read.findings) ==
          "1:4 yaml.number-form, 2:4 yaml.number-form, 3:4 yaml.number-form, 4:4 yaml.number-form, 5:4 yaml.number-form, "
          "8:4 yaml.number-form, 9:4 yaml.number-form, 10:4 yaml.number-form");
  }
  SECTION("a line in brackets that is not indented (YAML 1.2.2, example 7.13 against section 8.2)") {
    ReadText read("a: [1,\n2,\n3]\nb: [1,\n  2]\n");
    CHECK(places_and_rules(read.findings) == "2:1 yaml.indentation");
  }
}

TEST_CASE("plain scalars have the types of the core schema, YAML 1.2.2 section 10.3.2") {
  struct Row {
    std::string text;
    NodeType type;
  };
  const std::vector<Row> rows = {
      {"null", NodeType::null},    {"~", NodeType::null},        {"NULL", NodeType::null},         {"nULL", NodeType::string},
      {"true", NodeType::boolean}, {"False", NodeType::boolean}, {"TRUE", NodeType::boolean},      {"tRUE", NodeType::string},
      {"yes", NodeType::string},   {"no", NodeType::string},     {"on", NodeType::string},         {"off", NodeType::string},
      {"0", NodeType::integer},    {"-19", NodeType::integer},   {"12", NodeType::integer},        {"0.5", NodeType::number},
      {"-0.0", NodeType::number},  {"5.25", NodeType::number},   {"12e03", NodeType::number},      {"-2E+05", NodeType::number},
      {"1.5.2", NodeType::string}, {"1e", NodeType::string},     {"e3", NodeType::string},         {".", NodeType::string},
      {"-", NodeType::string},     {"12 mm", NodeType::string},  {"2026-11-25", NodeType::string}, {"12:30", NodeType::string},
      {"1_000", NodeType::string}, {"7,9", NodeType::string},
  };
  for (const Row& row : rows) {
    if (row.text == "-") continue;  // a lone dash begins a list
    DYNAMIC_SECTION(row.text) {
      ReadText read("a: " + row.text + "\nb: \"" + row.text + "\"\n");
      CHECK(read.findings.all().empty());
      CHECK(member(read, "a").type == row.type);
      CHECK(member(read, "a").text == row.text);
      CHECK(member(read, "b").type == NodeType::string);
      CHECK(member(read, "b").quoted);
    }
  }
}

TEST_CASE("every key and value knows its place in code points") {
  ReadText read(
      "# a comment\n"
      "größe: é y\n"
      "\"ö\": 'it''s'\n"
      "list:\n"
      "- \n"
      "- x\n"
      "empty:\n"
      "null: 3\n"
      "text: >-\n"
      "  folded\n"
      "  text\n"
      "flow: {a: [1, \"2\"]}\n");
  CHECK(places_and_rules(read.findings).empty());
  REQUIRE(read.tree.root);
  CHECK(span_of(*read.tree.root) == "2:1+5");
  CHECK(span_of(member(read, "größe")) == "2:8+3");
  CHECK(read.tree.root->members.at(1).key_span.length == 3);
  CHECK(span_of(member(read, "ö")) == "3:6+7");
  CHECK(member(read, "ö").text == "it's");
  CHECK(span_of(member(read, "list")) == "5:1+1");
  CHECK(member(read, "list").items.at(0).type == NodeType::null);
  CHECK(span_of(member(read, "list").items.at(0)) == "5:1+1");
  CHECK(span_of(member(read, "list").items.at(1)) == "6:3+1");
  CHECK(member(read, "empty").type == NodeType::null);
  CHECK(span_of(member(read, "empty")) == "7:1+5");
  CHECK(member(read, "null").text == "3");
  CHECK(member(read, "text").text == "folded text");
  CHECK(span_of(member(read, "text")) == "9:7+1");
  CHECK(span_of(member(read, "flow")) == "12:7+1");
  CHECK(span_of(*read.tree.root->at_path("flow.a.1")) == "12:15+3");
  CHECK(read.tree.root->at_path("flow.a.2") == nullptr);
  CHECK(read.tree.root->at_path("flow.b") == nullptr);
}

TEST_CASE("line ends of either kind, a document start and end, and comments change nothing") {
  ReadText read("---\r\na: 1 # one\r\n# two\r\nb: x#y\r\n...\r\n# end\r\n");
  CHECK(places_and_rules(read.findings).empty());
  CHECK(member(read, "a").text == "1");
  CHECK(member(read, "b").text == "x#y");
  CHECK(span_of(member(read, "b")) == "4:4+3");
}

TEST_CASE("units and words in one script each are no mixture") {
  ReadText read("a: 1.2 µA at 15 kΩ\nb: Часы SR754\nc: naïve Ångström\n");
  CHECK(places_and_rules(read.findings).empty());
}

TEST_CASE("limits on hostile input are findings") {
  SECTION("64 levels are read, 65 are not") {
    ReadText good(std::string(64, '[') + "1" + std::string(64, ']'));
    CHECK(places_and_rules(good.findings).empty());
    ReadText deep(std::string(65, '[') + "1" + std::string(65, ']'));
    CHECK(places_and_rules(deep.findings) == "1:65 yaml.depth");
  }
  SECTION("brackets without end") {
    ReadText read(std::string(200000, '['));
    REQUIRE(read.findings.all().size() == 1);
    CHECK(places_and_rules(read.findings) == "1:1 yaml.key-form");
    CHECK(places_and_rules(ReadText("a: " + std::string(200000, '[')).findings) == "1:5 yaml.key-form");
  }
  SECTION("dashes without end") {
    std::string text;
    for (int i = 0; i < 100000; ++i) text += "- ";
    CHECK(places_and_rules(ReadText(text).findings) == "1:129 yaml.depth");
  }
  SECTION("100,000 values") {
    std::string text = "a: [1";
    for (int i = 0; i < 100001; ++i) text += ",1";
    ReadText read(text + "]\n");
    REQUIRE(read.findings.all().size() == 1);
    CHECK(read.findings.all().front().where.line == 1);
    CHECK(benchleaf::report::rule_info(read.findings.all().front().rule).id == "yaml.nodes");
  }
  SECTION("more than a mebibyte") {
    ReadText read("a: " + std::string(1 << 20, 'x'));
    CHECK(places_and_rules(read.findings) == "1:1 yaml.size");
  }
  SECTION("an alias bomb stops at its first anchor") {
    ReadText read("a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n");
    CHECK(places_and_rules(read.findings) == "1:4 yaml.anchor");
  }
}

TEST_CASE("a stretch of lines counts from the line it begins on") {
  benchleaf::report::Findings findings;
  benchleaf::read::read_yaml({"a: 1\na: 2\n", 0, 20}, findings);
  CHECK(places_and_rules(findings) == "21:1 yaml.duplicate-key");
}
