// Rules about liquids: parts that come to a hundred at most, a label that follows from them, properties of what is nearly pure.

#include <algorithm>
#include <array>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/mixture.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Chemistry;
using report::Rule;
using Codes = std::set<std::string>;

std::string strength_path(std::size_t i) { return "made-of." + std::to_string(i) + ".strength"; }

const model::Fact* derived_fact(const Proof& proof, const Chemistry& liquid, std::string_view output) {
  return proof.derived.facts.find(liquid.reference() + "#mixture-class." + std::string(output));
}

/// The codes of a derived list: `H315, H319`, or `none`.
Codes codes_of(const model::Fact* fact) {
  Codes codes;
  if (fact == nullptr || fact->printed == "none") return codes;
  std::string_view rest = fact->printed;
  while (!rest.empty()) {
    const std::size_t comma = rest.find(", ");
    codes.insert(std::string(rest.substr(0, comma)));
    rest = comma == std::string_view::npos ? std::string_view() : rest.substr(comma + 2);
  }
  return codes;
}

Codes without(const Codes& all, const Codes& some) {
  Codes rest;
  std::set_difference(all.begin(), all.end(), some.begin(), some.end(), std::inserter(rest, rest.end()));
  return rest;
}

std::string listed(const Codes& codes) {
  std::string text;
  for (const auto& code : codes) text += (text.empty() ? "" : ", ") + code;
  return text.empty() ? "none" : text;
}

/// Whether a label says what one end of the strengths calls for, and nothing beyond what may hold there.
bool fits(const Codes& stated, const Codes& sure, const Codes& perhaps) {
  return without(sure, stated).empty() && without(stated, perhaps).empty();
}

void check_label(const Proof& proof, const Chemistry& liquid) {
  const Codes sure = codes_of(derived_fact(proof, liquid, "statements"));
  const Codes perhaps = codes_of(derived_fact(proof, liquid, "perhaps"));
  const Codes least = codes_of(derived_fact(proof, liquid, "least-statements"));
  const Codes least_perhaps = codes_of(derived_fact(proof, liquid, "least-perhaps"));
  const Codes stated(liquid.label->statements.begin(), liquid.label->statements.end());
  if (fits(stated, sure, perhaps) || fits(stated, least, least_perhaps)) return;
  proof.findings
      .add(Rule::mixture_statements, liquid.span_of("label.statements"),
           "found " + listed(stated) + ", but at this strength the parts call for " + listed(sure),
           "correct the label or the strength, or state the disagreement under conflicts:")
      .notes.push_back({liquid.span_of("made-of"), "what it is made of"});
}

/// A property that a liquid and the substance it is made of both state.
struct Property {
  const char* path;
  Unit unit;
  std::optional<base::Quantity> Chemistry::*of_liquid;
  std::optional<base::Quantity> model::Substance::*of_substance;
};

constexpr std::array<Property, 3> kProperties = {{
    {"density", Unit::gram_per_millilitre, &Chemistry::density, &model::Substance::density},
    {"flash-point", Unit::degree_celsius, &Chemistry::flash_point, &model::Substance::flash_point},
    {"boiling-point", Unit::degree_celsius, &Chemistry::boiling_point, &model::Substance::boiling_point},
}};

void check_property(const Proof& proof, const Chemistry& liquid, const model::Substance& substance, const Property& property) {
  const auto& own = liquid.*property.of_liquid;
  const auto& other = substance.*property.of_substance;
  const bool readable =
      own && other && own->has_value() && other->has_value() && liquid.usable(property.path) && substance.usable(property.path);
  if (!readable || has_conflict(liquid, property.path)) return;
  const auto found = own->in(property.unit), expected = other->in(property.unit);
  if (!found || !expected) return;
  if (base::tidy(found->high) >= base::tidy(expected->low) && base::tidy(found->low) <= base::tidy(expected->high)) return;
  proof.findings
      .add(Rule::voice_pure_liquid, liquid.span_of(property.path),
           "found " + shown(own) + ", but " + substance.id + ", of which it is made, has " + shown(other),
           "one of the two is wrong, or the disagreement belongs under conflicts:")
      .notes.push_back({substance.span_of(property.path), "so " + substance.reference()});
}

/// The one substance that a liquid consists of, or nullptr.
const model::Substance* nearly_all(const Proof& proof, const Chemistry& liquid) {
  constexpr double kNearly = 98;
  if (liquid.made_of.size() != 1) return nullptr;
  const auto share = percent_of(liquid, 0);
  const auto* record = record_of(proof, model::Kind::substance, liquid.made_of[0].substance);
  if (!share || share->low < kNearly || record == nullptr) return nullptr;
  return &proof.base.substances.at(record->id);
}

}  // namespace

