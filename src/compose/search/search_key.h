#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::compose {

/// A query or a name as the words that are looked up: folded; `7.9 mm × 5.4`, `7.9*5.4` and `7.9x5.4` are one word
/// `7.9x5.4`; a measure with its unit is one word `5.4mm`, one in inches `1.254in`, a size in them
/// `0.311x0.213in`; letters with a number after them are one word, so `AG 5` is `ag5`; zeros at the end of a decimal go;
/// micro is `u`.
std::vector<std::string> search_words(std::string_view text);

/// The words joined, by which a whole name is known.
std::string joined_words(const std::vector<std::string>& words);

/// Whether a word is worth a key: it has three letters or a figure.
bool says_something(std::string_view word);

/// What is left when one code point is taken out, each once; nothing for words too short for a slip.
std::vector<std::string> one_slip_forms(const std::string& word);

}  // namespace benchleaf::compose
