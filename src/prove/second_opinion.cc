// A second opinion on what records say of liquids: no verdict kinder than
// published tables give for its family or for two groups that meet, and the cautions that the classes of a
// liquid and the reactive groups of a residue ask for.

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "prove/handling_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::OnMaterial;
using model::Record;
using model::Verdict;
using report::Rule;
using Row = model::PublishedTable::Row;
using Families = std::set<std::string>;

std::vector<std::string> words_of(std::string_view list) {
  std::vector<std::string> words;
  while (!list.empty()) {
    const std::size_t space = list.find(' ');
    words.emplace_back(list.substr(0, space));
    list = space == std::string_view::npos ? std::string_view() : list.substr(space + 1);
  }
  return words;
}

bool lists(const Row& row, std::string_view column, std::string_view word) {
  const auto words = words_of(standards::cell_text(row, column));
  return std::find(words.begin(), words.end(), word) != words.end();
}

/// Whether a liquid holds a member of the family, at its share or above; a
/// share that is not known counts.
bool holds(const model::Chemistry& liquid, const Row& row) {
  const auto least = standards::cell_quantity(row, "from");
  const auto from = least ? least->value_in(Unit::percent_by_mass) : std::nullopt;
  for (std::size_t i = 0; i < liquid.made_of.size(); ++i) {
    if (!lists(row, "members", liquid.made_of[i].substance.id())) continue;
    const auto share = percent_of(liquid, i);
    if (!from || !share || share->high >= *from) return true;
  }
  return false;
}

Families families_of(const Proof& proof, const model::Chemistry& liquid) {
  Families found;
  for (const Row& row : standards::rows_of(proof.tables, "liquid-families")) {
    const std::string& by = standards::cell_text(row, "by");
    if ((by == "substance" && holds(liquid, row)) || (by == "kind" && lists(row, "members", model::word_of(liquid.family))))
      found.insert(row.key);
  }
  return found;
}

Families families_of(const Proof& proof, const model::Abrasive& abrasive) {
  Families found;
  for (const Row& row : standards::rows_of(proof.tables, "liquid-families")) {
    if (standards::cell_text(row, "by") == "form" && lists(row, "members", model::word_of(abrasive.form))) found.insert(row.key);
  }
  return found;
}

int severity(Verdict verdict) { return verdict == Verdict::use ? 0 : verdict == Verdict::with_limits ? 1 : 2; }
int severity(const Row& row) {
  const std::string& word = standards::cell_text(row, "verdict");
  return word == "never" ? 2 : word == "with-care" ? 1 : 0;
}
const char* word_of(int severity) { return severity == 0 ? "ok" : severity == 1 ? "with-care" : "never"; }

/// The strictest row of the families on a material, or nullptr.
const Row* opinion_on(const Proof& proof, const Families& families, std::string_view material) {
  const Row* strictest = nullptr;
  for (const Row& row : standards::rows_of(proof.tables, "family-resistance")) {
    if (families.count(standards::cell_text(row, "family")) == 0 || !lists(row, "materials", material)) continue;
    if (strictest == nullptr || severity(row) > severity(*strictest)) strictest = &row;
  }
  return strictest;
}

/// A verdict that names a place in a source of its own, other than the one that
/// the family rests on, stands by that.
bool names_a_place(const Record& record, const std::string& path, const Row& row) {
  const auto own = record.basis.find(path);
  if (own == record.basis.end() || own->second.where.empty()) return false;
  const std::string_view source = own->second.source;
  return !source.empty() && source != std::string_view(row.source);
}

void check_verdicts_of(const Proof& proof, const Record& record, const Families& families, const std::vector<OnMaterial>& list) {
  for (std::size_t i = 0; i < list.size(); ++i) {
    const std::string path = "on-materials." + std::to_string(i);
    if (!record.usable(path)) continue;
    const Row* row = opinion_on(proof, families, list[i].material.id());
    if (row == nullptr || severity(list[i].verdict) >= severity(*row) || names_a_place(record, path, *row)) continue;
    proof.findings
        .add(Rule::verdict_family, record.span_of(path + ".verdict"),
             "found " + std::string(word_of(severity(list[i].verdict))) + " on " + list[i].material.id() + ", but " +
                 standards::cell_text(*row, "family") + " there is " + word_of(severity(*row)) + ": " +
                 standards::cell_text(*row, "why"),
             "make the verdict as strict, or give this line a source of its "
             "own with where:")
        .notes.push_back({row->span, "table family-resistance"});
  }
}

using Members = std::vector<std::string>;

Members members_of(const model::Chemistry& liquid) {
  Members members;
  for (const auto& part : liquid.made_of) members.push_back(part.substance.id());
  return members;
}

/// What is in a residue: its substances, and what stood in the cell that left it.
Members members_of(const model::Residue& residue) {
  Members members = residue.left_by;
  for (const auto& part : residue.made_of) members.push_back(part.substance.id());
  return members;
}

Members members_of(const Proof& proof, const model::RecordRef& mixture) {
  const auto& liquids = proof.base.chemistries;
  const auto& residues = proof.base.residues;
  if (const auto liquid = liquids.find(mixture.id()); mixture.is(model::Kind::chemistry) && liquid != liquids.end())
    return members_of(liquid->second);
  if (const auto residue = residues.find(mixture.id()); mixture.is(model::Kind::residue) && residue != residues.end())
    return members_of(residue->second);
  return {mixture.id()};
}

