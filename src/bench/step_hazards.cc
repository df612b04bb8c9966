// In: a procedure whose slots are filled. Out: steps that are too hot for a liquid or a material, and steps that handle a
// crust or sand dry.
#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/step_checker.h"
#include "bench/ways.h"

namespace benchleaf::bench {

namespace {

using Step = model::Procedure::Step;
using Ways = std::set<std::string, std::less<>>;

constexpr double kFlashMargin = 10;  // kelvin; a house rule, as the rule's source says
constexpr double kRoom = 20;         // degrees Celsius, of a bath that is not heated
constexpr const char* kMarginGround = "operating manuals of ultrasonic tanks; the margin of 10 K is a house rule";

std::string degrees(double celsius) { return base::fixed_text(celsius, 1, base::Trailing::cut) + " °C"; }

class HeatCheck {
 public:
  HeatCheck(const StepWorld& world, std::vector<StepFault>& faults) : world_(world), faults_(faults) {}

  void check(const Step& step, std::size_t place) {
    place_ = place;
    ways_ = ways_of(world_, step);
    const auto stated = step.at ? step.at->in(base::Unit::degree_celsius) : std::nullopt;
    for (std::size_t i = 0; i < step.with.size(); ++i) {
      const model::Chemistry* liquid = chemistry_named(world_, step.with[i]);
      if (liquid == nullptr || !liquid->usable("flash-point")) continue;
      if (const auto flash = flash_point_of(world_, *liquid)) {
        check_liquid(*liquid, *flash, stated ? std::optional<double>(stated->high) : std::nullopt, "with." + std::to_string(i));
      }
    }
    if (!stated) return;
    for (const auto* list : {&step.on, &step.reaches}) {
      for (const model::RecordRef& reference : *list) check_target(reference, stated->high);
    }
  }

 private:
  void check_liquid(const model::Chemistry& liquid, const FlashPoint& flash, std::optional<double> stated,
                    const std::string& field) {
    const std::string words = words_for(world_, liquid.reference());
    if (ways_.count("tank") > 0 && flash.celsius <= kFlammableUpTo) {
      add(StepLaw::tank, field,
          words + " in the ultrasonic tank: it has a flash point of " + degrees(flash.celsius) +
              ", and ultrasound makes a mist that ignites",
          "water and soap only in the tank", "operating manuals of ultrasonic tanks", flash.record);
      return;
    }
    const bool bath = ways_.count("bath") > 0 || ways_.count("soak") > 0 || ways_.count("tank") > 0;
    const bool hot = ways_.count("heat") > 0 && flash.celsius <= kFlammableUpTo;
    if (!bath && !hot && !stated) return;
    const double now = stated.value_or(kRoom);
    const bool too_near = now > flash.celsius - kFlashMargin;
    if (!too_near && (stated || !hot)) return;
    const std::string at = stated ? " at " + degrees(now) : (hot ? " with heat" : " in a bath of the room's " + degrees(now));
    add(StepLaw::flash_point, field,
        words + at + ": its flash point is " + degrees(flash.celsius) + ", and 10 K below it is as near as a bath may come",
        "wipe it on cold, or take a liquid that does not burn", kMarginGround, flash.record);
  }

  void check_target(const model::RecordRef& reference, double now) {
    for (const model::RecordRef& material : materials_of(world_, reference)) {
      const auto* found = world_.base.find<model::Material>(material);
      if (found == nullptr) continue;
      check_limit(reference, *found, found->service, "service", now);
      check_limit(reference, *found, found->softens, "softens", now);
    }
  }

  void check_limit(const model::RecordRef& reference, const model::Material& material, const std::optional<base::Quantity>& limit,
                   const std::string& path, double now) {
    const auto ends = limit ? limit->in(base::Unit::degree_celsius) : std::nullopt;
    const bool softens = path == "softens";
    if (!ends || now <= (softens ? ends->low : ends->high)) return;
    const std::string bound = softens ? "softens from " + base::terminal(*limit) : "bears no more than " + degrees(ends->high);
    std::string words = words_for(world_, reference);
    if (reference != material.reference()) words += " (" + words_for(world_, material.reference()) + ")";
    faults_.push_back({StepLaw::heat, place_, "at", words + " at " + degrees(now) + ": it " + bound,
                       "work cooler, or keep it out", ground_of(material, path), material.reference(), path});
  }

  void add(StepLaw law, const std::string& field, std::string message, std::string hint, std::string ground,
           const model::RecordRef& record) {
    faults_.push_back({law, place_, field, std::move(message), std::move(hint), std::move(ground), record, "flash-point"});
  }

  const StepWorld& world_;
  std::vector<StepFault>& faults_;
  std::size_t place_ = 0;
  Ways ways_;
};

/// Residues of cells that are met somewhere, to the place of the rinse that takes them away; they are there from the start.
std::map<model::RecordRef, std::size_t> crusts_until(const StepWorld& world, const model::Procedure& procedure) {
  std::map<model::RecordRef, std::size_t> last_met;
  for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
    for (const model::RecordRef& reference : procedure.steps[i].meets) {
      const model::Residue* residue = residue_named(world, reference);
      if (residue != nullptr && !residue->left_by.empty()) last_met[reference] = i;
    }
  }
  for (auto& [reference, until] : last_met) {
    if (residue_named(world, reference)->stays) {
      until = procedure.steps.size();
      continue;
    }
    while (until < procedure.steps.size() && !procedure.steps[until].rinse) ++until;
  }
  return last_met;
}

constexpr std::array<std::string_view, 6> kRaisesDust = {"blow", "brush", "heat", "sand", "tank", "burn"};

}  // namespace

void check_heat(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults) {
  HeatCheck check(world, faults);
  for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
    if (procedure.steps[i].whole && procedure.steps[i].caution.empty()) check.check(procedure.steps[i], i);
  }
}

void check_wet_method(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults) {
  const auto crusts = crusts_until(world, procedure);
  for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
    const Step& step = procedure.steps[i];
    if (!step.whole || !step.caution.empty()) continue;
    const Ways ways = ways_of(world, step);
    for (const auto& [reference, until] : crusts) {
      if (i >= until) continue;
      for (const std::string_view way : kRaisesDust) {
        if (ways.count(way) == 0) continue;
        faults.push_back({StepLaw::wet_crust, i, "do",
                          words_for(world, reference) + " is still there, and the step works by " + std::string(way) +
                              ": its dust is caustic and may hold mercury",
                          "lift it with a barely damp swab or with putty, then rinse", "house rule: the wet method", reference,
                          "left-by"});
      }
    }
    const bool wet = std::any_of(step.with.begin(), step.with.end(), [&world](const model::RecordRef& reference) {
      return chemistry_named(world, reference) != nullptr;
    });
    if (ways.count("sand") == 0 || wet) continue;
    faults.push_back({StepLaw::wet_sanding,
                      i,
                      step.with.empty() ? "do" : "with",
                      "the step sands dry: dust to breathe, and heat that crazes acrylic",
                      "add water to with:",
                      "house rule: the wet method",
                      {},
                      {}});
  }
}

}  // namespace benchleaf::bench
