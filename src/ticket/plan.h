#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bench/calculator.h"
#include "bench/codes.h"
#include "bench/items.h"
#include "bench/step_checker.h"
#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/marks.h"
#include "model/tables.h"
#include "report/finding.h"

namespace benchleaf::ticket {

/// What is not known of the watch.
struct PlanQuestion {
  model::RecordRef question;
  std::string field;  ///< `crystal-size.thickness`
  bool back_off = false;
};

/// Why a job is in the plan: the cause of a symptom that was ticked.
struct PlanCause {
  model::RecordRef symptom;
  std::size_t cause = 0;
};

/// A cause of a symptom without a procedure: somebody else's, or nobody's.
struct OpenCause {
  PlanCause cause;
  bool stops = false;  ///< its record says where to stop
};

/// A procedure with the parts of this watch in its steps and every caution that they need before them.
struct PlanJob {
  enum class State {
    done,           ///< its steps are on this ticket
    held,           ///< by `hold`, a fault of its steps or a slot that nothing fills
    not_this_watch  ///< its conditions do not hold here
  };
  model::RecordRef procedure;
  model::RecordRef job;  ///< `job/ID`, or empty where no record plans the procedure
  model::Procedure bound;
  State state = State::done;
  model::RecordRef hold;                  ///< `hold/ID`, or empty
  std::optional<bench::StepFault> fault;  ///< that the records find in its steps
  std::string open_slot;                  ///< that nothing fills, or empty
  bool asked = false;                     ///< the watch names it
  std::vector<PlanCause> causes;
  std::size_t stage = 0;  ///< place of its stage in the order of the bench
};

/// A thing that does as well as a need.
struct Alternative {
  model::RecordRef record;
  std::string size;
  bench::Code verdict = bench::Code::use;
  bench::Code drain = bench::Code::none;
  bool past = false;  ///< in the drawer, and older than its rubber keeps
};

/// A thing that the plan needs. Cells, gaskets and crystals are used up; of paper and liquids there is one for all watches.
struct PlanNeed {
  enum class For { fit, spare_of_packet, other_packet };
  model::RecordRef record;
  std::string size;  ///< of a gasket or a crystal, or the grade of a paper
  int count = 1;
  bool used_up = true;
  For purpose = For::fit;   ///< of a cell: to fit, or for the test of its packet
  bool to_measure = false;  ///< its size follows from what is measured on the way
  std::vector<Alternative> instead;
  int in_drawer = 0;
  std::string place;  ///< where it lies in the drawer
};

/// A liquid for a residue, and the name of its facts.
struct PlannedDose {
  std::string name;  ///< `crust-dose`
  model::RecordRef residue;
  model::RecordRef liquid;
};

/// The plan of one watch, in codes and records. What is printed of it is in sheets.h.
struct Plan {
  std::string watch;   ///< id
  std::string number;  ///< of the ticket, or empty
  std::string title;
  std::string drawer;  ///< id of the stock list, or empty
  std::vector<model::Mark> marks;
  std::vector<PlanQuestion> questions;
  std::vector<PlanNeed> needs;
  std::vector<PlanJob> jobs;  ///< in the order of the bench
  std::vector<OpenCause> open_causes;
  std::vector<bench::SizeItem> gaskets;  ///< that may sit, the best first
  std::vector<std::string> rungs;        ///< grades of the ladder, coarsest first
  std::vector<PlannedDose> doses;
  bool one_page = false;  ///< every job has a short form, and nothing waits
  model::FactBase facts;  ///< what the watch states, and every figure of the plan: `watch/ID#gasket-fit.stretch`

  /// The place of a job among those that are done, from 1; 0 where it is not.
  int number_of(const model::RecordRef& procedure) const;
  const PlanJob* job(const model::RecordRef& procedure) const;
  const PlanNeed* need_of(model::Kind kind) const;
};

/// Whoever answers and judges for a plan; another one in a test that tells codes from sentences.
struct Judges {
  bench::Result (*reckon)(std::string_view name, const bench::Inputs& inputs, const bench::Context& context) = bench::reckon;
  std::vector<bench::StepFault> (*check_steps)(const bench::StepWorld& world, const model::Procedure& bound) = bench::check_steps;
};

/// What a ticket is made from. Without a drawer nothing is marked as there.
struct Bench {
  const model::KnowledgeBase& records;
  const model::Tables& tables;
  const derive::Derived& derived;
  const model::Watch& watch;
  const model::Stock* drawer = nullptr;
  Judges judges = {};
  std::function<std::string(const std::string&)> page = {};  ///< of a record in the handbook, or empty
};

/// A plan for one watch. What stands in the way is a finding at its place in the watch.
Plan make_plan(const Bench& bench, report::Findings& findings);

/// The questions about a watch in the order of the form, which is that of the bench.
std::vector<const model::Question*> questions_in_order(const model::KnowledgeBase& records);
const std::vector<std::string_view>& question_sections();

/// What several plans need together, less what lies in the drawer; each thing once, by record and size.
std::vector<PlanNeed> shopping_list(const std::vector<Plan>& plans);

}  // namespace benchleaf::ticket
