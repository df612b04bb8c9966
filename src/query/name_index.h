#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "query/names.h"
#include "query/vocabulary.h"

namespace benchleaf::query {

/// A record that a name can mean.
struct Reading {
  const model::Record* record = nullptr;
  Name::Role role = Name::Role::title;
};

/// What a name means: one record, several (then it is refused with its readings), or none (with the nearest names, if any).
struct Resolution {
  const model::Record* record = nullptr;
  std::vector<const model::Record*> readings;
  std::vector<std::string> nearest;
};

/// All names of the content in one place: ids, designations and their short forms, trade and consumer numbers, aliases, other
/// names, everyday words. A name is found with its words parted or glued, in the plural and in either spelling of English.
/// Holds pointers into the knowledge base.
class NameIndex {
 public:
  NameIndex(const model::KnowledgeBase& records, const model::Tables& tables, const Vocabulary& vocabulary);

  /// All that a joined key (words.h) can mean, the firmest first; empty where nothing goes by it.
  const std::vector<Reading>& of_key(std::string_view key) const;

  /// The same of a key of words without those that stand in any question: `close snap back` for `Close a snap back`.
  const std::vector<Reading>& of_bare_key(std::string_view key) const;

  /// What a name means where records of these kinds are wanted; among equally firm names those of an earlier kind count. The
  /// nearest names are of these kinds too, and never of another cell system or from a harmless liquid to a harmful one.
  Resolution resolve(std::string_view name, const std::vector<model::Kind>& kinds) const;

  /// Names that were most likely meant, at most `most`: see `resolve`.
  std::vector<std::string> nearest(std::string_view name, const std::vector<model::Kind>& kinds, std::size_t most = 3) const;

  /// The key of the only name with the fewest slips from these words, within one slip in five letters and more and two in ten
  /// and more; empty where names of two records are equally near. Figures are not guessed, and cells neither.
  std::string with_slips(const std::vector<Word>& words, std::size_t from, std::size_t to) const;

  /// Whether names of cells begin with these letters.
  bool begins_a_cell(std::string_view letters) const { return cell_heads_.count(std::string(letters)) > 0; }

  /// Longest name in words, by which a search for names in a text ends.
  std::size_t longest() const { return longest_; }

 private:
  struct Entry {
    std::string text;
    std::string key;
    std::string spelled;  ///< its words as they are spelled, joined: a slip in an ending is no other stem
    Reading reading;
  };
  void add(const model::Record& record, Name name, const Vocabulary& vocabulary);

  std::vector<Entry> entries_;
  using Readings = std::map<std::string, std::vector<Reading>, std::less<>>;
  static const std::vector<Reading>& in(const Readings& readings, std::string_view key);

  Readings by_key_;
  Readings by_bare_key_;
  std::set<std::string> cell_heads_;
  std::size_t longest_ = 1;
};

}  // namespace benchleaf::query
