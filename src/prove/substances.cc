// Rules about what a substance is: its registry numbers, its formula and mass, what one mole takes up or gives off.

#include <cmath>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/chemical_numbers.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Substance;
using report::Rule;

constexpr std::string_view kCarbonDioxide = "CO2";

/// The last sign of a registry number: where the finding points.
base::Span last_sign(base::Span span, const std::string& text) {
  span.column += static_cast<int>(text.size()) - 1;
  span.length = 1;
  return span;
}

void wrong_check_sign(const Proof& proof, Rule rule, const Substance& substance, const char* path, const std::string& number,
                      std::optional<char> expected) {
  if (number.empty() || !substance.usable(path) || !expected || number.back() == *expected) return;
  const model::Node* node = substance.root.at_path(path);
  base::Span span = last_sign(substance.span_of(path), number);
  if (node != nullptr && node->quoted) ++span.column;
  proof.findings.add(rule, span,
                     "found " + number + ", but its other digits call for " + std::string(1, *expected) + " at the end",
                     "a digit is wrong or two have changed places: read the number again");
}

void number_twice(const Proof& proof, const char* path, std::string Substance::*number) {
  std::map<std::string, const Substance*> first;
  for (const auto& [id, substance] : proof.base.substances) {
    const std::string& own = substance.*number;
    if (own.empty() || !substance.usable(path)) continue;
    const auto [other, is_first] = first.emplace(own, &substance);
    if (is_first) continue;
    proof.findings
        .add(Rule::substance_number_twice, substance.span_of(path), "the number " + own + " stands in two records",
             "one of the two is wrong, or they are one substance")
        .notes.push_back({other->second->span_of(path), "the other is " + other->second->reference()});
  }
}

std::optional<standards::Atoms> atoms_of(const Proof& proof, const Substance& substance) {
  if (substance.formula.empty() || !substance.usable("formula")) return std::nullopt;
  const auto read = standards::read_formula(substance.formula, proof.tables);
  const auto* atoms = std::get_if<standards::Atoms>(&read);
  return atoms == nullptr ? std::nullopt : std::optional(*atoms);
}

/// Each further hydrogen of an acid holds faster.
void check_constants_rise(const Proof& proof, const Substance& substance) {
  for (std::size_t i = 1; i < substance.acid_constants.size(); ++i) {
    const auto before = substance.acid_constants[i - 1].value_in(Unit::one),
               own = substance.acid_constants[i].value_in(Unit::one);
    if (!before || !own || *own > *before) continue;
    proof.findings.add(Rule::substance_acid_constant, substance.span_of("acid-constants." + std::to_string(i)),
                       "found " + base::terminal(substance.acid_constants[i]) + " after " +
                           base::terminal(substance.acid_constants[i - 1]) + ", which is not above it",
                       "write the constants in their order, and read them again");
  }
}

/// What the metal ions of an oxide, hydroxide or carbonate carry together: as much acid it takes up.
int metal_charge(const standards::Atoms& atoms, const model::Tables& tables) {
  int charge = 0;
  for (const auto& [element, number] : atoms) {
    const auto* row = standards::row_of(tables, "ion-charges", element);
    const auto one = row == nullptr ? std::nullopt : base::parse_decimal(standards::cell_text(*row, "charge"));
    charge += static_cast<int>(one.value_or(0)) * number;
  }
  return charge;
}

/// What leaves as a gas holds no metal and boils below the bench.
void check_gas_is_one(const Proof& proof, const Substance& substance) {
  const auto* record = record_of(proof, model::Kind::substance, substance.gas->what);
  if (record == nullptr || !substance.usable("gas.what")) return;
  const auto& gas = proof.base.substances.at(record->id);
  constexpr double kBench = 25;
  const auto atoms = atoms_of(proof, gas);
  const auto boils = stated_value(gas, "boiling-point", gas.boiling_point, Unit::degree_celsius);
  const auto melts_no = gas.density && gas.density->has_value() && !boils;
  if (atoms && metal_charge(*atoms, proof.tables) == 0 && (!boils || *boils < kBench) && !melts_no) return;
  proof.findings
      .add(Rule::substance_gas, substance.span_of("gas.what"), "found " + gas.id + ", which is no gas on the bench",
           "name the gas that it gives off")
      .notes.push_back({gas.span_of("formula"), "so " + gas.reference()});
}

}  // namespace

void check_check_digits(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) {
    wrong_check_sign(proof, Rule::substance_cas_digit, substance, "cas", substance.cas,
                     standards::cas_check_digit(substance.cas));
    wrong_check_sign(proof, Rule::substance_index_digit, substance, "index-number", substance.index_number,
                     standards::index_check_sign(substance.index_number));
  }
}

void check_registry_numbers(const Proof& proof) {
  number_twice(proof, "cas", &Substance::cas);
  number_twice(proof, "index-number", &Substance::index_number);
  for (const auto& [id, substance] : proof.base.substances) {
    if (substance.index_number.empty() || !substance.usable("index-number")) continue;
    const auto* row = standards::row_of(proof.tables, "annex-vi-entries", substance.index_number);
    if (row == nullptr) {
      proof.findings.add(Rule::substance_entry, substance.span_of("index-number"),
                         "the table of annex VI has no entry " + substance.index_number,
                         "correct the number, or add the entry to the table");
      continue;
    }
    // The record of a gas may follow the entry of its solution, which the table names by the record.
    const bool same = standards::cell_text(*row, "cas") == substance.cas || standards::cell_text(*row, "substance") == id;
    if (same || substance.cas.empty() || !substance.usable("cas")) continue;
    proof.findings
        .add(Rule::substance_entry, substance.span_of("index-number"),
             "found " + substance.index_number + ", which stands for " + standards::cell_text(*row, "name") + ", " +
                 standards::cell_text(*row, "cas"),
             "one of index number and CAS number is wrong")
        .notes.push_back({row->span, "table annex-vi-entries"});
  }
}

