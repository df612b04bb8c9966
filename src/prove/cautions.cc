// Rules about cautions: their words agree with the table of signal words, their signs exist, and the grave ones do not
// stand in the head.

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "base/ascii.h"
#include "base/id.h"
#include "base/utf8.h"
#include "prove/checks.h"

namespace benchleaf::prove {
namespace {

using model::Caution;
using report::Rule;
using Word = model::Message::Word;

constexpr std::array<std::string_view, 4> kWords = {"danger", "warning", "caution", "notice"};

std::string_view word_of(const Caution& caution) { return kWords.at(static_cast<std::size_t>(caution.word)); }

/// Danger and warning stand as an item before the step that needs them.
bool stands_before_step(const Caution& caution) { return caution.word == Word::danger || caution.word == Word::warning; }

/// The row that a caution's severity calls for; likelihood tells apart only words of the same severity.
const model::SignalWord* row_for(const model::Tables& tables, const Caution& caution) {
  const model::SignalWord* of_severity = nullptr;
  int rows = 0;
  for (const auto& row : tables.signal_words) {
    if (row.severity != word_of(caution.severity)) continue;
    if (row.likelihood == word_of(caution.likelihood)) return &row;
    of_severity = &row;
    ++rows;
  }
  return rows == 1 ? of_severity : nullptr;
}

}  // namespace

void check_signal_words(const Proof& proof) {
  for (const auto& [id, caution] : proof.base.cautions) {
    if (!caution.usable("word") || !caution.usable("severity") || !caution.usable("likelihood")) continue;
    const model::SignalWord* row = row_for(proof.tables, caution);
    if (row == nullptr || row->word == word_of(caution)) continue;
    proof.findings.add(Rule::caution_word, caution.span_of("word"),
                       "found the word " + std::string(word_of(caution)) + ", but severity " + row->severity +
                           " and likelihood " + word_of(caution.likelihood) + " call for " + row->word,
                       "correct the word, or severity and likelihood");
  }
}

void check_short_forms(const Proof& proof) {
  constexpr std::size_t kMost = 90;
  for (const auto& [id, caution] : proof.base.cautions) {
    if (!caution.usable("short") || caution.harm_in_brief.empty() || caution.avoid_in_brief.empty()) continue;
    const std::string words = caution.harm_in_brief + " " + caution.avoid_in_brief;
    const std::size_t length = base::count_code_points(words);
    if (length > kMost)
      proof.findings.add(
          Rule::caution_short, caution.span_of("short"),
          "the short form has " + std::to_string(length) + " characters, at most " + std::to_string(kMost) + " stand in its line",
          "say the harm and what keeps it off in fewer words");
    for (const std::string_view word : kWords) {
      if (word == word_of(caution) || base::lower_ascii(words).find(std::string(word) + ":") == std::string::npos) continue;
      proof.findings.add(Rule::caution_short, caution.span_of("short"),
                         "the short form speaks the signal word " + std::string(word) + ", but the caution is a " +
                             std::string(word_of(caution)),
                         "leave the word out; it is printed beside the sentence");
    }
  }
}

void check_signs(const Proof& proof) {
  std::vector<std::string> numbers;
  for (const auto& sign : proof.tables.safety_signs) numbers.push_back(sign.number);
  for (const auto& [id, caution] : proof.base.cautions) {
    for (std::size_t i = 0; i < caution.signs.size(); ++i) {
      const std::string path = "signs." + std::to_string(i);
      if (!caution.usable(path) || proof.tables.safety_sign(caution.signs[i]) != nullptr) continue;
      const std::string nearest = base::nearest_word(caution.signs[i], numbers);
      proof.findings.add(Rule::caution_sign, caution.span_of(path),
                         "there is no sign " + caution.signs[i] + " in the table of safety signs",
                         nearest.empty() ? std::string() : "did you mean " + nearest + "?");
    }
  }
}

void check_head_cautions(const Proof& proof) {
  for (const auto& [id, procedure] : proof.base.procedures) {
    for (std::size_t i = 0; i < procedure.cautions.size(); ++i) {
      const std::string path = "cautions." + std::to_string(i);
      const Caution* caution = proof.base.find<Caution>(procedure.cautions[i]);
      if (caution == nullptr || !caution->usable("word") || !procedure.usable(path) || !stands_before_step(*caution)) continue;
      auto& finding = proof.findings.add(Rule::caution_in_head, procedure.span_of(path),
                                         "the " + std::string(word_of(*caution)) + " " + caution->id + " stands in the head",
                                         "make it an item of steps:, before the step that needs it");
      finding.notes.push_back({caution->span_of("word"), "its word"});
    }
  }
}

}  // namespace benchleaf::prove
