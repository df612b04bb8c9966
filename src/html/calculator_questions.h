#pragma once

#include <cstddef>
#include <string_view>

namespace benchleaf::html {

/// A calculator as the screen names it: its question, what it needs and what it gives, by the moment of the job.
struct CalculatorQuestion {
  std::string_view name;
  std::string_view group;
  std::string_view moment;
  std::string_view question;
  std::string_view needs;
  std::string_view gives;
};

/// Nullptr for a calculator that has no words of its own yet: its description then stands in their place.
const CalculatorQuestion* question_of_calculator(std::string_view name);

/// Its place in the order of the bench; those without words stand last.
std::size_t place_of_calculator(std::string_view name);

}  // namespace benchleaf::html
