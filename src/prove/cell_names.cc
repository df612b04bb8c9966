// Rules about the name of a cell: what the designation says, against what the record says.

#include <algorithm>
#include <string>
#include <string_view>
#include <variant>

#include "prove/cell_facts.h"
#include "prove/checks.h"
#include "standards/cell_code.h"
#include "standards/designation.h"

namespace benchleaf::prove {
namespace {

using model::Cell;
using report::Rule;

/// The code point of the designation at which the fault lies; a quoted value begins after its quote.
base::Span place_in(const Cell& cell, int position) {
  base::Span span = cell.span_of("designation");
  const model::Node* node = cell.root.find("designation");
  span.column += position + (node != nullptr && node->quoted ? 1 : 0);
  span.length = 1;
  return span;
}

void add_error(const Proof& proof, const Cell& cell, const standards::DesignationError& error) {
  proof.findings.add(Rule::cell_designation, place_in(cell, error.position), error.reason, error.hint);
}

std::string in_words(std::string id) {
  std::replace(id.begin(), id.end(), '-', ' ');
  return id;
}

bool has_conflict(const Cell& cell, std::string_view field) { return conflict_about(cell, field) != nullptr; }

}  // namespace

void check_designation(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    if (cell.designation.empty() || !cell.usable("designation")) continue;
    const auto parsed = standards::parse_designation(cell.designation);
    if (const auto* error = std::get_if<standards::DesignationError>(&parsed)) {
      add_error(proof, cell, *error);
      continue;
    }
    const auto& designation = std::get<standards::Designation>(parsed);
    if (designation.text() != cell.designation) {
      proof.findings.add(Rule::cell_designation, cell.span_of("designation"),
                         "found " + cell.designation + ", expected capitals and no spaces", "write " + designation.text());
      continue;
    }
    const auto code = standards::read_cell_code(designation, proof.tables);
    if (const auto* error = std::get_if<standards::DesignationError>(&code)) add_error(proof, cell, *error);
  }
}

void check_system_letter(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const model::Fact* decoded = decoded_fact(proof, cell, "system");
    const model::CellSystem* stated = proof.tables.cell_system_by_id(cell.system);
    if (decoded == nullptr || stated == nullptr || !cell.usable("system") || stated->name == decoded->printed) continue;
    proof.findings.add(Rule::cell_system, cell.span_of("system"),
                       "found " + cell.system + ", but the letter in " + cell.designation + " stands for " + decoded->printed,
                       "one of the two is wrong: read the cell");
  }
}

void check_short_form(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    if (cell.short_form.empty() || !cell.usable("short") || decoded_fact(proof, cell, "system") == nullptr) continue;
    const model::Fact* decoded = decoded_fact(proof, cell, "short-form");
    const bool is_short = decoded_fact(proof, cell, "long-form") != nullptr;
    const std::string bare = cell.designation.substr(0, cell.short_form.size());
    const std::string expected = is_short ? bare : decoded == nullptr ? std::string() : decoded->printed;
    if (expected == cell.short_form) continue;
    proof.findings.add(Rule::cell_short_form, cell.span_of("short"),
                       expected.empty()
                           ? "found " + cell.short_form + ", but " + cell.designation + " has no short form in the table"
                           : "found " + cell.short_form + ", expected " + expected + " by " + cell.designation,
                       expected.empty() ? "take it out, or add the size to the table" : "write " + expected);
  }
}

void check_cells_in_series(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    if (!cell.usable("cells-in-series") || decoded_fact(proof, cell, "system") == nullptr) continue;
    const model::Fact* decoded = decoded_fact(proof, cell, "cells");
    const int expected = decoded == nullptr ? 1 : static_cast<int>(decoded->value.value_or(1));
    if (expected == cell.cells_in_series) continue;
    proof.findings.add(Rule::cell_series, cell.span_of("cells-in-series"),
                       "found " + std::to_string(cell.cells_in_series) + " cells in series, but " + cell.designation + " says " +
                           std::to_string(expected),
                       "write cells-in-series: " + std::to_string(expected));
  }
}

void check_electrolyte(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const model::Fact* decoded = decoded_fact(proof, cell, "electrolyte");
    const bool stated = cell.electrolyte && cell.electrolyte != model::Electrolyte::not_stated && cell.usable("electrolyte");
    if (decoded == nullptr || !stated || in_words(word_of(cell.electrolyte)) == decoded->printed ||
        has_conflict(cell, "electrolyte"))
      continue;
    proof.findings.add(
        Rule::cell_electrolyte, cell.span_of("electrolyte"),
        "found " + in_words(word_of(cell.electrolyte)) + ", but the suffix of " + cell.designation + " means " + decoded->printed,
        "correct it, or state the disagreement under conflicts:");
  }
}

void check_drain(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const model::Fact* decoded = decoded_fact(proof, cell, "drain");
    const bool stated = (cell.drain == model::Drain::low || cell.drain == model::Drain::high) && cell.usable("drain");
    if (decoded == nullptr || !stated || word_of(cell.drain) == decoded->printed || has_conflict(cell, "drain")) continue;
    proof.findings.add(Rule::cell_drain, cell.span_of("drain"),
                       "found " + word_of(cell.drain) + " drain, but the trade reads the suffix of " + cell.designation + " as " +
                           decoded->printed,
                       "correct it, or state the disagreement under conflicts:");
  }
}

}  // namespace benchleaf::prove
