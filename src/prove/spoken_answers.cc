// Answers that sentences repeat: what a calculator or a table decides is said alike in every procedure, symptom, chart
// and page. Which words speak of which answer stands in the table spoken-answers; the sentence is read only to check it.

#include "prove/spoken_answers.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/ascii.h"
#include "base/number.h"
#include "bench/calculator.h"
#include "derive/bench_figures.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using model::Record;
using Row = model::PublishedTable::Row;

constexpr std::string_view kGrade = "grade";
constexpr std::string_view kYear = "year";
constexpr std::string_view kAny = "any";
constexpr std::size_t kParts = 4;  // of what decides: table, name, row, column; reckon, calculator, answer, input
constexpr double kNoise = 1e-9;

std::vector<std::string> parts_of(std::string_view text, std::string_view mark) {
  std::vector<std::string> parts;
  while (!text.empty()) {
    const std::size_t end = text.find(mark);
    parts.emplace_back(text.substr(0, end));
    text = end == std::string_view::npos ? std::string_view() : text.substr(end + mark.size());
  }
  return parts;
}

/// What a sentence says: a grade, or a figure with its ends, in the unit of its form.
struct Said {
  std::size_t begin = 0, end = 0;  ///< where in the sentence
  std::string grade;
  double low = 0, high = 0;

  std::string shown(std::string_view form) const {
    if (!grade.empty()) return grade;
    const std::string ends = base::shortest_text(low) + (low < high ? " to " + base::shortest_text(high) : "");
    return form == kYear ? ends : ends + " " + std::string(form);
  }
};

/// Words of a sentence with their places.
struct Word {
  std::size_t begin;
  std::string text;
};

std::vector<Word> words_of(std::string_view sentence) {
  std::vector<Word> words;
  for (std::size_t at = 0; at < sentence.size();) {
    at = sentence.find_first_not_of(" |:;,(\"", at);
    if (at == std::string_view::npos) break;
    const std::size_t end = std::min(sentence.find_first_of(" |:;,)\"", at), sentence.size());
    std::string text(sentence.substr(at, end - at));
    while (!text.empty() && text.back() == '.') text.pop_back();
    words.push_back({at, std::move(text)});
    at = end;
  }
  return words;
}

/// `P800` of a word in small letters, or empty.
std::string grade_in(const std::string& word) {
  const bool grade = word.size() >= 4 && word[0] == 'p' && word.find_first_not_of("0123456789", 1) == std::string::npos;
  return grade ? "P" + word.substr(1) : std::string();
}

std::optional<Said> figure_at(const std::vector<Word>& words, std::size_t i, std::string_view form) {
  const auto high = base::parse_decimal(words[i].text);
  if (!high) return std::nullopt;
  if (form == kYear ? words[i].text.size() != 4 : i + 1 == words.size() || words[i + 1].text != form) return std::nullopt;
  const bool range = i >= 2 && words[i - 1].text == "to";
  const auto low = range ? base::parse_decimal(words[i - 2].text) : std::nullopt;
  const Word& last = form == kYear ? words[i] : words[i + 1];
  return Said{low ? words[i - 2].begin : words[i].begin, last.begin + last.text.size(), {}, low.value_or(*high), *high};
}

/// All grades or figures of a form in a sentence.
std::vector<Said> said_in(std::string_view sentence, std::string_view form) {
  std::vector<Said> list;
  const std::vector<Word> words = words_of(sentence);
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (form == kGrade) {
      const std::string grade = grade_in(words[i].text);
      if (!grade.empty()) list.push_back({words[i].begin, words[i].begin + words[i].text.size(), grade, 0, 0});
    } else if (const auto figure = figure_at(words, i, form)) {
      list.push_back(*figure);
    }
  }
  return list;
}

/// The one that stands nearest to a phrase.
const Said* nearest_to(const std::vector<Said>& list, std::size_t begin, std::size_t end) {
  const auto distance = [&](const Said& one) {
    return one.end <= begin ? begin - one.end : one.begin >= end ? one.begin - end : std::size_t{0};
  };
  const auto best =
      std::min_element(list.begin(), list.end(), [&](const Said& a, const Said& b) { return distance(a) < distance(b); });
  return best == list.end() ? nullptr : &*best;
}

/// What a row of the table decides.
struct Decided {
  const Row* row;
  std::string form;
  std::string grade;
  double low = 0, high = 0;
  std::string printed;
  std::string by;  ///< `the table gland-limits says `

  /// A range is the whole band; a single figure is one of its ends or its middle.
  bool agrees(const Said& said) const {
    if (!grade.empty()) return said.grade == grade;
    const auto same = [](double a, double b) { return std::abs(a - b) < kNoise; };
    if (said.low < said.high) return same(said.low, low) && same(said.high, high);
    return same(said.low, low) || same(said.low, high);
  }
};

class Decisions {
 public:
  Decisions(const Proof& proof, SpokenAnswers& out)
      : proof_(proof), out_(out), figures_(derive::bench_figures(proof.base, proof.tables)) {
    for (const Row& row : standards::rows_of(proof.tables, "spoken-answers")) {
      const auto parts = parts_of(standards::cell_text(row, "decided"), "; ");
      const bool whole = parts.size() >= kParts;
      const auto decided = whole && parts.front() == "table" ? of_table(row, parts)
                           : whole                           ? of_calculator(row, parts)
                                                             : std::nullopt;
      if (decided)
        list_.push_back(*decided);
      else
        out_.undecided.push_back(row.key);
    }
  }

  const std::vector<Decided>& all() const { return list_; }

