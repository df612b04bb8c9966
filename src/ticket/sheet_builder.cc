// Out: sections of a ticket, line by line, and the looks of records with their slots filled.
#include "ticket/sheet_builder.h"

#include <algorithm>
#include <optional>

#include "base/quantity.h"

namespace benchleaf::ticket {

namespace {

std::string printed_fact(const SheetContext& context, const std::string& name) {
  const model::Fact* fact = context.fact(name);
  return fact == nullptr ? std::string() : fact->printed;
}

/// What the module draws at rest: the first state that its record lists.
const model::Module::Load* rest(const SheetContext& context) {
  const model::Module* module = context.context.module();
  return module == nullptr || module->loads.empty() ? nullptr : &module->loads.front();
}

std::string year_of(const SheetContext& context) {
  const model::MercuryFree* free = context.desk.tables.mercury_free_from("alkaline");
  return free == nullptr ? std::string() : std::to_string(free->year);
}

std::string job_words(int number) { return number > 0 ? "job\u00A0" + std::to_string(number) : std::string(); }

/// The job of a procedure on this ticket; one that is not on it by its title, and its page where a handbook was bound.
std::string procedure_words(const SheetContext& context, std::string_view slot) {
  const RecordRef procedure(slot);
  const auto* found = context.desk.records.find<model::Procedure>(procedure);
  if (found == nullptr) return {};
  const std::string job = job_words(context.plan.number_of(procedure));
  if (!job.empty()) return job;
  const std::string page = context.page ? context.page(std::string(slot)) : std::string();
  return "\"" + found->title + "\" in the handbook" + (page.empty() ? "" : ", p.\u00A0" + page);
}

/// The first job on this ticket that does what a role says.
std::string role_words(const SheetContext& context, std::string_view role) {
  for (const PlanJob& job : context.plan.jobs) {
    const auto* rule = context.desk.records.find<model::Job>(job.job);
    if (job.state == PlanJob::State::done && rule != nullptr && has(rule->roles, role))
      return job_words(context.plan.number_of(job.procedure));
  }
  return {};
}

/// What a slot of a look stands for, or empty where the plan has nothing for it.
std::string value_of(const SheetContext& context, std::string_view slot) {
  const model::Module* module = context.context.module();
  if (slot == "seat")
    return is_known(context.watch.gasket_seat) ? bare_figure(base::printed(*context.watch.gasket_seat)) : "within 0.05";
  if (slot == "groove") {
    const std::string least = bare_figure(printed_fact(context, "gasket-fit.least-depth"));
    return least.empty() ? least : least + " to " + bare_figure(printed_fact(context, "gasket-fit.most-depth"));
  }
  if (slot == "left") return bare_figure(printed_fact(context, "scratch-ladder.left"));
  if (slot == "state") return rest(context) == nullptr ? std::string() : rest(context)->state;
  if (slot == "healthy")
    return rest(context) == nullptr || !is_known(rest(context)->current) ? "none on record"
                                                                         : bare_figure(base::printed(*rest(context)->current));
  if (slot == "reset") return module == nullptr || module->reset == "none" ? std::string() : module->reset;
  if (slot == "year") return year_of(context);
  return slot.find('/') == std::string_view::npos ? role_words(context, slot) : procedure_words(context, slot);
}

}  // namespace

compose::Line& SheetContext::say_fact(compose::Line& line, const std::string& name) const {
  const model::Fact* found = fact(name);
  return found == nullptr ? line : line.fact(*found).say("\u00A0").sign({found->trust, found->derived});
}

std::vector<const model::Look*> SheetContext::looks(std::string_view place, const RecordRef& procedure) const {
  std::vector<const model::Look*> all;
  for (const auto& [id, look] : desk.records.looks) {
    if (look.place != place || !any_holds(context, marks, look.when, true)) continue;
    const auto done = [this](const RecordRef& job) { return plan.number_of(job) > 0; };
    const bool here = procedure.empty() ? look.jobs.empty() || std::any_of(look.jobs.begin(), look.jobs.end(), done)
                                        : has(look.jobs, procedure);
    if (here && !filled(look.text).empty()) all.push_back(&look);
  }
  std::stable_sort(all.begin(), all.end(), [](const auto* one, const auto* other) { return one->order < other->order; });
  return all;
}

std::string SheetContext::filled(const std::string& text) const {
  std::string words;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t open = std::min(text.find('{', at), text.size());
    words += text.substr(at, open - at);
    if (open == text.size()) break;
    const std::size_t close = std::min(text.find('}', open), text.size() - 1);
    const std::string value = value_of(*this, std::string_view(text).substr(open + 1, close - open - 1));
    if (value.empty()) return {};
    words += value;
    at = close + 1;
  }
  return words;
}

SheetLine& SectionBuilder::add(SheetLine::Kind kind, model::Runs runs, RecordRef record) {
  return row(kind, {std::move(runs)}, std::move(record));
}

SheetLine& SectionBuilder::row(SheetLine::Kind kind, std::vector<model::Runs> cells, RecordRef record) {
  section_.lines.push_back({kind, std::move(cells), std::move(record), false});
  return section_.lines.back();
}

void SectionBuilder::words(std::string text, RecordRef record) {
  if (!text.empty()) add(SheetLine::Kind::words, text_runs(std::move(text)), std::move(record));
}

void SectionBuilder::close(std::vector<SheetSection>& list) {
  if (!empty()) list.push_back(take());
}

model::Runs text_runs(std::string text, model::Style style) { return {model::text_run(std::move(text), style)}; }

}  // namespace benchleaf::ticket
