// Checks of what the shape engine says and where. Outside source: which values fit is JSON Schema draft-07 (the suite of
// schema_suite_test.cc); places and words are the rule of this house, counted by hand.

#include "support/catch.h"

#include <algorithm>
#include <string>
#include <vector>

#include "read_support.h"

using benchleaf::read::check_shape;
using benchleaf::read::Shape;
using benchleaf::read::ShapeReport;
using benchleaf::test::place_and_rule;
using benchleaf::test::places_and_rules;
using benchleaf::test::ReadText;
using benchleaf::test::shape_of;

namespace {

constexpr const char* kCell = R"({
  "type": "object", "required": ["id", "system", "size"], "additionalProperties": false,
  "properties": {
    "id": {"type": "string", "pattern": "^[a-z][a-z0-9-]*$", "examples": ["sr754w"], "description": "Name of the record."},
    "trade-number": {"type": "string", "pattern": "^[0-9]{3}$", "examples": ["393"]},
    "system": {"type": "string", "enum": ["alkaline", "silver-oxide", "zinc-air"], "examples": ["silver-oxide"]},
    "size": {
      "type": "object", "required": ["diameter", "height"], "additionalProperties": false,
      "properties": {
        "diameter": {"type": "string", "x-quantity": "length", "x-basis": true, "examples": ["7.9 mm"]},
        "height": {"type": "string", "x-quantity": "length", "x-basis": true, "examples": ["5.4 mm"]}
      }
    },
    "cells": {"type": "integer", "minimum": 2, "maximum": 9},
    "uses": {"type": "array", "minItems": 1, "maxItems": 3, "uniqueItems": true, "items": {"type": "string"}},
    "needs": {"type": "array", "items": {"type": "string", "x-ref": ["tool", "part"]}},
    "note": {"type": "string", "maxLength": 5},
    "lamp": {"type": "boolean"}
  }
})";

struct Checked {
  explicit Checked(const std::string& text, const std::string& schema = kCell) : read(text) {
    auto shape = shape_of(schema);
    REQUIRE(shape);
    REQUIRE(read.tree.root);
    report = check_shape(*shape, *read.tree.root, read.tree.refused, read.findings);
  }
  ReadText read;
  ShapeReport report;

  std::string only() const {
    CHECK(read.findings.all().size() == 1);
    if (read.findings.all().empty()) return {};
    const auto& finding = read.findings.all().front();
    return place_and_rule(finding) + ": " + finding.message + (finding.hint.empty() ? "" : " | " + finding.hint);
  }
};

const std::string kGood = "id: sr754w\nsystem: silver-oxide\nsize: { diameter: 7.9 mm, height: 5.4 mm }\n";

}  // namespace

TEST_CASE("a record that fits gives no finding, its references and the values that need a basis") {
  Checked checked(kGood + "needs: [swab, part/crystal]\n");
  CHECK(checked.read.findings.all().empty());
  CHECK(checked.report.unusable.empty());
  CHECK(checked.report.basis_paths == std::vector<std::string>{"size.diameter", "size.height"});
  REQUIRE(checked.report.references.size() == 2);
  CHECK(checked.report.references.at(1).path == "needs.1");
  CHECK(checked.report.references.at(1).text == "part/crystal");
  CHECK(checked.report.references.at(1).kinds == std::vector<std::string>{"tool", "part"});
  CHECK(checked.report.references.at(1).span.column == 15);
}

