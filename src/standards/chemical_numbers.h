#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "model/tables.h"

namespace benchleaf::standards {

/// The check digit that the other digits of a CAS number call for: the sum of digit times place, counted from the right
/// without the check digit, modulo 10. Nothing where the text has not the form `64-19-7`.
std::optional<char> cas_check_digit(std::string_view number);

/// The check sign that the other digits of an index number of annex VI call for, `X` for ten: the sum of digit times place,
/// counted from the left, modulo 11. Nothing where the text has not the form `607-002-00-6`.
std::optional<char> index_check_sign(std::string_view number);

/// How many atoms of each element a formula holds: `CHNaO3`, `Ca(OH)2`, `CuSO4·5H2O`.
using Atoms = std::map<std::string, int, std::less<>>;

/// What is wrong with a formula: where (in bytes) and why.
struct FormulaError {
  std::size_t position = 0;
  std::string reason;
};

/// Reads a formula; every element must stand in the table of atomic masses.
std::variant<Atoms, FormulaError> read_formula(std::string_view formula, const model::Tables& tables);

/// The molar mass in g/mol by the table of atomic masses.
double molar_mass(const Atoms& atoms, const model::Tables& tables);

}  // namespace benchleaf::standards
