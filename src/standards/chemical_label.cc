// In: classes or statements of a chemical. Out: what its label must say, with the omissions and precedences of the law.

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "standards/mixture.h"
#include "standards/table_view.h"

namespace benchleaf::standards {
namespace {

using Row = model::PublishedTable::Row;

const Row* class_row(const model::Tables& tables, const std::string& hazard_class, const std::string& statement) {
  for (const auto& row : rows_of(tables, "hazard-classes")) {
    const bool same_class = hazard_class.empty() || cell_text(row, "class") == hazard_class;
    if (same_class && cell_text(row, "statement") == statement) return &row;
  }
  return nullptr;
}

/// Statements that say no more than another one on the same label.
bool is_needless(const std::string& statement, const std::set<std::string>& all) {
  return (statement == "H318" && all.count("H314") > 0) || (statement == "H400" && all.count("H410") > 0);
}

/// The exclamation mark stands back where a stronger sign tells of the same organ.
bool mark_is_needless(const std::set<std::string>& signs, const std::set<std::string>& marked) {
  if (signs.count("GHS06") > 0) return true;
  const bool only_irritates = std::all_of(
      marked.begin(), marked.end(), [](const std::string& statement) { return statement == "H315" || statement == "H319"; });
  return signs.count("GHS05") > 0 && only_irritates;
}

/// Two statements that the label says as one: harm to water life at once and for long.
void merge(std::set<std::string>& statements, const model::Tables& tables) {
  for (const auto& row : rows_of(tables, "merged-statements")) {
    const std::string& one = cell_text(row, "one");
    const std::string& other = cell_text(row, "other");
    if (statements.count(one) == 0 || statements.count(other) == 0) continue;
    statements.erase(one);
    statements.erase(other);
    statements.insert(cell_text(row, "gives"));
  }
}

ChemicalLabel label_from(const std::vector<FoundClass>& classes, const model::Tables& tables) {
  ChemicalLabel label;
  std::set<std::string> statements, signs, marked;
  bool danger = false, warning = false;
  for (const auto& one : classes) statements.insert(one.statement);
  merge(statements, tables);
  for (const auto& one : classes) {
    if (is_needless(one.statement, statements)) continue;
    const Row* row = class_row(tables, one.hazard_class, one.statement);
    if (row == nullptr) continue;
    danger = danger || cell_text(*row, "signal") == "danger";
    warning = warning || cell_text(*row, "signal") == "warning";
    const std::string& sign = cell_text(*row, "pictogram");
    if (sign == "none") continue;
    signs.insert(sign);
    if (sign == "GHS07") marked.insert(one.statement);
  }
  if (mark_is_needless(signs, marked)) signs.erase("GHS07");
  for (const auto& statement : statements) {
    if (!is_needless(statement, statements)) label.statements.push_back(statement);
  }
  label.signal = danger ? "danger" : warning ? "warning" : "none";
  label.pictograms.assign(signs.begin(), signs.end());
  return label;
}

}  // namespace

ChemicalLabel label_of(const Classification& classification, bool all, const model::Tables& tables) {
  std::vector<FoundClass> classes;
  for (const auto& one : classification.classes) {
    if (all || one.sure) classes.push_back(one);
  }
  return label_from(classes, tables);
}

ChemicalLabel label_of(const std::vector<std::string>& statements, const model::Tables& tables) {
  std::vector<FoundClass> classes;
  for (const auto& statement : statements) classes.push_back({{}, statement, {}, true});
  return label_from(classes, tables);
}

}  // namespace benchleaf::standards
