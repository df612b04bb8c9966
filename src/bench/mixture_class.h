#pragma once

#include <string>
#include <variant>
#include <vector>

#include "bench/calculator.h"
#include "standards/mixture.h"

namespace benchleaf::bench {

/// mixture-class: shares of substances in percent by mass to classes, signal word, pictograms, and what no percentage decides.
Calculator mixture_class_calculator();

/// What a bottle of the mixture must say, in codes; a range of strengths is judged at its upper end.
struct MixtureLabel {
  struct Part {
    std::string substance;  ///< id of its record, or the name where it has none
    std::string percent;    ///< `5 %`, `3 to 5 %`, as set on paper
  };
  std::vector<Part> parts;
  standards::ChemicalLabel label;    ///< of the classes that hold
  std::vector<std::string> perhaps;  ///< statements of classes that may hold, the others left out
  std::vector<standards::Undecided> undecided;
  std::vector<std::string> unknown;  ///< parts of which no classes are known, which is never none
};

/// The label by the inputs of mixture-class, or why there is none: the calculator refuses the same.
std::variant<MixtureLabel, Refusal> mixture_label(const Inputs& inputs, const Context& context);

}  // namespace benchleaf::bench
