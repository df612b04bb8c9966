#pragma once

#include <string>
#include <vector>

#include "query/answer.h"
#include "query/pairs.h"

namespace benchleaf::query {

/// Records, pairs and calculators as answers.
class Describer {
 public:
  Describer(const World& world, PageOf page_of) : world_(world), page_of_(std::move(page_of)) {}

  Answer record(const model::Record& record) const;
  /// Verdicts of one liquid on all that the query's other name can mean; those of several liquids are several answers.
  std::vector<Answer> pair(const AskedPair& pair) const;
  Answer calculator(std::string_view name) const;
  /// Two cells side by side.
  std::vector<ComparedLine> compared(const Answer& one, const Answer& other) const;

 private:
  void add_cell(const model::Cell& cell, Answer& out) const;
  std::string system_name(const model::Cell& cell) const;
  std::vector<AnswerVerdict> verdicts_about(const model::Record& record) const;
  Answer unlisted(const AskedPair& pair) const;

  World world_;
  PageOf page_of_;
};

}  // namespace benchleaf::query
