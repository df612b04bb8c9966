// In: the id of a rule. Out: what it is for, what it rests on, and its own case as a wrong and a right sample.

#include "command/explain.h"

#include <algorithm>
#include <vector>

#include "base/id.h"
#include "base/number.h"
#include "report/finding.h"
#include "report/samples.h"

namespace benchleaf::command {
namespace {

using report::RuleSample;

/// Lines of a file around one of them, with a mark before it; 0 marks none.
std::string lines_around(const std::string& text, int marked) {
  constexpr int kBefore = 6, kAfter = 2;
  std::string out;
  int line = 1;
  for (std::size_t at = 0; at < text.size(); ++line) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const bool near = marked == 0 || (line >= marked - kBefore && line <= marked + kAfter);
    if (near) out += (line == marked ? "  > " : "    ") + text.substr(at, end - at) + "\n";
    at = end + 1;
  }
  return out;
}

const std::string* file_of(const RuleSample::Half& half, const std::string& path) {
  for (const auto& [name, text] : half.files) {
    if (name == path) return &text;
  }
  return nullptr;
}

std::string sample_lines(const RuleSample& sample) {
  const std::string& place = sample.wrong.expected.front();
  const std::string path = place.substr(0, place.find(':'));
  const std::size_t colon = path.size() + 1;
  const auto line = base::parse_decimal(place.substr(colon, place.find(':', colon) - colon));
  std::string out;
  if (const auto* text = file_of(sample.wrong, path)) {
    out += "\nWrong, in " + path + ":\n" + lines_around(*text, static_cast<int>(line.value_or(0)));
  }
  const auto* right = file_of(sample.right, path);
  // What was to be added may stand in a file of its own.
  const auto& [other, other_text] = sample.right.files.back();
  if (right != nullptr && (file_of(sample.wrong, path) == nullptr || *right != *file_of(sample.wrong, path))) {
    out += "\nRight:\n" + lines_around(*right, 0);
  } else {
    out += "\nRight, with " + other + ":\n" + lines_around(other_text, 0);
  }
  return out;
}

const report::RuleInfo* rule_named(std::string_view id) {
  for (const auto& rule : report::all_rules()) {
    if (rule.id == id) return &rule;
  }
  return nullptr;
}

}  // namespace

std::optional<std::string> explain_rule(std::string_view id) {
  const auto* rule = rule_named(id);
  if (rule == nullptr) return std::nullopt;
  std::string out = std::string(rule->id) + " (" + std::string(report::severity_name(rule->severity)) + ")\n";
  out += "Reason: " + std::string(rule->reason) + "\n";
  out += "Source: " + std::string(rule->source) + "\n";
  if (const auto sample = report::read_sample(report::sample_text(id))) out += sample_lines(*sample);
  return out;
}

std::string nearest_rule(std::string_view id) {
  std::vector<std::string> ids;
  for (const auto& rule : report::all_rules()) ids.emplace_back(rule.id);
  return base::nearest_word(id, ids);
}

}  // namespace benchleaf::command
