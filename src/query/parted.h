#pragma once

#include <functional>
#include <vector>

#include "query/name_index.h"
#include "query/text_index.h"
#include "query/vocabulary.h"

namespace benchleaf::query {

/// Parts what was typed without a space: `399bat`, `364or363`, `no381`, `goldplate`. What goes by a name, and what has a part
/// that nothing on file has, stays as it was typed.
class Parter {
 public:
  /// The words of all records, made where a query asks for them.
  using Texts = std::function<const TextIndex&()>;

  Parter(const NameIndex& names, const Vocabulary& vocabulary, Texts texts)
      : names_(names), vocabulary_(vocabulary), texts_(std::move(texts)) {}

  std::vector<Word> parted(const std::vector<Word>& words) const;

 private:
  std::vector<Word> parts_of(const Word& word) const;
  std::vector<Word> at_figures(const Word& word) const;
  std::vector<Word> between_letters(const Word& word) const;
  bool says_something(const Word& word) const;

  const NameIndex& names_;
  const Vocabulary& vocabulary_;
  const Texts texts_;
};

}  // namespace benchleaf::query
