#pragma once

#include <string>
#include <vector>

#include "model/marks.h"
#include "model/record.h"

namespace benchleaf::model {

/// What is asked about a watch, and how it is found out. The form asks all of them; the ticket asks those that are open.
struct Question : Record {
  std::string field;    ///< path in the watch record: `crystal-size.thickness`
  std::string section;  ///< watch, build, cells, crystal, gasket, ready, jobs
  int order = 0;        ///< in its section
  std::string how;
  std::string answer;  ///< words, measure, number, one-of, some-of, grades, gaskets, jobs
  std::string example;
  struct Choice {
    std::string value;
    std::string label;
  };
  std::vector<Choice> choices;  ///< where they are no records
  std::string picture;          ///< of what is measured, or empty
  bool back_off = false;        ///< answered by whoever has opened the watch, and by nobody before
  std::vector<Condition> open;  ///< any of these: the ticket asks it; none: the form alone does
};

}  // namespace benchleaf::model
