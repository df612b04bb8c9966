// Findings as lines for a terminal, and as JSON. The expected texts follow the form that the design lays down.
#include "report/print.h"

#include <algorithm>
#include <string>

#include <nlohmann/json.hpp>
#include "support/catch.h"

#include "report/json.h"

using namespace benchleaf;
using report::Findings;
using report::Rule;

namespace {

struct Sample {
  base::FileTable files;
  Findings findings;
  base::FileId cell = files.add("content/cell/x.yaml", "id: x\nnominal: 1,35 V\nsize: µµ 電池 bad\n");
  base::FileId source = files.add("content/source/y.yaml", "title: Y\n");
};

}  // namespace

TEST_CASE("a finding prints its place, line, caret, hint and notes", "[report]") {
  Sample sample;
  sample.findings.add(Rule::yaml_number_form, {sample.cell, 2, 10, 4}, "found a comma in a number (1,35)", "1.35 V")
      .notes.push_back({{sample.source, 1, 8, 1}, "the source says 1.35 V"});
  CHECK(report::findings_text(sample.findings, sample.files) ==
        "content/cell/x.yaml:2:10: error: found a comma in a number (1,35) [yaml.number-form]\n"
        "    nominal: 1,35 V\n"
        "             ^~~~\n"
        "  hint: 1.35 V\n"
        "  content/source/y.yaml:1:8: note: the source says 1.35 V\n"
        "    title: Y\n"
        "           ^\n"
        "1 error\n");
}

TEST_CASE("the caret stands under its character in a line of wide letters", "[report]") {
  Sample sample;
  // column 13 in characters; the two ideographs before it take two columns each: 6 + 2 + 1 + 4 + 1 = 14 columns
  sample.findings.add(Rule::yaml_encoding, {sample.cell, 3, 13, 3}, "m");
  sample.findings.add(Rule::yaml_encoding, {sample.cell, 3, 10, 2}, "m");
  CHECK(report::findings_text(sample.findings, sample.files) ==
        "content/cell/x.yaml:3:13: error: m [yaml.encoding]\n"
        "    size: µµ 電池 bad\n"
        "    " +
            std::string(14, ' ') +
            "^~~\n"
            "content/cell/x.yaml:3:10: error: m [yaml.encoding]\n"
            "    size: µµ 電池 bad\n"
            "    " +
            std::string(9, ' ') +
            "^~~~\n"
            "2 errors\n");
}

TEST_CASE("a finding of a whole file, of no file and past the end has no caret", "[report]") {
  Sample sample;
  sample.findings.add(Rule::yaml_size, {sample.cell, 0, 0, 0}, "a");
  sample.findings.add(Rule::html_dead_link, {}, "b");
  sample.findings.add(Rule::yaml_size, {sample.cell, 900, 2, 1}, "c");
  sample.findings.add(Rule::yaml_size, {sample.cell, 1, 900, 1}, "d");
  CHECK(report::findings_text(sample.findings, sample.files) ==
        "content/cell/x.yaml: error: a [yaml.size]\n"
        "warning: b [html.dead-link]\n"
        "content/cell/x.yaml:900:2: error: c [yaml.size]\n"
        "content/cell/x.yaml:1:900: error: d [yaml.size]\n"
        "3 errors, 1 warning\n");
}

TEST_CASE("a long line is cut around the caret", "[report]") {
  base::FileTable files;
  const base::FileId file = files.add("f", std::string(500, 'a') + "X" + std::string(500, 'b'));
  Findings findings;
  findings.add(Rule::yaml_encoding, {file, 1, 501, 1}, "m");
  const std::string text = report::findings_text(findings, files);
  CHECK(text == "f:1:501: error: m [yaml.encoding]\n    …" + std::string(39, 'a') + "X" + std::string(58, 'b') + "…\n    " +
                    std::string(40, ' ') + "^\n1 error\n");
}

