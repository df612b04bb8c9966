// In: codes of a plan. Out: their words, from the records that they name.
#include <algorithm>

#include "base/quantity.h"
#include "bench/codes.h"
#include "ticket/context.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

std::string size_of(const compose::Desk& desk, const model::Cell& cell) {
  const model::Fact* diameter = desk.fact(cell, "size.diameter");
  const model::Fact* height = desk.fact(cell, "size.height");
  return diameter == nullptr || height == nullptr ? std::string() : ", " + diameter->printed + " \u00D7 " + height->printed;
}

}  // namespace

std::string purpose_words(PlanNeed::For purpose) {
  switch (purpose) {
    case PlanNeed::For::fit: return {};
    case PlanNeed::For::spare_of_packet: return " of the same packet, to test";
    case PlanNeed::For::other_packet: return " of another packet, SR on its can, to compare";
  }
  return {};
}

std::string gasket_kind(const compose::Desk& desk, const model::Gasket& series) {
  std::string words = series.profile == model::Profile::round ? "round" : "flat";
  if (is_known(series.wall)) words += ", " + base::printed(*series.wall) + " wide";
  return series.material.empty() ? words : words + ", " + desk.name(series.material);
}

std::string bare_figure(const std::string& printed) {
  return printed.substr(0, std::min(printed.rfind("\u202F"), printed.rfind("\u2009")));
}

std::string cell_words(const compose::Desk& desk, const model::Cell& cell) {
  const model::Fact* diameter = desk.fact(cell, "size.diameter");
  const model::Fact* height = desk.fact(cell, "size.height");
  std::string system = compose::plain_words(cell.system);
  if (diameter != nullptr && height != nullptr) system += ", " + bare_figure(diameter->printed) + " \u00D7 " + height->printed;
  return compose::cell_key(cell) == cell.designation ? compose::sentence_case(system) : cell.designation + ", " + system;
}

namespace {

std::string gasket_words(const compose::Desk& desk, const PlanNeed& need) {
  std::string words = desk.name(need.record);
  if (!need.size.empty()) words += ", inside " + need.size;
  const auto* series = desk.records.find<model::Gasket>(need.record);
  if (series == nullptr) return words;
  if (is_known(series->wall)) words += ", " + base::printed(*series->wall) + " wide";
  return series->material.empty() ? words : words + ", " + desk.name(series->material);
}

}  // namespace

std::string need_words(const compose::Desk& desk, const PlanNeed& need) {
  if (const model::Cell* cell = desk.cell(need.record))
    return desk.name(need.record) + ", " + compose::plain_words(cell->system) + size_of(desk, *cell) +
           purpose_words(need.purpose);
  if (need.record.is(model::Kind::gasket)) return gasket_words(desk, need);
  if (need.record.is(model::Kind::abrasive)) return "wet-and-dry paper " + need.size;
  if (need.record.is(model::Kind::crystal) && !need.size.empty())
    return desk.name(need.record) + ", about " + need.size + " across";
  if (need.record.is(model::Kind::part) && !need.size.empty()) return desk.name(need.record) + ", " + need.size;
  return desk.name(need.record);
}

std::string alternative_words(const compose::Desk& desk, const Alternative& one) {
  if (!one.size.empty())
    return one.past ? one.size + ", to order: the one in stock is past its shelf life" : one.size + ", within the band";
  std::string words = desk.name(one.record);
  if (const model::Cell* cell = desk.cell(one.record); cell != nullptr && cell->drain)
    words += ", " + model::word_of(*cell->drain) + " drain";
  return one.verdict == bench::Code::use ? words : words + ", " + std::string(bench::code_text(one.verdict));
}

std::string job_title(const compose::Desk& desk, const PlanJob& job) {
  const auto* rule = desk.records.find<model::Job>(job.job);
  return rule != nullptr ? rule->title : job.bound.title;
}

std::string why_waits(const compose::Desk& desk, const PlanJob& job) {
  if (job.state == PlanJob::State::done) return {};
  const auto* rule = desk.records.find<model::Job>(job.job);
  if (job.state == PlanJob::State::not_this_watch) return rule == nullptr ? std::string() : rule->otherwise;
  if (const auto* hold = desk.records.find<model::Hold>(job.hold)) return hold->because + " Until " + hold->until + ".";
  if (job.fault) return compose::sentence_case(job.fault->message) + ".";
  return "Nothing fills its slot " + job.open_slot + ".";
}

}  // namespace benchleaf::ticket
