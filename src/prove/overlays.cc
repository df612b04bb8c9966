// Rules about records that an overlay lays over the content. What a record says is held against all other rules wherever it
// lies; these ask what laying it there hides.

#include <set>
#include <string>
#include <vector>

#include "prove/published_checks.h"

namespace benchleaf::prove {
namespace {

using model::Record;
using model::ReferencePlace;
using report::Rule;

/// Every word that names a record, and who says it.
struct Mention {
  std::string by;
  const ReferencePlace* reference;
};

std::vector<Mention> all_mentions(const Proof& proof) {
  std::vector<Mention> mentions;
  const auto add = [&mentions](const std::string& by, const std::vector<ReferencePlace>& references) {
    for (const ReferencePlace& reference : references) mentions.push_back({by, &reference});
  };
  for (const Record* record : proof.base.all()) add(record->reference(), record->references);
  add("the handbook", proof.base.handbook.references);
  for (const model::Overlay& overlay : proof.base.overlays) add(overlay.name, overlay.references);
  return mentions;
}

/// Names that the record below had and the one above has not.
std::vector<std::string> lost_names(const Record& record) {
  std::vector<std::string> lost;
  const model::Node* aliases = record.replaced->root.find("aliases");
  if (aliases == nullptr || !record.usable("aliases")) return lost;
  std::set<std::string> kept;
  for (const model::Alias& alias : record.aliases) kept.insert(alias.id);
  for (const model::Node& alias : aliases->items) {
    if (kept.count(alias.text) == 0) lost.push_back(alias.text);
  }
  return lost;
}

void check_lost_names(const Proof& proof, const Record& record, const std::vector<Mention>& mentions) {
  for (const std::string& name : lost_names(record)) {
    for (const Mention& mention : mentions) {
      if (mention.reference->target != record.reference() || model::RecordRef(mention.reference->text).id() != name) continue;
      proof.findings
          .add(Rule::overlay_dropped, record.span, "the record below also answers to " + name + ", and this one does not",
               "put " + name + " under aliases")
          .notes.push_back({mention.reference->span, mention.by + " names it so"});
      break;
    }
  }
}

/// The path in `cell/sr754w#capacity`; empty where nothing of this record is asked for.
std::string path_asked_of(const Record& record, const ReferencePlace& reference) {
  return reference.target == record.reference() ? std::string(model::FactId(reference.fact).path) : std::string();
}

void check_lost_values(const Proof& proof, const Record& record, const std::vector<Mention>& mentions) {
  std::set<std::string> told;
  for (const Mention& mention : mentions) {
    const std::string path = path_asked_of(record, *mention.reference);
    const bool lost = !path.empty() && record.replaced->root.at_path(path) != nullptr && record.root.at_path(path) == nullptr;
    if (!lost || !told.insert(path).second) continue;
    proof.findings
        .add(Rule::overlay_dropped, record.span, "the record below states " + path + ", and this one does not",
             "state it, or replace " + mention.by + " as well")
        .notes.push_back({mention.reference->span, mention.by + " prints it"});
  }
}

}  // namespace

void check_overlay_copies(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    if (record->replaced == nullptr || !record->replaced->same) continue;
    proof.findings
        .add(Rule::overlay_same, record->span, "the record " + record->reference() + " says what the one below says",
             "take it out")
        .notes.push_back({record->replaced->span, "the record below"});
  }
}

void check_overlay_drops(const Proof& proof) {
  if (proof.base.overlays.empty()) return;
  const std::vector<Mention> mentions = all_mentions(proof);
  for (const Record* record : proof.base.all()) {
    if (record->replaced == nullptr) continue;
    check_lost_names(proof, *record, mentions);
    check_lost_values(proof, *record, mentions);
  }
}

void check_overlay_pages(const Proof& proof) {
  std::set<std::string> taken_up;
  for (const auto& chapter : proof.base.handbook.chapters) taken_up.insert(chapter.pages.begin(), chapter.pages.end());
  for (const auto& [id, page] : proof.base.pages) {
    if (!page.overlay || taken_up.count(page.reference()) > 0) continue;
    proof.findings.add(Rule::overlay_page, page.span, "no chapter takes the page " + id + " up",
                       "name it in overlay.yaml under chapters");
  }
}

}  // namespace benchleaf::prove
