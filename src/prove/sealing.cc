// Rules about what seals and what one looks through: sections, materials, storage of rubber, inch sizes.

#include <array>
#include <cmath>
#include <string>
#include <string_view>

#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using report::Rule;

const model::Material* material_of(const Proof& proof, const model::RecordRef& reference) {
  const auto* record = record_of(proof, model::Kind::material, reference);
  if (record == nullptr || !record->usable("kind")) return nullptr;
  return &proof.base.materials.at(record->id);
}

/// A material of the wrong kind behind a field, with a note at the kind.
void wrong_kind(const Proof& proof, Rule rule, const model::Record& record, const model::Material& material,
                std::string_view expected) {
  proof.findings
      .add(rule, record.span_of("material"),
           "found " + material.id + ", a material of kind " + word_of(material.family) + ", expected " + std::string(expected),
           "name the material that it is made of")
      .notes.push_back({material.span_of("kind"), "the kind of " + material.reference()});
}

/// A property of a material and its column in the table of bounds.
struct Property {
  const char* path;
  Unit unit;
  std::optional<base::Quantity> model::Material::*value;
};

constexpr std::array<Property, 7> kProperties = {{
    {"density", Unit::gram_per_cubic_centimetre, &model::Material::density},
    {"modulus", Unit::gigapascal, &model::Material::modulus},
    {"strength", Unit::megapascal, &model::Material::strength},
    {"poisson", Unit::one, &model::Material::poisson},
    {"refractive-index", Unit::one, &model::Material::refractive_index},
    {"conducts-heat", Unit::watt_per_metre_kelvin, &model::Material::conducts_heat},
    {"softens", Unit::degree_celsius, &model::Material::softens},
}};

void check_property(const Proof& proof, const model::Material& material, const Property& property,
                    const model::PublishedTable::Row& row) {
  const auto& value = material.*property.value;
  const auto bounds = standards::cell_quantity(row, property.path);
  const auto within = bounds ? bounds->in(property.unit) : std::nullopt;
  const auto found = value && value->has_value() && material.usable(property.path) ? value->in(property.unit) : std::nullopt;
  if (!within || !found) return;
  if (base::tidy(found->low) >= base::tidy(within->low) && base::tidy(found->high) <= base::tidy(within->high)) return;
  proof.findings
      .add(Rule::material_bounds, material.span_of(property.path),
           "found " + shown(value) + ", but " + row.key + " has " + base::terminal(*bounds), "read the figure and its unit again")
      .notes.push_back({row.span, "table material-bounds"});
}

/// The two ends of the temperatures that a material serves at.
void check_service(const Proof& proof, const model::Material& material, const model::PublishedTable::Row& row) {
  const bool readable = material.service && material.service->has_value() && material.usable("service");
  const auto found = readable ? material.service->in(Unit::degree_celsius) : std::nullopt;
  const auto coldest = standards::cell_quantity(row, "coldest"), hottest = standards::cell_quantity(row, "hottest");
  if (!found || !coldest || !hottest) return;
  const auto lies_in = [](double value, const base::Quantity& bounds) {
    const auto ends = bounds.in(Unit::degree_celsius);
    return !ends || (base::tidy(value) >= base::tidy(ends->low) && base::tidy(value) <= base::tidy(ends->high));
  };
  if (lies_in(found->low, *coldest) && lies_in(found->high, *hottest)) return;
  proof.findings
      .add(Rule::material_bounds, material.span_of("service"),
           "found " + shown(material.service) + ", but " + row.key + " begins at " + base::terminal(*coldest) + " and ends at " +
               base::terminal(*hottest),
           "read the figure and its unit again")
      .notes.push_back({row.span, "table material-bounds"});
}

/// Millimetres of a row against its inches, to two digits after the point.
void check_inches(const Proof& proof, const model::PublishedTable::Row& row, const std::string& column) {
  const auto inches = standards::cell_value(row, column + "-inch", Unit::inch);
  const auto millimetres = standards::cell_value(row, column, Unit::millimetre);
  if (!inches || !millimetres) return;
  const std::string expected = base::fixed_text(*inches * base::kMillimetresPerInch, 2);
  if (expected == base::fixed_text(*millimetres, 2)) return;
  const auto where = row.spans.find(column);
  proof.findings.add(
      Rule::as568_size, where == row.spans.end() ? row.span : where->second,
      "found " + shown(*millimetres, Unit::millimetre) + ", but " + shown(*inches, Unit::inch) + " is " + expected + " mm",
      "one of the two was copied wrongly");
}

}  // namespace

