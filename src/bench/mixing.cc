// In: two liquids, or a liquid and a residue. Out: what their records and the table of reactive pairs say, and the gravest of it.
#include "bench/mixing.h"

#include <algorithm>

namespace benchleaf::bench {

namespace {

Meet meet_named(std::string_view word) {
  if (word == "never") return Meet::never;
  if (word == "rinse") return Meet::rinse;
  return word == "care" ? Meet::care : Meet::ok;
}

/// What one record says about the other, by its name or by its substances; a mixture without a record has no name.
void add_stated(const StepWorld& world, const model::RecordRef& one, const model::RecordRef& other,
                const model::References& parts, std::vector<MixVerdict>& verdicts) {
  const model::Record* stating = world.base.find(one);
  if (stating == nullptr) return;
  const model::Record& record = *stating;
  const std::vector<model::Meeting>& meetings = meetings_of(record);
  const bool with_residue = residue_named(world, one) != nullptr || residue_named(world, other) != nullptr;
  for (std::size_t i = 0; i < meetings.size(); ++i) {
    const model::Meeting& meeting = meetings[i];
    const std::string path = "meets." + std::to_string(i);
    const bool named =
        (!other.empty() && meeting.with == other) || std::find(parts.begin(), parts.end(), meeting.with) != parts.end();
    if (!named || !record.usable(path)) continue;
    MixVerdict found;
    if (meeting.verdict == model::Verdict::never) found.open = Meet::never;
    if (meeting.verdict == model::Verdict::with_limits) found.open = with_residue ? Meet::care : Meet::rinse;
    found.closed_never = found.open == Meet::never;
    found.product = meeting.product;
    found.effect = meeting.effect;
    found.when = meeting.when;
    found.ground = ground_of(record, path);
    if (const model::Basis* basis = record.basis_for(path)) found.trust = basis->trust;
    found.record = record.reference();
    found.path = path;
    verdicts.push_back(std::move(found));
  }
}

bool in_group(const StepWorld& world, const model::RecordRef& substance, std::string_view group) {
  const std::string id = substance.id();
  for (const model::ReactiveGroup& row : world.tables.reactive_groups) {
    if (row.group == group && std::find(row.members.begin(), row.members.end(), id) != row.members.end()) return true;
  }
  return false;
}

bool any_in_group(const StepWorld& world, const model::References& substances, std::string_view group) {
  return std::any_of(substances.begin(), substances.end(),
                     [&](const model::RecordRef& substance) { return in_group(world, substance, group); });
}

void add_by_groups(const StepWorld& world, const model::References& first, const model::References& second,
                   std::vector<MixVerdict>& verdicts) {
  for (const model::ReactivePair& pair : world.tables.reactive_pairs) {
    const bool straight = any_in_group(world, first, pair.one) && any_in_group(world, second, pair.other);
    const bool turned = any_in_group(world, first, pair.other) && any_in_group(world, second, pair.one);
    if (!straight && !turned) continue;
    MixVerdict found;
    found.open = meet_named(pair.open);
    found.closed_never = pair.closed == "never";
    if (pair.product != "none") found.product = pair.product;
    found.effect = pair.effect;
    const std::string trust(model::trust_name(pair.origin.trust));
    found.ground = pair.cite.empty() ? "trust " + trust + ", no source" : pair.cite + ", trust " + trust;
    found.trust = pair.origin.trust;
    found.path = pair.origin.id;
    verdicts.push_back(std::move(found));
  }
}

}  // namespace

std::string_view meet_words(Meet meet) {
  switch (meet) {
    case Meet::ok: return "no harm in the open";
    case Meet::care: return "on a swab only";
    case Meet::rinse: return "rinse between";
    case Meet::never: break;
  }
  return "never";
}

bool is_mixture(const model::Record& record) {
  return record.kind == model::Kind::chemistry || record.kind == model::Kind::residue;
}

const std::vector<model::Meeting>& meetings_of(const model::Record& record) {
  static const std::vector<model::Meeting> kNone;
  if (record.kind == model::Kind::chemistry) return static_cast<const model::Chemistry&>(record).meets;
  if (record.kind == model::Kind::residue) return static_cast<const model::Residue&>(record).meets;
  return kNone;
}

std::vector<MixVerdict> mixes(const StepWorld& world, const model::RecordRef& one, const model::RecordRef& other) {
  std::vector<MixVerdict> verdicts;
  const model::References first = substances_of(world, one);
  const model::References second = substances_of(world, other);
  add_stated(world, one, other, second, verdicts);
  add_stated(world, other, one, first, verdicts);
  add_by_groups(world, first, second, verdicts);
  return verdicts;
}

std::vector<MixVerdict> mixes(const StepWorld& world, const model::References& substances, const model::RecordRef& other) {
  std::vector<MixVerdict> verdicts;
  add_stated(world, other, {}, substances, verdicts);
  add_by_groups(world, substances, substances_of(world, other), verdicts);
  return verdicts;
}

MixVerdict gravest(const std::vector<MixVerdict>& verdicts, bool closed) {
  MixVerdict kept;
  for (const MixVerdict& verdict : verdicts) {
    // In a closed vessel the one that does no harm in the open says best what the vessel has to do with it.
    const bool graver = closed ? verdict.closed_never && (!kept.closed_never || verdict.open < kept.open)
                               : verdict.open > kept.open || (kept.effect.empty() && verdict.open == kept.open);
    if (graver) kept = verdict;
  }
  return kept;
}

bool gives_gas(const std::vector<MixVerdict>& verdicts) {
  return std::any_of(verdicts.begin(), verdicts.end(),
                     [](const MixVerdict& verdict) { return verdict.product.find("carbon dioxide") != std::string::npos; });
}

model::References ungrouped(const StepWorld& world, const model::RecordRef& reference) {
  model::References found;
  for (const model::RecordRef& substance : substances_of(world, reference)) {
    const bool placed = std::any_of(world.tables.reactive_groups.begin(), world.tables.reactive_groups.end(),
                                    [&](const model::ReactiveGroup& row) { return in_group(world, substance, row.group); });
    if (!placed && world.base.find(substance) != nullptr) found.push_back(substance);
  }
  return found;
}

}  // namespace benchleaf::bench
