// In: the closed lists of words.def. Out: their words by type.
#include "model/words.h"

#include <utility>

namespace benchleaf::model {

#define BENCHLEAF_WORD(name, text) text,
#define BENCHLEAF_LIST(Type, words)                              \
  template <>                                                    \
  const std::vector<std::string_view>& words_of<Type>() {        \
    static const std::vector<std::string_view> kWords = {words}; \
    return kWords;                                               \
  }
#include "model/words.def"
#undef BENCHLEAF_LIST
#undef BENCHLEAF_WORD

const std::vector<std::pair<std::string_view, const std::vector<std::string_view>*>>& all_words() {
  static const std::vector<std::pair<std::string_view, const std::vector<std::string_view>*>> kAll = {
#define BENCHLEAF_LIST(Type, words) {#Type, &words_of<Type>()},
#include "model/words.def"
#undef BENCHLEAF_LIST
  };
  return kAll;
}

}  // namespace benchleaf::model
