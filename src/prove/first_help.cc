// Rules about first help: no time of rinsing shorter than its source's, and one
// answer to a cell that swells or is hot.

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "base/ascii.h"
#include "base/number.h"
#include "prove/handling_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using report::Rule;

/// The sentences of a text, in small letters.
std::vector<std::string> sentences_of(const std::string& text) {
  std::vector<std::string> found;
  std::string rest = base::lower_ascii(text);
  while (!rest.empty()) {
    const std::size_t end = rest.find(". ");
    found.push_back(rest.substr(0, end));
    rest = end == std::string::npos ? std::string() : rest.substr(end + 2);
  }
  return found;
}

/// The figure that ends at this place, going backwards: `20` of `20 `.
std::optional<double> figure_before(std::string_view text, std::size_t end) {
  while (end > 0 && text[end - 1] == ' ') --end;
  std::size_t begin = end;
  while (begin > 0 && base::is_digit(text[begin - 1])) --begin;
  return begin == end ? std::nullopt : base::parse_decimal(text.substr(begin, end - begin));
}

/// The shortest time that a sentence names: 15 of `15 to 20 minutes`.
std::optional<double> minutes_in(std::string_view sentence) {
  std::optional<double> least;
  for (std::size_t at = sentence.find(" minutes"); at != std::string_view::npos; at = sentence.find(" minutes", at + 1)) {
    auto figure = figure_before(sentence, at);
    const std::size_t range = sentence.substr(0, at).rfind(" to ");
    if (figure && range != std::string_view::npos && at - range < sizeof(" to 000")) {
      if (const auto low = figure_before(sentence, range)) figure = low;
    }
    if (figure) least = std::min(least.value_or(*figure), *figure);
  }
  return least;
}

/// Whether one of the words of a list `a, b` stands in a text.
bool has_one_of(std::string_view text, std::string_view list) {
  while (!list.empty()) {
    const std::size_t comma = list.find(", ");
    if (text.find(list.substr(0, comma)) != std::string_view::npos) return true;
    list = comma == std::string_view::npos ? std::string_view() : list.substr(comma + 2);
  }
  return false;
}

void check_rinse(const Proof& proof, const model::Caution& caution, const std::string& path, const std::string& sentence) {
  const auto minutes = sentence.find("water") == std::string::npos ? std::nullopt : minutes_in(sentence);
  if (!minutes) return;
  const auto* row = standards::row_of(proof.tables, "rinse-times", caution.id);
  const auto least = row == nullptr ? std::nullopt : standards::cell_value(*row, "least", base::Unit::minute);
  if (least && *minutes >= *least) return;
  auto& finding = proof.findings.add(
      Rule::caution_rinse, caution.span_of(path),
      "found " + base::shortest_text(*minutes) + " minutes of water" +
          (least ? ", but the source asks for at least " + base::shortest_text(*least) : ", for which no table gives a source"),
      least ? "rinse for as long as the source asks" : "add the caution to the table rinse-times, with its source");
  if (row != nullptr) finding.notes.push_back({row->span, "table rinse-times"});
}

/// Where a sentence only speaks of such a cell, it need not say what is done; where it does, that may not be another thing.
enum class Sentence { tells, speaks };

void check_cell_sentence(const Proof& proof, base::Span span, const std::string& sentence, Sentence kind) {
  for (const auto& row : standards::rows_of(proof.tables, "cell-states")) {
    if (!has_one_of(sentence, standards::cell_text(row, "words"))) continue;
    const std::string& must = standards::cell_text(row, "must");
    const std::string& never = standards::cell_text(row, "never");
    const bool says = kind == Sentence::speaks || has_one_of(sentence, must), contradicts = has_one_of(sentence, never);
    if (says && !contradicts) continue;
    proof.findings
        .add(Rule::voice_cell_state, span,
             "a cell that is " + row.key +
                 (says ? ", and a word that belongs to another state" : ", and not what is done about it"),
             "say " + must + ", and none of " + never + "; give each state a sentence of its own")
        .notes.push_back({row.span, "table cell-states"});
  }
}

/// The fields that tell somebody what to do: of cautions, procedures, looks, holds and symptoms.
constexpr std::array<std::string_view, 10> kTells = {"first-aid", "in-short", "avoid",         "stop.*",        "steps.*.do",
                                                     "text",      "because",  "causes.*.cure", "causes.*.stop", "until"};

/// Every sentence of a record that tells somebody what to do.
void check_cell_states(const Proof& proof, const model::Record& record) {
  visit_scalars(record, [&](const std::string& path, const model::Node& node) {
    const std::string field = field_of(path);
    if (std::find(kTells.begin(), kTells.end(), field) == kTells.end()) return;
    for (const std::string& sentence : sentences_of(node.text))
      check_cell_sentence(proof, record.span_of(path), sentence, Sentence::tells);
  });
}

}  // namespace

void check_rinse_times(const Proof& proof) {
  for (const auto& [id, caution] : proof.base.cautions) {
    for (const auto& [path, text] : {std::pair{"first-aid", &caution.first_aid}, std::pair{"in-short", &caution.in_short}}) {
      if (!caution.usable(path)) continue;
      for (const std::string& sentence : sentences_of(*text)) check_rinse(proof, caution, path, sentence);
    }
  }
}

void check_cells_in_distress(const Proof& proof) {
  for (const model::Record* record : proof.base.all()) check_cell_states(proof, *record);
  for (const auto& [id, page] : proof.base.pages) {
    for (const auto& part : page.parts) {
      const auto* block = std::get_if<model::Block>(&part);
      const auto* paragraph = block == nullptr ? nullptr : std::get_if<model::Paragraph>(&block->what);
      if (paragraph == nullptr) continue;
      for (const std::string& sentence : sentences_of(model::plain_text(paragraph->runs)))
        check_cell_sentence(proof, page.span, sentence, Sentence::speaks);
    }
  }
}

}  // namespace benchleaf::prove
