// In: a record or a query. Out: what liquids and abrasives do to materials, as `find` prints it.

#include <algorithm>
#include <array>
#include <sstream>
#include <utility>

#include "base/ascii.h"
#include "bench/compatibility.h"
#include "bench/mixing.h"
#include "command/answer.h"
#include "compose/desk.h"

namespace benchleaf::command {
namespace {

constexpr int kNamesIt = 40;  // a word of a title or of another name weighs as much; a word of a text weighs less
constexpr std::array<std::string_view, 4> kBetween = {"on", "and", "with", "for"};

int rank(bench::Effect effect) {
  switch (effect) {
    case bench::Effect::never: return 0;
    case bench::Effect::with_care: return 1;
    case bench::Effect::not_known: return 2;
    case bench::Effect::ok: break;
  }
  return 3;
}

bool is_agent(const model::Record& record) {
  return record.kind == model::Kind::chemistry || record.kind == model::Kind::abrasive;
}

bool is_target(const model::Record& record) { return record.kind == model::Kind::material || record.kind == model::Kind::part; }

class VerdictList {
 public:
  explicit VerdictList(const bench::StepWorld& world) : world_(world) {}

  /// `other` is the side of the pair that the reader did not ask for.
  void add(const model::RecordRef& agent, const model::RecordRef& material, const model::Record& other,
           const std::string& about = {}) {
    const bench::Compatibility found = bench::compatibility(world_, agent, material);
    AnswerVerdict one{other.reference(), other.title + about, std::string(bench::effect_words(found.effect)), {}, {}};
    if (found.row != nullptr) {
      one.why = found.row->why;
      if (!found.row->condition.empty()) one.why += (one.why.empty() ? "" : " ") + found.row->condition;
      const model::Basis* basis = found.agent->basis_for(found.path);
      if (basis != nullptr) one.trust = std::string(model::trust_name(basis->trust));
    }
    list_.emplace_back(rank(found.effect), std::move(one));
  }

  std::vector<AnswerVerdict> take() {
    std::stable_sort(list_.begin(), list_.end(), [](const auto& one, const auto& other) { return one.first < other.first; });
    std::vector<AnswerVerdict> verdicts;
    for (auto& [order, verdict] : list_) verdicts.push_back(std::move(verdict));
    return verdicts;
  }

 private:
  const bench::StepWorld& world_;
  std::vector<std::pair<int, AnswerVerdict>> list_;
};

std::string joined(const std::vector<std::string>& words, std::size_t from, std::size_t to) {
  std::string text;
  for (std::size_t i = from; i < to; ++i) text += (text.empty() ? "" : " ") + words[i];
  return text;
}

/// Whether the words are all of one of the record's names.
bool is_whole_name(const model::Record& record, const std::string& words) {
  std::vector<std::string> names{record.title};
  if (record.kind == model::Kind::chemistry) {
    const auto& liquid = static_cast<const model::Chemistry&>(record);
    names.push_back(liquid.short_name);
    names.insert(names.end(), liquid.also_called.begin(), liquid.also_called.end());
  }
  return std::any_of(names.begin(), names.end(), [&words](const std::string& name) { return base::lower_ascii(name) == words; });
}

/// The record that these words name best and that is of the right sort, or empty.
template <typename Wanted>
std::string named(const Workbench& bench, const compose::SearchIndex& index, const std::string& words, Wanted wanted) {
  for (const auto& hit : index.find(words)) {
    const model::Record* record = bench.base.find(hit.record);
    if (hit.fit == compose::Fit::exact && hit.score >= kNamesIt && record != nullptr && wanted(*record)) return hit.record;
  }
  return {};
}

}  // namespace

std::vector<AnswerVerdict> verdicts_about(const Workbench& bench, const std::string& record) {
  const bench::StepWorld world{bench.base, bench.tables};
  VerdictList list(world);
  const model::RecordRef reference(record);
  const model::Record* asked = bench.base.find(reference);
  if (asked == nullptr) return {};
  if (is_agent(*asked)) {
    for (const auto& [id, material] : bench.base.materials) list.add(reference, material.reference(), material);
    return list.take();
  }
  const model::References materials = bench::materials_of(world, reference);
  for (const model::RecordRef& material : materials) {
    // A part of several materials says which of them a verdict is about.
    const std::string about = materials.size() > 1 ? " on " + bench::words_for(world, material) : std::string();
    for (const auto& [id, liquid] : bench.base.chemistries) list.add(liquid.reference(), material, liquid, about);
    for (const auto& [id, abrasive] : bench.base.abrasives) list.add(abrasive.reference(), material, abrasive, about);
  }
  return list.take();
}

std::vector<AnswerVerdict> verdict_of_mixing(const Workbench& bench, const std::string& one, const std::string& other) {
  const bench::StepWorld world{bench.base, bench.tables};
  AnswerVerdict verdict{other, bench.base.find(other)->title, "not known", "Never mix on trial.", {}};
  const std::vector<bench::MixVerdict> known = bench::mixes(world, model::RecordRef(one), model::RecordRef(other));
  if (known.empty()) return {verdict};
  const bench::MixVerdict found = bench::gravest(known, false);
  verdict.verdict = bench::meet_words(found.open);
  verdict.why = found.effect;
  const bool closed = std::any_of(known.begin(), known.end(), [](const auto& each) { return each.closed_never; });
  if (!found.product.empty()) verdict.why += " Gives " + bench::words_for(world, model::RecordRef(found.product)) + ".";
  if (!found.when.empty()) verdict.why += " " + compose::sentence_case(found.when) + ".";
  if (closed && found.open != bench::Meet::never) verdict.why += " Never in a closed vessel.";
  verdict.trust = std::string(model::trust_name(found.trust));
  return {verdict};
}

std::optional<AskedPair> asked_pair(const Workbench& bench, const compose::SearchIndex& index, const std::string& query) {
  std::vector<std::string> words;
  std::istringstream text(base::lower_ascii(query));
  bool between = false;  // `polish acrylic` asks how to, `polish on acrylic` asks whether
  for (std::string word; text >> word;) {
    if (std::find(kBetween.begin(), kBetween.end(), word) == kBetween.end()) {
      words.push_back(word);
    } else {
      between = true;
    }
  }
  for (std::size_t split = 1; split < words.size(); ++split) {
    const std::string first = joined(words, 0, split);
    const std::string second = joined(words, split, words.size());
    for (const auto& [agent, target] : {std::pair{first, second}, std::pair{second, first}}) {
      AskedPair pair{named(bench, index, agent, is_agent), {}};
      // Two names side by side are a pair only where the first is whole: `polish` alone is something to do.
      if (!between && !pair.agent.empty() && !is_whole_name(*bench.base.find(pair.agent), agent)) continue;
      if (pair.agent.empty()) continue;
      pair.target = named(bench, index, target, is_target);
      if (pair.target.empty() && bench.base.find(pair.agent)->kind == model::Kind::chemistry) {
        pair.target = named(bench, index, target, bench::is_mixture);
        if (!between && !pair.target.empty() && !is_whole_name(*bench.base.find(pair.target), target)) continue;
      }
      if (!pair.target.empty() && pair.target != pair.agent) return pair;
    }
  }
  return std::nullopt;
}

}  // namespace benchleaf::command
