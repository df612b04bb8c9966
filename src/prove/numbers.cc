// Rule about the numbers that cells are looked up by: one number means one cell of its system.

#include <map>
#include <string>
#include <utility>

#include "prove/checks.h"

namespace benchleaf::prove {
namespace {

struct Family {
  const char* path;
  const char* words;
  std::string model::Cell::*number;
};

constexpr Family kFamilies[] = {
    {"designation", "designation", &model::Cell::designation},
    {"trade-number", "trade number", &model::Cell::trade_number},
    {"consumer-number", "consumer number", &model::Cell::consumer_number},
};

}  // namespace

void check_numbers_are_unique(const Proof& proof) {
  for (const Family& family : kFamilies) {
    std::map<std::pair<std::string, std::string>, const model::Cell*> first;  // by system and number
    for (const auto& [id, cell] : proof.base.cells) {
      const std::string& number = cell.*family.number;
      if (number.empty() || !cell.usable(family.path) || !cell.usable("system")) continue;
      const auto [other, is_first] = first.emplace(std::pair(cell.system, number), &cell);
      if (is_first) continue;
      auto& finding =
          proof.findings.add(report::Rule::number_unique, cell.span_of(family.path),
                             std::string("the ") + family.words + " " + number + " belongs to two cells of this system",
                             "one of the two records is wrong, or they are one cell");
      finding.notes.push_back({other->second->span_of(family.path), "the other is " + other->second->reference()});
    }
  }
}

}  // namespace benchleaf::prove