void check_formulas(const Proof& proof) {
  constexpr double kApart = 5e-5;
  for (const auto& [id, substance] : proof.base.substances) {
    if (substance.formula.empty() || !substance.usable("formula")) continue;
    const auto read = standards::read_formula(substance.formula, proof.tables);
    if (const auto* error = std::get_if<standards::FormulaError>(&read)) {
      base::Span span = substance.span_of("formula");
      span.column += static_cast<int>(error->position);
      span.length = 1;
      proof.findings.add(Rule::substance_formula, span, "in " + substance.formula + ": " + error->reason,
                         "write symbols of elements with their counts: C2H4O2");
      continue;
    }
    const double mass = standards::molar_mass(std::get<standards::Atoms>(read), proof.tables);
    const auto found = stated_value(substance, "molar-mass", substance.molar_mass, Unit::gram_per_mole);
    if (!found || mass <= 0 || std::abs(*found - mass) <= mass * kApart) continue;
    proof.findings
        .add(Rule::substance_molar_mass, substance.span_of("molar-mass"),
             "found " + shown(substance.molar_mass) + ", but " + substance.formula + " comes to " + base::fixed_text(mass, 3) +
                 " g/mol",
             "correct the mass or the formula")
        .notes.push_back({substance.span_of("formula"), "the formula"});
  }
}

void check_explosion_limits(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) {
    const auto& low = substance.lower_limit;
    const auto& high = substance.upper_limit;
    const bool readable = low && high && low->has_value() && high->has_value() && substance.usable("lower-limit") &&
                          substance.usable("upper-limit");
    if (!readable) continue;
    const auto lower = low->in(Unit::percent), upper = high->in(Unit::percent);
    constexpr double kAll = 100;
    if (!lower || !upper || (lower->high < upper->low && upper->high <= kAll)) continue;
    proof.findings
        .add(Rule::substance_explosion_limits, substance.span_of("upper-limit"),
             "found " + shown(high) + " as the upper limit and " + shown(low) + " as the lower", "exchange or correct the two")
        .notes.push_back({substance.span_of("lower-limit"), "the lower limit"});
  }
}

void check_acid_constants(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) {
    if (!substance.usable("acid-constants")) continue;
    check_constants_rise(proof, substance);
    for (std::size_t i = 0; i < substance.acid_constants.size(); ++i) {
      const auto* row = standards::row_of(proof.tables, "acid-constants", id + "-" + std::to_string(i + 1));
      const auto expected = row == nullptr ? std::nullopt : standards::cell_value(*row, "value", Unit::one);
      const auto found = substance.acid_constants[i].value_in(Unit::one);
      const std::string path = "acid-constants." + std::to_string(i);
      if (!expected || !found || base::tidy(*found) == *expected || has_conflict(substance, path)) continue;
      proof.findings
          .add(Rule::substance_acid_constant, substance.span_of(path),
               "found " + base::terminal(substance.acid_constants[i]) + ", but the table gives " + base::shortest_text(*expected),
               "correct it, or state the disagreement under conflicts:")
          .notes.push_back({row->span, "table acid-constants"});
    }
  }
}

void check_equivalents(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) {
    const auto equivalents = stated_value(substance, "equivalents", substance.equivalents, Unit::one);
    if (!equivalents || !substance.usable("acts-as")) continue;
    if (substance.acts_as == model::ActsAs::neither) {
      proof.findings
          .add(Rule::substance_equivalents, substance.span_of("equivalents"),
               "found " + shown(substance.equivalents) + " on what is neither acid nor base", "correct one of the two")
          .notes.push_back({substance.span_of("acts-as"), "how it acts"});
      continue;
    }
    const auto atoms = atoms_of(proof, substance);
    const auto constants = static_cast<double>(substance.acid_constants.size());
    const bool whole = *equivalents == std::floor(*equivalents) && *equivalents >= 1;
    const int charge = atoms && substance.acts_as == model::ActsAs::base ? metal_charge(*atoms, proof.tables) : 0;
    const bool fits = charge > 0 ? *equivalents == charge : constants == 0 || *equivalents <= constants;
    if (whole && fits) continue;
    proof.findings.add(Rule::substance_equivalents, substance.span_of("equivalents"),
                       "found " + shown(substance.equivalents) + " equivalents in " + substance.formula +
                           (charge > 0 ? ", whose metal carries " + std::to_string(charge) : std::string()),
                       "count the acid or base that one mole takes up");
  }
}

void check_gas_given_off(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) {
    const auto atoms = atoms_of(proof, substance);
    if (!atoms || !substance.gas) continue;
    check_gas_is_one(proof, substance);
    const auto* gas = proof.base.find<model::Substance>(substance.gas->what);
    if (gas == nullptr || gas->formula != kCarbonDioxide) continue;
    const auto moles = stated_value(substance, "gas.moles", substance.gas->moles, Unit::one);
    const auto carbon = atoms->find("C");
    const int held = carbon == atoms->end() ? 0 : carbon->second;
    if (!moles || *moles == held) continue;
    proof.findings
        .add(Rule::substance_gas, substance.span_of("gas.moles"),
             "found " + shown(substance.gas->moles) + " mol of carbon dioxide, but " + substance.formula + " holds " +
                 std::to_string(held) + " of carbon",
             "correct the figure or the formula")
        .notes.push_back({substance.span_of("formula"), "the formula"});
  }
}

}  // namespace benchleaf::prove
