// In: a query, the search index, facts. Out: the records that answer it, each with the facts a restorer asks for first.

#include "command/answer.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <utility>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/mixing.h"
#include "bench/step_world.h"
#include "derive/relations.h"
#include "standards/table_view.h"

namespace benchleaf::command {
namespace {

constexpr std::size_t kMostOthers = 8;

/// Where a record of each kind says in a sentence what it is about; the first that a record has.
constexpr std::array<const char*, 10> kSummaries = {"meaning", "hazard", "looks", "recognise", "purpose",
                                                    "lead",    "use",    "where", "found-in",  "publication"};

std::string summary_of(const model::Record& record) {
  for (const char* path : kSummaries) {
    const model::Node* node = record.root.find(path);
    if (node != nullptr && node->type == model::NodeType::string && record.usable(path)) return node->text;
  }
  const model::Node* uses = record.root.find("uses");
  if (uses == nullptr || !record.usable("uses")) return {};
  std::string text = uses->text;
  for (const auto& item : uses->items) text += (text.empty() ? "" : ", ") + item.text;
  return text;
}

class Answerer {
 public:
  Answerer(const Workbench& bench, const compose::SearchIndex& index,
           const std::function<std::string(const std::string&)>& page_of)
      : bench_(bench), index_(index), page_of_(page_of) {}

  Answer answer(const std::string& record) const {
    Answer out;
    out.record = record;
    out.title = title_of(record);
    out.page = page_of_(record);
    const model::Record* found = bench_.base.find(record);
    if (found == nullptr) return out;
    out.kind = std::string(model::kind_name(found->kind));
    if (found->kind == model::Kind::cell) {
      add_cell(out);
    } else {
      out.summary = summary_of(*found);
      out.verdicts = verdicts_about(bench_, record);
    }
    return out;
  }

  /// The verdicts of a liquid on what one target is made of, or what comes of it and another liquid or a residue.
  Answer pair_answer(const AskedPair& pair) const {
    Answer out = answer(pair.agent);
    const model::Record* target = bench_.base.find(pair.target);
    if (target != nullptr && bench::is_mixture(*target)) {
      out.title += " and " + title_of(pair.target);
      out.verdicts = verdict_of_mixing(bench_, pair.agent, pair.target);
      return out;
    }
    out.title += " on " + title_of(pair.target);
    const auto materials = bench::materials_of({bench_.base, bench_.tables}, pair.target);
    std::erase_if(out.verdicts, [&materials](const AnswerVerdict& verdict) {
      return std::find(materials.begin(), materials.end(), verdict.record) == materials.end();
    });
    return out;
  }

 private:
  std::string title_of(const std::string& record) const {
    for (const auto& entry : index_.entries()) {
      if (entry.record == record) return entry.title;
    }
    return record;
  }

  /// The fact as the terminal prints it, or empty where it is missing or states nothing.
  std::string fact(const std::string& id) const {
    const model::Fact* found = bench_.derived.facts.find(id);
    if (found == nullptr || found->printed == "not stated" || found->printed == "not known") return {};
    return base::to_terminal(found->printed);
  }

  std::string size_of(const std::string& record) const {
    const model::Fact* diameter = bench_.derived.facts.find(record + "#size.diameter");
    const std::string height = fact(record + "#size.height");
    if (diameter == nullptr || !diameter->value || height.empty()) return {};
    return base::shortest_text(*diameter->value) + " x " + height;
  }

  std::string system_of(const std::string& record) const {
    const model::Record* found = bench_.base.find(record);
    const model::CellSystem* system =
        found == nullptr ? nullptr : bench_.tables.cell_system_by_id(bench_.base.cells.at(found->id).system);
    return system == nullptr ? std::string() : system->name;
  }

  void add_cell(Answer& out) const {
    out.size = size_of(out.record);
    out.voltage = fact(out.record + "#nominal");
    out.system = system_of(out.record);
    out.drain = fact(out.record + "#drain");
    out.capacity = fact(out.record + "#capacity");
    for (const auto& peer : bench_.derived.relations.same_size(out.record)) {
      out.peers.push_back(
          {peer.cell, title_of(peer.cell), system_of(peer.cell), peer.same_system, std::string(model::trust_name(peer.trust))});
    }
  }

