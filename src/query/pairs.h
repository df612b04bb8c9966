#pragma once

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "bench/step_world.h"
#include "query/name_index.h"
#include "query/text_index.h"
#include "query/vocabulary.h"

namespace benchleaf::query {

/// What may be done, whichever two meet.
enum class Code { never, with_care, not_known, ok };
/// `never`, `with-care`, `not-known`, `ok`.
std::string_view code_name(Code code);

/// What one thing does to another.
struct PairVerdict {
  const model::Record* agent = nullptr;   ///< liquid or abrasive; nullptr where it is not on file
  const model::Record* target = nullptr;  ///< material, residue or second liquid
  bool mixing = false;                    ///< whether two liquids, or a liquid and a residue, meet
  Code code = Code::not_known;
  std::string words;  ///< `never`, `on a swab only`
  std::string why;    ///< with the condition, or empty
  std::string trust;  ///< empty where it is not known
};

/// What a liquid or an abrasive does to `material/ID`, as it is known.
PairVerdict verdict_on(const bench::StepWorld& world, const model::Record& agent, const model::Record& material);
/// What comes of two liquids, or of a liquid and a residue: the gravest that is known.
PairVerdict verdict_of_mixing(const bench::StepWorld& world, const model::Record& one, const model::Record& other);

/// A pair that a query asks about: all that either name can mean, the strictest first.
struct AskedPair {
  std::vector<PairVerdict> verdicts;
  std::string unlisted;  ///< the liquid as it was typed, where it is not on file
  std::string kind;      ///< what is known of its kind, or empty
};

/// Reads `alcohol on acrylic`, `bleach and vinegar` out of a query, in either order; nothing where it does not name two such
/// things, or asks for more than the two.
class PairReader {
 public:
  /// The words of all records, made where a query asks for them: a number of a cell needs none.
  using Texts = std::function<const TextIndex&()>;

  PairReader(const bench::StepWorld& world, const NameIndex& names, const Vocabulary& vocabulary, Texts texts)
      : world_(world), names_(names), vocabulary_(vocabulary), texts_(std::move(texts)) {}

  std::optional<AskedPair> read(const std::vector<Word>& words) const;

 private:
  /// Part of a query that names something.
  struct Mention {
    std::size_t from = 0, to = 0;
    std::vector<const model::Record*> agents, targets;
    const model::PublishedTable::Row* unlisted = nullptr;
    bool empty() const { return agents.empty() && targets.empty() && unlisted == nullptr; }
  };
  Mention mention_at(const std::vector<Word>& words, std::size_t at) const;
  Mention exact_mention(const std::vector<Word>& words, std::size_t at, std::size_t count) const;
  static Mention mention_of(const std::vector<Reading>& readings);
  bool does_something(const std::vector<Word>& words, std::size_t at, std::size_t count, const Mention& mention) const;
  bool may_slip(const std::vector<Word>& words, std::size_t at, std::size_t count) const;
  std::string unlisted_name(const std::vector<Word>& words) const;
  std::optional<AskedPair> pair_of(const Mention& one, const Mention& other) const;
  std::optional<AskedPair> unlisted_on(const std::string& name, const Mention& target) const;
  AskedPair unlisted_pair(const model::PublishedTable::Row& row, const Mention& target) const;

  const bench::StepWorld world_;
  const NameIndex& names_;
  const Vocabulary& vocabulary_;
  const Texts texts_;
};

}  // namespace benchleaf::query
