// In: a procedure whose slots are filled. Out: the cautions that its steps need: those that liquids, tools, parts, materials
// and residues ask for, and those of the hazards of the table hazard-cautions.
#include <algorithm>
#include <string>

#include "bench/mixing.h"
#include "bench/step_checker.h"
#include "bench/ways.h"

namespace benchleaf::bench {

namespace {

using Step = model::Procedure::Step;

class NeedFinder {
 public:
  NeedFinder(const StepWorld& world, const model::Procedure& procedure)
      : world_(world), procedure_(procedure), year_(procedure.usable("bought-after") ? procedure.bought_after : 0) {}

  std::vector<CautionNeed> find() {
    for (place_ = 0; place_ < procedure_.steps.size(); ++place_) {
      const Step& step = procedure_.steps[place_];
      if (!step.whole || !step.caution.empty()) continue;
      add_liquids(step);
      for (std::size_t i = 0; i < step.tools.size(); ++i) {
        if (const auto* tool = tool_named(world_, step.tools[i])) add_listed(*tool, tool->cautions, "using." + std::to_string(i));
      }
      for (std::size_t i = 0; i < step.on.size(); ++i) add_part(step.on[i], "on." + std::to_string(i));
      for (std::size_t i = 0; i < step.reaches.size(); ++i) add_part(step.reaches[i], "reaches." + std::to_string(i));
      for (std::size_t i = 0; i < step.meets.size(); ++i) add_residue(step, step.meets[i], "meets." + std::to_string(i));
      for (const std::string& way : ways_of(world_, step)) {
        add_hazard(way, "do", "the step works by " + way);
        if (way == "cell-handled") add_hazard("cell-touched", "do", "the step handles a cell");
      }
    }
    return std::move(needs_);
  }

 private:
  void add_listed(const model::Record& record, const model::References& cautions, const std::string& field) {
    if (!record.usable("cautions")) return;
    for (const model::RecordRef& caution : cautions) {
      needs_.push_back({place_, field, caution, "the step uses " + record.id, record.reference() + " asks for it",
                        record.reference(), "cautions"});
    }
  }

  void add_hazard(const std::string& hazard, const std::string& field, const std::string& because) {
    const model::HazardCaution* row = world_.tables.hazard_caution(hazard);
    if (row == nullptr) return;
    const std::string words = hazard == "cell-handled" ? std::string("the step handles a cell") : because;
    needs_.push_back({place_, field, model::RecordRef(model::Kind::caution, row->caution), words, row->why, {}, row->origin.id});
  }

  void add_liquids(const Step& step) {
    for (std::size_t i = 0; i < step.with.size(); ++i) {
      const model::Chemistry* liquid = chemistry_named(world_, step.with[i]);
      if (liquid == nullptr) continue;
      const std::string field = "with." + std::to_string(i);
      add_listed(*liquid, liquid->cautions, field);
      const std::string uses = "the step uses " + liquid->id;
      if (liquid->family == model::LiquidFamily::acid || liquid->family == model::LiquidFamily::base)
        add_hazard("neutralise", field, uses);
      const auto flash = flash_point_of(world_, *liquid);
      if (flash && flash->celsius <= kFlammableUpTo &&
          (liquid->form == model::LiquidForm::liquid || liquid->form == model::LiquidForm::aerosol))
        add_hazard("flammable", field, uses);
      for (const model::RecordRef& met : step.meets) {
        if (gives_gas(mixes(world_, met, step.with[i]))) add_hazard("gas", field, uses + " on " + words_for(world_, met));
      }
    }
  }

  void add_part(const model::RecordRef& reference, const std::string& field) {
    if (const auto* part = part_named(world_, reference)) add_listed(*part, part->cautions, field);
    for (const model::RecordRef& material : materials_of(world_, reference)) {
      const auto* found = world_.base.find<model::Material>(material);
      if (found != nullptr) add_listed(*found, found->cautions, field);
    }
  }

  void add_residue(const Step& step, const model::RecordRef& reference, const std::string& field) {
    const model::Residue* residue = residue_named(world_, reference);
    if (residue == nullptr) return;
    add_listed(*residue, residue->cautions, field);
    if (residue->left_by.empty() || !residue->usable("left-by")) return;
    const std::string meets = "the step meets " + residue->id;
    if (residue->side == model::Side::alkaline) add_hazard("crust", field, meets);
    if (residue->side == model::Side::alkaline && neutralises(step)) add_hazard("neutralise", field, meets);
    for (const std::string& system : residue->left_by) {
      const model::MercuryFree* free = world_.tables.mercury_free_from(system);
      const bool may_hold_mercury = free == nullptr || (free->year > kFirstWristCells && year_ < free->year);
      if (!may_hold_mercury) continue;
      add_hazard("mercury-era", field, meets + mercury_words(free));
      return;
    }
  }

  /// Why the cell may hold mercury: of its system every one does, or it may be of before the year.
  std::string mercury_words(const model::MercuryFree* free) const {
    if (free == nullptr) return ", which a cell with mercury leaves";
    const std::string until = "; such cells may hold mercury up to " + std::to_string(free->year);
    if (year_ == 0) return ", and bought-after names no year" + until;
    return ", and bought-after names " + std::to_string(year_) + until;
  }

  bool neutralises(const Step& step) const {
    return std::any_of(step.with.begin(), step.with.end(), [this](const model::RecordRef& reference) {
      const model::Chemistry* liquid = chemistry_named(world_, reference);
      return liquid != nullptr && (liquid->family == model::LiquidFamily::acid || liquid->family == model::LiquidFamily::base);
    });
  }

  static constexpr int kFirstWristCells = 1960;  ///< a system free since then was never made with mercury

  const StepWorld& world_;
  const model::Procedure& procedure_;
  int year_;
  std::size_t place_ = 0;
  std::vector<CautionNeed> needs_;
};

}  // namespace

bool has_to_guard(const StepWorld& world, const model::RecordRef& caution, const model::References& there) {
  const auto* found = world.base.find<model::Caution>(caution);
  if (found == nullptr || found->severity != model::Severity::property) return true;
  bool guards_things = false;
  const auto guards = [&](const auto& records) {
    return std::any_of(records.begin(), records.end(), [&](const auto& one) {
      const auto& asks = one.second.cautions;
      if (std::find(asks.begin(), asks.end(), caution) == asks.end()) return false;
      guards_things = true;
      return std::find(there.begin(), there.end(), one.second.reference()) != there.end();
    });
  };
  return guards(world.base.parts) || guards(world.base.materials) || !guards_things;
}

std::vector<CautionNeed> caution_needs(const StepWorld& world, const model::Procedure& bound_procedure) {
  return NeedFinder(world, bound_procedure).find();
}

}  // namespace benchleaf::bench
