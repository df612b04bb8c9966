#pragma once

#include <optional>
#include <string>
#include <utility>

#include "read/shape.h"
#include "read/yaml_reader.h"
#include "report/finding.h"

namespace benchleaf::test {

/// A text read as YAML, with what was found on the way.
struct ReadText {
  explicit ReadText(std::string words) : text(std::move(words)), tree(read::read_yaml({text, 0, 1}, findings)) {}
  std::string text;
  report::Findings findings;
  read::YamlTree tree;
};

/// `3:1 yaml.duplicate-key`: place and rule of a finding.
inline std::string place_and_rule(const report::Finding& finding) {
  return std::to_string(finding.where.line) + ":" + std::to_string(finding.where.column) + " " +
         std::string(report::rule_info(finding.rule).id);
}

/// All findings in the order they were raised, joined by `, `.
inline std::string places_and_rules(const report::Findings& findings) {
  std::string all;
  for (const report::Finding& finding : findings.all()) {
    if (!all.empty()) all += ", ";
    all += place_and_rule(finding);
  }
  return all;
}

/// A shape from its JSON; nothing where it has a fault.
inline std::optional<read::Shape> shape_of(const std::string& json) {
  ReadText read(json);
  if (!read.tree.root) return std::nullopt;
  return read::Shape::compile(*read.tree.root, read.findings);
}

}  // namespace benchleaf::test
