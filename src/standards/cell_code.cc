// In: the parts of a designation, and the published tables. Out: what the designation stands for: system, diameter by code,
// the range of heights that the digits can mean. Millimetres of height are never made from the code.

#include "standards/cell_code.h"

#include <cmath>
#include <cstddef>
#include <utility>

#include "base/id.h"
#include "base/number.h"

namespace benchleaf::standards {
namespace {

constexpr std::size_t kHeightDigits = 2;
constexpr std::size_t kLongestCommonSize = 4;

std::vector<std::string> letters_of(const model::Tables& tables) {
  std::vector<std::string> letters;
  for (const auto& system : tables.cell_systems) letters.push_back(system.letter);
  return letters;
}

std::vector<std::string> codes_of(const model::Tables& tables) {
  std::vector<std::string> codes;
  for (const auto& diameter : tables.cell_diameters) codes.push_back(std::to_string(diameter.code));
  return codes;
}

int system_position(const Designation& designation) {
  return designation.in_series > 1 ? static_cast<int>(std::to_string(designation.in_series).size()) : 0;
}

int size_position(const Designation& designation) {
  return system_position(designation) + static_cast<int>(designation.system.size()) + 1;
}

const model::CellShortForm* short_form_of(const std::string& long_size, const model::Tables& tables) {
  for (const auto& row : tables.cell_short_forms) {
    if (row.long_size == long_size) return &row;
  }
  return nullptr;
}

/// Differences are taken in whole micrometres: 2.1 - 2.05 is not 0.05 in binary.
long micrometres(double millimetres) { return std::lround(millimetres * 1000.0); }

void read_suffix(CellCode& out, const model::Tables& tables) {
  for (const char letter : out.designation.suffix) {
    const model::CellSuffix* suffix = tables.cell_suffix(std::string(1, letter));
    if (suffix != nullptr) {
      out.suffixes.push_back(suffix);
    } else {
      out.unknown_suffix += letter;
    }
  }
  out.drain = tables.cell_drain(out.designation.suffix);
}

}  // namespace

std::variant<CellCode, DesignationError> read_cell_code(const Designation& designation, const model::Tables& tables) {
  CellCode out;
  out.designation = designation;
  out.system = tables.cell_system(designation.system);
  if (out.system == nullptr) {
    return DesignationError{system_position(designation), "there is no system with the letter " + designation.system,
                            "the letters are " + base::or_list(letters_of(tables))};
  }

  int code = 0;
  if (designation.short_form()) {
    out.short_form = tables.cell_short_form(designation.size);
    if (out.short_form == nullptr) {
      return DesignationError{size_position(designation), "size " + designation.size + " is no short size that the table has",
                              "write the full size: diameter code and height digits"};
    }
    out.long_size = out.short_form->long_size;
    code = out.short_form->code;
    out.tenths = out.short_form->tenths;
  } else {
    out.long_size = designation.size;
    out.long_height = designation.size.size() > kLongestCommonSize;
    const std::size_t height_digits = out.long_height ? kHeightDigits + 1 : kHeightDigits;
    const std::size_t code_digits = designation.size.size() - height_digits;
    code = std::stoi(designation.size.substr(0, code_digits));
    out.tenths = std::stoi(designation.size.substr(code_digits));
    out.short_form = short_form_of(out.long_size, tables);
  }

  out.diameter = tables.cell_diameter(code);
  if (out.diameter == nullptr) {
    return DesignationError{size_position(designation), "no diameter is on file for the code " + std::to_string(code),
                            "the codes on file are " + base::or_list(codes_of(tables))};
  }
  read_suffix(out, tables);
  return out;
}

HeightRange height_range(int tenths) {
  return {base::tidy(static_cast<double>(tenths) / 10.0), base::tidy(static_cast<double>(tenths + 1) / 10.0)};
}

SizeCode size_code(double diameter_mm, double height_mm) {
  return {static_cast<int>(std::floor(base::tidy(diameter_mm))), static_cast<int>(std::floor(base::tidy(height_mm * 10.0)))};
}

bool same_size(const CellSize& one, const CellSize& other) {
  const SizeCode a = size_code(one.diameter, one.height);
  const SizeCode b = size_code(other.diameter, other.height);
  if (a.code != b.code) return false;
  return a.tenths == b.tenths || std::abs(micrometres(one.height) - micrometres(other.height)) <= micrometres(kHeightTolerance);
}

}  // namespace benchleaf::standards