void check_strength_sums(const Proof& proof) {
  constexpr double kAll = 100;
  for (const auto& [id, liquid] : proof.base.chemistries) {
    double sum = 0;
    std::size_t last = 0;
    for (std::size_t i = 0; i < liquid.made_of.size(); ++i) {
      const auto share = percent_of(liquid, i);
      if (!share) continue;
      sum += share->low;
      last = i;
      if (base::tidy(share->high) <= kAll) continue;
      proof.findings.add(Rule::mixture_sum, liquid.span_of(strength_path(i)),
                         "found " + shown(liquid.made_of[i].strength) + " of " + liquid.made_of[i].substance,
                         "no share is more than all");
      sum = 0;
      break;
    }
    if (base::tidy(sum) <= kAll) continue;
    proof.findings.add(Rule::mixture_sum, liquid.span_of(strength_path(last)),
                       "the parts come to " + base::shortest_text(base::tidy(sum)) + " %", "correct a strength");
  }
}

void check_labels(const Proof& proof) {
  for (const auto& [id, liquid] : proof.base.chemistries) {
    if (!liquid.label || !liquid.usable("label") || derived_fact(proof, liquid, "statements") == nullptr) continue;
    if (derived_fact(proof, liquid, "not-known") != nullptr) continue;  // the sum is the least that holds
    if (!has_conflict(liquid, "label")) check_label(proof, liquid);
  }
}

void check_label_words(const Proof& proof) {
  for (const auto& [id, liquid] : proof.base.chemistries) {
    if (!liquid.label || !liquid.usable("label.signal") || !liquid.usable("label.statements")) continue;
    const auto expected = standards::label_of(liquid.label->statements, proof.tables);
    if (word_of(liquid.label->signal) != expected.signal) {
      proof.findings
          .add(Rule::mixture_signal, liquid.span_of("label.signal"),
               "found the signal word " + word_of(liquid.label->signal) + ", but the statements call for " + expected.signal,
               "correct the word or the statements")
          .notes.push_back({liquid.span_of("label.statements"), "the statements"});
    }
    const Codes stated(liquid.label->pictograms.begin(), liquid.label->pictograms.end());
    const Codes wanted(expected.pictograms.begin(), expected.pictograms.end());
    if (stated == wanted || !liquid.usable("label.pictograms")) continue;
    proof.findings
        .add(Rule::mixture_pictogram, liquid.span_of("label.pictograms"),
             "found " + listed(stated) + ", but the statements call for " + listed(wanted),
             "correct the pictograms or the statements")
        .notes.push_back({liquid.span_of("label.statements"), "the statements"});
  }
}

void check_extreme_ph(const Proof& proof) {
  for (const auto& [id, liquid] : proof.base.chemistries) {
    if (derived_fact(proof, liquid, "extreme-ph") == nullptr) continue;
    proof.findings.add(Rule::mixture_judgement, liquid.span_of("ph"),
                       "a pH of " + shown(liquid.ph) + " makes it corrosive unless a test or its reserve says otherwise",
                       "follow the label of the bottle; the sum of the parts does not decide it");
  }
}

void check_ph_side(const Proof& proof) {
  for (const auto& [id, liquid] : proof.base.chemistries) {
    const auto ph = liquid.ph && liquid.ph->has_value() && liquid.usable("ph") ? liquid.ph->in(Unit::one) : std::nullopt;
    if (!ph) continue;
    constexpr double kNeutral = 7, kHighest = 14;
    const bool possible = ph->low >= 0 && ph->high <= kHighest;
    const bool acid = liquid.family == model::LiquidFamily::acid && liquid.usable("kind");
    const bool alkaline = liquid.family == model::LiquidFamily::base && liquid.usable("kind");
    if (possible && (!acid || ph->high < kNeutral) && (!alkaline || ph->low > kNeutral)) continue;
    auto& finding = proof.findings.add(Rule::liquid_ph, liquid.span_of("ph"),
                                       "found a pH of " + shown(liquid.ph) + (possible ? " on an " : ", which no liquid has"),
                                       "correct the figure or the kind");
    if (possible) finding.message = "found a pH of " + shown(liquid.ph) + " on a liquid of kind " + word_of(liquid.family);
    finding.notes.push_back({liquid.span_of("kind"), "the kind"});
  }
}

void check_pure_liquids(const Proof& proof) {
  for (const auto& [id, liquid] : proof.base.chemistries) {
    const auto* substance = nearly_all(proof, liquid);
    if (substance == nullptr) continue;
    for (const auto& property : kProperties) check_property(proof, liquid, *substance, property);
  }
}

}  // namespace benchleaf::prove
