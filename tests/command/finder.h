// In: the real content. Out: what `find` answers, from an index that is made once.
#pragma once

#include <string>

#include "query/real_answers.h"

namespace benchleaf::test {

class Finder {
 public:
  static query::Answers answers(const std::string& words) { return real_answers().answer(words); }
};

}  // namespace benchleaf::test
