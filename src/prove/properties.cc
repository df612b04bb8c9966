// Rules about the properties of substances and of liquids made of them: what is published, and what follows from the parts.

#include <array>
#include <cmath>
#include <optional>
#include <string>

#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Chemistry;
using model::Substance;
using report::Rule;

constexpr std::array<const char*, 5> kProperties = {"density", "boiling-point", "flash-point", "lower-limit", "upper-limit"};

/// A property as the record and the table write it; a different writing is a different figure.
void check_property(const Proof& proof, const Substance& substance, const model::PublishedTable::Row& row, const char* path) {
  const model::Node* node = substance.root.find(path);
  const std::string& expected = standards::cell_text(row, path);
  const bool silent = expected.empty() || expected == "not stated";
  if (node == nullptr || silent || !substance.usable(path) || node->text == expected || has_conflict(substance, path)) return;
  proof.findings
      .add(Rule::substance_property, substance.span_of(path), "found " + node->text + ", but the table gives " + expected,
           "correct it, or state the disagreement under conflicts:")
      .notes.push_back({row.span, "table substance-properties"});
}

/// The constants of an acid are a list, which the table writes with commas.
void check_constants(const Proof& proof, const Substance& substance, const model::PublishedTable::Row& row) {
  const model::Node* node = substance.root.find("acid-constants");
  const std::string& expected = standards::cell_text(row, "acid-constants");
  const bool silent = expected.empty() || expected == "not stated";
  if (node == nullptr || silent || !substance.usable("acid-constants")) return;
  std::string found;
  for (const auto& item : node->items) found += (found.empty() ? "" : ", ") + item.text;
  if (found == expected) return;
  proof.findings
      .add(Rule::substance_property, substance.span_of("acid-constants"), "found " + found + ", but the table gives " + expected,
           "correct it; another source stands under conflicts:")
      .notes.push_back({row.span, "table substance-properties"});
}

const Substance* substance_of(const Proof& proof, const model::RecordRef& reference) {
  const auto* record = record_of(proof, model::Kind::substance, reference);
  return record == nullptr ? nullptr : &proof.base.substances.at(record->id);
}

/// The pH of a thin weak acid by its first constant: half of pKa less the logarithm of its mol/L.
std::optional<double> acid_ph(const Substance& acid, double percent) {
  const auto mass = stated_value(acid, "molar-mass", acid.molar_mass, Unit::gram_per_mole);
  if (acid.acid_constants.empty() || !acid.usable("acid-constants") || !mass || percent <= 0) return std::nullopt;
  const auto constant = acid.acid_constants.front().value_in(Unit::one);
  constexpr double kGramsPerLitre = 10;
  return constant ? std::optional((*constant - std::log10(percent * kGramsPerLitre / *mass)) / 2) : std::nullopt;
}

}  // namespace

void check_published_properties(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) {
    const auto* row = standards::row_of(proof.tables, "substance-properties", id);
    if (row == nullptr) continue;
    for (const char* path : kProperties) check_property(proof, substance, *row, path);
    check_property(proof, substance, *row, "cas");
    check_constants(proof, substance, *row);
  }
}

void check_acid_ph(const Proof& proof) {
  constexpr double kPaperReads = 0.3;
  for (const auto& [id, liquid] : proof.base.chemistries) {
    const auto found = stated_value(liquid, "ph", liquid.ph, Unit::one);
    if (!found || liquid.family != model::LiquidFamily::acid || liquid.made_of.empty()) continue;
    const auto* acid = substance_of(proof, liquid.made_of[0].substance);
    const auto share = acid == nullptr ? std::nullopt : percent_of(liquid, 0);
    const auto expected = share ? acid_ph(*acid, share->nominal) : std::nullopt;
    if (!expected || std::abs(*found - *expected) <= kPaperReads || has_conflict(liquid, "ph")) continue;
    proof.findings
        .add(Rule::liquid_acid_ph, liquid.span_of("ph"),
             "found a pH of " + shown(liquid.ph) + ", but " + shown(liquid.made_of[0].strength) + " of " + acid->id +
                 " comes to " + base::fixed_text(*expected, 1),
             "correct the pH or the strength")
        .notes.push_back({liquid.span_of("made-of.0.strength"), "the strength"});
  }
}

void check_single_parts(const Proof& proof) {
  constexpr double kNearlyAll = 90;
  for (const auto& [id, liquid] : proof.base.chemistries) {
    const auto share = liquid.made_of.size() == 1 ? percent_of(liquid, 0) : std::nullopt;
    const bool as_pure = liquid.density || liquid.boiling_point;
    if (!share || !as_pure || share->high >= kNearlyAll) continue;
    proof.findings.add(Rule::mixture_rest, liquid.span_of("made-of.0.strength"),
                       "found " + shown(liquid.made_of[0].strength) + " of the only part, beside the properties of a pure liquid",
                       "name what the rest is, or correct the strength");
  }
}

void check_mixture_flash_points(const Proof& proof) {
  constexpr double kMostOfIt = 90, kHigher = 10;
  for (const auto& [id, liquid] : proof.base.chemistries) {
    if (!liquid.flash_point || !liquid.usable("flash-point") || liquid.flash_point->form == base::QuantityForm::not_stated)
      continue;
    const auto own = liquid.flash_point->has_value() ? liquid.flash_point->in(Unit::degree_celsius) : std::nullopt;
    for (std::size_t i = 0; i < liquid.made_of.size(); ++i) {
      const auto* part = substance_of(proof, liquid.made_of[i].substance);
      const auto share = percent_of(liquid, i);
      const bool burns = part != nullptr && part->flash_point && part->flash_point->has_value() && part->usable("flash-point");
      const auto pure = burns ? part->flash_point->in(Unit::degree_celsius) : std::nullopt;
      if (!pure || !share || share->low < kMostOfIt || has_conflict(liquid, "flash-point")) continue;
      if (own && own->low >= pure->low && own->high <= pure->high + kHigher) continue;
      proof.findings
          .add(Rule::liquid_flash_point, liquid.span_of("flash-point"),
               "found a flash point of " + shown(liquid.flash_point) + ", but it is mostly " + part->id + " with " +
                   shown(part->flash_point),
               "correct one of the two")
          .notes.push_back({part->span_of("flash-point"), "so " + part->reference()});
    }
  }
}

}  // namespace benchleaf::prove
