// In: a dictionary of hyphenation patterns and words. Out: the places where a word may be parted.
#include "page/text/hyphenator.h"

#include <hyphen.h>
#include <stdio.h>

#include <cstdlib>
#include <utility>

#include "base/utf8.h"

namespace benchleaf::page {

namespace {

constexpr std::size_t kLongestWord = 60;
constexpr std::size_t kLeastBefore = 2;
constexpr std::size_t kLeastAfter = 3;

bool is_lower(char32_t code) { return (code >= U'a' && code <= U'z') || (code >= 0xDF && code <= 0xFF && code != 0xF7); }

/// The small letter of a Latin capital, or 0 for what is no Latin letter: the patterns know small letters only.
char32_t small_letter(char32_t code) {
  if (is_lower(code)) return code;
  const bool capital = (code >= U'A' && code <= U'Z') || (code >= 0xC0 && code <= 0xDE && code != 0xD7);
  return capital ? code + 0x20 : 0;
}

/// The word in small letters if it is one that may be parted, else nothing.
std::u32string partable(std::string_view word) {
  std::u32string letters;
  for (const char32_t code : base::code_points(word)) {
    // a capital behind the first letter: an abbreviation or a formula
    if (!letters.empty() && !is_lower(code)) return {};
    const char32_t letter = small_letter(code);
    if (letter == 0 || letters.size() == kLongestWord) return {};
    letters += letter;
  }
  return letters.size() >= kLeastBefore + kLeastAfter ? letters : std::u32string();
}

}  // namespace

struct Hyphenator::Dictionary {
  HyphenDict* patterns = nullptr;
  Dictionary() = default;
  Dictionary(const Dictionary&) = delete;
  Dictionary& operator=(const Dictionary&) = delete;
  ~Dictionary() {
    if (patterns != nullptr) hnj_hyphen_free(patterns);
  }
};

Hyphenator Hyphenator::open(const std::string& bytes, report::Findings& findings) {
  auto dictionary = std::make_unique<Dictionary>();
  // libhyphen takes any file for a dictionary, and other encodings would shift every place: both are seen in line 1
  if (bytes.rfind("UTF-8", 0) == 0 && (bytes.substr(5, 1) == "\n" || bytes.substr(5, 2) == "\r\n")) {
    std::string copy = bytes;  // fmemopen wants writable memory
    if (FILE* file = fmemopen(copy.data(), copy.size(), "r"); file != nullptr) {
      dictionary->patterns = hnj_hyphen_load_file(file);
      fclose(file);
    }
  }
  if (dictionary->patterns == nullptr) {
    findings.add(report::Rule::font_hyphenation, {}, "the hyphenation dictionary cannot be read: no word is parted",
                 "install the package hyphen-en-gb");
  }
  return Hyphenator(std::move(dictionary));
}

Hyphenator::Hyphenator(std::unique_ptr<Dictionary> dictionary) : dictionary_(std::move(dictionary)) {}
Hyphenator::Hyphenator(Hyphenator&&) noexcept = default;
Hyphenator& Hyphenator::operator=(Hyphenator&&) noexcept = default;
Hyphenator::~Hyphenator() = default;

std::vector<std::size_t> Hyphenator::breaks(std::string_view word) const {
  const std::u32string letters = partable(word);
  if (dictionary_->patterns == nullptr || letters.empty()) return {};
  const std::string small = base::to_utf8(letters);
  std::vector<char> marks(small.size() + 5, 0);
  char** replacements = nullptr;
  int* positions = nullptr;
  int* cuts = nullptr;
  const int failed =
      hnj_hyphen_hyphenate3(dictionary_->patterns, small.c_str(), static_cast<int>(small.size()), marks.data(), nullptr,
                            &replacements, &positions, &cuts, static_cast<int>(kLeastBefore), static_cast<int>(kLeastAfter),
                            static_cast<int>(kLeastBefore), static_cast<int>(kLeastAfter));
  std::vector<std::size_t> result;
  std::size_t byte = 0;
  for (std::size_t i = 0; failed == 0 && i + kLeastAfter < letters.size(); ++i) {
    byte += base::to_utf8(letters[i]).size();
    // odd marks are breaks; places where the spelling would change are not for English
    const bool changes = replacements != nullptr && replacements[i] != nullptr;
    if (i + 1 >= kLeastBefore && (marks[i] & 1) != 0 && !changes) result.push_back(byte);
  }
  for (std::size_t i = 0; replacements != nullptr && i < small.size(); ++i) std::free(replacements[i]);
  std::free(replacements);
  std::free(positions);
  std::free(cuts);
  return result;
}

}  // namespace benchleaf::page
