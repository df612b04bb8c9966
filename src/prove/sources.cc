// Rules about sources: their kind carries the trust, their dates follow each other, their editions still hold, and something
// rests on them.

#include <array>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/id.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using model::Trust;
using model::Work;
using report::Rule;

/// Trusts that only a publication can carry.
bool needs_source(Trust trust) { return trust == Trust::standard || trust == Trust::handbook || trust == Trust::dataset; }

/// Whether a source of this kind can carry the trust; `memory` and weaker rest on the writer alone.
bool carries(std::optional<Work> kind, Trust trust) {
  if (!needs_source(trust)) return true;
  if (kind == Work::practice) return false;
  if (trust == Trust::standard) return kind == Work::standard || kind == Work::law;
  return (kind == Work::dataset) == (trust == Trust::dataset);
}

const model::Source* source_of(const Proof& proof, const model::RecordRef& reference) {
  const auto* record = record_of(proof, model::Kind::source, reference);
  return record == nullptr ? nullptr : &proof.base.sources.at(record->id);
}

/// The year at the start of a date, or 0.
int year_of(std::string_view date) {
  constexpr std::size_t kYear = 4;
  if (date.size() < kYear || date.substr(0, kYear).find_first_not_of("0123456789") != std::string_view::npos) return 0;
  return (date[0] - '0') * 1000 + (date[1] - '0') * 100 + (date[2] - '0') * 10 + (date[3] - '0');
}

/// Everything that a source record says about itself.
std::string words_of(const model::Source& source) {
  return source.title + " " + source.publication + " " + source.edition + " " + source.read + " " + source.note;
}

/// Visits every mapping in a list of the record, but for conflicts, whose source alone says enough.
template <typename Visit>
void walk_items(const model::Record& record, const std::string& path, const model::Node& node, const Visit& visit) {
  const std::string front = path.empty() ? std::string() : path + ".";
  for (const auto& member : node.members) {
    if (member.key != "conflicts" && member.key != "basis") walk_items(record, front + member.key, member.value, visit);
  }
  for (std::size_t i = 0; i < node.items.size(); ++i) {
    const std::string inner = front + std::to_string(i);
    if (node.items[i].type == model::NodeType::mapping && record.usable(inner)) visit(inner, node.items[i]);
    walk_items(record, inner, node.items[i], visit);
  }
}

}  // namespace

void check_basis_fits_its_source(const Proof& proof) {
  for (const model::Record* record : proof.base.all()) {
    for (const auto& [path, basis] : record->basis) {
      const model::Source* source = source_of(proof, basis.source);
      if (source == nullptr || !source->usable("kind") || carries(source->work, basis.trust)) continue;
      auto& finding = proof.findings.add(Rule::basis_kind, basis.span,
                                         path + " is trusted as " + std::string(model::trust_name(basis.trust)) +
                                             ", but its source is of kind " + word_of(source->work),
                                         "give the trust that such a source carries");
      finding.notes.push_back({source->span_of("kind"), "the kind of " + source->reference()});
    }
  }
}

void check_sources_are_current(const Proof& proof) {
  for (const auto& [id, source] : proof.base.sources) {
    if (!source.usable("publication")) continue;
    for (const auto& row : standards::rows_of(proof.tables, "superseded-standards")) {
      const std::string& by = standards::cell_text(row, "by");
      if (source.publication.find(row.key) == std::string::npos) continue;
      const std::string words = words_of(source);
      const bool says_so = words.find(by) != std::string::npos || words.find("withdrawn") != std::string::npos ||
                           words.find("rescinded") != std::string::npos;
      if (says_so) continue;
      auto& finding =
          proof.findings.add(Rule::source_superseded, source.span_of("publication"),
                             "found " + row.key + (by == "none" ? ", which no longer holds" : ", which " + by + " has replaced"),
                             "read the newer one, or say in the record that the older one was read");
      finding.notes.push_back({row.span, "table superseded-standards"});
    }
  }
}

