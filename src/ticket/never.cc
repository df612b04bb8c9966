// In: the materials of a watch, what lies at hand, the looks, symptoms and holds. Out: the section of what is never done on it.
#include <algorithm>

#include "compose/uses.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using compose::LiquidVerdict;
using Kind = SheetLine::Kind;
using model::Style;

bool lies_in(const model::Stock* drawer, const RecordRef& record) {
  return drawer != nullptr && std::any_of(drawer->items.begin(), drawer->items.end(),
                                          [&record](const auto& item) { return item.item == record && item.count > 0; });
}

bool is_needed(const Plan& plan, const RecordRef& record) {
  return std::any_of(plan.needs.begin(), plan.needs.end(), [&record](const auto& need) { return need.record == record; });
}

class NeverRows {
 public:
  explicit NeverRows(const SheetContext& context) : context_(context) {
    const auto add_materials = [this](const References& parts, References& list) {
      for (const RecordRef& part : parts) {
        for (const RecordRef& material : bench::materials_of(context_.context.world(), part)) add_once(list, material);
      }
    };
    add_materials(context_.context.case_materials(), of_case_);
    const References crystals = context_.context.parts_of("crystal");
    if (!context_.context.crystal_material().empty() && !crystals.empty())
      add_materials({context_.context.crystal_part(crystals.front())}, of_crystal_);
    add_materials(context_.watch.inside, inside_);
  }

  /// One row a material: on the case and the crystal everything counts, on what stays inside what is on the bench for this plan.
  void add(SectionBuilder& section) const {
    References all = of_case_;
    for (const References* list : {&of_crystal_, &inside_}) {
      for (const RecordRef& material : *list) add_once(all, material);
    }
    for (const RecordRef& material : all) add_row(material, section);
  }

 private:
  /// Whether no abrasive of the handbook may touch a material.
  bool bears_no_abrasive(const RecordRef& material) const {
    const auto& verdicts = context_.desk.uses.liquids_on(material);
    return std::none_of(verdicts.begin(), verdicts.end(), [](const LiquidVerdict& one) {
      return one.agent.is(model::Kind::abrasive) && one.item->verdict != model::Verdict::never;
    });
  }

  std::string word_for(const RecordRef& agent, const RecordRef& material) const {
    const bool cuts = agent.is(model::Kind::abrasive);
    return cuts && bears_no_abrasive(material) ? "every paper, cloth and paste that cuts" : context_.desk.name(agent);
  }

  void add_row(const RecordRef& material, SectionBuilder& section) const {
    std::vector<std::string> agents;
    const bool outside = has(of_case_, material) || has(of_crystal_, material);
    for (const LiquidVerdict& verdict : context_.desk.uses.liquids_on(material)) {
      if (verdict.item->verdict != model::Verdict::never) continue;
      const bool stands_by = lies_in(context_.context.drawer, verdict.agent);
      if (outside || stands_by || is_needed(context_.plan, verdict.agent)) add_once(agents, word_for(verdict.agent, material));
      if (has(of_case_, material) && stands_by && verdict.agent.is(model::Kind::chemistry)) warn(verdict, material);
    }
    if (agents.empty()) return;
    compose::Line head = context_.line();
    head.verdict(model::Verdict::never, "never").say(" ").say(context_.desk.name(material) + ":", Style::bold);
    section.row(Kind::words, {head.take(), text_runs(compose::listed(agents))}, material);
  }

  void warn(const LiquidVerdict& verdict, const RecordRef& material) const {
    context_.desk.findings.add(report::Rule::ticket_liquid, context_.watch.span_of("case.surface"),
                               verdict.agent.id() + " is in stock and would ruin " + material.id() + ": " + verdict.item->why,
                               "put it away before the work begins");
  }

  const SheetContext& context_;
  References of_case_;
  References of_crystal_;
  References inside_;
};

void add_looks(const SheetContext& context, SectionBuilder& section) {
  for (const model::Look* look : context.looks("never")) {
    const std::string text = context.filled(look->text);
    const std::size_t colon = text.find(": ");
    compose::Line head = context.line();
    head.verdict(model::Verdict::never, "never").say(" ");
    if (colon == std::string::npos) {
      section.row(Kind::words, {head.take(), text_runs(text)}, look->caution);
      continue;
    }
    head.say(text.substr(0, colon + 1), Style::bold);
    section.row(Kind::words, {head.take(), text_runs(text.substr(colon + 2))}, look->caution);
  }
}

/// What the records of the symptoms forbid, and where they end.
void add_symptoms(const SheetContext& context, SectionBuilder& section) {
  for (const RecordRef& ticked : context.watch.symptoms) {
    const auto* symptom = context.desk.records.find<model::Symptom>(ticked);
    if (symptom == nullptr) continue;
    for (const std::string& never : symptom->never) section.words(never, ticked);
    for (const auto& cause : symptom->causes) section.words(cause.stop, ticked);
  }
}

}  // namespace

void add_never(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("never", "Never on this watch");
  add_looks(context, section);
  NeverRows(context).add(section);
  add_symptoms(context, section);
  section.close(front);
}

}  // namespace benchleaf::ticket
