// In: the table of everyday words and the names of records. Out: words that lead nowhere, and words that are another's name.
#include "prove/everyday_words.h"

#include <algorithm>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "prove/shared.h"
#include "query/names.h"
#include "query/words.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using report::Rule;
using Row = model::PublishedTable::Row;

/// What a row names, beside a liquid and elsewhere.
std::vector<std::string> names_of_row(const Row& row) {
  std::vector<std::string> names;
  for (const char* column : {"names", "beside"}) {
    std::istringstream text(standards::cell_text(row, column));
    for (std::string name; text >> name;) {
      if (name != "none") names.push_back(name);
    }
  }
  return names;
}

void check_row(const Proof& proof, const Row& row) {
  for (const std::string& name : names_of_row(row)) {
    if (proof.base.known(name)) continue;
    proof.findings.add(Rule::reference_unknown, row.span,
                       "the everyday word \"" + row.key + "\" names " + name + ", which is not there",
                       "name a record, or take the word out");
  }
}

/// Own names of records, by kind: title, id, designation, number.
using OwnNames = std::map<std::pair<model::Kind, std::string>, const model::Record*>;

OwnNames own_names(const Proof& proof) {
  OwnNames names;
  for (const model::Record* record : proof.base.all()) {
    if (!query::is_looked_up(record->kind)) continue;
    for (const query::Name& name : query::names_of(*record, proof.tables)) {
      if (query::tier_of(name.role) == 0) names.emplace(std::pair{record->kind, query::joined_key(name.text)}, record);
    }
  }
  return names;
}

void check_shadow(const Proof& proof, const Row& row, const OwnNames& own) {
  const std::vector<std::string> names = names_of_row(row);
  // In an excerpt of the content a word may lead to records that are not there: then it is nobody's.
  const auto is_there = [&proof](const std::string& name) { return proof.base.find(model::RecordRef(name)) != nullptr; };
  if (std::none_of(names.begin(), names.end(), is_there)) return;
  std::set<model::Kind> kinds;
  for (const std::string& name : names) {
    if (const auto kind = model::RecordRef(name).kind()) kinds.insert(*kind);
  }
  for (const model::Kind kind : kinds) {
    const auto found = own.find({kind, query::joined_key(row.key)});
    if (found == own.end()) continue;
    const std::string reference = found->second->reference();
    if (std::find(names.begin(), names.end(), reference) != names.end()) continue;
    proof.findings
        .add(Rule::alias_clash, found->second->span, "its name \"" + row.key + "\" is an everyday word for " + names.front(),
             "name the record in the row of the word, or take the row out")
        .notes.push_back({row.span, "table everyday-words"});
  }
}

}  // namespace

void check_everyday_words(const Proof& proof) {
  const auto& rows = standards::rows_of(proof.tables, "everyday-words");
  if (rows.empty()) return;
  const OwnNames own = own_names(proof);
  for (const Row& row : rows) check_shadow(proof, row, own);
  const auto unknown = std::count_if(rows.begin(), rows.end(), [&proof](const Row& row) {
    const auto names = names_of_row(row);
    return std::any_of(names.begin(), names.end(), [&proof](const auto& name) { return !proof.base.known(name); });
  });
  // A book that lacks most of what the words mean is another one.
  if (!is_whole_book(proof) || 2 * unknown > static_cast<std::ptrdiff_t>(rows.size())) return;
  for (const Row& row : rows) check_row(proof, row);
}

}  // namespace benchleaf::prove