TEST_CASE("one slip gives one finding at the place of the slip") {
  struct Row {
    std::string what, text, expected;
  };
  const std::vector<Row> rows = {
      {"number for a text", kGood + "trade-number: 393\n",
       "4:15 shape.type: found the whole number 393, expected a text such as 393 | write it in quotes: \"393\""},
      {"misspelt key for a required one", "id: a\nsistem: alkaline\nsize: { diameter: 7.9 mm, height: 5.4 mm }\n",
       "2:1 shape.unknown-key: unknown key \"sistem\" | did you mean \"system\"?"},
      {"misspelt key inside", "id: a\nsystem: alkaline\nsize: { diametre: 7.9 mm, height: 5.4 mm }\n",
       "3:9 shape.unknown-key: unknown key \"diametre\" | did you mean \"diameter\"?"},
      {"strange key", kGood + "colour: red\n",
       "4:1 shape.unknown-key: unknown key \"colour\" | known here: cells, id, lamp, needs, note, size, system, trade-number or "
       "uses"},
      {"missing key of the record", "id: a\nsystem: alkaline\n", "1:1 shape.missing-key: the key \"size\" is missing | add it"},
      {"missing key of a part", "id: a\nsystem: alkaline\nsize: { diameter: 7.9 mm }\n",
       "3:7 shape.missing-key: the key \"height\" is missing | add it, for example height: 5.4 mm"},
      {"missing key of a part in lines", "id: a\nsystem: alkaline\nsize:\n  diameter: 7.9 mm\n",
       "4:3 shape.missing-key: the key \"height\" is missing | add it, for example height: 5.4 mm"},
      {"word outside the list", "id: a\nsystem: silver-oxid\nsize: { diameter: 7.9 mm, height: 5.4 mm }\n",
       "2:9 shape.choice: found the text \"silver-oxid\", expected alkaline, silver-oxide or zinc-air | did you mean "
       "silver-oxide?"},
      {"form of a code", "id: SR754W\nsystem: alkaline\nsize: { diameter: 7.9 mm, height: 5.4 mm }\n",
       "1:5 shape.pattern: found the text \"SR754W\", expected a text such as sr754w | Name of the record."},
      {"nothing for a text", kGood + "note:\n",
       "4:1 shape.type: found nothing, expected a text | write a value, or delete the line"},
      {"text for a list", kGood + "uses: watch\n",
       "4:7 shape.type: found the text \"watch\", expected a list | write it in brackets: [watch]"},
      {"quoted number", kGood + "cells: \"2\"\n",
       "4:8 shape.type: found the text \"2\", expected a whole number | take the quotes off"},
      {"below the least", kGood + "cells: 1\n", "4:8 shape.range: found the whole number 1, expected at least 2"},
      {"above the most", kGood + "cells: 10\n", "4:8 shape.range: found the whole number 10, expected at most 9"},
      {"fraction for a count", kGood + "cells: 2.5\n", "4:8 shape.type: found the number 2.5, expected a whole number"},
      {"yes for true", kGood + "lamp: yes\n", "4:7 shape.type: found the text \"yes\", expected true or false"},
      {"empty list", kGood + "uses: []\n", "4:7 shape.count: found 0 items, expected at least 1"},
      {"long list", kGood + "uses: [a, b, c, d]\n", "4:7 shape.count: found 4 items, expected at most 3"},
      {"twice in a list", kGood + "uses: [a, b, a]\n",
       "4:14 shape.unique: found the text \"a\" a second time in one list | take one out"},
      {"long text", kGood + "note: ééééé!\n", "4:7 shape.length: found a text of 6 characters, expected at most 5"},
      {"mapping for a text", kGood + "note: { a: b }\n", "4:7 shape.type: found a mapping, expected a text"},
  };
  for (const Row& row : rows) {
    DYNAMIC_SECTION(row.what) {
      Checked checked(row.text);
      CHECK(checked.only() == row.expected);
    }
  }
}

TEST_CASE("a bad quantity is told at the characters at fault") {
  auto with_height = [](const std::string& height) {
    return "id: a\nsystem: alkaline\nsize: { diameter: 7.9 mm, height: " + height + " }\n";
  };
  CHECK(places_and_rules(Checked(with_height("5.4 V")).read.findings) == "3:35 quantity.dimension");
  CHECK(places_and_rules(Checked(with_height("\"5,4 mm\"")).read.findings) == "3:36 quantity.number");
  CHECK(Checked(with_height("5.4")).only() ==
        "3:35 shape.type: found the number 5.4, expected a quantity (length) such as 5.4 mm | "
        "write it with its unit, such as 7.9 mm");
  CHECK(places_and_rules(Checked(with_height("\"5.4\"")).read.findings) == "3:36 quantity.unit");
  CHECK(places_and_rules(Checked(with_height("not stated")).read.findings).empty());
  Checked checked(with_height("\"5,4 mm\""));
  CHECK(checked.read.findings.all().front().hint.find("5.4 mm") != std::string::npos);
  CHECK(checked.report.unusable == std::vector<std::string>{"size.height"});
}

TEST_CASE("values that have had their finding are not told twice") {
  Checked checked(kGood +
                  "trade-number: 010\nnote: a\xE2\x80\x8B"
                  "bcdefgh\n");
  CHECK(places_and_rules(checked.read.findings) == "5:8 yaml.hidden-character, 4:15 yaml.leading-zero");
  CHECK(checked.report.unusable == std::vector<std::string>{"trade-number", "note"});
  Checked key(kGood + "no\xE2\x80\x8Bte: a\n");
  CHECK(places_and_rules(key.read.findings) == "4:3 yaml.hidden-character");
}

