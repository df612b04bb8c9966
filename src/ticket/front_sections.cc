// In: what was found out. Out: the sections that are read before anything moves: never, first aid, what is known, checks, first
// looks.
#include <algorithm>

#include "compose/uses.h"
#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

/// Materials of this watch that a liquid could ruin: case, crystal, what stays inside.
model::References materials_of(const Planner& planner) {
  model::References materials;
  model::References parts = case_materials(planner.watch);
  if (!planner.crystal_material().empty()) parts.emplace_back(crystal_part(planner, "part/acrylic-crystal"));
  parts.insert(parts.end(), planner.watch.inside.begin(), planner.watch.inside.end());
  for (const model::RecordRef& part : parts) {
    for (const model::RecordRef& material : bench::materials_of({planner.desk.records, planner.desk.tables}, part))
      add_once(materials, material);
  }
  return materials;
}

bool lies_in(const model::Stock* drawer, const std::string& record) {
  return drawer != nullptr && std::any_of(drawer->items.begin(), drawer->items.end(),
                                          [&record](const auto& item) { return item.item == record && item.count > 0; });
}

bool is_needed(const Plan& plan, const std::string& record) {
  return std::any_of(plan.needs.begin(), plan.needs.end(), [&record](const auto& need) { return need.record == record; });
}

/// Whether no abrasive of the handbook may touch a material.
bool bears_no_abrasive(const Desk& desk, const model::RecordRef& material) {
  const auto& verdicts = desk.uses.liquids_on(material);
  return std::none_of(verdicts.begin(), verdicts.end(), [](const LiquidVerdict& one) {
    return one.agent.is(model::Kind::abrasive) && one.item->verdict != model::Verdict::never;
  });
}

/// What a liquid is called, as the other lists and the steps of the sheet call it; where nothing that cuts is allowed, all of it
/// is one word.
std::string list_word(const Desk& desk, const model::RecordRef& agent, const model::RecordRef& material) {
  const bool cuts = agent.is(model::Kind::abrasive);
  return cuts && bears_no_abrasive(desk, material) ? "every paper, cloth and paste that cuts" : desk.name(agent);
}

/// One line a material: what never touches it. On the case and the crystal everything counts, on what stays inside what is on the
/// bench for this plan. A liquid of the drawer that would ruin the case is a finding too.
void add_banned(Planner& planner, SectionMaker& section) {
  const model::References of_case = case_materials(planner.watch);
  const model::References of_crystal = bench::materials_of({planner.desk.records, planner.desk.tables},
                                                           model::RecordRef(crystal_part(planner, "part/acrylic-crystal")));
  for (const model::RecordRef& material : materials_of(planner)) {
    std::vector<std::string> liquids;
    const bool on_case = holds(of_case, material);
    const bool on_crystal = holds(of_crystal, material);
    for (const LiquidVerdict& verdict : planner.desk.uses.liquids_on(material)) {
      if (verdict.item->verdict != model::Verdict::never) continue;
      const bool at_hand = is_needed(planner.plan, verdict.agent) || lies_in(planner.drawer, verdict.agent);
      if (on_case || on_crystal || at_hand) add_once(liquids, list_word(planner.desk, verdict.agent, material));
      const bool liquid = verdict.agent.is(model::Kind::chemistry);
      if (on_case && liquid && lies_in(planner.drawer, verdict.agent)) {
        planner.find(report::Rule::ticket_liquid, "case.surface",
                     Planner::id_of(verdict.agent) + " lies in the drawer and would ruin " + Planner::id_of(material) + ": " +
                         verdict.item->why,
                     "put it away before the work begins");
      }
    }
    if (liquids.empty()) continue;
    Line line = planner.line();
    line.verdict(model::Verdict::never, "never").say(" on ").say(planner.desk.name(material), model::Style::bold).say(": ");
    section.words(line.say(listed(liquids, "; ") + "."));
  }
}

/// What somebody else does: what harms, and what needs a machine of its own.
std::vector<std::string> for_others(const Planner& planner) {
  std::vector<std::string> list;
  const bool mercury = std::any_of(planner.watch.cells_found.begin(), planner.watch.cells_found.end(), [&](const auto& cell) {
    return planner.desk.cell(cell) != nullptr && planner.desk.cell(cell)->system.rfind("mercuric", 0) == 0;
  });
  if (mercury || holds(planner.residues(), "residue/mercury-era-deposit"))
    list.emplace_back(
        "The old cell or its leak may hold mercury: gloves, a closed bag, and the point that takes hazardous waste.");
  if (planner.watch.lume == "some" || holds(planner.watch.inside, "part/luminous-paint"))
    list.emplace_back(
        "Luminous paint that nobody knows is left alone: no scraping, no sanding, no blowing; ask the office for radiation.");
  if (planner.may_bear_no_water())
    list.emplace_back(
        "The crust may be of lithium, which bears no water, or of another cell, which is lifted damp. Gloves, window open, the "
        "cell "
        "into a bag, the back laid on; ask before anything wet or dry touches it.");
  list.emplace_back("A pressure test is for somebody with the machine. Without one nothing is said about water.");
  for (const std::string& symptom : planner.watch.symptoms) {
    const auto found = planner.desk.records.symptoms.find(Planner::id_of(symptom));
    if (found == planner.desk.records.symptoms.end()) continue;
    for (const auto& cause : found->second.causes) add_once(list, cause.stop);
  }
  return list;
}

