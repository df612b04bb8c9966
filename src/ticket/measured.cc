// In: the module, or those that it may be. Out: the lines for current and voltage, with what is healthy, or with what to do where
// no figure is on record.
#include <algorithm>

#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

/// `2 to 6 µA with the lamp off` of what a record says of a healthy one; empty where that has no figure.
std::string healthy_figure(const model::Module& module) {
  std::size_t end = 0;
  const auto is_stop = [&module](std::size_t at) {
    const bool last = at + 1 >= module.healthy.size() || module.healthy[at + 1] == ' ';
    return module.healthy[at] == ';' || (module.healthy[at] == '.' && last);
  };
  while (end < module.healthy.size() && !is_stop(end)) ++end;
  std::string words = module.healthy.substr(0, end);
  constexpr std::string_view kSaid = " is healthy";
  if (const std::size_t at = words.find(kSaid); at != std::string::npos) words.erase(at, kSaid.size());
  return std::any_of(words.begin(), words.end(), [](char one) { return one >= '0' && one <= '9'; }) ? words : std::string();
}

/// What is healthy by the record, else by the kinds that it may be.
std::string healthy_words(const Planner& planner) {
  const model::Module* module = planner.module();
  if (module != nullptr && !healthy_figure(*module).empty()) return "; healthy is " + module->healthy;
  const bench::StepWorld world{planner.desk.records, planner.desk.tables};
  std::vector<std::string> kinds;
  for (const model::Module* one : planner.modules()) {
    const std::string figure = healthy_figure(*one);
    if (!figure.empty()) kinds.push_back(bench::words_for(world, one->reference()) + ", " + figure);
  }
  const std::string otherwise =
      "no healthy figure is on record: write the reading on the owner's card, and hold the one at the next cell against it.";
  if (kinds.empty()) return "; " + otherwise;
  return ". Healthy by kind: " + listed(kinds, "; ") + ". Of another kind " + otherwise;
}

}  // namespace

void add_measured(Planner& planner, SectionMaker& section) {
  const model::Module* module = planner.module();
  Line current = planner.line();
  current.say("Current ").blank(18).say(" \u00B5A" + healthy_words(planner));
  const bool lamp = module != nullptr && module->lamp != model::Lamp::none;
  if (planner.fact("cell-life.mean-current") != nullptr)
    planner
        .say_fact(current.say(lamp ? " In the mean of a day, lamp and all, " : " In the mean of a day "),
                  "cell-life.mean-current")
        .say(".");
  section.tick(current);
  Line voltage = planner.line();
  voltage.say("In its place: ").blank(18).say(" V");
  const int cells = module != nullptr ? module->cell_count : planner.watch.cell_count;
  for (int i = 1; i < cells; ++i) voltage.say(", the next ").blank(18).say(" V");
  section.tick(voltage);
}

}  // namespace benchleaf::compose
