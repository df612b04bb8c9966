#pragma once

#include <string>
#include <vector>

#include "model/book.h"
#include "model/record.h"

namespace benchleaf::model {

/// A hazard of the bench and what to do about it, in the words of ANSI Z535.
struct Caution : Record {
  Message::Word word = Message::Word::notice;
  std::optional<Severity> severity;
  std::optional<Likelihood> likelihood;
  std::string hazard;
  std::string harm;
  std::string avoid;
  std::vector<std::string> signs;  ///< ISO 7010 numbers
  std::string first_aid;
  std::string in_short;       ///< what to do at once, for a chart
  std::string harm_in_brief;  ///< `short`: what stands before a step, with the next line 90 characters at most
  std::string avoid_in_brief;
  bool call = false;  ///< whether a doctor or an emergency number is to be called
};

}  // namespace benchleaf::model
