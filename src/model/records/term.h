#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// A word of the trade. `title` is the term.
struct Term : Record {
  std::string term;
  std::vector<std::string> also;
  std::string american;
  std::string meaning;
  std::string not_to_confuse;
  References see;  ///< `kind/id`
};

}  // namespace benchleaf::model
