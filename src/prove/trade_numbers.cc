// Rules about the numbers that the trade gives to cells, and the letters behind a size.

#include <string>
#include <variant>

#include "prove/cell_facts.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/designation.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using model::Cell;
using report::Rule;

void check_number(const Proof& proof, const Cell& cell, const char* path, const std::string& number, const char* column) {
  const auto* row = standards::row_of(proof.tables, "cell-trade-numbers", cell.designation);
  if (row == nullptr || number.empty() || !cell.usable(path) || conflict_about(cell, path) != nullptr) return;
  const std::string& expected = standards::cell_text(*row, column);
  if (number == expected) return;
  proof.findings
      .add(Rule::cell_number, cell.span_of(path),
           "found " + number + ", but the trade calls " + cell.designation + " " +
               (expected == "none" ? "by no such number" : expected),
           "correct it, or state the disagreement under conflicts:")
      .notes.push_back({row->span, "table cell-trade-numbers"});
}

}  // namespace

void check_trade_numbers(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    if (!cell.usable("designation")) continue;
    check_number(proof, cell, "trade-number", cell.trade_number, "trade");
    check_number(proof, cell, "consumer-number", cell.consumer_number, "consumer");
  }
}

void check_suffix_letters(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const auto parsed = standards::parse_designation(cell.designation);
    const auto* designation = std::get_if<standards::Designation>(&parsed);
    if (designation == nullptr || designation->text() != cell.designation || !cell.usable("designation")) continue;
    for (const char letter : designation->suffix) {
      if (standards::row_of(proof.tables, "cell-suffixes", std::string(1, letter)) != nullptr) continue;
      proof.findings.add(Rule::cell_suffix, cell.span_of("designation"),
                         std::string("the letter ") + letter + " behind the size stands in no table",
                         "read the cell again; S, P and W are the letters in use");
    }
  }
}

}  // namespace benchleaf::prove
