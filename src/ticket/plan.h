#pragma once

#include <string>
#include <vector>

#include "derive/derive.h"
#include "model/book.h"
#include "model/knowledge_base.h"
#include "model/leaflet.h"
#include "model/tables.h"
#include "report/finding.h"

namespace benchleaf::compose {

/// One line of a plan, as paper, screen and terminal set it.
struct PlanLine {
  enum class Kind {
    tick,     ///< something to do, with a box
    words,    ///< something to know
    caution,  ///< of `record`; in full the first time, then by its signal word and hazard
    step      ///< of a procedure, with a box
  };
  Kind kind = Kind::words;
  model::Runs runs;
  std::string record;  ///< `caution/ID` of a caution, or empty
  bool again = false;  ///< the caution stood in full before
};

struct PlanSection {
  std::string id;  ///< `never`, `checks`, `parts`, `job-3`
  std::string title;
  std::vector<PlanLine> lines;
};

/// What is not known of the watch, and how it is found out.
struct PlanCheck {
  std::string field;  ///< `crystal-size.thickness`
  std::string what;
  std::string how;
  bool back_off = false;  ///< asked once the back is off
};

/// A procedure with the parts of this watch in its steps and every caution that they need before them.
struct PlanJob {
  std::string procedure;  ///< `procedure/ID`
  model::Procedure bound;
  std::string held;  ///< why it is left out, or empty
};

/// A thing that the plan needs. Cells, gaskets and crystals are used up; of paper and liquids there is one for all watches.
struct PlanNeed {
  std::string record;  ///< `cell/sr754w`
  std::string size;    ///< of a gasket or a crystal, or the grade of a paper
  int count = 1;
  bool used_up = true;
  bool for_test = false;             ///< a cell that is tried beside the one that goes in, and not fitted
  std::string words;                 ///< `393 SR754W, 7.9 × 5.4 mm`, as set on paper
  std::string note;                  ///< what holds while it is got: not for the owner's card
  std::vector<std::string> instead;  ///< what does as well, with its reason
  int in_drawer = 0;
  std::string place;  ///< where it lies in the drawer
};

struct Plan {
  std::string watch;   ///< id
  std::string number;  ///< of the job, or empty
  std::string title;
  std::string drawer;  ///< id of the stock list, or empty
  std::vector<PlanCheck> checks;
  std::vector<PlanNeed> needs;
  std::vector<PlanJob> jobs;
  std::vector<PlanSection> sections;
  model::FactBase facts;  ///< what the watch states, and every figure of the plan: `watch/ID#gasket-fit.stretch`
};

/// A plan for one watch: what never to do, what to find out, what to get, the work in its order with each step judged, the list
/// before closing, what may be said of water, what goes where, the owner's card. A field of the watch that is missing becomes a
/// check; what stands in the way is a finding at its place in the watch. Without a drawer nothing is marked as there.
Plan make_plan(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
               const model::Watch& watch, const model::Stock* drawer, report::Findings& findings);

/// What several plans need together, less what lies in the drawer; each thing once, by record and size.
std::vector<PlanNeed> shopping_list(const std::vector<Plan>& plans);

/// The plan as pages.
model::Leaflet ticket_leaflet(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
                              const Plan& plan, report::Findings& findings);

}  // namespace benchleaf::compose
