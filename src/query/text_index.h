#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "model/knowledge_base.h"
#include "model/tables.h"
#include "query/vocabulary.h"

namespace benchleaf::query {

/// A record that words of a query hit.
struct TextHit {
  const model::Record* record = nullptr;
  double score = 0;
  double share = 0;       ///< of the weight of all words that were asked: 1 where every word hits
  std::size_t named = 0;  ///< words in the name that was hit best
  std::string shown;      ///< the sentence of the record that was hit, where its names were not
};

/// What a search by words brings.
struct TextHits {
  std::vector<TextHit> hits;          ///< the best first
  std::vector<std::string> left_out;  ///< words that nothing on file has
  bool guessed = false;               ///< whether a word was left out or taken for another by a slip
};

/// Records by the words of their names and sentences. A word weighs the more the fewer records have it; a word of a name
/// weighs more than one of a sentence; a name of which all words are asked for weighs most. Holds pointers into the records.
class TextIndex {
 public:
  TextIndex(const model::KnowledgeBase& records, const model::Tables& tables, const Vocabulary& vocabulary);

  /// Records that hold the words, in any order; words that stand in any question count for nothing.
  TextHits find(const std::vector<Word>& words) const;
  /// Whether a record has the word.
  bool has(const Word& word) const { return places_.count(stem_of(word.text)) > 0; }
  /// Whether a record has the word, another word for it, or one that is typed like it.
  bool knows(const Word& word) const;

 private:
  using Stem = std::size_t;
  struct Place {
    std::size_t doc = 0;
    int name = -1;      ///< which of its names; -1: a sentence
    int sentence = -1;  ///< which of its sentences
  };
  struct Doc {
    const model::Record* record = nullptr;
    std::vector<std::size_t> name_sizes;  ///< words in each name
    std::vector<std::string> sentences;
  };
  struct Asked {
    std::string text;
    std::vector<std::pair<std::string, double>> stems;  ///< with the weight of how sure it is
    double weight = 0;
    bool guessed = false;
    bool passing = false;  ///< stands in any question: it counts little, and only in names
  };
  struct Score;

  void add_name(std::size_t doc, std::string_view name);
  void add_sentence(std::size_t doc, const std::string& text);
  void add_record(const model::Record& record, const model::Tables& tables);
  void weigh();
  double weight_of(const std::string& stem) const;
  Asked asked(const Word& word) const;
  std::vector<Asked> asked(const std::vector<Word>& words) const;
  void count(const Asked& one, std::map<std::size_t, Score>& scores) const;
  double wanted(model::Kind kind, const std::vector<Word>& words) const;
  TextHit hit_of(std::size_t doc, const Score& score, double total) const;
  std::string corrected(const std::string& word) const;

  const Vocabulary& vocabulary_;
  std::vector<Doc> docs_;
  std::map<std::string, std::vector<Place>, std::less<>> places_;  ///< by stem
  std::map<std::string, double, std::less<>> weights_;             ///< by stem: the rarer, the more
  std::map<std::string, std::string, std::less<>> stems_;          ///< of words as written
};

}  // namespace benchleaf::query
