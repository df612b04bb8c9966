#pragma once

#include <string_view>

namespace benchleaf::bench {

/// What a calculator decides: verdicts on cells, sizes, loads and classes, each a line of codes.def. Whoever acts on a result
/// reads these, never its sentences.
enum class Code {
#define BENCHLEAF_CODE(name, word) name,
#include "bench/codes.def"
#undef BENCHLEAF_CODE
};

/// The word of a code, as JSON carries it: `with-care`.
std::string_view code_word(Code code);

/// A word on paper: `with care`.
std::string_view code_text(Code code);

/// The code of a word or of a text; `none` where no code has it.
Code code_named(std::string_view word);

}  // namespace benchleaf::bench
