// In: a job. Out: the drawing of the book that helps with it, with this watch's back or cell.
#include "ticket/figure_of_job.h"

#include "compose/figures/back_drawing.h"
#include "compose/figures/cell_in_watch.h"
#include "compose/figures/measure_pictures.h"
#include "ticket/jobs.h"

namespace benchleaf::ticket {

namespace {

constexpr double kWidestMm = 66;

std::shared_ptr<const model::Drawing> back(const compose::Desk& desk, const Bench& bench, const model::Job& job) {
  compose::BackPlace place;
  place.back = bench.watch.back;
  place.tool = job.figure_tool.empty() ? std::string() : desk.name(job.figure_tool);
  if (const auto* term = desk.records.find<model::Term>(job.figure_place)) place.place = term->term;
  if (place.back == "snap") place.deepest = desk.derived.facts.find("table/bench-rules#blade-depth.value");
  const auto* series = desk.records.find<model::Gasket>(bench.watch.gasket);
  if (series != nullptr && series->profile == model::Profile::round) place.section = desk.fact(*series, "section");
  return compose::narrow_back_drawing(place);
}

std::shared_ptr<const model::Drawing> drawing_of(const compose::Desk& desk, const Bench& bench, const model::Job& job) {
  if (job.figure == "back") return back(desk, bench, job);
  if (job.figure == "seat") return compose::seat_picture();
  if (job.figure == "groove") return compose::groove_picture();
  if (job.figure == "crystal") return compose::crystal_picture();
  if (job.figure == "scratch") return compose::scratch_picture();
  if (job.figure == "lugs") return compose::lugs_picture();
  if (job.figure == "cell-in-watch") return compose::cell_in_watch();
  return job.figure == "cell" ? compose::cell_picture() : nullptr;
}

}  // namespace

std::shared_ptr<const model::Drawing> figure_of_job(const compose::Desk& desk, const Bench& bench,
                                                    const model::RecordRef& procedure) {
  const model::Job* job = job_of(desk.records, procedure);
  if (job == nullptr) return nullptr;
  auto drawing = drawing_of(desk, bench, *job);
  return drawing == nullptr || drawing->width_mm > kWidestMm ? nullptr : drawing;
}

}  // namespace benchleaf::ticket