bool in_group(const Proof& proof, const Members& members, std::string_view group) {
  const Row* row = standards::row_of(proof.tables, "reactive-groups", group);
  return row != nullptr &&
         std::any_of(members.begin(), members.end(), [&](const auto& one) { return lists(*row, "members", one); });
}

int severity_in_the_open(const Row& pair) {
  const std::string& word = standards::cell_text(pair, "open");
  return word == "never" ? 2 : word == "ok" ? 0 : 1;
}

/// The worst pair of groups of two mixtures, or nullptr.
const Row* worst_pair(const Proof& proof, const Members& first, const Members& second) {
  const Row* worst = nullptr;
  for (const Row& pair : standards::rows_of(proof.tables, "reactive-pairs")) {
    const std::string& one = standards::cell_text(pair, "one");
    const std::string& other = standards::cell_text(pair, "other");
    const bool meet = (in_group(proof, first, one) && in_group(proof, second, other)) ||
                      (in_group(proof, first, other) && in_group(proof, second, one));
    if (meet && (worst == nullptr || severity_in_the_open(pair) > severity_in_the_open(*worst))) worst = &pair;
  }
  return worst;
}

void check_meetings_of(const Proof& proof, const Record& record, const Members& members,
                       const std::vector<model::Meeting>& meets) {
  for (std::size_t i = 0; i < meets.size(); ++i) {
    const std::string path = "meets." + std::to_string(i);
    if (!record.usable(path)) continue;
    const Row* pair = worst_pair(proof, members, members_of(proof, meets[i].with));
    if (pair == nullptr || severity(meets[i].verdict) >= severity_in_the_open(*pair)) continue;
    proof.findings
        .add(Rule::verdict_family, record.span_of(path + ".verdict"),
             "found " + std::string(word_of(severity(meets[i].verdict))) + " with " + meets[i].with.id() + ", but " + pair->key +
                 " is " + word_of(severity_in_the_open(*pair)) + ": " + standards::cell_text(*pair, "effect"),
             "make the verdict as strict")
        .notes.push_back({pair->span, "table reactive-pairs"});
  }
}

template <typename References>
bool asks_for_one_of(const References& cautions, const Row& row) {
  return std::any_of(cautions.begin(), cautions.end(), [&](const auto& one) { return lists(row, "cautions", one.id()); });
}

/// The codes of the statements that a liquid's parts call for.
std::set<std::string> statements_of(const Proof& proof, const model::Chemistry& liquid) {
  const auto* fact = proof.derived.facts.find(liquid.reference() + "#mixture-class.statements");
  std::set<std::string> codes;
  std::string rest = fact == nullptr ? std::string() : fact->printed;
  while (!rest.empty()) {
    const std::size_t comma = rest.find(", ");
    codes.insert(rest.substr(0, comma));
    rest = comma == std::string::npos ? std::string() : rest.substr(comma + 2);
  }
  return codes;
}

void caution_missing(const Proof& proof, Rule rule, const Record& record, const Row& row, const std::string& because) {
  proof.findings
      .add(rule, record.span_of("cautions"), because + ", and no caution says so",
           "add to cautions: one of " + standards::cell_text(row, "cautions"))
      .notes.push_back({row.span, "table " + std::string(rule == Rule::caution_class ? "class-cautions" : "group-cautions")});
}

}  // namespace

void check_verdicts_by_family(const Proof& proof) {
  for (const auto& [id, liquid] : proof.base.chemistries) {
    if (!liquid.usable("made-of")) continue;
    check_verdicts_of(proof, liquid, families_of(proof, liquid), liquid.on_materials);
    check_meetings_of(proof, liquid, members_of(liquid), liquid.meets);
  }
  for (const auto& [id, residue] : proof.base.residues) {
    if (residue.usable("made-of")) check_meetings_of(proof, residue, members_of(residue), residue.meets);
  }
  for (const auto& [id, abrasive] : proof.base.abrasives) {
    if (abrasive.usable("form")) check_verdicts_of(proof, abrasive, families_of(proof, abrasive), abrasive.on_materials);
  }
}

void check_class_cautions(const Proof& proof) {
  for (const auto& [id, liquid] : proof.base.chemistries) {
    if (!liquid.usable("cautions")) continue;
    for (const std::string& code : statements_of(proof, liquid)) {
      const Row* row = standards::row_of(proof.tables, "class-cautions", code);
      if (row == nullptr || asks_for_one_of(liquid.cautions, *row)) continue;
      caution_missing(proof, Rule::caution_class, liquid, *row, "its parts call for " + code);
    }
  }
}

void check_group_cautions(const Proof& proof) {
  for (const auto& [id, residue] : proof.base.residues) {
    if (!residue.usable("cautions") || !residue.usable("made-of")) continue;
    for (const Row& row : standards::rows_of(proof.tables, "group-cautions")) {
      const Row* group = standards::row_of(proof.tables, "reactive-groups", row.key);
      if (group == nullptr || asks_for_one_of(residue.cautions, row)) continue;
      const auto holds_it = [&](const auto& part) { return lists(*group, "members", part.substance.id()); };
      const auto found = std::find_if(residue.made_of.begin(), residue.made_of.end(), holds_it);
      if (found == residue.made_of.end()) continue;
      caution_missing(proof, Rule::caution_group, residue, row, "it holds " + found->substance.id() + ", a " + row.key);
    }
  }
}

}  // namespace benchleaf::prove
