// In: records. Out: the index, in index order, with equal words joined.
#include "compose/entries/index.h"

#include <algorithm>
#include <map>

#include "compose/index_order.h"
#include "compose/names.h"
#include "standards/table_view.h"

namespace benchleaf::compose {

namespace {

/// Words of the index: the first spelling of a folded word stands.
class IndexWords {
 public:
  void add(const std::string& word, const std::string& target) {
    model::IndexEntry& entry = slot(word);
    entry.see.clear();
    if (std::find(entry.targets.begin(), entry.targets.end(), target) == entry.targets.end()) entry.targets.push_back(target);
  }

  /// A word that only renames another: it sends the reader there, unless it has places of its own.
  void add_see(const std::string& word, const std::string& see, const std::string& target) {
    if (index_key(word) == index_key(see)) return add(see, target);
    const auto known = entries_.find(index_key(word));
    if (known == entries_.end()) {
      slot(word).see = see;
    } else if (known->second.see != see) {
      known->second.see.clear();
      add(word, target);
    }
  }

  /// A place under a subject, with words of its own or none.
  void add_under(const std::string& subject, const std::string& under, const std::string& target) {
    if (under.empty()) return add(subject, target);
    model::IndexEntry& entry = slot(subject);
    entry.see.clear();
    entry.under.push_back({under, index_key(under), {target}, {}, {}});
  }

  model::IndexList take() {
    model::IndexList list;
    for (auto& [key, entry] : entries_) {
      std::stable_sort(entry.under.begin(), entry.under.end(),
                       [](const auto& one, const auto& other) { return one.sort_key < other.sort_key; });
      list.entries.push_back(std::move(entry));
    }
    std::stable_sort(list.entries.begin(), list.entries.end(), [](const auto& one, const auto& other) {
      return one.sort_key == other.sort_key ? one.word < other.word : one.sort_key < other.sort_key;
    });
    return list;
  }

 private:
  model::IndexEntry& slot(const std::string& word) {
    const std::string key = index_key(word);
    model::IndexEntry& entry = entries_[key];
    if (entry.word.empty()) {
      entry.word = word;
      entry.sort_key = key;
    }
    return entry;
  }

  std::map<std::string, model::IndexEntry> entries_;
};

/// On paper, cells are found by number in a table of their own, sources by their numbers.
bool has_its_own_list(model::Kind kind) {
  return kind == model::Kind::cell || kind == model::Kind::source || kind == model::Kind::chart || kind == model::Kind::watch ||
         kind == model::Kind::stock;
}

/// What readers look for by subject: on paper, where nothing answers a query.
void add_subjects(const Desk& desk, IndexWords& words) {
  for (const auto& row : standards::rows_of(desk.tables, "index-subjects")) {
    const std::string& under = standards::cell_text(row, "under");
    words.add_under(standards::cell_text(row, "subject"), under == "none" ? std::string() : under,
                    standards::cell_text(row, "place"));
  }
}

}  // namespace

model::IndexList make_index_list(const Desk& desk) {
  IndexWords words;
  // Names that are looked up directly come first, so that a mere renaming never takes their place.
  for (const bool renaming : {false, true}) {
    for (const model::Record* record : desk.records.all()) {
      if (model::is_of_ticket(record->kind) || (desk.on_paper() && has_its_own_list(record->kind))) continue;
      for (const Name& name : names_of(*record, desk.derived.facts)) {
        if (name.role == Name::Role::old_id || (name.role == Name::Role::other_name) != renaming) continue;
        // The table of substances on paper has their titles alone.
        if (renaming && desk.on_paper() && record->kind == model::Kind::substance) continue;
        if (renaming)
          words.add_see(name.text, record->title, record->reference());
        else
          words.add(name.text, record->reference());
      }
    }
  }
  if (desk.on_paper()) add_subjects(desk, words);
  return words.take();
}

}  // namespace benchleaf::compose
