// In: findings as the stages raise them. Out: the same in their final order, counted; and what is known about each rule.
#include "report/finding.h"

#include <algorithm>
#include <iterator>
#include <tuple>
#include <utility>

namespace benchleaf::report {

const std::vector<RuleInfo>& all_rules() {
  static const std::vector<RuleInfo> all = {
#define BENCHLEAF_RULE(name, id, severity, reason, source) {Rule::name, id, Severity::severity, reason, source},
#include "report/rules.def"
#undef BENCHLEAF_RULE
  };
  return all;
}

const RuleInfo& rule_info(Rule rule) { return all_rules().at(static_cast<std::size_t>(rule)); }

std::string_view severity_name(Severity severity) {
  switch (severity) {
    case Severity::note: return "note";
    case Severity::warning: return "warning";
    case Severity::error: return "error";
  }
  return {};
}

Finding& Findings::add(Rule rule, base::Span where, std::string message, std::string hint) {
  findings_.push_back({rule, rule_info(rule).severity, where, std::move(message), std::move(hint), {}});
  return findings_.back();
}

void Findings::append(Findings other) {
  findings_.insert(findings_.end(), std::make_move_iterator(other.findings_.begin()),
                   std::make_move_iterator(other.findings_.end()));
}

int Findings::count(Severity severity) const {
  return static_cast<int>(std::count_if(findings_.begin(), findings_.end(),
                                        [severity](const Finding& finding) { return finding.severity == severity; }));
}

void Findings::sort(const base::FileTable& files) {
  const auto key = [&files](const Finding& finding) {
    const base::Span& where = finding.where;
    const std::string_view path = where.file == base::kNoFile ? std::string_view() : std::string_view(files.path(where.file));
    // message last: two findings of one rule at one place keep the same order whoever raised them first
    return std::tuple(path, where.line, where.column, finding.rule, std::string_view(finding.message));
  };
  std::stable_sort(findings_.begin(), findings_.end(),
                   [&key](const Finding& one, const Finding& other) { return key(one) < key(other); });
}

}  // namespace benchleaf::report
