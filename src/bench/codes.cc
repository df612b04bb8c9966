// In: codes.def. Out: each code with its word.

#include "bench/codes.h"

#include <algorithm>
#include <array>
#include <string>

namespace benchleaf::bench {
namespace {

constexpr std::array kWords = {
#define BENCHLEAF_CODE(name, word) std::string_view(word),
#include "bench/codes.def"
#undef BENCHLEAF_CODE
};

std::array<std::string, kWords.size()> with_spaces() {
  std::array<std::string, kWords.size()> texts;
  for (std::size_t i = 0; i < kWords.size(); ++i) {
    texts.at(i) = std::string(kWords.at(i));
    std::replace(texts.at(i).begin(), texts.at(i).end(), '-', ' ');
  }
  return texts;
}

const auto& texts() {
  static const auto kTexts = with_spaces();
  return kTexts;
}

}  // namespace

std::string_view code_word(Code code) { return kWords.at(static_cast<std::size_t>(code)); }

std::string_view code_text(Code code) { return texts().at(static_cast<std::size_t>(code)); }

Code code_named(std::string_view word) {
  for (std::size_t i = 0; i < kWords.size(); ++i) {
    if (kWords.at(i) == word || texts().at(i) == word) return static_cast<Code>(i);
  }
  return Code::none;
}

}  // namespace benchleaf::bench
