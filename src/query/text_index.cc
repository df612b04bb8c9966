// In: records, words of a query. Out: the records that the rarest of the words hit, the best first.
#include "query/text_index.h"

#include <algorithm>
#include <cmath>

#include "base/id.h"
#include "query/names.h"
#include "query/record_text.h"
#include "standards/table_view.h"

namespace benchleaf::query {

namespace {

using model::Kind;

constexpr double kOfName = 40;
constexpr double kOfSentence = 8;
constexpr double kAlike = 0.85;     // another word for the same thing
constexpr double kCorrected = 0.7;  // a word with a slip
constexpr double kHalf = 0.4;       // what a name of which few words are asked for keeps
constexpr double kSecond = 0.25;    // what words that hit other names add to the best one
constexpr double kPassing = 0.3;    // of a word that stands in any question
constexpr double kUnknownWord = 1.3;
constexpr double kWanted = 1.2;  // of the kind of record that a query asks for

/// What is seen and done comes before the thing it is done with, a thing before the word for it.
double leaning(Kind kind) {
  switch (kind) {
    case Kind::symptom: return 1.12;
    case Kind::procedure: return 1.1;
    case Kind::term: return 0.85;
    case Kind::tool: return 0.9;
    case Kind::substance: return 0.8;
    case Kind::chart: return 0.7;
    case Kind::module: return 0.9;
    case Kind::page: return 0.95;
    default: return 1;
  }
}

}  // namespace

/// What the words that were asked hit of one record.
struct TextIndex::Score {
  struct OfName {
    double weight = 0;
    std::size_t many = 0;  ///< words that do not stand in any question
  };
  std::map<int, OfName> names;
  std::vector<std::map<int, double>> words;  ///< of each word, by name
  std::map<int, double> sentences;
  double said = 0;   ///< the most that each word weighs in a sentence
  double asked = 0;  ///< weight of the words that hit anything of it
};

TextIndex::TextIndex(const model::KnowledgeBase& records, const model::Tables& tables, const Vocabulary& vocabulary)
    : vocabulary_(vocabulary) {
  std::map<const model::Record*, std::size_t> doc_of;
  for (const model::Record* record : records.all()) {
    if (!is_looked_up(record->kind)) continue;
    doc_of[record] = docs_.size();
    add_record(*record, tables);
  }
  for (const auto& row : standards::rows_of(tables, "everyday-words")) {
    std::string names = standards::cell_text(row, "names") + " ";
    for (std::size_t at = 0, end = 0; (end = names.find(' ', at)) != std::string::npos; at = end + 1) {
      const auto found = doc_of.find(records.find(names.substr(at, end - at)));
      if (found != doc_of.end()) add_name(found->second, row.key);
    }
  }
  weigh();
}

void TextIndex::add_record(const model::Record& record, const model::Tables& tables) {
  const std::size_t doc = docs_.size();
  docs_.push_back({&record, {}, {}});
  if (record.kind != Kind::cell) {
    for (const Name& name : names_of(record, tables)) add_name(doc, name.text);
  }
  for (const std::string& sentence : sentences_of(record)) add_sentence(doc, sentence);
}

void TextIndex::add_name(std::size_t doc, std::string_view name) {
  const int number = static_cast<int>(docs_[doc].name_sizes.size());
  std::size_t size = 0;
  for (const Word& word : words_of(name)) {
    const std::string stem = stem_of(word.text);
    places_[stem].push_back({doc, number, -1});
    stems_.emplace(word.text, stem);
    if (!vocabulary_.is(word, Use::asks)) ++size;
  }
  docs_[doc].name_sizes.push_back(std::max<std::size_t>(size, 1));
}

void TextIndex::add_sentence(std::size_t doc, const std::string& text) {
  const int number = static_cast<int>(docs_[doc].sentences.size());
  docs_[doc].sentences.push_back(text);
  for (const Word& word : words_of(text)) {
    if (vocabulary_.is(word, Use::asks)) continue;
    const std::string stem = stem_of(word.text);
    places_[stem].push_back({doc, -1, number});
    stems_.emplace(word.text, stem);
  }
}

void TextIndex::weigh() {
  for (auto& [stem, places] : places_) {
    std::stable_sort(places.begin(), places.end(), [](const Place& one, const Place& other) { return one.doc < other.doc; });
    std::size_t docs = 0, last = docs_.size();
    for (const Place& place : places) {
      if (place.doc != last) ++docs;
      last = place.doc;
    }
    weights_[stem] = std::log(1 + static_cast<double>(docs_.size()) / static_cast<double>(docs));
  }
}

double TextIndex::weight_of(const std::string& stem) const {
  const auto found = weights_.find(stem);
  return found == weights_.end() ? 0 : found->second;
}

/// The word on file that was most likely meant: one slip from five letters, two from nine; empty where two are equally near.
std::string TextIndex::corrected(const std::string& word) const {
  const std::size_t allowed = word.size() >= 9 ? 2 : word.size() >= 5 ? 1 : 0;
  if (allowed == 0 || word.find_first_of("0123456789") != std::string::npos) return {};
  std::size_t fewest = allowed + 1;
  std::string best;
  for (const auto& [known, stem] : stems_) {
    if (known.size() + allowed < word.size() || word.size() + allowed < known.size() || known.size() < 5) continue;
    const std::size_t slips = base::edit_distance(word, known);
    if (slips > allowed || slips > fewest) continue;
    best = slips < fewest || best == stem ? stem : std::string();
    fewest = slips;
  }
  return best;
}

TextIndex::Asked TextIndex::asked(const Word& word) const {
  Asked one{word.text, {}, 0, false, false};
  const std::string stem = stem_of(word.text);
  if (places_.count(stem) > 0) one.stems.emplace_back(stem, 1);
  for (const std::string& other : vocabulary_.like(stem)) {
    if (places_.count(other) > 0) one.stems.emplace_back(other, kAlike);
  }
  if (one.stems.empty()) {
    one.guessed = true;
    if (const std::string known = corrected(word.text); !known.empty()) one.stems.emplace_back(known, kCorrected);
  }
  for (const auto& [known, sure] : one.stems) one.weight = std::max(one.weight, weight_of(known));
  if (one.stems.empty()) one.weight = std::log(1 + static_cast<double>(docs_.size())) * kUnknownWord;
  return one;
}

bool TextIndex::knows(const Word& word) const { return !asked(word).stems.empty(); }

/// Each word once. A figure of one or two digits names nothing by itself.
std::vector<TextIndex::Asked> TextIndex::asked(const std::vector<Word>& words) const {
  std::vector<Asked> list;
  const auto passes = [this](const Word& word) {
    return vocabulary_.is(word, Use::asks) || (word.sort != Word::Sort::word && word.text.size() < 3);
  };
  const bool all_pass = std::all_of(words.begin(), words.end(), passes);
  for (const Word& word : words) {
    if (std::any_of(list.begin(), list.end(), [&word](const Asked& one) { return one.text == word.text; })) continue;
    Asked one = asked(word);
    one.passing = !all_pass && passes(word);
    if (!one.passing || !one.guessed) list.push_back(std::move(one));
  }
  return list;
}

void TextIndex::count(const Asked& one, std::map<std::size_t, Score>& scores) const {
  std::map<std::size_t, std::map<std::pair<int, int>, double>> best;  // of each place of each record
  std::map<std::size_t, double> surest;
  for (const auto& [stem, sure] : one.stems) {
    const double weight = weight_of(stem) * sure * (one.passing ? kPassing : 1);
    for (const Place& place : places_.find(stem)->second) {
      if (one.passing && place.name < 0) continue;
      surest[place.doc] = std::max(surest[place.doc], sure);
      double& kept = best[place.doc][{place.name, place.sentence}];
      kept = std::max(kept, weight);
    }
  }
  for (const auto& [doc, places] : best) {
    Score& score = scores[doc];
    score.words.emplace_back();
    double most_said = 0;
    for (const auto& [place, weight] : places) {
      if (place.first >= 0) {
        score.names[place.first].weight += weight;
        if (!one.passing) ++score.names[place.first].many;
        score.words.back()[place.first] = weight;
      } else {
        score.sentences[place.second] += weight;
        most_said = std::max(most_said, weight);
      }
    }
    score.said += most_said;
    if (!one.passing) score.asked += one.weight * surest[doc];  // a common word for it answers as well as a rare one
  }
}

/// Who says what is to be done wants a procedure; who says what fails, a symptom.
double TextIndex::wanted(Kind kind, const std::vector<Word>& words) const {
  const Use use = kind == Kind::procedure ? Use::does : Use::fails;
  if (kind != Kind::procedure && kind != Kind::symptom) return 1;
  return std::any_of(words.begin(), words.end(), [&](const Word& word) { return vocabulary_.is(word, use); }) ? kWanted : 1;
}

TextHit TextIndex::hit_of(std::size_t doc, const Score& score, double total) const {
  const Doc& of = docs_[doc];
  double best = 0;
  int best_name = -1;
  std::size_t named = 0;
  for (const auto& [name, hit] : score.names) {
    const double whole = static_cast<double>(hit.many) / static_cast<double>(of.name_sizes[static_cast<std::size_t>(name)]);
    const double value = hit.weight * kOfName * (kHalf + (1 - kHalf) * std::min(1.0, whole));
    if (value <= best) continue;
    best = value;
    best_name = name;
    named = hit.many;
  }
  double others = 0;
  for (const auto& word : score.words) {
    double most = 0;
    for (const auto& [name, weight] : word) most = std::max(most, weight);
    if (word.count(best_name) == 0) others += most;
  }
  double together = 0;
  int shown = -1;
  for (const auto& [sentence, weight] : score.sentences) {
    if (weight > together) shown = sentence;
    together = std::max(together, weight);
  }
  TextHit hit{of.record, 0, total > 0 ? score.asked / total : 0, named, {}};
  hit.score = (best + kSecond * kOfName * others + kOfSentence * (score.said + together)) * leaning(of.record->kind);
  if (shown >= 0 && best < hit.score / 2) hit.shown = of.sentences[static_cast<std::size_t>(shown)];
  return hit;
}

TextHits TextIndex::find(const std::vector<Word>& words) const {
  TextHits found;
  std::map<std::size_t, Score> scores;
  double total = 0;
  for (const Asked& one : asked(words)) {
    if (!one.passing) total += one.weight;
    if (one.stems.empty()) found.left_out.push_back(one.text);
    found.guessed = found.guessed || one.guessed;
    count(one, scores);
  }
  const double does = wanted(Kind::procedure, words), fails = wanted(Kind::symptom, words);
  for (const auto& [doc, score] : scores) {
    found.hits.push_back(hit_of(doc, score, total));
    TextHit& hit = found.hits.back();
    if (hit.record->kind == Kind::procedure) hit.score *= does;
    if (hit.record->kind == Kind::symptom) hit.score *= fails;
  }
  std::stable_sort(found.hits.begin(), found.hits.end(),
                   [](const TextHit& one, const TextHit& other) { return one.score > other.score; });
  return found;
}

}  // namespace benchleaf::query
