#pragma once

#include <span>

#include "model/ticket_form.h"
#include "ticket/planner.h"

namespace benchleaf::compose {

/// A question about a watch: the list of checks asks it where the watch does not say, the form of the page always.
struct Question {
  enum class Section { watch, build, cells, crystal, gasket, ready, jobs };
  using Answer = model::FormQuestion::Answer;

  const char* field;  ///< path in the watch record
  Section section;
  const char* what;
  const char* how;  ///< common practice of the bench, no source
  Answer answer;
  const char* example;
  bool (*known)(const Planner& planner);  ///< nullptr: nothing waits for it, so that it is no check
  bool back_off = false;                  ///< answered by whoever has opened the watch, and by nobody before
};

/// All of them, in the order of the form, which is that of the bench.
std::span<const Question> questions();

}  // namespace benchleaf::compose
