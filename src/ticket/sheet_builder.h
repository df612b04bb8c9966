#pragma once

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "compose/line.h"
#include "model/marks.h"
#include "ticket/context.h"
#include "ticket/sheets.h"

namespace benchleaf::ticket {

/// What the words of a ticket are made from.
struct SheetContext {
  const compose::Desk& desk;
  const model::Watch& watch;
  const Context& context;
  const Plan& plan;
  Marks marks;
  std::function<std::string(const std::string&)> page;  ///< of a record in the handbook, or empty

  compose::Line line() const { return compose::Line(desk); }
  const model::Fact* fact(const std::string& name) const { return plan.facts.find(watch.reference() + "#" + name); }
  /// `gasket-fit.stretch` as it is printed, with its sign.
  compose::Line& say_fact(compose::Line& line, const std::string& name) const;
  /// Looks of a place that hold for this watch, in their order; with a job, those of that job.
  std::vector<const model::Look*> looks(std::string_view place, const RecordRef& procedure = {}) const;
  /// The text of a look with its slots filled; empty where a slot has nothing.
  std::string filled(const std::string& text) const;
};

/// A section that grows line by line.
class SectionBuilder {
 public:
  SectionBuilder(std::string id, std::string title, std::string note = {})
      : section_{std::move(id), std::move(title), std::move(note), {}, {}} {}
  SheetLine& add(SheetLine::Kind kind, model::Runs runs, RecordRef record = {});
  SheetLine& row(SheetLine::Kind kind, std::vector<model::Runs> cells, RecordRef record = {});
  void words(std::string text, RecordRef record = {});
  bool empty() const { return section_.lines.empty(); }
  SheetSection take() { return std::move(section_); }
  /// Into the list unless it stayed empty.
  void close(std::vector<SheetSection>& list);

 private:
  SheetSection section_;
};

std::string alternative_words(const compose::Desk& desk, const Alternative& one);
/// `SR754W, silver oxide, 7.9 mm × 5.4 mm`: a cell under its number.
std::string cell_words(const compose::Desk& desk, const model::Cell& cell);
/// `round, nitrile rubber`: a gasket under its size.
std::string gasket_kind(const compose::Desk& desk, const model::Gasket& series);
/// ` of the same packet, to test`, or empty.
std::string purpose_words(PlanNeed::For purpose);
/// A printed value without its unit.
std::string bare_figure(const std::string& printed);
model::Runs text_runs(std::string text, model::Style style = model::Style::plain);

// The parts of make_sheets.
void add_front(const SheetContext& context, std::vector<SheetSection>& front);
void add_never(const SheetContext& context, std::vector<SheetSection>& front);
void add_parts(const SheetContext& context, std::vector<SheetSection>& front);
void add_work(const SheetContext& context, std::vector<SheetSection>& front);
void add_readings(const SheetContext& context, std::vector<SheetSection>& front);
void add_history(const SheetContext& context, std::vector<SheetSection>& front);
/// What the earlier visits tell: how long a cell was in, how the draw moved, when the cell in it is due.
void add_history_told(const SheetContext& context, std::vector<SheetSection>& front);
void add_card(const SheetContext& context, std::vector<SheetSection>& front);
void add_job_sheets(const SheetContext& context, std::vector<JobSheet>& jobs);
/// The steps of all jobs in their short form, as one sheet.
JobSheet brief_sheet(const SheetContext& context);

}  // namespace benchleaf::ticket
