// Rules about one value with one voice: what a liquid does to a material and what happens when two meet is said once, or alike.

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "prove/published_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using model::Meeting;
using model::Record;
using model::Verdict;
using report::Rule;

const char* verdict_word(Verdict verdict) {
  return verdict == Verdict::use ? "ok" : verdict == Verdict::with_limits ? "with-care" : "never";
}

/// One side's word on a meeting.
struct Said {
  const Record* record;
  std::size_t item;
  Verdict verdict;
};

std::string item_path(const char* list, std::size_t item, const char* field) {
  return std::string(list) + "." + std::to_string(item) + "." + field;
}

/// Every meeting by its two sides in order.
class Meetings {
 public:
  void add(const Record& record, const std::vector<Meeting>& meets) {
    for (std::size_t i = 0; i < meets.size(); ++i) {
      if (!record.usable(item_path("meets", i, "with")) || !record.usable(item_path("meets", i, "verdict"))) continue;
      const model::RecordRef own = record.reference();
      const auto sides = own < meets[i].with ? std::pair(own, meets[i].with) : std::pair(meets[i].with, own);
      said_[sides].push_back({&record, i, meets[i].verdict});
    }
  }

  void check(const Proof& proof) const {
    for (const auto& [sides, list] : said_) {
      for (std::size_t k = 1; k < list.size(); ++k) {
        const Said& own = list[k];
        const Said& other = list.front();
        const bool twice = own.record == other.record;
        if (own.verdict == other.verdict && !twice) continue;
        if (has_conflict(*own.record, "meets") || has_conflict(*other.record, "meets")) continue;
        proof.findings
            .add(Rule::voice_meeting, own.record->span_of(item_path("meets", own.item, "verdict")),
                 std::string("found ") + verdict_word(own.verdict) + " for a meeting that is " + verdict_word(other.verdict) +
                     " elsewhere",
                 "say it once, or say the same in both")
            .notes.push_back({other.record->span_of(item_path("meets", other.item, "verdict")),
                              "the other word, in " + other.record->reference()});
      }
    }
  }

 private:
  std::map<std::pair<model::RecordRef, model::RecordRef>, std::vector<Said>> said_;
};

/// Materials that parts are made of, each with a part that is.
std::map<model::RecordRef, const model::Part*> materials_of_parts(const Proof& proof) {
  std::map<model::RecordRef, const model::Part*> used;
  for (const auto& [id, part] : proof.base.parts) {
    for (const auto& material : part.made_of) used.emplace(material, &part);
  }
  return used;
}

}  // namespace

void check_pairs_stand_once(const Proof& proof) {
  for (const auto& [id, liquid] : proof.base.chemistries) {
    std::map<std::string, std::size_t> first;
    for (std::size_t i = 0; i < liquid.on_materials.size(); ++i) {
      const auto& one = liquid.on_materials[i];
      if (!liquid.usable(item_path("on-materials", i, "material")) || one.material.empty()) continue;
      const auto [other, is_first] = first.emplace(one.material, i);
      if (is_first) continue;
      proof.findings
          .add(Rule::voice_pair, liquid.span_of(item_path("on-materials", i, "material")),
               "found " + std::string(verdict_word(one.verdict)) + " for " + one.material + ", which stands in this list already",
               "keep one of the two, and the other under conflicts: where sources disagree")
          .notes.push_back({liquid.span_of(item_path("on-materials", other->second, "material")), "it stands here first"});
    }
  }
}

void check_meetings_agree(const Proof& proof) {
  Meetings meetings;
  for (const auto& [id, liquid] : proof.base.chemistries) meetings.add(liquid, liquid.meets);
  for (const auto& [id, residue] : proof.base.residues) meetings.add(residue, residue.meets);
  meetings.check(proof);
}

void check_liquids_have_data(const Proof& proof) {
  if (!is_whole_book(proof)) return;
  const auto used = materials_of_parts(proof);
  for (const auto& [id, liquid] : proof.base.chemistries) {
    if (!liquid.usable("on-materials")) continue;
    std::set<std::string> known;
    for (const auto& one : liquid.on_materials) known.insert(one.material);
    for (const auto& [material, part] : used) {
      if (known.count(material) > 0 || proof.base.find(material) == nullptr) continue;
      proof.findings
          .add(Rule::coverage_liquid, liquid.span_of("on-materials"),
               "nothing is said about " + liquid.id + " on " + material.id(), "add a verdict; from memory if need be")
          .notes.push_back({part->span_of("made-of"), "of which " + part->reference() + " is made"});
    }
  }
}

}  // namespace benchleaf::prove