void add_never(Planner& planner) {
  SectionMaker section(planner, "never", "Never, and not by you");
  for (const PlanJob& job : planner.plan.jobs) {
    if (job.held.empty()) continue;
    Line line = planner.line();
    line.verdict(model::Verdict::never, "not done").say(" ").say(planner.desk.name(job.procedure), model::Style::bold);
    line.say(": " + job.held + (job.held.back() == '.' ? "" : "."));
    if (is_polish(job.bound)) line.say(" " + instead_of_polish(planner));
    section.words(line);
  }
  add_banned(planner, section);
  for (const std::string& symptom : planner.watch.symptoms) {
    const auto found = planner.desk.records.symptoms.find(Planner::id_of(symptom));
    if (found == planner.desk.records.symptoms.end()) continue;
    for (const std::string& never : found->second.never) section.words(never);
  }
  for (const std::string& words : for_others(planner)) {
    Line line = planner.line();
    section.words(line.say("For somebody else: ", model::Style::bold).say(words));
  }
  section.close();
}

/// What to do at once where the work of this watch can hurt somebody badly; each harm once.
void add_first_aid(Planner& planner) {
  using Word = model::Message::Word;
  model::References cautions;
  for (const PlanJob& job : planner.plan.jobs) {
    if (!job.held.empty()) continue;
    for (const model::RecordRef& caution : job.bound.cautions) add_once(cautions, caution);
    for (const auto& step : job.bound.steps) add_once(cautions, step.caution);
  }
  SectionMaker section(planner, "first-aid", "If it happens");
  for (const std::string& reference : cautions) {
    const auto found = planner.desk.records.cautions.find(Planner::id_of(reference));
    if (found == planner.desk.records.cautions.end() || found->second.first_aid.empty()) continue;
    if (found->second.word != Word::danger && found->second.word != Word::warning) continue;
    Line line = planner.line();
    section.words(line.say(found->second.hazard + " ", model::Style::bold).say(found->second.first_aid));
  }
  if (section.empty()) return;
  Line numbers = planner.line();
  section.tick(numbers.say("Emergency ", model::Style::bold).blank(26).say(" Poison centre ", model::Style::bold).blank(26));
  section.close();
}

/// Each well has its own: in series one can looks up and the other down.
void add_ways_up(Planner& planner, SectionMaker& section) {
  const model::Module* module = planner.module();
  const int wells = std::max(1, module != nullptr ? module->cell_count : planner.watch.cell_count);
  Line line = planner.line();
  line.say("Write down which face of the cell looks up");
  for (int well = 1; well <= wells && wells > 1; ++well)
    line.say((well > 1 ? "," : ":") + std::string(" well ") + std::to_string(well) + " ").blank(14);
  line.say(", where the insulator lies, and over what the notch of the back stands.");
  if (module != nullptr && wells > 1 && module->wiring == model::Wiring::series)
    line.say(" The cells lie in series: one with its can up, the other with its can down.");
  section.tick(line);
}

void add_first_looks(Planner& planner) {
  SectionMaker section(planner, "before", "Before anything moves");
  section.tick("Photograph front, back, both sides and the strap ends, with the buttons as they stand.");
  if (!stays_closed(planner))
    section.tick(
        "Back off: photograph cell, strap, insulator and gasket. Sketch every spring with the way it stands and what it "
        "touches.");
  Line buttons = planner.line();
  section.tick(
      buttons.say("Press each button once and write down what it does: 1 ").blank(24).say(" 2 ").blank(24).say(" 3 ").blank(24));
  if (stays_closed(planner)) return section.close();
  add_ways_up(planner, section);
  Line count = planner.line();
  section.tick(
      count.say("Cells on the bench, in: ").blank(12).say(" out: ").blank(12).say(". The two agree when the watch is closed."));
  section.close();
}

/// What was found, and what the owner asked for.
void add_wanted(Planner& planner) {
  SectionMaker section(planner, "wanted", "What is known of it");
  Line wants = planner.line();
  if (!planner.watch.wants.empty()) section.words(wants.say("The owner: ", model::Style::bold).say(planner.watch.wants));
  Line found = planner.line();
  if (!planner.watch.found.empty()) section.words(found.say("Found: ", model::Style::bold).say(planner.watch.found));
  section.close();
}

}  // namespace

void add_check_list(Planner& planner, bool back_off) {
  SectionMaker section(planner, back_off ? "checks-inside" : "checks",
                       !back_off               ? "Find out first, back closed"
                       : stays_closed(planner) ? "To find out when the next sheet has opened it"
                                               : "Find out with the back off");
  for (const PlanCheck& check : planner.plan.checks) {
    if (check.back_off != back_off) continue;
    Line line = planner.line();
    section.tick(line.say(check.what + ". ", model::Style::bold).say(check.how + " ").blank(30));
  }
  if (!section.empty() && planner.watch.jobs.empty())
    section.words("With these answers plan the watch again: jobs that wait for one are not on this sheet.");
  section.close();
}

void Planner::add_front_sections() {
  add_never(*this);
  add_first_aid(*this);
  add_wanted(*this);
  add_check_list(*this, false);
  add_first_looks(*this);
}

}  // namespace benchleaf::compose
