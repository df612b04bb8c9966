// Our shape engine against npm ajv 8: every record of the project, and 500 copies with slips of the pen. ajv's verdicts,
// which ajv_records.mjs writes down before this test runs, are the expected values.

#include "support/catch.h"

#include <fstream>
#include <map>
#include <string>

#include <nlohmann/json.hpp>

#include "read_support.h"

namespace {

using nlohmann::json;
using benchleaf::test::ReadText;

const json& verdicts() {
  static const json kVerdicts = [] {
    std::ifstream stream(AJV_VERDICTS);
    return json::parse(stream);
  }();
  return kVerdicts;
}

/// Dimensions of quantities are no part of JSON Schema, so ajv does not know them.
void drop_quantities(json& schema) {
  if (schema.is_object()) schema.erase("x-quantity");
  for (json& inner : schema) {
    if (inner.is_structured()) drop_quantities(inner);
  }
}

const benchleaf::read::Shape& shape(const std::string& kind) {
  static std::map<std::string, benchleaf::read::Shape> known;
  auto found = known.find(kind);
  if (found != known.end()) return found->second;
  std::ifstream stream("schema/shapes/" + kind + ".schema.json");
  json schema = json::parse(stream);
  drop_quantities(schema);
  auto compiled = benchleaf::test::shape_of(schema.dump(1, ' ', false));
  REQUIRE(compiled);
  return known.emplace(kind, std::move(*compiled)).first->second;
}

/// The verdict of our reader and engine on a text.
bool is_valid(const std::string& kind, const std::string& text) {
  ReadText read(text);
  if (!read.tree.root) return false;
  check_shape(shape(kind), *read.tree.root, read.tree.refused, read.findings);
  return !read.findings.has_errors();
}

int count_valid(const json& list) {
  int valid = 0;
  for (const json& one : list) {
    const bool ours = is_valid(one.at("kind"), one.at("text"));
    INFO(one.at("file") << "\n" << one.at("text").get<std::string>());
    CHECK(ours == one.at("valid").get<bool>());
    valid += ours ? 1 : 0;
  }
  return valid;
}

}  // namespace

TEST_CASE("ajv and our engine agree that every record of the project is valid") {
  const json& whole = verdicts().at("whole");
  CHECK(whole.size() > 400);
  CHECK(count_valid(whole) == static_cast<int>(whole.size()));
}

TEST_CASE("ajv and our engine agree on 500 damaged copies") {
  const json& damaged = verdicts().at("damaged");
  REQUIRE(damaged.size() == 500);
  const int valid = count_valid(damaged);
  // a slip may leave a record valid; both verdicts must have been put to the test
  CHECK(valid > 50);
  CHECK(valid < 450);
}
