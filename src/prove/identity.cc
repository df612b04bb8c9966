// Rules about who a record is: its id and the names it had before.

#include <map>
#include <string>

#include "prove/checks.h"

namespace benchleaf::prove {

using report::Rule;

void check_id_is_file_name(const Proof& proof) {
  for (const model::Record* record : proof.base.all()) {
    const model::Node* id = record->root.find("id");
    if (id == nullptr || !record->usable("id") || id->text == record->id) continue;
    proof.findings.add(Rule::record_id_file, id->span,
                       "found the id " + id->text + ", expected " + record->id + " as the file is called",
                       "rename the file or the id; keep the old id under aliases");
  }
}

void check_aliases(const Proof& proof) {
  struct Holder {
    model::RecordRef record;
    base::Span span;
  };
  std::map<model::RecordRef, Holder> holders;
  for (const model::Record* record : proof.base.all()) {
    if (!record->usable("aliases")) continue;
    for (const auto& alias : record->aliases) {
      const model::RecordRef name(record->kind, alias.id);
      const auto [holder, first] = holders.emplace(name, Holder{record->reference(), alias.span});
      const model::Record* other = alias.id == record->id ? nullptr : proof.base.find(name);
      if (alias.id == record->id) {
        proof.findings.add(Rule::alias_clash, alias.span, "the alias " + alias.id + " is the id of this very record",
                           "take it out");
      } else if (other != nullptr && other->reference() == name && other->overlay && !record->overlay) {
        auto& finding = proof.findings.add(Rule::overlay_alias, other->span,
                                           "the id " + alias.id + " is an alias of a record below", "give the record another id");
        finding.notes.push_back({alias.span, "the alias of " + record->reference()});
      } else if (other != nullptr && other->reference() == name) {
        auto& finding =
            proof.findings.add(Rule::alias_clash, alias.span, "the alias " + alias.id + " is the id of another record",
                               "take it out, or give the other record another id");
        finding.notes.push_back({other->span, "the record " + name});
      } else if (!first) {
        auto& finding = proof.findings.add(Rule::alias_clash, alias.span, "the alias " + alias.id + " stands in two records",
                                           "leave it in the record that follows the old one");
        finding.notes.push_back({holder->second.span, "the other is " + holder->second.record});
      }
    }
  }
}

}  // namespace benchleaf::prove
