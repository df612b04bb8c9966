#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/book.h"
#include "model/record.h"

namespace benchleaf::model {

/// What happens when two liquids, or a liquid and a residue, meet; it holds both ways.
struct Meeting {
  RecordRef with;                    ///< `chemistry/ID`, `residue/ID`, or `substance/ID` for every liquid that has it
  Verdict verdict = Verdict::never;  ///< ok is use, with-care is with_limits
  std::string product;
  std::string effect;
  std::string when;
};

/// What a liquid or an abrasive does to a material.
struct OnMaterial {
  RecordRef material;  ///< `material/ID`
  Verdict verdict = Verdict::never;
  std::string why;
  std::string condition;
  std::vector<std::string> how;           ///< ways for which the verdict holds; empty: with care a wipe, else every way
  std::optional<base::Quantity> at_most;  ///< temperature up to which it holds
};

/// A liquid, paste or grease as it is used at the bench.
struct Chemistry : Record {
  struct Ingredient {
    RecordRef substance;  ///< `substance/ID`
    std::optional<base::Quantity> strength;
  };
  using OnMaterial = model::OnMaterial;

  /// What the bottle's label says by the law on chemicals.
  struct Label {
    std::optional<LabelSignal> signal;
    std::vector<std::string> pictograms;
    std::vector<std::string> statements;
  };

  std::string short_name;  ///< for the head of a column
  std::vector<std::string> also_called;
  std::optional<LiquidFamily> family;  ///< `kind`
  std::optional<LiquidForm> form;
  std::vector<Ingredient> made_of;
  std::optional<base::Quantity> ph;
  std::optional<base::Quantity> density;
  std::optional<base::Quantity> flash_point;
  std::optional<base::Quantity> boiling_point;
  std::optional<Label> label;
  std::vector<std::string> uses;
  std::vector<OnMaterial> on_materials;
  std::vector<Meeting> meets;
  std::string dilute;
  std::string dose;
  std::string after;
  std::string storage;
  std::string waste;
  References cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
