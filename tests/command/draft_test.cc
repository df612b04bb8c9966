// draft: what it writes, and that every field of every shape is described, has an example that fits, and that a draft whose open
// fields are filled with these examples passes the shape. Outside source: the shapes are JSON Schema draft-07, read here as JSON.

#include "command/run_program.h"
#include "read/disk_files.h"
#include "support/catch.h"
#include "support/temporary_folder.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include <nlohmann/json.hpp>

#include "command/draft_text.h"
#include "model/record.h"
#include "read/content_reader.h"
#include "read/shape.h"
#include "read/yaml_reader.h"
#include "report/finding.h"

namespace fs = std::filesystem;
using namespace benchleaf;
using benchleaf::test::Ran;
using benchleaf::test::text_of;
using Json = nlohmann::ordered_json;

namespace {

std::string shape_text(const std::string& kind) { return text_of("schema/shapes/" + kind + ".schema.json"); }

std::string draft_of(const std::string& kind) {
  const auto shape = command::read_record_shape(shape_text(kind));
  REQUIRE(shape);
  return command::draft_text(*shape, "a-draft");
}

/// Every schema of a shape that stands for a value, with its path.
void each_field(const Json& schema, const std::string& path, const std::function<void(const Json&, const std::string&)>& visit) {
  visit(schema, path);
  for (const char* group : {"properties", "patternProperties"}) {
    if (!schema.contains(group)) continue;
    for (const auto& [name, child] : schema.at(group).items()) each_field(child, path + "." + name, visit);
  }
  if (schema.contains("items")) each_field(schema.at("items"), path + "[]", visit);
}

/// What a shape says of a text.
report::Findings judged(const std::string& schema, const std::string& text) {
  report::Findings findings;
  const auto root = read::read_yaml({schema, 0, 1}, findings);
  REQUIRE(root.root);
  const auto shape = read::Shape::compile(*root.root, findings);
  REQUIRE(shape);
  const auto tree = read::read_yaml({text, 0, 1}, findings);
  if (tree.root) read::check_shape(*shape, *tree.root, tree.refused, findings);
  return findings;
}

std::string first_fault(const report::Findings& findings) {
  for (const auto& finding : findings.all()) {
    if (finding.severity == report::Severity::error) return finding.message;
  }
  return {};
}

/// The draft as somebody fills it in who takes each example of the comments for the field or the entry beneath it.
std::string filled(const std::string& draft) {
  std::istringstream lines(draft);
  std::string text, example;
  for (std::string line; std::getline(lines, line);) {
    const std::size_t at = line.find("# Example: ");
    if (at != std::string::npos && line.find_first_not_of(" #") > at)
      example = line.substr(at + std::string("# Example: ").size());
    const bool comment = line.find_first_not_of(' ') != std::string::npos && line[line.find_first_not_of(' ')] == '#';
    const bool open = !comment && line != "---" && !line.empty() && (line.back() == ':' || line.back() == '-');
    if (open && !example.empty()) line += " " + example;
    if (!comment) example.clear();
    text += line + "\n";
  }
  return text;
}

/// The YAML of a draft: a page has it between two lines `---`.
std::string head_of(const std::string& draft) {
  if (draft.rfind("---\n", 0) != 0) return draft;
  return draft.substr(4, draft.find("\n---\n") - 3);
}

/// A folder with a content of one cell.
class Workplace {
 public:
  Workplace() {
    fs::copy("schema", path() / "schema", fs::copy_options::recursive);
    fs::copy("tests/cases/clean/content", path() / "content", fs::copy_options::recursive);
  }
  Ran run(const std::string& words) const { return test::run_program(path(), words); }
  const fs::path& path() const { return folder_.path(); }

 private:
  test::TemporaryFolder folder_{"draft"};
};

}  // namespace

TEST_CASE("every field of every shape is described; every scalar has an example, and it fits") {
  int fields = 0;
  for (const auto& entry : fs::directory_iterator("schema/shapes")) {
    const Json shape = Json::parse(text_of(entry.path()));
    each_field(shape, entry.path().filename().string(), [&fields](const Json& schema, const std::string& path) {
      INFO(path);
      ++fields;
      CHECK(schema.value("description", std::string()).size() > 6);  // more than a name said again
      const std::string type = schema.value("type", std::string());
      if (type == "object" || type == "array") return;
      REQUIRE(schema.contains("examples"));
      for (const Json& example : schema.at("examples")) {
        const Json whole = {{"type", "object"}, {"required", {"value"}}, {"properties", {{"value", schema}}}};
        CHECK(first_fault(judged(whole.dump(), Json{{"value", example}}.dump())).empty());
      }
    });
  }
  CHECK(fields > 800);
}

TEST_CASE("a shape refuses an example that does not fit it") {
  const std::string schema = R"({"type": "object", "properties": {"value": {"type": "string", "x-quantity": "length"}}})";
  CHECK_FALSE(first_fault(judged(schema, R"({"value": "7.9 V"})")).empty());
}

