// In: values and schemas. Out: the words of messages about them: what was found and what was expected.
#include "read/shape_words.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

#include "base/id.h"
#include "base/utf8.h"

namespace benchleaf::read {

namespace {

using model::Node;
using model::NodeType;

constexpr std::size_t kMostShown = 60;
constexpr std::size_t kMostChoices = 12;

std::string choice_words(const std::vector<Choice>& choices) {
  std::vector<std::string> words;
  for (const Choice& choice : choices) {
    if (words.size() == kMostChoices) break;
    words.push_back(choice.shown);
  }
  std::string text = one_of(words);
  if (choices.size() > words.size()) text += " (" + std::to_string(choices.size() - words.size()) + " more)";
  return text;
}

std::string quantity_words(const Schema& schema) {
  std::vector<std::string> words;
  for (base::Dimension dimension : schema.quantities) words.emplace_back(base::dimension_info(dimension).text);
  std::string example(base::dimension_info(schema.quantities.front()).example);
  return "a quantity (" + one_of(words) + ") such as " + (schema.examples.empty() ? example : schema.examples.front());
}

std::string pattern_words(const Schema& schema) {
  if (!schema.examples.empty()) return "a text such as " + one_of(schema.examples);
  return "a text that matches " + schema.pattern->source();
}

std::string form_words(const Shape& shape, const std::vector<SchemaId>& forms) {
  std::vector<std::string> words;
  for (SchemaId form : forms) {
    std::string one = expectation(shape, form);
    bool known = false;
    for (const std::string& word : words) known = known || word == one;
    if (!known) words.push_back(std::move(one));
  }
  return one_of(words);
}

/// The only candidate of which the word is the beginning: `high` for `hi`, `silver-oxide` for `silver`.
std::string begun_word(std::string_view word, const std::vector<std::string>& candidates) {
  const auto begins = [word](const std::string& one) {
    return one.size() > word.size() && one.compare(0, word.size(), word) == 0;
  };
  const auto first = std::find_if(candidates.begin(), candidates.end(), begins);
  const bool only = first != candidates.end() && std::none_of(std::next(first), candidates.end(), begins);
  return only && word.size() > 1 ? *first : std::string();
}

}  // namespace

std::string in_marks(std::string_view text) {
  std::u32string codes = base::code_points(text);
  std::string shown;
  for (std::size_t i = 0; i < codes.size() && i < kMostShown; ++i) {
    char32_t code = codes.at(i) < 0x20 ? U' ' : codes.at(i);
    shown += base::to_utf8(code);
  }
  if (codes.size() > kMostShown) shown += "…";
  return "\"" + shown + "\"";
}

std::string likely_word(std::string_view word, const std::vector<std::string>& candidates) {
  if (word.size() > kMostShown) return {};
  const std::string nearest = base::nearest_word(word, candidates);
  return nearest.empty() ? begun_word(word, candidates) : nearest;
}

std::string one_of(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += i + 1 == words.size() ? " or " : ", ";
    text += words.at(i);
  }
  return text;
}

std::string describe(const Node& node) {
  switch (node.type) {
    case NodeType::null: return "nothing";
    case NodeType::boolean: return "the truth value " + node.text;
    case NodeType::integer: return "the whole number " + node.text;
    case NodeType::number: return "the number " + node.text;
    case NodeType::string: return "the text " + in_marks(node.text);
    case NodeType::sequence: return "a list of " + std::to_string(node.items.size());
    case NodeType::mapping: return "a mapping";
  }
  return {};
}

std::string type_words(unsigned types) {
  static constexpr std::array<std::pair<unsigned, std::string_view>, 6> kWords = {{{kString, "a text"},
                                                                                   {kNumber, "a number"},
                                                                                   {kBoolean, "true or false"},
                                                                                   {kArray, "a list"},
                                                                                   {kObject, "a mapping"},
                                                                                   {kNull, "nothing"}}};
  std::vector<std::string> words;
  for (const auto& [bit, word] : kWords) {
    if ((types & bit) != 0) words.emplace_back(word);
  }
  if ((types & kNumber) == 0 && (types & kInteger) != 0) words.emplace_back("a whole number");
  return one_of(words);
}

std::string expectation(const Shape& shape, SchemaId id) {
  const Schema& schema = shape.schemas().at(static_cast<std::size_t>(id));
  if (schema.constant) return schema.constant->shown;
  if (!schema.choices.empty()) return choice_words(schema.choices);
  if (!schema.quantities.empty()) return quantity_words(schema);
  if (schema.reference) return expectation(shape, *schema.reference);
  if (schema.pattern) return pattern_words(schema);
  if (!schema.one_of.empty()) return form_words(shape, schema.one_of);
  if (!schema.any_of.empty()) return form_words(shape, schema.any_of);
  if (schema.types != 0) return type_words(schema.types);
  if (!schema.title.empty()) return schema.title;
  if (!schema.all_of.empty()) return expectation(shape, schema.all_of.front());
  return "another value";
}

}  // namespace benchleaf::read
