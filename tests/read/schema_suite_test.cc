// Runs the required draft-07 tests of the JSON Schema Test Suite (Debian package json-schema-test-suite) through the
// shape engine, by way of the YAML reader. The suite's own verdicts are the expected values.

#include "support/catch.h"

#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <set>
#include <string>

#include <nlohmann/json.hpp>

#include "read_support.h"

namespace {

using nlohmann::json;
namespace fs = std::filesystem;
using benchleaf::test::ReadText;

/// Groups of the suite that lie outside what shapes may say; all else must pass.
const std::map<std::string, std::string>& left_out() {
  static const std::string kBase = "shapes refer to definitions of their own file, never by a base address";
  static const std::string kKey = "definitions stand under `definitions`; another key in a schema is an error";
  static const std::map<std::string, std::string> kLeftOut = {
      {"ref.json: escaped pointer ref", kKey},
      {"ref.json: Recursive references between schemas", kBase},
  };
  return kLeftOut;
}

bool is_left_out(const std::string& file, const std::string& group) {
  return file == "refRemote.json" || left_out().count(file + ": " + group) > 0;
}

json parsed_file(const fs::path& path) {
  std::ifstream stream(path);
  return json::parse(stream);
}

/// The schema of a group. Where it is nothing but a reference to the draft-07 meta-schema, which lies at a remote address,
/// the meta-schema itself from Debian's python3-jsonschema.
json schema_of(const json& group) {
  static const json kMetaReference = {{"$ref", "http://json-schema.org/draft-07/schema#"}};
  const json& schema = group.at("schema");
  return schema == kMetaReference ? parsed_file(JSON_META_SCHEMA) : schema;
}

/// Whether the engine finds nothing against `data`.
bool accepts(const benchleaf::read::Shape& shape, const json& data) {
  ReadText read(data.dump(1, ' ', false));
  REQUIRE(read.tree.root);
  benchleaf::report::Findings findings;  // those of the engine alone: the suite has texts with characters no record may have
  benchleaf::read::check_shape(shape, *read.tree.root, {}, findings);
  return !findings.has_errors();
}

}  // namespace

TEST_CASE("required draft-07 tests of the JSON Schema Test Suite") {
  int passed = 0, left = 0;
  std::set<std::string> failed;
  std::set<fs::path> paths;
  for (const auto& entry : fs::directory_iterator(JSON_SCHEMA_SUITE)) {
    if (entry.path().extension() == ".json") paths.insert(entry.path());
  }
  REQUIRE_FALSE(paths.empty());
  for (const fs::path& path : paths) {
    const std::string file = path.filename().string();
    for (const json& group : parsed_file(path)) {
      const std::string name = group.at("description");
      if (is_left_out(file, name)) {
        left += static_cast<int>(group.at("tests").size());
        continue;
      }
      ReadText schema(schema_of(group).dump(1, ' ', false));
      REQUIRE(schema.tree.root);
      auto shape = benchleaf::read::Shape::compile(*schema.tree.root, schema.findings);
      for (const json& test : group.at("tests")) {
        const std::string full = file + ": " + name + ": " + test.at("description").get<std::string>();
        const bool right = shape && accepts(*shape, test.at("data")) == test.at("valid").get<bool>();
        passed += right ? 1 : 0;
        if (!right) failed.insert(full);
      }
    }
  }
  for (const std::string& name : failed) UNSCOPED_INFO("failed: " << name);
  CHECK(failed.empty());
  CHECK(passed == 400);
  CHECK(left == 23);  // of the 423 that version 2.0.0 of the suite has
}

TEST_CASE("the shapes of this project keep to the keywords whose messages say what to write") {
  static const std::set<std::string> kKept = {"$schema",
                                              "title",
                                              "description",
                                              "examples",
                                              "type",
                                              "enum",
                                              "const",
                                              "required",
                                              "properties",
                                              "pattern",
                                              "minLength",
                                              "maxLength",
                                              "minimum",
                                              "items",
                                              "maximum",
                                              "minItems",
                                              "maxItems",
                                              "additionalProperties",
                                              "if",
                                              "then",
                                              "else",
                                              "oneOf",
                                              "x-ref",
                                              "x-basis",
                                              "uniqueItems",
                                              "x-quantity",
                                              "patternProperties",
                                              "minProperties",
                                              "maxProperties",
                                              "not"};
  std::set<std::string> others;
  int schemas = 0;
  std::function<void(const json&)> look = [&](const json& schema) {
    if (!schema.is_object()) return;
    ++schemas;
    for (const auto& [keyword, value] : schema.items()) {
      if (kKept.count(keyword) == 0) others.insert(keyword);
      const bool by_name = keyword == "properties" || keyword == "patternProperties";
      if (by_name || keyword == "oneOf") {
        for (const json& inner : value) look(inner);
      } else if (keyword != "const" && keyword != "examples" && keyword != "enum") {
        look(value);
      }
    }
  };
  for (const auto& entry : fs::directory_iterator("schema/shapes")) look(parsed_file(entry.path()));
  CHECK(schemas > 500);
  CHECK(others.empty());
}

TEST_CASE("the shapes of this project are schemas by the draft-07 meta-schema") {
  ReadText meta(parsed_file(JSON_META_SCHEMA).dump(1, ' ', false));
  REQUIRE(meta.tree.root);
  auto shape = benchleaf::read::Shape::compile(*meta.tree.root, meta.findings);
  REQUIRE(shape);
  int count = 0;
  for (const auto& entry : fs::directory_iterator("schema/shapes")) {
    INFO(entry.path().filename());
    CHECK(accepts(*shape, parsed_file(entry.path())));
    ++count;
  }
  CHECK(count >= 20);
}
