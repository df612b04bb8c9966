// In: two records. Out: what one does to the other, as their lines say.
#include <algorithm>

#include "bench/compatibility.h"
#include "bench/mixing.h"
#include "query/pairs.h"

namespace benchleaf::query {

namespace {

Code code_of(bench::Effect effect) {
  switch (effect) {
    case bench::Effect::never: return Code::never;
    case bench::Effect::with_care: return Code::with_care;
    case bench::Effect::not_known: return Code::not_known;
    case bench::Effect::ok: break;
  }
  return Code::ok;
}

Code code_of(bench::Meet meet) {
  switch (meet) {
    case bench::Meet::never: return Code::never;
    case bench::Meet::care:
    case bench::Meet::rinse: return Code::with_care;
    case bench::Meet::ok: break;
  }
  return Code::ok;
}

std::string as_sentence(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  if (!text.empty() && text.back() != '.') text += '.';
  return text;
}

void add_sentence(std::string& text, const std::string& sentence) {
  if (!sentence.empty()) text += (text.empty() ? "" : " ") + as_sentence(sentence);
}

}  // namespace

std::string_view code_name(Code code) {
  switch (code) {
    case Code::never: return "never";
    case Code::with_care: return "with-care";
    case Code::not_known: return "not-known";
    case Code::ok: break;
  }
  return "ok";
}

PairVerdict verdict_on(const bench::StepWorld& world, const model::Record& agent, const model::Record& material) {
  const bench::Compatibility found = bench::compatibility(world, agent.reference(), material.reference());
  PairVerdict verdict{&agent, &material, false, code_of(found.effect), std::string(bench::effect_words(found.effect)), {}, {}};
  if (found.row == nullptr) return verdict;
  verdict.why = found.row->why;
  add_sentence(verdict.why, found.row->condition);
  const model::Basis* basis = found.agent->basis_for(found.path);
  if (basis != nullptr) verdict.trust = std::string(model::trust_name(basis->trust));
  return verdict;
}

PairVerdict verdict_of_mixing(const bench::StepWorld& world, const model::Record& one, const model::Record& other) {
  PairVerdict verdict{&one, &other, true, Code::not_known, "not known", "Never mix on trial.", {}};
  const std::vector<bench::MixVerdict> known = bench::mixes(world, one.reference(), other.reference());
  if (known.empty()) return verdict;
  const bench::MixVerdict found = bench::gravest(known, false);
  verdict.code = code_of(found.open);
  verdict.words = bench::meet_words(found.open);
  verdict.why = found.effect;
  if (!found.product.empty()) add_sentence(verdict.why, "Gives " + bench::words_for(world, model::RecordRef(found.product)));
  add_sentence(verdict.why, found.when);
  const bool closed = std::any_of(known.begin(), known.end(), [](const auto& each) { return each.closed_never; });
  if (closed && found.open != bench::Meet::never) add_sentence(verdict.why, "Never in a closed vessel");
  verdict.trust = std::string(model::trust_name(found.trust));
  return verdict;
}

}  // namespace benchleaf::query