TEST_CASE("a draft of each kind, its open fields filled with their examples, passes the shape") {
  for (const model::Kind kind : model::all_kinds()) {
    const std::string name(model::kind_name(kind));
    INFO(name);
    const std::string draft = draft_of(name);
    CHECK_FALSE(first_fault(judged(shape_text(name), head_of(draft))).empty());  // open fields are no record yet
    const std::string record = head_of(filled(draft));
    INFO(record);
    CHECK(first_fault(judged(shape_text(name), record)).empty());
  }
}

TEST_CASE("a draft with the marks taken away from all its optional fields is YAML, and holds every field of the shape") {
  for (const model::Kind kind : model::all_kinds()) {
    const std::string name(model::kind_name(kind));
    INFO(name);
    std::istringstream lines(head_of(draft_of(name)));
    std::string text;
    for (std::string line; std::getline(lines, line);) {
      const bool closed = line.size() > 1 && line[0] == '#' && (line[1] != ' ' || line.find("  ") == 1);
      text += (closed ? line.substr(1) : line) + "\n";
    }
    report::Findings findings;
    const auto tree = read::read_yaml({text, 0, 1}, findings);
    INFO(text);
    REQUIRE(tree.root);
    CHECK(first_fault(findings).empty());
    for (const auto& [field, schema] : Json::parse(shape_text(name)).at("properties").items()) {
      INFO(field);
      CHECK(tree.root->find(field) != nullptr);
    }
  }
}

TEST_CASE("draft writes the file, with the line for editors first, required fields open and others behind a mark") {
  const Workplace place;
  const Ran ran = place.run("draft cell sr41w");
  CHECK(ran.code == 0);
  CHECK(ran.out.empty());
  const std::string text = text_of(place.path() / "content/cell/sr41w.yaml");
  CHECK(text.rfind("# yaml-language-server: $schema=../../schema/shapes/cell.schema.json\n", 0) == 0);
  CHECK(text.find("\nid: sr41w\n") != std::string::npos);
  CHECK(text.find("\ndesignation:\n") != std::string::npos);
  CHECK(text.find("\n  diameter:\n") != std::string::npos);
  CHECK(text.find("\n#trade-number: \"393\"\n") != std::string::npos);
  CHECK(text.find("\ndesignation:\n") < text.find("\n#short: SR48\n"));
  CHECK(place.run("draft cell sr41w --stdout").code == 1);
  CHECK(place.run("draft page my-page").code == 0);
  CHECK(text_of(place.path() / "content/page/my-page.md").rfind("---\n# yaml-language-server: $schema=", 0) == 0);
}

TEST_CASE("draft --stdout writes nothing to the disk") {
  const Workplace place;
  const Ran ran = place.run("draft tool plastic-tweezers --stdout");
  CHECK(ran.code == 0);
  CHECK(ran.out.find("id: plastic-tweezers\n") != std::string::npos);
  CHECK_FALSE(fs::exists(place.path() / "content/tool"));
}

TEST_CASE("draft refuses an id that exists, an alias too, and leaves that record as it is") {
  const Workplace place;
  const std::string before = text_of(place.path() / "content/cell/sr754w.yaml");
  const Ran ran = place.run("draft cell sr754w");
  CHECK(ran.code == 1);
  CHECK(ran.err == "benchleaf: cell/sr754w exists: choose another id, or change that record\n");
  CHECK(text_of(place.path() / "content/cell/sr754w.yaml") == before);
  CHECK(place.run("draft cell old-393").code == 1);
  std::ofstream(place.path() / "content/cell/broken.yaml") << "{";
  CHECK(place.run("draft cell broken").code == 1);
}

TEST_CASE("draft: a bad id, an unknown kind, no folder: one line and exit 2") {
  const Workplace place;
  for (const char* words : {"draft cell SR754W", "draft cell a--b", "draft cell ../x", "draft cel sr41w", "draft cell",
                            "draft cell sr41w --content nowhere", "draft cell sr41w --schema nowhere"}) {
    const Ran ran = place.run(words);
    INFO(words << ": " << ran.err);
    CHECK(ran.code == 2);
    CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
    CHECK(ran.out.empty());
  }
  CHECK(place.run("draft cel sr41w").err.find("did you mean cell?") != std::string::npos);
  fs::create_directories(place.path() / "content/term");
  fs::create_directory(place.path() / "content/term/taken.yaml");  // a folder in the place of the file
  CHECK(place.run("draft term taken").code != 0);
  CHECK(fs::is_directory(place.path() / "content/term/taken.yaml"));
  std::vector<std::string> left;
  for (const auto& entry : fs::directory_iterator(place.path() / "content/term")) left.push_back(entry.path().filename());
  CHECK(left == std::vector<std::string>{"taken.yaml"});
}
