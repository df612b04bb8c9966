#pragma once

#include <memory>
#include <string>
#include <vector>

#include "model/drawing.h"

namespace benchleaf::model {

/// An answer to choose: what the watch record holds, and what the reader sees.
struct FormChoice {
  std::string value;
  std::string label;
};

/// A question about a watch, as the form asks it.
struct FormQuestion {
  enum class Answer {
    words,
    measure,  ///< a quantity with its unit
    number,
    one_of,
    some_of,
    grades,   ///< a list of words, commas between
    gaskets,  ///< a series of `choices` and an inside, as often as wanted
    jobs      ///< procedures of `choices`, those with `slots` with what fills them
  };
  std::string field;  ///< path in the watch record: `crystal-size.diameter`
  std::string what;
  std::string how;  ///< how it is found out
  Answer answer = Answer::words;
  std::string example;
  std::vector<FormChoice> choices;
  /// What a job asks besides: the procedure, the slot, and what may fill it.
  struct Slot {
    std::string procedure;
    std::string name;
    std::string asks;
    std::vector<FormChoice> allowed;
  };
  std::vector<Slot> slots;
  std::shared_ptr<const Drawing> picture;  ///< of what is measured, or nullptr
};

struct FormSection {
  std::string title;
  std::vector<FormQuestion> questions;
};

/// Everything that is asked for a ticket, all of it optional. Empty where a book has no form.
struct TicketForm {
  std::vector<FormSection> sections;
};

}  // namespace benchleaf::model
