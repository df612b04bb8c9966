// In: two liquids or residues. Out: what comes of them when they meet.
#include "compose/meetings.h"

#include <algorithm>
#include <string>

namespace benchleaf::compose {

namespace {

bool holds(const model::Record& record, const std::string& substance) {
  if (record.kind == model::Kind::chemistry) {
    const auto& parts = static_cast<const model::Chemistry&>(record).made_of;
    return std::any_of(parts.begin(), parts.end(), [&](const auto& part) { return part.substance == substance; });
  }
  if (record.kind == model::Kind::residue) {
    const auto& parts = static_cast<const model::Residue&>(record).made_of;
    return std::any_of(parts.begin(), parts.end(), [&](const auto& part) { return part.substance == substance; });
  }
  return false;
}

int gravity(model::Verdict verdict) {
  switch (verdict) {
    case model::Verdict::use: return 0;
    case model::Verdict::with_limits: return 1;
    case model::Verdict::never: return 2;
  }
  return 2;
}

void take_gravest(const model::Record& one, const model::Record& other, std::optional<model::Verdict>& verdict) {
  for (const model::Meeting& meeting : meetings_of(one)) {
    if (meeting.with != other.reference() && !holds(other, meeting.with)) continue;
    if (!verdict || gravity(meeting.verdict) > gravity(*verdict)) verdict = meeting.verdict;
  }
}

}  // namespace

const std::vector<model::Meeting>& meetings_of(const model::Record& record) {
  static const std::vector<model::Meeting> kNone;
  if (record.kind == model::Kind::chemistry) return static_cast<const model::Chemistry&>(record).meets;
  if (record.kind == model::Kind::residue) return static_cast<const model::Residue&>(record).meets;
  return kNone;
}

std::optional<model::Verdict> meeting_verdict(const model::Record& one, const model::Record& other) {
  std::optional<model::Verdict> verdict;
  if (one.reference() == other.reference()) return verdict;
  take_gravest(one, other, verdict);
  take_gravest(other, one, verdict);
  return verdict;
}

}  // namespace benchleaf::compose
