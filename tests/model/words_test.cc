// Expected: the lists that the shapes themselves hold; a shape is what a contributor's editor reads, the enum is what the program
// reads.
#include "model/words.h"

#include "support/catch.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "model/fact.h"
#include "model/record.h"

namespace {

using benchleaf::model::all_words;
using Words = std::vector<std::string>;

/// Lists of shapes that are no closed list of a record, by the name of the field: rows of tables, kinds, trusts and verdicts,
/// which have types of their own, and names of what the program can draw or set.
const std::set<std::string, std::less<>> kElsewhere = {"trust",  "verdict",  "how",   "never",   "works",
                                                       "system", "left-by",  "word",  "kinds",   "papers",
                                                       "role",   "language", "shows", "picture", "transcription"};
/// Shapes of what a ticket is planned by: their words are those of src/ticket.
const std::set<std::string, std::less<>> kOfTickets = {"watch", "question", "job", "look", "hold"};
/// Lists whose words records still keep as text.
const std::set<std::string, std::less<>> kAsText = {"charging", "bound", "does", "part", "scratches", "feels"};

/// Every `enum` of a shape with the name of the field that holds it; conditions below `if` are no lists.
void collect(const nlohmann::json& node, const std::string& field, std::multimap<std::string, Words>& lists) {
  if (!node.is_object()) return;
  if (const auto found = node.find("enum"); found != node.end()) lists.emplace(field, found->get<Words>());
  for (const auto& [key, value] : node.items()) {
    if (key == "if" || key == "then" || key == "else") continue;
    if (key == "properties") {
      for (const auto& [name, property] : value.items()) collect(property, name, lists);
    } else {
      collect(value, field, lists);
    }
  }
}

std::multimap<std::string, Words> lists_of_shapes() {
  std::multimap<std::string, Words> lists;
  for (const auto& file : std::filesystem::directory_iterator("schema/shapes")) {
    const std::string name = file.path().filename().string();
    const std::string shape = name.substr(0, name.find('.'));
    if (shape == "fonts" || shape == "renamed" || kOfTickets.count(shape) > 0) continue;
    std::ifstream text(file.path());
    collect(nlohmann::json::parse(text), {}, lists);
  }
  return lists;
}

}  // namespace

TEST_CASE("every closed list of a shape is the list of an enum, word for word") {
  int held = 0;
  for (const auto& [field, words] : lists_of_shapes()) {
    if (kElsewhere.count(field) > 0 || kAsText.count(field) > 0) continue;
    INFO(field);
    const auto is_this = [&words = words](const auto& list) {
      return std::equal(words.begin(), words.end(), list.second->begin(), list.second->end());
    };
    CHECK(std::any_of(all_words().begin(), all_words().end(), is_this));
    ++held;
  }
  CHECK(held >= 25);
}

TEST_CASE("every enum of a closed list stands in a shape") {
  const auto lists = lists_of_shapes();
  for (const auto& [type, words] : all_words()) {
    INFO(type);
    const Words expected(words->begin(), words->end());
    CHECK(std::any_of(lists.begin(), lists.end(), [&expected](const auto& one) { return one.second == expected; }));
  }
}

TEST_CASE("a word leads to its enum and back") {
  using benchleaf::model::Lamp;
  CHECK(benchleaf::model::word_from<Lamp>("filament-lamp") == Lamp::filament);
  CHECK(benchleaf::model::word_of(Lamp::filament) == "filament-lamp");
  CHECK_FALSE(benchleaf::model::word_from<Lamp>("candle"));
  CHECK(benchleaf::model::word_of(std::optional<Lamp>()).empty());
}
