// Rules about words that name records: they lead to one record of the right kind. A reference to a record that is known but
// broken is no finding, since the broken file has its own.

#include <algorithm>
#include <functional>
#include <map>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "base/id.h"
#include "prove/checks.h"

namespace benchleaf::prove {
namespace {

using model::Kind;
using model::ReferencePlace;
using report::Rule;

std::vector<Kind> kinds_of(const ReferencePlace& reference) {
  return reference.kinds.empty() ? model::all_kinds() : reference.kinds;
}

std::string kinds_text(const ReferencePlace& reference) {
  std::vector<std::string> names;
  for (const Kind kind : reference.kinds) names.emplace_back(model::kind_name(kind));
  return names.empty() ? "record" : base::or_list(names);
}

/// The records of these kinds that answer to an id.
std::vector<std::string> answering(const model::KnowledgeBase& base, const std::vector<Kind>& kinds, std::string_view id) {
  std::vector<std::string> found;
  for (const Kind kind : kinds) {
    if (const model::RecordRef named(kind, id); base.known(named)) found.push_back(named);
  }
  return found;
}

std::vector<std::string> ids_of(const model::KnowledgeBase& base, const std::vector<Kind>& kinds) {
  std::vector<std::string> ids;
  for (const model::Record* record : base.all()) {
    if (std::find(kinds.begin(), kinds.end(), record->kind) != kinds.end()) ids.push_back(record->id);
  }
  return ids;
}

std::string did_you_mean(const std::string& nearest) { return nearest.empty() ? std::string() : "did you mean " + nearest + "?"; }

/// Whether so many names lead nowhere that a folder is missing rather than a letter: looking for the nearest of all names then
/// takes minutes and helps nobody.
bool is_worth_a_guess(const Proof& proof) {
  constexpr std::ptrdiff_t kMostGuesses = 100;
  const auto& all = proof.findings.all();
  return std::count_if(all.begin(), all.end(), [](const auto& one) { return one.rule == Rule::reference_unknown; }) <
         kMostGuesses;
}

bool could_be_id(std::string_view id) {
  return id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string_view::npos;
}

/// The words of an id that say something: those of four letters and more.
std::vector<std::string> words_of(const std::string& id) {
  std::vector<std::string> words;
  std::istringstream in(id);
  for (std::string word; std::getline(in, word, '-');) {
    if (word.size() >= 4) words.push_back(word);
  }
  return words;
}

/// At most three of the ids that have most words of this one; empty where none has any.
std::vector<std::string> sharing_a_word(const std::vector<std::string>& ids, const std::string& id) {
  constexpr std::size_t kMostNamed = 3;
  std::map<std::ptrdiff_t, std::vector<std::string>, std::greater<>> by_shared;
  const auto wanted = words_of(id);
  for (const std::string& one : ids) {
    const auto words = words_of(one);
    const auto shared = std::count_if(wanted.begin(), wanted.end(), [&words](const std::string& word) {
      return std::find(words.begin(), words.end(), word) != words.end();
    });
    if (shared > 0) by_shared[shared].push_back(one);
  }
  if (by_shared.empty()) return {};
  auto best = by_shared.begin()->second;
  if (best.size() > kMostNamed) best.resize(kMostNamed);
  return best;
}

/// What to do about an id that no record of the wanted kinds has: the near one, one that shares a word with it, or a new record.
std::string hint_for(const Proof& proof, const ReferencePlace& reference, const std::string& id) {
  const auto ids = ids_of(proof.base, kinds_of(reference));
  if (const std::string nearest = base::nearest_word(id, ids); !nearest.empty()) return did_you_mean(nearest);
  const std::string create =
      reference.kinds.size() != 1 || !could_be_id(id)
          ? "name a record that is there, or create one with benchleaf draft"
          : "create it: benchleaf draft " + std::string(model::kind_name(reference.kinds.front())) + " " + id;
  const auto related = sharing_a_word(ids, id);
  return related.empty() ? create : "did you mean " + base::or_list(related) + "? Otherwise " + create;
}

void no_such_record(const Proof& proof, const ReferencePlace& reference, std::string_view id) {
  const auto elsewhere = answering(proof.base, model::all_kinds(), id);
  if (!elsewhere.empty()) {
    proof.findings.add(Rule::reference_kind, reference.span,
                       "found " + base::or_list(elsewhere) + ", expected a " + kinds_text(reference),
                       "name a record of the right kind");
    return;
  }
  proof.findings.add(Rule::reference_unknown, reference.span,
                     "there is no " + kinds_text(reference) + " called " + std::string(id),
                     is_worth_a_guess(proof) ? hint_for(proof, reference, std::string(id)) : std::string());
}

void check_reference(const Proof& proof, const ReferencePlace& reference) {
  if (!reference.target.empty()) return;
  if (const model::RecordRef whole(reference.text); whole.kind()) {
    const auto kinds = kinds_of(reference);
    const bool right_kind = std::find(kinds.begin(), kinds.end(), *whole.kind()) != kinds.end();
    if (right_kind && proof.base.known(whole)) return;
    no_such_record(proof, reference, whole.id());
    return;
  }
  const auto found = answering(proof.base, kinds_of(reference), reference.text);
  if (found.size() > 1) {
    proof.findings.add(Rule::reference_ambiguous, reference.span, reference.text + " may be " + base::or_list(found),
                       "write the kind in front: " + found.front());
  } else if (found.empty()) {
    no_such_record(proof, reference, reference.text);
  }
}

/// A slot stands for what the procedure asks for; only its own procedure may name it.
void check_slot(const Proof& proof, const model::Record& record, const ReferencePlace& reference) {
  std::vector<std::string> slots;
  if (record.kind == Kind::procedure) {
    for (const auto& slot : proof.base.procedures.at(record.id).slots) slots.push_back(slot.name);
  }
  const std::string name = reference.text.substr(1);
  if (std::find(slots.begin(), slots.end(), name) != slots.end() || !record.usable("slots")) return;
  proof.findings.add(Rule::reference_slot, reference.span, "there is no slot called " + name + " in this record",
                     did_you_mean(base::nearest_word(name, slots)));
}

/// The facts that a record has, by their whole names.
std::vector<std::string> facts_of(const Proof& proof, const std::string& record) {
  std::vector<std::string> names;
  for (const model::Fact& fact : proof.derived.facts.all()) {
    if (fact.id.rfind(record + "#", 0) == 0) names.push_back(fact.id);
  }
  return names;
}

/// A page that asks for a fact prints it; where there is none, it would print nothing. What an overlay dropped and what follows
/// from a broken field have findings of their own.
void check_fact(const Proof& proof, const ReferencePlace& reference) {
  if (reference.fact.empty() || proof.derived.facts.find(reference.fact) != nullptr) return;
  const model::Record* record = proof.base.find(reference.target);
  if (record == nullptr || record->replaced != nullptr || !record->unusable.empty()) return;
  proof.findings.add(Rule::reference_fact, reference.span, "there is no fact " + reference.fact,
                     did_you_mean(base::nearest_word(reference.fact, facts_of(proof, reference.target))));
}

}  // namespace

void check_references(const Proof& proof) {
  for (const model::Record* record : proof.base.all()) {
    for (const ReferencePlace& reference : record->references) {
      if (!record->usable(reference.path)) continue;
      if (!reference.text.empty() && reference.text.front() == '$') {
        check_slot(proof, *record, reference);
      } else {
        check_reference(proof, reference);
        check_fact(proof, reference);
      }
    }
  }
  for (const ReferencePlace& reference : proof.base.handbook.references) check_reference(proof, reference);
}

}  // namespace benchleaf::prove