void check_gasket_sections(const Proof& proof) {
  constexpr double kStandardBegins = 0.8;
  for (const auto& [id, gasket] : proof.base.gaskets) {
    const auto section = stated_value(gasket, "section", gasket.section, Unit::millimetre);
    if (!section || gasket.profile != model::Profile::round) continue;
    if (*section < kStandardBegins) {
      proof.findings.add(Rule::gasket_section, gasket.span_of("section"),
                         "a section of " + shown(gasket.section) + " lies outside ISO 3601-3, which begins at 0.8 mm",
                         "its faults and tolerances are a matter between buyer and seller");
    }
  }
}

void check_gasket_proportions(const Proof& proof) {
  for (const auto& [id, gasket] : proof.base.gaskets) {
    const auto section = stated_value(gasket, "section", gasket.section, Unit::millimetre);
    const auto inside = stated_value(gasket, "inside.from", gasket.inside.from, Unit::millimetre);
    // Inch sizes begin with rings thicker than their hole: 1.02 mm on 0.74 mm.
    constexpr double kSmallHole = 3, kMostOfSmall = 1.5, kMostOfLarge = 0.25;
    if (!section || !inside || *section <= *inside * (*inside < kSmallHole ? kMostOfSmall : kMostOfLarge)) continue;
    proof.findings
        .add(Rule::gasket_proportion, gasket.span_of("section"),
             "found a section of " + shown(gasket.section) + " on a hole of " + shown(gasket.inside.from),
             "one of the two has a wrong figure or unit")
        .notes.push_back({gasket.span_of("inside.from"), "the smallest hole of the series"});
  }
}

void check_gasket_materials(const Proof& proof) {
  for (const auto& [id, gasket] : proof.base.gaskets) {
    const auto* material = material_of(proof, gasket.material);
    if (material == nullptr || !gasket.usable("material")) continue;
    if (material->family != model::MaterialFamily::rubber && material->family != model::MaterialFamily::plastic) {
      wrong_kind(proof, Rule::gasket_material, gasket, *material, "rubber or plastic");
    }
  }
}

void check_crystal_materials(const Proof& proof) {
  using Family = model::MaterialFamily;
  constexpr std::array<Family, 3> kClear = {Family::plastic, Family::glass, Family::mineral};
  for (const auto& [id, crystal] : proof.base.crystals) {
    const auto* material = material_of(proof, crystal.material);
    if (material == nullptr || !crystal.usable("material")) continue;
    bool clear = false;
    for (const auto kind : kClear) clear = clear || material->family == kind;
    if (!clear) wrong_kind(proof, Rule::crystal_material, crystal, *material, "plastic, glass or mineral");
  }
}

void check_rubber_storage(const Proof& proof) {
  for (const auto& [id, material] : proof.base.materials) {
    if (material.family != model::MaterialFamily::rubber || !material.usable("short-name")) continue;
    const auto* row = standards::row_of(proof.tables, "rubber-storage", material.short_name);
    const auto found = stated_value(material, "shelf-life", material.shelf_life, Unit::year);
    const auto expected = row == nullptr ? std::nullopt : standards::cell_value(*row, "time", Unit::year);
    if (!found || !expected || *found == *expected || has_conflict(material, "shelf-life")) continue;
    proof.findings
        .add(Rule::rubber_storage, material.span_of("shelf-life"),
             "found " + shown(material.shelf_life) + ", but " + material.short_name + " is of group " +
                 standards::cell_text(*row, "group") + ": " + shown(*expected, Unit::year),
             "correct it, or state the disagreement under conflicts:")
        .notes.push_back({row->span, "table rubber-storage"});
  }
}

void check_material_bounds(const Proof& proof) {
  for (const auto& [id, material] : proof.base.materials) {
    const auto* row =
        material.usable("kind") ? standards::row_of(proof.tables, "material-bounds", word_of(material.family)) : nullptr;
    if (row == nullptr) continue;
    for (const auto& property : kProperties) check_property(proof, material, property, *row);
    check_service(proof, material, *row);
  }
}

void check_inch_sizes(const Proof& proof) {
  for (const auto& row : standards::rows_of(proof.tables, "as568-sizes")) {
    check_inches(proof, row, "inside");
    check_inches(proof, row, "section");
  }
}

}  // namespace benchleaf::prove