  const Workbench& bench_;
  const compose::SearchIndex& index_;
  const std::function<std::string(const std::string&)>& page_of_;
};

/// `7.9x5.4`, `7.9 x 5.4 mm`: two lengths in millimetres.
struct AskedSize {
  double diameter = 0;
  double height = 0;
};

std::string without_unit(std::string text) {
  std::string out;
  for (const char c : text) {
    if (c != ' ') out += c;
  }
  const std::size_t unit = out.find("mm");
  return unit != std::string::npos && unit + 2 == out.size() ? out.substr(0, unit) : out;
}

std::optional<AskedSize> asked_size(const std::string& query) {
  constexpr std::string_view kTimes = "\xC3\x97";
  std::size_t at = query.find(kTimes);
  std::size_t length = kTimes.size();
  if (at == std::string::npos) {
    at = query.find_first_of("xX*");
    length = 1;
  }
  if (at == std::string::npos) return std::nullopt;
  const auto diameter = base::parse_decimal(without_unit(query.substr(0, at)));
  const auto height = base::parse_decimal(without_unit(query.substr(at + length)));
  if (!diameter || !height) return std::nullopt;
  return AskedSize{*diameter, *height};
}

/// Cells a little smaller than what was measured, the largest first: the old cell may have swollen, by as much as the table
/// bench-rules says.
std::vector<std::string> a_little_smaller(const model::Tables& tables, const derive::Relations& relations,
                                          const AskedSize& asked) {
  std::vector<std::string> cells;
  const auto* rule = standards::row_of(tables, "bench-rules", "cell-swelling");
  const auto swelling = rule == nullptr ? std::nullopt : standards::cell_value(*rule, "value", base::Unit::millimetre);
  if (!swelling) return cells;
  const auto& sizes = relations.sizes();
  for (auto family = sizes.rbegin(); family != sizes.rend(); ++family) {
    const double narrower = base::tidy(asked.diameter - family->diameter_mm);
    const double flatter = base::tidy(asked.height - family->height_mm);
    const bool same = narrower == 0 && flatter == 0;
    if (same || narrower < 0 || flatter < 0 || narrower > *swelling || flatter > *swelling) continue;
    cells.insert(cells.end(), family->cells.begin(), family->cells.end());
  }
  return cells;
}

}  // namespace

Answers look_up(const Workbench& bench, const compose::SearchIndex& index, const std::string& query,
                const std::function<std::string(const std::string&)>& page_of) {
  Answers answers;
  answers.query = query;
  const Answerer answerer(bench, index, page_of);
  if (const auto pair = asked_pair(bench, index, query)) {
    answers.hits.push_back(answerer.pair_answer(*pair));
    answers.others_head = "also";
    for (const auto& record : {pair->agent, pair->target}) answers.others.push_back(answerer.answer(record));
    return answers;
  }
  const auto hits = index.find(query);
  const bool exact = !hits.empty() && hits.front().fit == compose::Fit::exact;
  std::vector<std::string> others;
  for (const auto& hit : hits) {
    // A name that is the query word for word comes before those that only hold it.
    const bool best = exact ? hit.fit == compose::Fit::exact && hit.score == hits.front().score : hit.fit == hits.front().fit;
    if (best) {
      answers.hits.push_back(answerer.answer(hit.record));
    } else {
      others.push_back(hit.record);
    }
  }
  answers.others_head = "also";
  if (const auto size = asked_size(query)) {
    answers.others_head = "a little smaller, in case the old cell has swollen";
    others = a_little_smaller(bench.tables, bench.derived.relations, *size);
  }
  if (others.size() > kMostOthers) others.resize(kMostOthers);
  for (const auto& record : others) answers.others.push_back(answerer.answer(record));
  if (answers.hits.empty()) answers.nearest = index.nearest(query);
  return answers;
}

}  // namespace benchleaf::command
