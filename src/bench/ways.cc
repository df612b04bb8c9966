// In: a step. Out: in which ways it is done, by its fields, its tools and the orders that its words give.
#include "bench/ways.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

#include "base/ascii.h"

namespace benchleaf::bench {

namespace {

using Ways = std::set<std::string, std::less<>>;

constexpr std::array<std::string_view, 6> kWettingWays = {"wipe", "soak", "bath", "tank", "pour", "spray"};
constexpr std::array<std::string_view, 5> kFloodingWays = {"soak", "bath", "tank", "pour", "spray"};
constexpr std::size_t kObjectWithin = 4;  // words between an order and what it is about

struct Word {
  std::string text;
  bool after_break = false;  ///< at the head of a sentence, or after a comma or a semicolon
  bool ends = false;         ///< a full stop, a comma or a semicolon follows
};

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c & 0x80) != 0; }

std::vector<Word> words_in(const std::string& text) {
  std::vector<Word> words;
  bool after_break = true;
  std::string current;
  const auto flush = [&words, &after_break, &current] {
    if (current.empty()) return;
    words.push_back({current, after_break, false});
    current.clear();
    after_break = false;
  };
  for (const char c : base::lower_ascii(text)) {
    if (is_letter(c)) {
      current += c;
      continue;
    }
    flush();
    if (c != '.' && c != ',' && c != ';' && c != ':') continue;
    if (!words.empty()) words.back().ends = true;
    after_break = true;
  }
  flush();
  return words;
}

/// Whether the word at this place gives an order: `Lift`, `; lift`, `and lift`, `then lift`.
bool is_order(const std::vector<Word>& words, std::size_t at) {
  if (words[at].after_break) return true;
  const std::string& before = words[at - 1].text;
  return before == "and" || before == "or" || before == "then";
}

bool is_about(const std::vector<Word>& words, std::size_t at, std::string_view object) {
  if (object == "any") return true;
  for (std::size_t i = at + 1; i < words.size() && i <= at + kObjectWithin + 1; ++i) {
    if (words[i].text == object || words[i].text == std::string(object) + "s") return true;
    if (words[i - 1].ends) return false;
  }
  return false;
}

void add_from_words(const StepWorld& world, const std::string& text, Ways& ways) {
  const std::vector<Word> words = words_in(text);
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (!is_order(words, i)) continue;
    for (const model::StepWord& row : world.tables.step_words) {
      if (row.verb == words[i].text && is_about(words, i, row.object)) ways.insert(row.means);
    }
  }
}

}  // namespace

std::set<std::string, std::less<>> ways_of(const StepWorld& world, const model::Procedure::Step& step) {
  Ways ways(step.how.begin(), step.how.end());
  for (const model::RecordRef& reference : step.tools) {
    const model::Tool* tool = tool_named(world, reference);
    if (tool != nullptr) ways.insert(tool->works.begin(), tool->works.end());
  }
  add_from_words(world, step.text, ways);
  bool liquid = false;
  for (const model::RecordRef& reference : step.with) {
    if (chemistry_named(world, reference) != nullptr) liquid = true;
    if (abrasive_named(world, reference) != nullptr) ways.insert("sand");
  }
  const bool wetted =
      std::any_of(kWettingWays.begin(), kWettingWays.end(), [&ways](std::string_view way) { return ways.count(way) > 0; });
  if (liquid && !wetted) ways.insert("wipe");
  return ways;
}

bool floods(const std::set<std::string, std::less<>>& ways) {
  return std::any_of(kFloodingWays.begin(), kFloodingWays.end(), [&ways](std::string_view way) { return ways.count(way) > 0; });
}

}  // namespace benchleaf::bench
