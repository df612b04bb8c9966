// In: words of a query. Out: the two things that it asks about, with what the one does to the other.
#include "query/pairs.h"

#include <algorithm>
#include <sstream>

#include "bench/mixing.h"
#include "standards/table_view.h"

namespace benchleaf::query {

namespace {

using model::Kind;

constexpr std::string_view kUnlisted = "unlisted-liquids";
constexpr std::size_t kMostWords = 6;       // of a name in a query
constexpr std::size_t kMostWithSlip = 2;    // of one with a slip
constexpr std::size_t kMostOfUnlisted = 3;  // of a liquid that is not on file

bool is_agent(const model::Record& record) { return record.kind == Kind::chemistry || record.kind == Kind::abrasive; }

bool is_target(const model::Record& record) {
  return record.kind == Kind::material || record.kind == Kind::part || record.kind == Kind::residue;
}

void add_once(std::vector<const model::Record*>& list, const model::Record* record) {
  if (std::find(list.begin(), list.end(), record) == list.end()) list.push_back(record);
}

/// The records that `want` wants; of liquids only those that are named most firmly, of what they touch all.
std::vector<const model::Record*> wanted(const std::vector<Reading>& readings, bool agents) {
  std::vector<const model::Record*> found;
  int tier = -1;
  for (const Reading& reading : readings) {
    if (agents ? !is_agent(*reading.record) : !is_target(*reading.record)) continue;
    if (tier < 0) tier = tier_of(reading.role);
    if (!agents || tier_of(reading.role) == tier) add_once(found, reading.record);
  }
  return found;
}

bool stricter(const PairVerdict& one, const PairVerdict& other) { return one.code < other.code; }

}  // namespace

PairReader::Mention PairReader::mention_of(const std::vector<Reading>& readings) {
  Mention mention;
  mention.agents = wanted(readings, true);
  mention.targets = wanted(readings, false);
  return mention;
}

/// A name word for word, or with other small words in it: `film from the leaked lithium cell`.
PairReader::Mention PairReader::exact_mention(const std::vector<Word>& words, std::size_t at, std::size_t count) const {
  constexpr std::size_t kWithSmallWords = 3;
  const std::string key = joined_key(words, at, at + count);
  Mention mention = mention_of(names_.of_key(key));
  const auto small = [this](const Word& word) { return vocabulary_.is(word, Use::asks); };
  if (mention.empty() && count >= kWithSmallWords && !small(words[at]) && !small(words[at + count - 1])) {
    std::vector<Word> bare(words.begin() + static_cast<std::ptrdiff_t>(at),
                           words.begin() + static_cast<std::ptrdiff_t>(at + count));
    std::erase_if(bare, small);
    if (bare.size() > 1 && bare.size() < count) mention = mention_of(names_.of_bare_key(joined_key(bare, 0, bare.size())));
  }
  if (!mention.empty()) return mention;
  for (const auto& row : standards::rows_of(world_.tables, kUnlisted)) {
    if (joined_key(row.key) == key) mention.unlisted = &row;
  }
  return mention;
}

/// A name of one word or two with a word that no record has. What says nothing by itself is not taken for a slip in another word;
/// figures are not guessed.
bool PairReader::may_slip(const std::vector<Word>& words, std::size_t at, std::size_t count) const {
  const auto from = words.begin() + static_cast<std::ptrdiff_t>(at), to = from + static_cast<std::ptrdiff_t>(count);
  const auto says_something = [this](const Word& word) {
    return word.sort == Word::Sort::word && word.text.find_first_of("0123456789") == std::string::npos &&
           !vocabulary_.is(word, Use::asks) && !vocabulary_.is(word, Use::acts);
  };
  return count <= kMostWithSlip && std::all_of(from, to, says_something) &&
         std::any_of(from, to, [this](const Word& word) { return !texts_().has(word); });
}

/// Whether a word that may be a liquid says what is done instead: `polish acrylic`, but `polish on acrylic`.
bool PairReader::does_something(const std::vector<Word>& words, std::size_t at, std::size_t count, const Mention& mention) const {
  if (count > 1 || mention.agents.empty() || !vocabulary_.is(words[at], Use::acts)) return false;
  return at + 1 < words.size() && !vocabulary_.is(words[at + 1], Use::joins);
}

/// The longest name that begins at a word; of a long one a slip is forgiven.
PairReader::Mention PairReader::mention_at(const std::vector<Word>& words, std::size_t at) const {
  const std::size_t most = std::min(kMostWords, words.size() - at);
  for (const bool slips : {false, true}) {
    for (std::size_t count = most; count > 0; --count) {
      if (slips && !may_slip(words, at, count)) continue;
      Mention mention =
          slips ? mention_of(names_.of_key(names_.with_slips(words, at, at + count))) : exact_mention(words, at, count);
      if (mention.empty() || does_something(words, at, count, mention)) continue;
      mention.from = at;
      mention.to = at + count;
      return mention;
    }
  }
  return {};
}

/// What stands before `on`, where nothing on file has its words.
std::string PairReader::unlisted_name(const std::vector<Word>& words) const {
  std::string name;
  if (words.empty() || words.size() > kMostOfUnlisted) return name;
  const auto unknown = [this](const Word& word) { return word.sort == Word::Sort::word && !texts_().knows(word); };
  if (std::none_of(words.begin(), words.end(), unknown)) return name;
  for (const Word& word : words) name += (name.empty() ? "" : " ") + word.text;
  return name;
}

std::optional<AskedPair> PairReader::read(const std::vector<Word>& words) const {
  std::vector<Mention> mentions;
  std::vector<Word> before, rest;
  bool joined = false;
  for (std::size_t at = 0; at < words.size();) {
    const bool filler = vocabulary_.is(words[at], Use::joins);
    Mention mention = filler ? Mention{} : mention_at(words, at);
    if (mention.empty()) {
      if (filler && !joined) before = rest;
      joined = joined || filler;
      const bool asks = filler || vocabulary_.is(words[at], Use::asks) || vocabulary_.is(words[at], Use::acts);
      if (!asks) rest.push_back(words[at]);
      ++at;
      continue;
    }
    at = mention.to;
    mentions.push_back(std::move(mention));
  }
  if (mentions.size() == 1 && joined && before.size() == rest.size()) {
    if (const std::string name = unlisted_name(rest); !name.empty()) return unlisted_on(name, mentions.front());
  }
  if (!rest.empty() || mentions.size() < 2) return std::nullopt;
  for (std::size_t i = 0; i < mentions.size(); ++i) {
    for (std::size_t j = i + 1; j < mentions.size(); ++j) {
      if (auto pair = pair_of(mentions[i], mentions[j])) return pair;
    }
  }
  return std::nullopt;
}

std::optional<AskedPair> PairReader::pair_of(const Mention& one, const Mention& other) const {
  if (one.unlisted != nullptr && !other.targets.empty()) return unlisted_pair(*one.unlisted, other);
  if (other.unlisted != nullptr && !one.targets.empty()) return unlisted_pair(*other.unlisted, one);
  AskedPair pair;
  for (const auto& [agents, targets] : {std::pair{&one.agents, &other}, std::pair{&other.agents, &one}}) {
    for (const model::Record* agent : *agents) {
      for (const model::Record* target : targets->targets) {
        if (bench::is_mixture(*target)) {
          if (agent->kind == Kind::chemistry) pair.verdicts.push_back(verdict_of_mixing(world_, *agent, *target));
          continue;
        }
        for (const std::string& material : bench::materials_of(world_, target->reference())) {
          const model::Record* record = world_.base.find(material);
          if (record != nullptr) pair.verdicts.push_back(verdict_on(world_, *agent, *record));
        }
      }
    }
    if (!pair.verdicts.empty()) break;
  }
  if (pair.verdicts.empty()) {
    for (const model::Record* agent : one.agents) {
      for (const model::Record* second : other.agents) {
        const bool liquids = agent->kind == Kind::chemistry && second->kind == Kind::chemistry && agent != second;
        if (liquids) pair.verdicts.push_back(verdict_of_mixing(world_, *agent, *second));
      }
    }
  }
  std::stable_sort(pair.verdicts.begin(), pair.verdicts.end(), stricter);
  if (pair.verdicts.empty()) return std::nullopt;
  return pair;
}

AskedPair PairReader::unlisted_pair(const model::PublishedTable::Row& row, const Mention& target) const {
  AskedPair pair;
  pair.unlisted = row.key;
  pair.kind = standards::cell_text(row, "kind");
  for (const model::Record* record : target.targets)
    pair.verdicts.push_back({nullptr, record, false, Code::not_known, {}, {}, {}});
  std::istringstream likes(standards::cell_text(row, "like"));
  for (std::string like; likes >> like;) {
    const model::Record* agent = world_.base.find(like);
    if (agent == nullptr) continue;
    Mention known;
    known.agents.push_back(agent);
    if (auto of_kind = pair_of(known, target)) {
      for (PairVerdict& verdict : of_kind->verdicts) pair.verdicts.push_back(std::move(verdict));
    }
  }
  return pair;
}

std::optional<AskedPair> PairReader::unlisted_on(const std::string& name, const Mention& target) const {
  if (target.targets.empty()) return std::nullopt;
  AskedPair pair;
  pair.unlisted = name;
  for (const model::Record* record : target.targets)
    pair.verdicts.push_back({nullptr, record, false, Code::not_known, {}, {}, {}});
  return pair;
}

}  // namespace benchleaf::query
