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

class Answerer {
 public:
  Answerer(const Workbench& bench, const compose::SearchIndex& index,
           const std::function<std::string(const std::string&)>& page_of)
      : bench_(bench), index_(index), page_of_(page_of) {}

  Answer answer(const std::string& record) const {
    Answer out;
    out.record = record;
    out.title = title_of(record);
    out.provenance = entry_of(record).provenance;
    out.page = page_of_(record);
    const auto kind = model::RecordRef(record).kind();
    if (kind) out.kind = model::kind_name(*kind);
    if (kind == model::Kind::cell) {
      add_cell(out);
    } else {
      out.summary = base::to_terminal(entry_of(record).summary);
      if (bench_.base.find(record) != nullptr) out.verdicts = verdicts_about(bench_, record);
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
    const auto materials = bench::materials_of({bench_.base, bench_.tables}, model::RecordRef(pair.target));
    std::erase_if(out.verdicts, [&materials](const AnswerVerdict& verdict) {
      return std::find(materials.begin(), materials.end(), verdict.record) == materials.end();
    });
    return out;
  }

 private:
  const model::SearchEntry& entry_of(const std::string& record) const {
    static const model::SearchEntry kNone;
    const auto& all = index_.entries();
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& entry) { return entry.record == record; });
    return found == all.end() ? kNone : *found;
  }

  std::string title_of(const std::string& record) const {
    const std::string& title = entry_of(record).title;
    return title.empty() ? record : title;
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
    for (const auto& peer : bench_.derived.relations.same_size(model::RecordRef(out.record))) {
      out.peers.push_back(
          {peer.cell, title_of(peer.cell), system_of(peer.cell), peer.same_system, std::string(model::trust_name(peer.trust))});
    }
  }

  const Workbench& bench_;
  const compose::SearchIndex& index_;
  const std::function<std::string(const std::string&)>& page_of_;
};

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
  const compose::FoundRecords found = index.look_up(query);
  for (const auto& hit : found.hits) answers.hits.push_back(answerer.answer(hit.record));
  for (const auto& hit : found.others) answers.others.push_back(answerer.answer(hit.record));
  answers.others_head = found.others_head;
  answers.nearest = found.nearest;
  return answers;
}

}  // namespace benchleaf::command
