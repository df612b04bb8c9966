// In: what the calculator made of the gasket, and of the groove if it was measured. Out: the line for the groove in the job that
// renews the gasket.
#include <string>

#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

bool is_round(const Planner& planner) {
  const auto series = planner.desk.records.gaskets.find(Planner::id_of(planner.series()));
  return series != planner.desk.records.gaskets.end() && series->second.profile == model::Profile::round;
}

/// What the calculator makes of a groove that was measured.
Line& say_squeeze(const Planner& planner, Line& line) {
  planner.say_fact(line.say("In its groove: squeeze "), "gasket-fit.squeeze");
  planner.say_fact(line.say(", "), "gasket-fit.squeeze-verdict");
  if (planner.fact("gasket-fit.fill") != nullptr) {
    planner.say_fact(line.say("; fill "), "gasket-fit.fill");
    planner.say_fact(line.say(", "), "gasket-fit.fill-verdict");
  }
  return line.say(".");
}

}  // namespace

bool asks_groove(const Planner& planner) {
  return !planner.gasket_sizes.empty() && is_round(planner) && planner.fact("gasket-fit.squeeze") == nullptr;
}

void add_groove(Planner& planner, SectionMaker& section) {
  Line line = planner.line();
  if (planner.fact("gasket-fit.squeeze") != nullptr) return section.words(say_squeeze(planner, line));
  if (!asks_groove(planner)) return;
  line.say(
      "The groove, before the new gasket lies in it: soft putty in four places, the back pressed home with the thumbs alone, "
      "never in the press, and lifted. Height of the putty ");
  line.blank(18).say(" mm.");
  if (planner.fact("gasket-fit.least-depth") != nullptr) {
    planner.say_fact(line.say(" This section fits from "), "gasket-fit.least-depth");
    planner.say_fact(line.say(" to "), "gasket-fit.most-depth");
    line.say("; outside that it is not fitted, and another section is ordered.");
  }
  if (const int opening = number_of_job(planner, "procedure/open-a-snap-back"); opening > 0)
    line.say(" A back that clicks home comes off as in " + std::to_string(opening) + ", its caution first.");
  section.tick(line.say(" Pick the putty out with pegwood. Where thumbs do not close the back, the groove is not measured."));
}

}  // namespace benchleaf::compose
