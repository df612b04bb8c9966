// In: a query. Out: the records that answer it: danger first, then cells, sizes, pairs, names, and last the words of records.
#include "query/answer.h"

#include <algorithm>
#include <memory>
#include <optional>

#include "query/cells.h"
#include "query/danger.h"
#include "query/describe.h"
#include "query/name_index.h"
#include "query/pairs.h"
#include "query/parted.h"
#include "query/sizes.h"
#include "query/text_index.h"

namespace benchleaf::query {

namespace {

using model::Kind;

constexpr std::size_t kMostBytes = 200;
constexpr std::size_t kMostWords = 24;
constexpr std::size_t kMostOthers = 8;
constexpr double kEnough = 0.5;      // of the weight of all words that a hit must have
constexpr double kOfNamed = 0.25;    // of the same, where two words and more are of one name of the record
constexpr double kOfBest = 0.25;     // of the best score, below which nothing stands in for what was left out
constexpr double kOfFit = 0.3;       // of a measure that fits a series, beside the words that do
constexpr double kAlmostBest = 0.9;  // of the best score, from which a hit stands beside it
constexpr std::string_view kSeatCalculator = "gasket-fit";
constexpr std::string_view kAlso = "also";

/// Between records that go by the same name.
int leaning(Kind kind) {
  switch (kind) {
    case Kind::symptom: return 0;
    case Kind::procedure: return 1;
    case Kind::substance: return 4;
    case Kind::tool: return 3;
    default: return 2;
  }
}

bool is_enough(const TextHit& hit) { return hit.share >= kEnough || (hit.named > 1 && hit.share >= kOfNamed); }

using RecordList = std::vector<const model::Record*>;

void add_once(RecordList& list, const model::Record* record) {
  if (record != nullptr && std::find(list.begin(), list.end(), record) == list.end()) list.push_back(record);
}

bool holds(const RecordList& list, const model::Record* record) {
  return std::find(list.begin(), list.end(), record) != list.end();
}

}  // namespace

class Answerer::Parts {
 public:
  Parts(const World& world, PageOf page_of)
      : world_(world),
        describer_(world, std::move(page_of)),
        vocabulary_(world.tables),
        names_(world.records, world.tables, vocabulary_),
        parter_(names_, vocabulary_, [this]() -> const TextIndex& { return texts(); }) {}

  Answers answer(std::string_view query) const {
    Answers out;
    out.query = std::string(query);
    out.others_head = std::string(kAlso);
    if (query.size() > kMostBytes) return out;
    const std::vector<Word> words = parter_.parted(words_of(query));
    if (words.empty() || words.size() > kMostWords) return out;
    const Dangers dangers = dangers_in(with_cell_said(words), vocabulary_, world_.records, world_.tables);
    if (!dangers.first.empty()) {
      hurt(words, dangers, out);
      return out;
    }
    look_up(words, out);
    if (!out.hits.empty()) {
      for (const model::Record* record : dangers.before) {
        if (record->reference() != out.hits.front().record) out.before.push_back(describer_.record(*record));
      }
    }
    return out;
  }

 private:
  const TextIndex& texts() const {
    if (!texts_) texts_.emplace(world_.records, world_.tables, vocabulary_);
    return *texts_;
  }

  /// Who names a cell says `cell` with it: `swallowed a 377`.
  std::vector<Word> with_cell_said(std::vector<Word> words) const {
    if (!cells_in(words, names_).groups.empty()) words.push_back({Word::Sort::word, "cell", 0});
    return words;
  }

  /// Somebody may be hurt: what to do is the answer, whatever else was typed.
  void hurt(const std::vector<Word>& words, const Dangers& dangers, Answers& out) const {
    out.danger = true;
    for (const model::Record* record : dangers.first) out.hits.push_back(describer_.record(*record));
    const TextHits found = texts().find(words);
    for (const TextHit& hit : found.hits) {
      const bool told = holds(dangers.first, hit.record) || hit.share < kEnough;
      if (!told && out.others.size() < kMostOthers) out.others.push_back(describer_.record(*hit.record));
    }
  }

