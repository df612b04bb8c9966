// In: a number or small Roman numerals. Out: the other of them.
#include "page/roman.h"

#include <array>
#include <utility>

namespace benchleaf::page {
namespace {

constexpr int kLargest = 3999;

using Part = std::pair<int, std::string_view>;
constexpr std::array<Part, 13> kParts = {{{1000, "m"},
                                          {900, "cm"},
                                          {500, "d"},
                                          {400, "cd"},
                                          {100, "c"},
                                          {90, "xc"},
                                          {50, "l"},
                                          {40, "xl"},
                                          {10, "x"},
                                          {9, "ix"},
                                          {5, "v"},
                                          {4, "iv"},
                                          {1, "i"}}};

}  // namespace

std::string roman(int number) {
  std::string out;
  if (number < 1 || number > kLargest) return out;
  for (const Part& part : kParts) {
    for (; number >= part.first; number -= part.first) out += part.second;
  }
  return out;
}

std::optional<int> read_roman(std::string_view text) {
  int number = 0;
  std::string_view rest = text;
  for (const Part& part : kParts) {
    while (rest.substr(0, part.second.size()) == part.second) {
      number += part.first;
      rest.remove_prefix(part.second.size());
    }
  }
  if (number == 0 || !rest.empty() || roman(number) != text) return std::nullopt;  // `iiii` is no number
  return number;
}

}  // namespace benchleaf::page