TEST_CASE("of several forms the one that was meant is spoken of") {
  const std::string steps = R"({"type": "array", "items": {"type": "object", "additionalProperties": false,
    "properties": {"do": {"type": "string"}, "caution": {"type": "string"}, "rinse": {"type": "boolean"}},
    "oneOf": [{"required": ["do"]}, {"required": ["caution"]}]}})";
  CHECK(Checked("- { do: wipe }\n- { caution: hot }\n", steps).read.findings.all().empty());
  CHECK(Checked("- { rinse: true }\n", steps).only() == "1:3 shape.missing-key: the key \"do\" is missing | add it");
  CHECK(Checked("- { do: wipe, caution: hot }\n", steps).only() ==
        "1:3 shape.form: found a mapping, which fits more than one of the forms allowed here");

  const std::string mixed = R"({"oneOf": [{"type": "integer", "minimum": 3}, {"type": "string", "enum": ["many", "few"]}]})";
  CHECK(Checked("2\n", mixed).only() == "1:1 shape.range: found the whole number 2, expected at least 3");
  CHECK(Checked("lots\n", mixed).only() == "1:1 shape.choice: found the text \"lots\", expected many or few");
  CHECK(Checked("[1]\n", mixed).only() == "1:1 shape.form: found a list of 1, expected a whole number or many or few");

  const std::string by_kind = R"({"type": "object", "properties": {"trust": {"enum": ["handbook", "memory"]}},
    "if": {"properties": {"trust": {"const": "handbook"}}, "required": ["trust"]}, "then": {"required": ["source"]}})";
  CHECK(Checked("trust: memory\n", by_kind).read.findings.all().empty());
  CHECK(Checked("trust: handbook\n", by_kind).only() == "1:1 shape.missing-key: the key \"source\" is missing | add it");
}

TEST_CASE("a shape that is not understood does not load") {
  struct Row {
    std::string schema, expected;
  };
  const std::vector<Row> rows = {
      {R"({"requird": ["a"]})", "1:2 shape.keyword"},
      {R"({"properties": {"a": {"typ": "string"}}})", "1:23 shape.keyword"},
      {R"({"type": "text"})", "1:10 shape.keyword-value"},
      {R"({"minLength": -1})", "1:15 shape.keyword-value"},
      {R"({"required": "a"})", "1:14 shape.keyword-value"},
      {R"({"uniqueItems": 1})", "1:17 shape.keyword-value"},
      {R"j({"pattern": "(?=a)"})j", "1:13 shape.pattern-subset"},
      {R"j({"patternProperties": {"(": {}}})j", "1:24 shape.pattern-subset"},
      {R"({"$ref": "#/definitions/none"})", "1:10 shape.reference"},
      {R"({"$ref": "other.json#/definitions/a"})", "1:10 shape.reference"},
      {R"({"$ref": "#"})", "1:1 shape.reference"},
      {R"({"allOf": [{"$ref": "#/definitions/a"}], "definitions": {"a": {"anyOf": [{"$ref": "#/definitions/a"}]}}})",
       "1:74 shape.reference"},
      {R"({"x-quantity": "lenght"})", "1:16 shape.keyword-value"},
      {R"({"x-ref": ["cell", "sell"]})", "1:11 shape.keyword-value"},
      {R"({"x-basis": "yes"})", "1:13 shape.keyword-value"},
      {R"({"properties": {"a": 1}})", "1:22 shape.keyword-value"},
  };
  for (const Row& row : rows) {
    DYNAMIC_SECTION(row.schema) {
      ReadText read(row.schema);
      REQUIRE(read.tree.root);
      CHECK_FALSE(Shape::compile(*read.tree.root, read.findings));
      CHECK(places_and_rules(read.findings) == row.expected);
    }
  }
  ReadText sibling(
      R"({"definitions": {"a": {"type": "string"}}, "properties": {"b": {"$ref": "#/definitions/a", "maxLength": 2}}})");
  CHECK(Shape::compile(*sibling.tree.root, sibling.findings));
  CHECK(places_and_rules(sibling.findings) == "1:92 shape.ignored-keyword");
  CHECK_FALSE(sibling.findings.has_errors());
}
