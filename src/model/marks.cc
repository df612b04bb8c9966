// Out: the words of conditions, as marks.def lists them.
#include "model/marks.h"

#include <algorithm>

namespace benchleaf::model {

namespace {

struct MarkWords {
  std::string_view trait;
  std::string_view word;
};

constexpr MarkWords kWords[] = {
#define BENCHLEAF_MARK(trait, name, trait_word, word) {trait_word, word},
#include "model/marks.def"
#undef BENCHLEAF_MARK
};

}  // namespace

std::string_view mark_trait(Mark mark) { return kWords[static_cast<std::size_t>(mark)].trait; }

std::string_view mark_word(Mark mark) { return kWords[static_cast<std::size_t>(mark)].word; }

std::optional<Mark> mark_named(std::string_view trait, std::string_view word) {
  const auto& marks = all_marks();
  const auto found =
      std::find_if(marks.begin(), marks.end(), [&](Mark mark) { return mark_trait(mark) == trait && mark_word(mark) == word; });
  return found == marks.end() ? std::nullopt : std::optional(*found);
}

const std::vector<Mark>& all_marks() {
  static const std::vector<Mark> kAll = {
#define BENCHLEAF_MARK(trait, name, trait_word, word) Mark::name,
#include "model/marks.def"
#undef BENCHLEAF_MARK
  };
  return kAll;
}

const std::vector<std::string_view>& all_traits() {
  static const std::vector<std::string_view> kTraits = [] {
    std::vector<std::string_view> traits;
    for (const Mark mark : all_marks()) {
      if (traits.empty() || traits.back() != mark_trait(mark)) traits.push_back(mark_trait(mark));
    }
    return traits;
  }();
  return kTraits;
}

}  // namespace benchleaf::model
