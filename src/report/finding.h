#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/span.h"

namespace benchleaf::report {

enum class Severity { note, warning, error };

/// `note`, `warning`, `error`
std::string_view severity_name(Severity severity);

/// One name per line of rules.def; the text form is `family.short-name` and is never used again for something else.
enum class Rule {
#define BENCHLEAF_RULE(name, id, severity, reason, source) name,
#include "report/rules.def"
#undef BENCHLEAF_RULE
};

struct RuleInfo {
  Rule rule;
  std::string_view id;      ///< `record.id-file`
  Severity severity;        ///< the default
  std::string_view reason;  ///< one line: why the rule exists
  std::string_view source;  ///< what it rests on: a standard, or "house rule"
};

const RuleInfo& rule_info(Rule rule);
const std::vector<RuleInfo>& all_rules();

/// The other half of a clash, or the source that speaks against the value.
struct Note {
  base::Span where;
  std::string text;
};

struct Finding {
  Rule rule;
  Severity severity = Severity::error;
  base::Span where;
  std::string message;  ///< lower case, what was found, then what was expected; no full stop
  std::string hint;     ///< one action, or empty
  std::vector<Note> notes;
};

/// Collects findings within a run. Stages only add; sorting, counting and printing happen once, at the end.
class Findings {
 public:
  /// Adds a finding with the default severity of its rule.
  Finding& add(Rule rule, base::Span where, std::string message, std::string hint = {});

  /// Takes over one finding of another collection.
  void add(Finding finding) { findings_.push_back(std::move(finding)); }

  /// Takes over all findings of another collection, after its own.
  void append(Findings other);

  const std::vector<Finding>& all() const { return findings_; }
  int count(Severity severity) const;
  bool has_errors() const { return count(Severity::error) > 0; }
  /// Orders by file path, line, column, rule; needed before printing.
  void sort(const base::FileTable& files);

 private:
  std::vector<Finding> findings_;
};

}  // namespace benchleaf::report
