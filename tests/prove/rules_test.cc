// Every rule of prove by a case of its own, tests/rules/RULE.case: files that break it, with the places where it must speak,
// and files that only just do not. Written by hand from what the rules are there for; tests/rules/common stands beside each.

#include "support/catch.h"

#include <algorithm>
#include <fstream>
#include <iostream>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "prove/rule_files.h"
#include "report/samples.h"

using namespace benchleaf;

namespace {

std::string text_of(const std::string& path) { return test::DiskFiles(".").read(path).value_or(std::string()); }

/// Ids of the rules that the sources of prove name.
std::vector<std::string> rules_of_prove() {
  std::string sources;
  for (const auto& [path, text] : test::texts_below("src/prove")) sources += text;
  std::vector<std::string> ids;
  const std::string table = text_of("src/report/rules.def");
  const std::regex line("BENCHLEAF_RULE\\(([a-z0-9_]+), \"([^\"]+)\"");
  for (std::sregex_iterator at(table.begin(), table.end(), line), end; at != end; ++at) {
    if (sources.find("Rule::" + (*at)[1].str()) != std::string::npos) ids.push_back((*at)[2]);
  }
  return ids;
}

class Cases {
 public:
  Cases() : common_(test::texts_below("tests/rules/common")), schema_texts_(test::texts_below("schema")), schema_(schema_texts_) {
    common_.emplace("handbook.yaml", text_of("tests/cases/handbook.yaml"));
    overlay_head_ = text_of("tests/cases/overlay.yaml");
  }

  test::Checked check(const report::RuleSample::Half& half) const {
    test::FileTexts content = common_, schema, overlay;
    for (const auto& [path, text] : half.files) {
      if (path.substr(0, 7) == "schema/") {
        schema[path.substr(7)] = text;
      } else if (path.substr(0, 8) == "overlay/") {
        overlay[path.substr(8)] = text;
      } else {
        content[path] = text;
      }
    }
    if (!overlay.empty()) overlay.emplace("overlay.yaml", overlay_head_);
    if (schema.empty()) return test::Checked(schema_, content, overlay);
    schema.insert(schema_texts_.begin(), schema_texts_.end());
    return test::Checked(test::Checked::Schema(schema), content, overlay);
  }

 private:
  test::FileTexts common_;
  std::string overlay_head_;
  test::FileTexts schema_texts_;
  test::Checked::Schema schema_;
};

/// Where a rule spoke, as a case writes it.
std::vector<std::string> places(const test::Checked& checked, const std::string& rule) {
  std::vector<std::string> list;
  for (const auto& finding : checked.findings.all()) {
    if (report::rule_info(finding.rule).id != rule) continue;
    const std::string place = checked.place(finding.where);
    list.push_back(place.substr(0, 8) == "content/" ? place.substr(8) : place);
  }
  std::sort(list.begin(), list.end());
  return list;
}

/// Everything that is worse than a note, for the message of a failure.
std::string complaints(const test::Checked& checked) {
  std::string text;
  for (const auto& finding : checked.findings.all()) {
    if (finding.severity == report::Severity::note) continue;
    text += checked.place(finding.where) + " " + std::string(report::rule_info(finding.rule).id) + ": " + finding.message + "\n";
  }
  return text;
}

/// Rules that only a second record can settle: the right half of their case may still hold notes of the rule's kin.
bool clashes(const std::string& rule) {
  static const std::set<std::string> kClashes = {
      "number.unique",     "record.twin",        "cell.family",    "voice.meeting",     "voice.pair",
      "voice.pure-liquid", "link.number",        "module.supply",  "basis.kind",        "substance.number-twice",
      "range.order",       "gasket.proportion",  "mixture.signal", "mixture.pictogram", "mixture.statements",
      "substance.steps",   "flammable.category", "abrasive.order", "overlay.alias",     "overlay.same",
      "overlay.dropped"};
  return kClashes.count(rule) > 0;
}

}  // namespace

TEST_CASE("every rule of prove has a case, fails by it and passes by it") {
  const Cases cases;
  const auto rules = rules_of_prove();
  REQUIRE(rules.size() >= 80);
  for (const auto& rule : rules) {
    INFO(rule);
    const std::string text = text_of("tests/rules/" + rule + ".case");
    const auto sample = report::read_sample(text);
    REQUIRE(sample);
    CHECK(report::sample_text(rule) == text);
    const auto wrong = cases.check(sample->wrong);
    INFO("wrong:\n" << complaints(wrong));
    auto expected = sample->wrong.expected;
    std::sort(expected.begin(), expected.end());
    CHECK(places(wrong, rule) == expected);
    const auto right = cases.check(sample->right);
    CHECK(places(right, rule).empty());
    INFO("right:\n" << complaints(right));
    CHECK(complaints(right).empty());
    if (!clashes(rule)) continue;
    for (const auto& finding : wrong.findings.all()) {
      if (report::rule_info(finding.rule).id == rule) CHECK_FALSE(finding.notes.empty());
    }
  }
}

TEST_CASE("every case belongs to a rule") {
  const auto rules = rules_of_prove();
  int seen = 0;
  for (const auto& [path, text] : test::texts_below("tests/rules")) {
    if (path.find('/') != std::string::npos) continue;
    INFO(path);
    CHECK(std::find(rules.begin(), rules.end(), path.substr(0, path.rfind('.'))) != rules.end());
    ++seen;
  }
  CHECK(seen == static_cast<int>(rules.size()));
}

TEST_CASE("every rule says why it exists and what it rests on") {
  for (const auto& rule : report::all_rules()) {
    INFO(rule.id);
    CHECK(rule.reason.size() > 10);
    CHECK(rule.source.size() > 8);
  }
}

TEST_CASE("the records of the handbook break no rule") {
  const test::Checked checked(test::Checked::Schema(), test::texts_below("content"));
  CHECK(checked.base.all().size() > 400);
  CHECK(complaints(checked).empty());
  if (!complaints(checked).empty()) std::cerr << complaints(checked);
}