void check_source_dates(const Proof& proof) {
  const int book = year_of(proof.base.handbook.date);
  for (const auto& [id, source] : proof.base.sources) {
    const int published = source.usable("year") ? year_of(source.year) : 0;
    const int read = source.usable("date-read") ? year_of(source.date_read) : 0;
    if (published > 0 && read > 0 && read < published) {
      proof.findings
          .add(Rule::source_dates, source.span_of("date-read"),
               "read in " + std::to_string(read) + ", but published in " + source.year, "one of the two is wrong")
          .notes.push_back({source.span_of("year"), "the year of publication"});
    }
    const bool after_book = book > 0 && (published > book || read > book);
    if (after_book) {
      proof.findings.add(
          Rule::source_dates, source.span_of(read > book ? "date-read" : "year"),
          "a source of " + std::to_string(read > book ? read : published) + " in a book of " + std::to_string(book),
          "correct the date of the source or of the handbook");
    }
  }
}

void check_reading_is_dated(const Proof& proof) {
  if (!is_whole_book(proof)) return;
  for (const auto& [id, source] : proof.base.sources) {
    const bool silent = source.root.find("date-read") == nullptr && source.usable("read") && source.usable("kind");
    if (!silent || source.read.empty() || source.work == Work::practice) continue;
    proof.findings.add(Rule::source_read_date, source.span_of("read"), "it says what was read and not when",
                       "add date-read: with the day on which it was read");
  }
}

void check_sources_are_cited(const Proof& proof) {
  if (!is_whole_book(proof)) return;
  std::set<std::string> cited;
  for (const model::Record* record : proof.base.all()) {
    if (!record->unusable.empty()) return;  // a broken field may be the one that cites
    for (const auto& reference : record->references) cited.insert(reference.target);
  }
  if (!proof.base.broken.empty()) return;
  for (const auto& table : proof.tables.published) {
    cited.insert(table.source);
    for (const auto& row : table.rows) cited.insert(row.source);
  }
  for (const auto& [id, source] : proof.base.sources) {
    if (cited.count(source.reference()) > 0) continue;
    proof.findings.add(Rule::coverage_source, source.span, "nothing rests on the source " + id,
                       "name it where its figures stand, or take it out");
  }
}

void check_trust_has_a_source(const Proof& proof) {
  for (const model::Record* record : proof.base.all()) {
    for (const auto& [path, basis] : record->basis) {
      if (!needs_source(basis.trust) || !basis.source.empty()) continue;
      proof.findings.add(Rule::basis_source, basis.span,
                         path + " is trusted as " + std::string(model::trust_name(basis.trust)) + ", but names no source",
                         "name the source that was read, or mark it memory");
    }
    walk_items(*record, {}, record->root, [&](const std::string& path, const model::Node& item) {
      const model::Node* source = item.find("source");
      const model::Node* trust = item.find("trust");
      const auto named = trust == nullptr ? std::nullopt : model::trust_from_name(trust->text);
      const bool bare = source != nullptr && trust == nullptr;
      const bool groundless = source == nullptr && named && needs_source(*named);
      if (!bare && !groundless) return;
      proof.findings.add(Rule::basis_source, record->span_of(path + (bare ? ".source" : ".trust")),
                         bare ? "a source without a trust" : "trust: " + trust->text + " without a source",
                         "state both, or trust: memory alone");
    });
  }
}

void check_licences(const Proof& proof) {
  for (const auto& [id, source] : proof.base.sources) {
    if (source.licence.empty() || !source.usable("licence")) continue;
    if (standards::row_of(proof.tables, "licences", source.licence) != nullptr) continue;
    std::vector<std::string> known;
    for (const auto& row : standards::rows_of(proof.tables, "licences")) known.push_back(row.key);
    proof.findings.add(Rule::source_licence, source.span_of("licence"), "the table of licences has no " + source.licence,
                       did_you_mean(base::nearest_word(source.licence, known)));
  }
}

}  // namespace benchleaf::prove
