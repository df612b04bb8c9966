// The rule list and the collection of findings.
#include "report/finding.h"

#include <set>
#include <string>

#include "support/catch.h"

using namespace benchleaf;
using report::Finding;
using report::Findings;
using report::Rule;
using report::Severity;

TEST_CASE("every rule is named well and says why it exists", "[report]") {
  std::set<std::string> ids;
  for (const report::RuleInfo& info : report::all_rules()) {
    INFO("rule " << info.id);
    CHECK(ids.insert(std::string(info.id)).second);
    CHECK(&report::rule_info(info.rule) == &info);
    const std::size_t dot = info.id.find('.');
    REQUIRE(dot != std::string_view::npos);
    CHECK(dot > 0);
    CHECK(dot + 1 < info.id.size());
    CHECK(info.id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-.") == std::string_view::npos);
    CHECK(info.id.find('.', dot + 1) == std::string_view::npos);
    CHECK_FALSE(info.reason.empty());
    CHECK(info.reason.back() != '.');
    CHECK_FALSE(info.source.empty());
  }
  CHECK(ids.size() > 20);
}

TEST_CASE("a finding has the severity of its rule", "[report]") {
  Findings findings;
  findings.add(Rule::yaml_encoding, {}, "found bytes that are not UTF-8");
  findings.add(Rule::html_dead_link, {}, "found a link that leads nowhere").notes.push_back({{}, "the other half"});
  CHECK(findings.all().at(0).severity == Severity::error);
  CHECK(findings.all().at(1).severity == Severity::warning);
  CHECK(findings.all().at(1).notes.size() == 1);
  CHECK(findings.count(Severity::error) == 1);
  CHECK(findings.count(Severity::warning) == 1);
  CHECK(findings.count(Severity::note) == 0);
  CHECK(findings.has_errors());
  CHECK_FALSE(Findings().has_errors());
}

TEST_CASE("findings are ordered by path, line, column, rule, message", "[report]") {
  base::FileTable files;
  const base::FileId later = files.add("content/part/b.yaml", "");
  const base::FileId sooner = files.add("content/cell/a.yaml", "");
  Findings findings;
  findings.add(Rule::yaml_encoding, {later, 1, 1, 1}, "g");
  findings.add(Rule::yaml_size, {sooner, 2, 5, 1}, "f");
  findings.add(Rule::yaml_encoding, {sooner, 2, 3, 1}, "e");
  findings.add(Rule::yaml_encoding, {sooner, 1, 9, 1}, "d");
  findings.add(Rule::yaml_encoding, {sooner, 1, 9, 1}, "c");
  findings.add(Rule::yaml_size, {sooner, 1, 9, 1}, "b");
  findings.add(Rule::yaml_size, {}, "a");
  findings.sort(files);
  std::string order;
  for (const Finding& finding : findings.all()) order += finding.message;
  CHECK(order == "abcdefg");
}