  void look_up(const std::vector<Word>& words, Answers& out) const {
    const bool craft =
        std::any_of(words.begin(), words.end(), [this](const Word& word) { return vocabulary_.is(word, Use::craft); });
    if (!craft && (slipped_name(words, out) || pair(words, out))) return;
    const AskedTraits traits = traits_in(words, vocabulary_, world_.tables);
    if (named_whole(words, out) || (!craft && (cells(traits, false, out) || size(traits, out)))) return;
    if (!craft && !several_names(words, out)) by_words(words, out);
    if (!craft && out.hits.empty()) cells(traits, true, out);
    if (out.hits.empty()) out.nearest = names_.nearest(out.query, {}, 3);
  }

  bool is_any(const Word& word, std::initializer_list<Use> uses) const {
    return std::any_of(uses.begin(), uses.end(), [&](Use use) { return vocabulary_.is(word, use); });
  }

  bool all_are(const std::vector<Word>& words, std::initializer_list<Use> uses) const {
    return std::all_of(words.begin(), words.end(), [&](const Word& word) {
      return (word.sort != Word::Sort::word && word.sort != Word::Sort::number) || is_any(word, uses);
    });
  }

  /// Cells by name, with nothing else that says something; or whatever else was typed, which is left out then.
  bool cells(const AskedTraits& asked, bool whatever, Answers& out) const {
    NamedCells named = cells_in(asked.rest, names_);
    if (named.groups.empty() && (named.unknown.empty() || whatever)) return false;
    if (!all_are(named.rest, {Use::asks, Use::cell, Use::joins, Use::compares})) {
      if (!whatever) return false;
      for (const Word& word : named.rest) {
        if (!is_any(word, {Use::asks, Use::cell, Use::joins, Use::compares})) out.left_out.push_back(word.text);
      }
    }
    if (!named.unknown.empty() && named.groups.empty()) {
      out.nearest = names_.nearest(named.unknown, {Kind::cell}, 3);
      return true;
    }
    RecordList shown;
    for (auto& group : named.groups) {
      std::stable_sort(group.begin(), group.end(), [&](const model::Cell* one, const model::Cell* other) {
        const int first = missed(*one, asked), second = missed(*other, asked);
        return first != second ? first < second : is_likelier(*one, *other, world_.tables);
      });
      add_once(shown, group.front());
    }
    for (const auto& group : named.groups) {
      for (const model::Cell* cell : group) add_once(shown, cell);
    }
    for (const model::Record* cell : shown) out.hits.push_back(describer_.record(*cell));
    if (named.groups.size() == 2 && out.hits.size() >= 2) out.compared = describer_.compared(out.hits[0], out.hits[1]);
    return true;
  }

  bool size(const AskedTraits& traits, Answers& out) const {
    const AskedSize asked = size_in(traits.rest, vocabulary_);
    if (asked.measures.empty()) return false;
    if (!all_are(asked.rest, {Use::asks, Use::cell, Use::joins, Use::wide, Use::high})) return series(asked, out);
    CellsOfSize found = cells_of_size(asked.measures, world_.records, world_.tables);
    std::stable_sort(found.cells.begin(), found.cells.end(), [&](const model::Cell* one, const model::Cell* other) {
      return missed(*one, traits) < missed(*other, traits);
    });
    for (const model::Cell* cell : found.cells) out.hits.push_back(describer_.record(*cell));
    if (out.hits.empty() && !asked.pair) out.hits.push_back(describer_.calculator(kSeatCalculator));
    if (asked.measures.size() > 1 && !found.smaller.empty()) {
      out.others_head = "a little smaller, in case the old cell has swollen";
      for (const model::Cell* cell : found.smaller) {
        if (out.others.size() < kMostOthers) out.others.push_back(describer_.record(*cell));
      }
    }
    return !out.hits.empty();
  }

