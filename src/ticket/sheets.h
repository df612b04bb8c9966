#pragma once

#include <memory>
#include <string>
#include <vector>

#include "compose/desk.h"
#include "model/book.h"
#include "model/leaflet.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

/// One line of the ticket, as paper, screen and terminal set it.
struct SheetLine {
  enum class Kind {
    tick,     ///< something to do, with a box
    words,    ///< something to know
    key,      ///< what is looked for first: the number of a cell, the size of a gasket
    caution,  ///< of `record`; in full the first time, then as a strip
    step      ///< of a procedure, with a box
  };
  Kind kind = Kind::words;
  std::vector<model::Runs> cells;  ///< side by side where there are several
  model::RecordRef record;         ///< a caution, a procedure, a need; or empty
  bool again = false;              ///< the caution stood in full before
};

struct SheetSection {
  std::string id;  ///< `never`, `work`, `readings`, `job-3`
  std::string title;
  std::string note;  ///< small, beside the title
  std::vector<SheetLine> lines;
  std::vector<std::shared_ptr<const model::Drawing>> drawings = {};  ///< under the lines
};

/// What stands beside the steps of a job.
struct JobSheet {
  SheetSection steps;
  std::vector<SheetSection> beside;
  model::RecordRef procedure;
  int number = 0;  ///< 0: the short form of all jobs, on a ticket of one page
};

/// The words of a ticket: the front sheet, then a sheet a job. All sentences come from records.
struct Sheets {
  std::vector<SheetSection> front;
  std::vector<JobSheet> jobs;

  const SheetSection* section(std::string_view id) const;
  /// Front and jobs in reading order, what stands beside a job behind its steps.
  std::vector<SheetSection> all() const;
};

Sheets make_sheets(const Bench& bench, const Plan& plan, report::Findings& findings);

/// The whole ticket, or its front sheet alone.
enum class Extent { whole, front };
model::Leaflet ticket_leaflet(const Bench& bench, const Plan& plan, const Sheets& sheets, Extent extent,
                              report::Findings& findings);

/// `393 SR754W, silver oxide, 7.9 × 5.4 mm`: a need as it is set on paper.
std::string need_words(const compose::Desk& desk, const PlanNeed& need);
/// Why a job is not done, and what frees it; empty for one that is done.
std::string why_waits(const compose::Desk& desk, const PlanJob& job);
/// What a job is called on the sheets.
std::string job_title(const compose::Desk& desk, const PlanJob& job);

}  // namespace benchleaf::ticket
