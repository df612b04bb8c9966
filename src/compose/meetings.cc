// In: a liquid or a residue, and what is known of mixtures. Out: what comes of it and each other one when they meet.
#include "compose/meetings.h"

#include <set>
#include <string>

#include "bench/mixing.h"

namespace benchleaf::compose {

namespace {

model::Verdict verdict_of(bench::Meet meet) {
  switch (meet) {
    case bench::Meet::ok: return model::Verdict::use;
    case bench::Meet::care:
    case bench::Meet::rinse: return model::Verdict::with_limits;
    case bench::Meet::never: break;
  }
  return model::Verdict::never;
}

/// What comes of it and on what condition, in one sentence after the other.
std::string meeting_words(const Desk& desk, const std::string& effect, const std::string& product, const std::string& when) {
  std::string words = effect;
  if (!product.empty()) {
    words = joined(words, "Gives " + (desk.records.find(product) == nullptr ? product : desk.name(product)) + ".");
  }
  return joined(words, when.empty() ? std::string() : sentence_case(when) + (when.back() == '.' ? "" : "."));
}

bench::StepWorld world_of(const Desk& desk) { return {desk.records, desk.tables}; }

}  // namespace

std::optional<model::Verdict> meeting_verdict(const Desk& desk, const model::Record& one, const model::Record& other) {
  if (one.reference() == other.reference()) return std::nullopt;
  const auto verdicts = bench::mixes(world_of(desk), one.reference(), other.reference());
  if (verdicts.empty()) return std::nullopt;
  return verdict_of(bench::gravest(verdicts, false).open);
}

std::vector<VerdictRow> meeting_rows(const Desk& desk, const model::Record& record) {
  const model::RecordRef self = record.reference();
  std::vector<VerdictRow> rows;
  std::set<std::string> met{self};
  const std::vector<model::Meeting>& own = bench::meetings_of(record);
  for (std::size_t i = 0; i < own.size(); ++i) {
    met.insert(own[i].with);
    rows.push_back({own[i].with, own[i].verdict, meeting_words(desk, own[i].effect, own[i].product, own[i].when),
                    Desk::basis_sign(record, "meets." + std::to_string(i))});
  }
  const auto add = [&](const model::RecordRef& other) {
    if (met.count(other) > 0) return;
    const bench::MixVerdict gravest = bench::gravest(bench::mixes(world_of(desk), self, other), false);
    // what the record says of a substance stands above and holds for whatever is made of it
    if (gravest.effect.empty() || gravest.record == self) return;
    const bool has_condition = gravest.open == bench::Meet::care || gravest.open == bench::Meet::rinse;
    const std::string when = gravest.when.empty() && has_condition ? std::string(bench::meet_words(gravest.open)) : gravest.when;
    rows.push_back(
        {other, verdict_of(gravest.open), meeting_words(desk, gravest.effect, gravest.product, when), {gravest.trust, false}});
  };
  for (const auto& [id, liquid] : desk.records.chemistries) add(liquid.reference());
  for (const auto& [id, residue] : desk.records.residues) add(residue.reference());
  return rows;
}

}  // namespace benchleaf::compose