  /// Gaskets and crystals of a size, by the words beside it.
  bool series(const AskedSize& asked, Answers& out) const {
    const TextHits by_words = texts().find(asked.rest);
    std::vector<std::pair<double, const model::Record*>> list;
    for (const SeriesOfSize& series : series_of_size(asked.measures, world_.records)) {
      const auto hit = std::find_if(by_words.hits.begin(), by_words.hits.end(),
                                    [&series](const TextHit& one) { return one.record == series.record; });
      if (hit != by_words.hits.end() && hit->share >= kEnough)
        list.emplace_back(hit->share + kOfFit * series.fits, series.record);
    }
    std::stable_sort(list.begin(), list.end(), [](const auto& one, const auto& other) { return one.first > other.first; });
    for (const auto& [score, record] : list) {
      if (out.hits.size() < kMostOthers) out.hits.push_back(describer_.record(*record));
    }
    return !out.hits.empty();
  }

  bool pair(const std::vector<Word>& words, Answers& out) const {
    const PairReader reader({world_.records, world_.tables}, names_, vocabulary_,
                            [this]() -> const TextIndex& { return texts(); });
    const auto asked = reader.read(words);
    if (!asked) return false;
    out.hits = describer_.pair(*asked);
    RecordList told;
    for (const PairVerdict& verdict : asked->verdicts) add_once(told, verdict.agent);
    for (const PairVerdict& verdict : asked->verdicts) add_once(told, verdict.target);
    for (const model::Record* record : told) out.others.push_back(describer_.record(*record));
    return true;
  }

  /// The words without those that ask what a word means, at either end.
  std::vector<Word> core_of(std::vector<Word> words) const {
    while (!words.empty() && vocabulary_.is(words.back(), Use::defines)) words.pop_back();
    while (!words.empty() && vocabulary_.is(words.front(), Use::defines)) words.erase(words.begin());
    return words;
  }

  std::vector<Reading> named_by(const std::vector<Word>& words, bool bare) const {
    std::string key;
    for (const Word& word : words) key += bare && vocabulary_.is(word, Use::asks) ? std::string() : stem_of(word.text);
    std::vector<Reading> readings = bare ? names_.of_bare_key(key) : names_.of_key(key);
    std::erase_if(readings, [](const Reading& reading) {
      return reading.role == Name::Role::beside || reading.record->kind == Kind::cell;
    });
    return readings;
  }

  /// A name of a record, word for word, with nothing but a question around it.
  bool named_whole(const std::vector<Word>& words, Answers& out) const {
    const std::vector<Word> core = core_of(words);
    for (const auto& [tried, bare] : {std::pair{&words, false}, std::pair{&core, false}, std::pair{&core, true}}) {
      if (bare &&
          std::count_if(tried->begin(), tried->end(), [this](const Word& word) { return !vocabulary_.is(word, Use::asks); }) < 2)
        continue;  // one word is no name that was meant whole
      const std::vector<Reading> readings = named_by(*tried, bare);
      if (readings.empty()) continue;
      give(readings, core.size() < words.size(), *tried, out);
      return true;
    }
    return false;
  }

  /// Records that go by one name, those of the firmest names first.
  void give(const std::vector<Reading>& readings, bool asked_meaning, const std::vector<Word>& words, Answers& out) const {
    RecordList list;
    for (const Reading& reading : readings) add_once(list, reading.record);
    const auto order = [&](const model::Record* record) {
      return asked_meaning && record->kind == Kind::term ? -1 : leaning(record->kind);
    };
    std::stable_sort(list.begin(), list.end(),
                     [&](const model::Record* one, const model::Record* other) { return order(one) < order(other); });
    for (const model::Record* record : list) out.hits.push_back(describer_.record(*record));
    for (const TextHit& hit : texts().find(words).hits) {
      if (out.others.size() < kMostOthers && !holds(list, hit.record) && hit.share >= kEnough)
        out.others.push_back(describer_.record(*hit.record));
    }
  }

