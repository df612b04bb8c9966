#pragma once

#include "bench/answer.h"
#include "bench/ask.h"

namespace benchleaf::bench {

/// Runs a calculation: a class that is made of an Ask and an Answer and has `run()`. A fault of the inputs ends in a refusal.
template <typename Calculation>
Result calculate(const Calculator& self, const Inputs& inputs, const Context& context) {
  Ask ask(self, inputs, context);
  Answer answer(self.name);
  Calculation(ask, answer).run();
  for (const auto& note : ask.notes()) answer.holds(note);
  return ask.failed() ? ask.refused() : answer.done();
}

}  // namespace benchleaf::bench