 private:
  std::optional<Decided> of_calculator(const Row& row, const std::vector<std::string>& parts) const {
    bench::Inputs inputs;
    for (std::size_t i = kParts - 1; i < parts.size(); ++i) {
      const std::size_t sign = parts[i].find('=');
      if (sign != std::string::npos) inputs[parts[i].substr(0, sign)] = {parts[i].substr(sign + 1), model::Trust::given, {}};
    }
    const bench::Result result = bench::reckon(parts[1], inputs, bench::Context{proof_.tables, figures_});
    const bench::Output* output = result.find(parts[2]);
    if (output == nullptr) return std::nullopt;
    Decided decided{
        &row, standards::cell_text(row, "form"), {}, 0, 0, base::to_terminal(output->printed), parts[1] + " answers "};
    // Items carry what a decision is about: the first rung is the start, the last the stop, the first size the chosen one.
    if (decided.form == kGrade) {
      if (result.rungs.empty()) return std::nullopt;
      decided.grade = output->name == "stop" ? result.rungs.back().grade : result.rungs.front().grade;
      return decided;
    }
    const auto value = output->value || result.sizes.empty() ? output->value : result.sizes.front().size.value;
    if (!value) return std::nullopt;
    decided.low = base::tidy(output->low.value_or(*value));
    decided.high = base::tidy(output->high.value_or(*value));
    return decided;
  }

  std::optional<Decided> of_table(const Row& row, const std::vector<std::string>& parts) const {
    const Row* found = standards::row_of(proof_.tables, parts[1], parts[2]);
    if (found == nullptr) return std::nullopt;
    const std::string& text = standards::cell_text(*found, parts[3]);
    const auto quantity = standards::cell_quantity(*found, parts[3]);
    const auto plain = base::parse_decimal(text);
    if (!quantity && !plain) return std::nullopt;
    const double low = quantity ? quantity->stated.low : *plain, high = quantity ? quantity->stated.high : *plain;
    return Decided{&row, standards::cell_text(row, "form"), {}, base::tidy(low), base::tidy(high),
                   text, "the table " + parts[1] + " says "};
  }

  const Proof& proof_;
  SpokenAnswers& out_;
  model::FactBase figures_;
  std::vector<Decided> list_;
};

bool has_one_of(std::string_view sentence, std::string_view list) {
  const auto parts = parts_of(list, "; ");
  return list == kAny || std::any_of(parts.begin(), parts.end(),
                                     [&](const std::string& one) { return sentence.find(one) != std::string_view::npos; });
}

class Listener {
 public:
  Listener(const Proof& proof, SpokenAnswers& out) : out_(out), decisions_(proof, out) {}

  void check(std::string_view text, base::Span span) {
    const std::string small = base::lower_ascii(std::string(text));
    for (const std::string& sentence : parts_of(small, ". ")) {
      for (const std::string& clause : parts_of(sentence, "; one ")) check_clause(clause, span);
    }
  }

 private:
  void check_clause(const std::string& clause, base::Span span) {
    for (const Decided& decided : decisions_.all()) {
      if (!has_one_of(clause, standards::cell_text(*decided.row, "beside"))) continue;
      for (const std::string& phrase : parts_of(standards::cell_text(*decided.row, "words"), "; ")) {
        const std::size_t at = clause.find(phrase);
        if (at == std::string::npos) continue;
        hold(decided, clause, at, phrase, span);
        break;
      }
    }
  }

  void hold(const Decided& decided, const std::string& clause, std::size_t at, const std::string& phrase, base::Span span) {
    const std::vector<Said> list = said_in(clause, decided.form);
    const Said* said = nearest_to(list, at, at + phrase.size());
    if (said == nullptr) return;
    ++out_.held;
    if (decided.agrees(*said)) return;
    out_.faults.push_back(
        {span, "found " + said->shown(decided.form) + " for the " + decided.row->key + ", but " + decided.by + decided.printed,
         "say what is decided there, or correct it there", decided.row->span});
  }

  SpokenAnswers& out_;
  Decisions decisions_;
};

void check_block(Listener& answers, const model::Block& block, base::Span span) {
  if (const auto* paragraph = std::get_if<model::Paragraph>(&block.what)) answers.check(model::plain_text(paragraph->runs), span);
  if (const auto* list = std::get_if<model::List>(&block.what)) {
    for (const auto& item : list->items) {
      for (const auto& inner : item) check_block(answers, inner, span);
    }
  }
  if (const auto* table = std::get_if<model::Table>(&block.what)) {
    for (const auto& row : table->rows) {
      std::string line;
      for (const auto& cell : row.cells) line += (line.empty() ? "" : " | ") + model::plain_text(cell.runs);
      answers.check(line, span);
    }
  }
}

}  // namespace

SpokenAnswers spoken_answers(const Proof& proof) {
  SpokenAnswers out;
  Listener answers(proof, out);
  for (const Record* record : proof.base.all()) {
    if (record->kind == model::Kind::source) continue;
    visit_scalars(*record, [&](const std::string& path, const model::Node& node) {
      if (node.type == model::NodeType::string) answers.check(node.text, record->span_of(path));
    });
  }
  for (const auto& [id, page] : proof.base.pages) {
    for (const auto& part : page.parts) {
      if (const auto* block = std::get_if<model::Block>(&part)) check_block(answers, *block, page.span);
    }
  }
  return out;
}

void check_spoken_answers(const Proof& proof) {
  for (auto& fault : spoken_answers(proof).faults)
    proof.findings.add(report::Rule::voice_spoken, fault.where, std::move(fault.message), std::move(fault.hint))
        .notes.push_back({fault.row, "table spoken-answers"});
}

}  // namespace benchleaf::prove