  /// The longest name of records that begins at a word, and how many words it has.
  std::pair<std::size_t, std::vector<Reading>> name_at(const std::vector<Word>& words, std::size_t at) const {
    for (std::size_t count = std::min(names_.longest(), words.size() - at); count > 0; --count) {
      const std::vector<Word> part(words.begin() + static_cast<std::ptrdiff_t>(at),
                                   words.begin() + static_cast<std::ptrdiff_t>(at + count));
      std::vector<Reading> readings = named_by(part, false);
      if (!readings.empty()) return {count, std::move(readings)};
    }
    return {0, {}};
  }

  /// `module or movement`, `difference between lip and notch`: names that are told apart, with nothing else.
  bool several_names(const std::vector<Word>& words, Answers& out) const {
    constexpr std::size_t kTwo = 2;
    std::vector<std::vector<Reading>> named;
    bool told_apart = false;
    for (std::size_t at = 0; at < words.size();) {
      const Word& word = words[at];
      told_apart = told_apart || vocabulary_.is(word, Use::compares);
      auto [count, readings] = is_any(word, {Use::compares, Use::asks, Use::joins})
                                   ? std::pair<std::size_t, std::vector<Reading>>{1, {}}
                                   : name_at(words, at);
      if (count == 0) return false;
      if (!readings.empty()) named.push_back(std::move(readings));
      at += count;
    }
    if (named.size() < kTwo || !told_apart) return false;
    std::vector<Reading> together;
    for (const auto& readings : named) {
      const auto term = std::find_if(readings.begin(), readings.end(),
                                     [](const Reading& reading) { return reading.record->kind == Kind::term; });
      together.push_back(term != readings.end() ? *term : readings.front());
    }
    give(together, false, words, out);
    return true;
  }

  /// A name of two words and more with a slip in a word that nothing has: it is no two names with a slip in each, unless a word
  /// joins two.
  bool slipped_name(const std::vector<Word>& words, Answers& out) const {
    constexpr std::size_t kLong = 2;
    const auto has = [this](const Word& word) { return texts().has(word); };
    const auto joins = [this](const Word& word) { return vocabulary_.is(word, Use::joins); };
    if (words.size() < kLong || std::all_of(words.begin(), words.end(), has) || std::any_of(words.begin(), words.end(), joins))
      return false;
    const std::string key = names_.with_slips(words, 0, words.size());
    if (key.empty()) return false;
    give(names_.of_key(key), false, words, out);
    return true;
  }

  void by_words(const std::vector<Word>& words, Answers& out) const {
    TextHits found = texts().find(words);
    if (found.guessed || found.hits.empty()) {
      const std::string key = names_.with_slips(words, 0, words.size());
      if (!key.empty()) return give(names_.of_key(key), false, words, out);
    }
    const double least = found.hits.empty() ? 0 : found.hits.front().score * kOfBest;
    std::erase_if(found.hits, [least](const TextHit& hit) { return !is_enough(hit) || hit.score < least; });
    for (const TextHit& hit : found.hits) {
      const bool best = hit.score >= found.hits.front().score * kAlmostBest;
      std::vector<Answer>& list = best && out.others.empty() ? out.hits : out.others;
      if (&list == &out.others && list.size() == kMostOthers) break;
      list.push_back(describer_.record(*hit.record));
      list.back().shown = hit.shown;
    }
    if (!out.hits.empty()) out.left_out = std::move(found.left_out);
  }

  World world_;
  Describer describer_;
  Vocabulary vocabulary_;
  NameIndex names_;
  Parter parter_;
  mutable std::optional<TextIndex> texts_;
};

Answerer::Answerer(const World& world, PageOf page_of) : parts_(std::make_unique<Parts>(world, std::move(page_of))) {}
Answerer::~Answerer() = default;
Answerer::Answerer(Answerer&&) noexcept = default;

Answers Answerer::answer(std::string_view query) const { return parts_->answer(query); }

}  // namespace benchleaf::query
