// In: the classes of a part of a mixture, the table of generic limits. Out: the share from which the part classifies the whole,
// its own limit before the generic one.

#include "standards/mixture_limits.h"

#include <algorithm>
#include <utility>

#include "base/quantity.h"
#include "standards/table_view.h"

namespace benchleaf::standards {
namespace {

using Row = model::PublishedTable::Row;

constexpr double kNotCounted = 0;

/// The lowest specific limit of a part for a class, or nothing.
std::optional<double> specific_limit(const MixturePart& part, const std::string& family, std::string_view statement) {
  std::optional<double> lowest;
  for (const auto& line : part.hazards) {
    if (family_of(line.hazard_class) != family || line.statement != statement || !line.from) continue;
    if (!lowest || *line.from < *lowest) lowest = line.from;
  }
  return lowest;
}

/// STOT SE 3 is two effects, each counted with its own kind only.
std::string_view statement_that_counts(const LimitRule& rule) {
  return rule.gives == "STOT SE 3" ? std::string_view(rule.statement) : std::string_view();
}

}  // namespace

bool begins_with(std::string_view text, std::string_view start) { return text.substr(0, start.size()) == start; }

std::string family_of(const std::string& hazard_class) {
  constexpr std::string_view kCorrosive = "Skin Corr. 1";
  return begins_with(hazard_class, kCorrosive) ? std::string(kCorrosive) : hazard_class;
}

double percent_of(const Row& row, std::string_view column) {
  return cell_value(row, column, base::Unit::percent_by_mass).value_or(kNotCounted);
}

bool has_class(const MixturePart& part, const std::string& family, std::string_view statement) {
  return std::any_of(part.hazards.begin(), part.hazards.end(), [&](const HazardLine& line) {
    return family_of(line.hazard_class) == family && (statement.empty() || line.statement == statement);
  });
}

std::vector<LimitRule> generic_rules(const model::Tables& tables) {
  std::vector<LimitRule> rules;
  for (const auto& row : rows_of(tables, "generic-limits")) {
    const std::string& gives = cell_text(row, "gives");
    const std::string& statement = cell_text(row, "statement");
    auto found = std::find_if(rules.begin(), rules.end(),
                              [&](const LimitRule& rule) { return rule.gives == gives && rule.statement == statement; });
    if (found == rules.end()) found = rules.insert(rules.end(), LimitRule{gives, statement, {}});
    found->rows.push_back(&row);
  }
  return rules;
}

std::optional<PartLimit> limit_of(const MixturePart& part, const LimitRule& rule) {
  std::optional<PartLimit> lowest;
  for (const Row* row : rule.rows) {
    if (!has_class(part, cell_text(*row, "counts"), statement_that_counts(rule))) continue;
    const PartLimit limit{percent_of(*row, "limit"), percent_of(*row, "cut-off"), row};
    if (!lowest || limit.limit < lowest->limit) lowest = limit;
  }
  auto specific = specific_limit(part, rule.gives, rule.statement);
  // An entry that limits its corrosion and says nothing of the eye means both by the one limit.
  if (!specific && rule.gives == "Eye Dam. 1" && !has_class(part, "Eye Dam. 1", {})) {
    specific = specific_limit(part, "Skin Corr. 1", "H314");
  }
  if (!specific) return lowest;
  const bool own_cut_off = !lowest || *specific <= lowest->cut_off;
  return own_cut_off ? PartLimit{*specific, *specific, nullptr} : PartLimit{*specific, lowest->cut_off, lowest->row};
}

double factor_of(const MixturePart& part, const LimitRule& rule) {
  if (!begins_with(rule.gives, "Aquatic")) return 1;
  if (rule.gives == "Aquatic Chronic 4") return 1;  // annex I, table 4.1.2 adds these shares up as they are
  return rule.gives == "Aquatic Acute 1" ? part.m_acute : has_class(part, "Aquatic Chronic 1", {}) ? part.m_chronic : 1;
}

}  // namespace benchleaf::standards
