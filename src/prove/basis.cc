// Rules about provenance: where a value comes from and how far to trust it.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "base/id.h"
#include "derive/demonstration.h"
#include "prove/checks.h"
#include "prove/handling_checks.h"

namespace benchleaf::prove {
namespace {

using model::Record;
using report::Rule;

/// A field that says it states nothing needs no source for that.
bool states_nothing(const model::Node& node) {
  constexpr std::array<std::string_view, 2> kNothing = {"not stated", "not known"};
  for (const auto word : kNothing) {
    if (node.is_scalar() && node.text == word) return true;
  }
  return false;
}

std::vector<std::string> member_names(const model::Node& node) {
  std::vector<std::string> names;
  for (const auto& member : node.members) names.push_back(member.key);
  return names;
}

/// The path with its unknown part replaced by the nearest member, or empty.
std::string nearest_path(const model::Node& root, std::string_view path) {
  const model::Node* node = &root;
  std::string known;
  while (true) {
    const std::size_t dot = path.find('.');
    const std::string name(path.substr(0, dot));
    const model::Node* next = node->at_path(name);
    if (next == nullptr) {
      const std::string nearest = base::nearest_word(name, member_names(*node));
      return nearest.empty() ? std::string() : known + nearest;
    }
    if (dot == std::string_view::npos) return {};
    known += name + ".";
    node = next;
    path.remove_prefix(dot + 1);
  }
}

void names_no_field(const Proof& proof, Rule rule, const Record& record, const std::string& path, base::Span where) {
  const std::string nearest = nearest_path(record.root, path);
  proof.findings.add(rule, where, "this record has no field " + path,
                     nearest.empty() ? std::string() : "did you mean " + nearest + "?");
}

}  // namespace

void check_values_have_a_basis(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    if (!record->usable("basis")) continue;
    for (const auto& path : record->basis_paths) {
      const model::Node* node = record->root.at_path(path);
      if (node == nullptr || !record->usable(path) || states_nothing(*node) || record->basis_for(path) != nullptr) continue;
      proof.findings.add(Rule::basis_missing, record->span_of(path), path + " says nothing about where it comes from",
                         "add it under basis: with a source and a trust, or with trust: memory");
    }
  }
}

void check_basis_names_a_field(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    for (const auto& [path, basis] : record->basis) {
      if (record->root.at_path(path) == nullptr) names_no_field(proof, Rule::basis_field, *record, path, basis.span);
    }
  }
}

void check_conflict_names_a_field(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    for (const auto& conflict : record->conflicts) {
      if (record->root.at_path(conflict.field) == nullptr) {
        names_no_field(proof, Rule::conflict_field, *record, conflict.field, conflict.span);
      }
    }
  }
}

void check_standard_has_a_clause(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    for (const auto& [path, basis] : record->basis) {
      if (basis.trust != model::Trust::standard || !basis.where.empty()) continue;
      proof.findings.add(Rule::basis_clause, basis.span, "trust: standard, but no clause under where",
                         "give the clause that was read; if it was not the standard's own text, the trust is handbook");
    }
  }
}

void check_published_values_name_a_place(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    for (const auto& [path, basis] : record->basis) {
      const bool published = basis.trust == model::Trust::handbook || basis.trust == model::Trust::dataset;
      if (!published || !basis.where.empty()) continue;
      proof.findings.add(Rule::basis_place, basis.span,
                         path + " rests on a publication, and nothing says where in it the value stands",
                         "add where: with the page, row, table or clause");
    }
  }
}

void check_invented_is_demonstration(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    if (derive::is_demonstration(*record)) continue;
    for (const auto& [path, basis] : record->basis) {
      if (basis.trust != model::Trust::invented) continue;
      proof.findings.add(Rule::trust_invented, basis.span, "an invented value for " + path + " stands outside the demonstration",
                         "find a source, mark it memory, or move the record to the demonstration");
    }
  }
  for (const auto& [id, page] : proof.base.pages) {
    if (page.trust != model::Trust::invented || derive::is_demonstration(page) || !page.usable("trust")) continue;
    proof.findings.add(Rule::trust_invented, page.span_of("trust"), "an invented page stands outside the demonstration",
                       "mark it by what its prose rests on");
  }
}

}  // namespace benchleaf::prove