TEST_CASE("what could steer a terminal is replaced everywhere", "[report]") {
  base::FileTable files;
  const base::FileId file = files.add("f\x1b[2J",
                                      "a\t\x1b[31mb\xE2\x80\xAE"
                                      "c\xFF");
  Findings findings;
  findings.add(Rule::yaml_encoding, {file, 1, 3, 1}, "m\nn\x07", "h\r").notes.push_back({{}, "n\x9b"});
  const std::string bad = "\xEF\xBF\xBD";
  CHECK(report::findings_text(findings, files) == "f" + bad + "[2J:1:3: error: m" + bad + "n" + bad + " [yaml.encoding]\n    a " +
                                                      bad + "[31mb" + bad + "c" + bad + "\n      ^\n  hint: h" + bad +
                                                      "\n  note: n" + bad + "\n1 error\n");
}

TEST_CASE("colour is added only when asked for", "[report]") {
  Sample sample;
  sample.findings.add(Rule::yaml_number_form, {sample.cell, 2, 10, 4}, "m", "h");
  CHECK(report::findings_text(sample.findings, sample.files).find('\x1b') == std::string::npos);
  std::string coloured = report::findings_text(sample.findings, sample.files, {true, true});
  CHECK(coloured.find("\x1b[1;31merror:\x1b[0m") != std::string::npos);
  while (coloured.find('\x1b') != std::string::npos) {
    const std::size_t at = coloured.find('\x1b');
    coloured.erase(at, coloured.find('m', at) + 1 - at);
  }
  CHECK(coloured == report::findings_text(sample.findings, sample.files));
}

TEST_CASE("at most 50 findings of a rule and file are printed, all are counted", "[report]") {
  Sample sample;
  for (int i = 0; i < 53; ++i) sample.findings.add(Rule::yaml_encoding, {sample.cell, 0, 0, 0}, "m");
  for (int i = 0; i < 50; ++i) sample.findings.add(Rule::yaml_encoding, {sample.source, 0, 0, 0}, "m");
  for (int i = 0; i < 51; ++i) sample.findings.add(Rule::html_dead_link, {}, "m");
  const std::string text = report::findings_text(sample.findings, sample.files);
  CHECK(std::count(text.begin(), text.end(), '\n') == 50 + 50 + 50 + 2 + 1);
  CHECK(text.find("\n3 more of [yaml.encoding] in content/cell/x.yaml not shown\n") != std::string::npos);
  CHECK(text.find("\n1 more of [html.dead-link] not shown\n") != std::string::npos);
  CHECK(text.find("\n103 errors, 51 warnings\n") != std::string::npos);
}

TEST_CASE("no findings, no text", "[report]") {
  CHECK(report::findings_text({}, {}, {true, true}).empty());
  CHECK(report::count_text({}) == "no problems");
}

TEST_CASE("JSON carries every finding in order", "[report]") {
  Sample sample;
  sample.findings.add(Rule::yaml_number_form, {sample.cell, 2, 10, 4}, "found \"1,35\"", "1.35 V")
      .notes.push_back({{sample.source, 1, 8, 1}, "n"});
  sample.findings.add(Rule::html_dead_link, {}, "bad \xFF byte");
  const std::string text = report::findings_json(sample.findings, sample.files);
  CHECK(text.back() == '\n');
  const auto root = nlohmann::ordered_json::parse(text);
  REQUIRE(root.size() == 1);
  REQUIRE(root.at("findings").size() == 2);
  const auto& first = root.at("findings").at(0);
  std::string keys;
  for (const auto& member : first.items()) keys += member.key() + " ";
  CHECK(keys == "rule severity file line column message hint notes ");
  CHECK(first.at("rule") == "yaml.number-form");
  CHECK(first.at("severity") == "error");
  CHECK(first.at("file") == "content/cell/x.yaml");
  CHECK(first.at("line") == 2);
  CHECK(first.at("column") == 10);
  CHECK(first.at("message") == "found \"1,35\"");
  CHECK(first.at("hint") == "1.35 V");
  CHECK(first.at("notes").at(0).at("file") == "content/source/y.yaml");
  CHECK(first.at("notes").at(0).at("text") == "n");
  CHECK(root.at("findings").at(1).at("file") == "");
  CHECK(root.at("findings").at(1).at("message") == "bad \xEF\xBF\xBD byte");
  CHECK(report::findings_json({}, {}).find("\"findings\": []") != std::string::npos);
}
