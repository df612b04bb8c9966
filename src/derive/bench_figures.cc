// In: the knowledge base. Out: what calculators, at the terminal and in the page, may look up in records.

#include "derive/bench_figures.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <utility>

#include "derive/makers.h"

namespace benchleaf::derive {
namespace {

using model::Kind;

constexpr std::array kKinds = {Kind::cell,      Kind::module,  Kind::gasket,    Kind::crystal, Kind::material,
                               Kind::substance, Kind::residue, Kind::chemistry, Kind::abrasive};

bool is_looked_up(Kind kind) { return std::find(kKinds.begin(), kKinds.end(), kind) != kKinds.end(); }

/// Words with spaces that calculators read: `Skin Corr. 1B`, `figures lit`.
constexpr std::array<std::string_view, 2> kReadWords = {".class", ".state"};

bool ends_with(std::string_view text, std::string_view end) {
  return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

/// Prose that stands in a value: no calculator asks for it, and the page need not carry it.
bool is_prose(const model::Fact& fact) {
  const bool read = std::any_of(kReadWords.begin(), kReadWords.end(), [&fact](auto end) { return ends_with(fact.id, end); });
  return !read && !fact.value && !fact.low && fact.printed.find(' ') != std::string::npos;
}

void add_words(model::FactBase& figures, const model::Record& record, const std::string& path, const std::string& text) {
  model::Fact fact;
  fact.id = record.reference() + "#" + path;
  fact.printed = text;
  fact.trust = model::Trust::given;
  figures.add(std::move(fact));
}

}  // namespace

model::FactBase bench_figures(const model::KnowledgeBase& base, const model::Tables& tables) {
  Making making{base, tables, {}, {}};
  make_stated_facts(making);
  model::FactBase figures;
  for (const auto& fact : making.facts.all()) {
    const auto kind = model::FactId(fact.id).kind();
    if (kind && is_looked_up(*kind) && !is_prose(fact)) figures.add(fact);
  }
  for (const model::Record* record : base.all()) {
    if (!is_looked_up(record->kind)) continue;
    if (!record->title.empty()) add_words(figures, *record, "title", record->title);
    for (const auto& reference : record->references) {
      if (!reference.target.empty()) add_words(figures, *record, reference.path, reference.target);
    }
  }
  for (const auto& [id, gasket] : base.gaskets) {
    if (gasket.moving) add_words(figures, gasket, "moving", *gasket.moving ? "yes" : "no");
  }
  return figures;
}

}  // namespace benchleaf::derive
