#pragma once

#include <string>
#include <vector>

#include "prove/proof.h"

namespace benchleaf::prove {

/// A sentence that says another answer than the one that is decided.
struct SpokenFault {
  base::Span where;     ///< of the sentence, or of the page
  std::string message;  ///< what was found, then what is decided
  std::string hint;
  base::Span row;  ///< of the table spoken-answers
};

/// What sentences repeat, held against what decides it.
struct SpokenAnswers {
  std::size_t held = 0;  ///< sentences that repeat an answer
  std::vector<SpokenFault> faults;
  std::vector<std::string> undecided;  ///< rows that nothing in this content decides: a book without crystals has no ladder
};

/// Every sentence of records, charts and pages by the table spoken-answers.
SpokenAnswers spoken_answers(const Proof& proof);

/// The same as findings, each with the row that it goes by.
void check_spoken_answers(const Proof& proof);

}  // namespace benchleaf::prove
