// In: the entries of the index in index order. Out: nested lists of links, a letter at a time. A target that the book
// lacks leaves its word as text.
#include "html/index_list.h"

#include <map>
#include <set>
#include <utility>

#include "html/blocks.h"

namespace benchleaf::html {

namespace {

using model::IndexEntry;

Id letter_id(const std::string& letter) { return Id::of_frame("letter_", letter); }

class IndexSetter {
 public:
  IndexSetter(const model::IndexList& index, Setting& setting) : entries_(index.entries), setting_(setting) {
    std::set<std::string> wanted;
    for (const IndexEntry& entry : entries_) wanted.insert(entry.see);
    for (const IndexEntry& entry : entries_) {
      if (!wanted.contains(entry.word)) continue;
      see_.try_emplace(entry.word, Id::of_frame("word_", std::to_string(see_.size() + 1)));
    }
  }

  Markup set() {
    Markup out = set_letters();
    for (std::size_t at = 0; at < entries_.size();) out += set_letter(at);
    return out;
  }

 private:
  Markup set_letters() const {
    Element list("ul");
    std::set<std::string> done;
    for (const IndexEntry& entry : entries_) {
      const std::string letter = model::index_group(entry);
      if (!done.insert(letter).second) continue;
      list.add(Element("li").add(Element("a").href(Url::within(letter_id(letter))).say(letter)));
    }
    if (done.empty()) return {};
    return Element("nav").in_class("letters").set("aria-label", "Letters of the index").add(list);
  }

  /// The words under one letter; moves `at` past them.
  Markup set_letter(std::size_t& at) {
    const std::string letter = model::index_group(entries_.at(at));
    const int outer = setting_.level;
    Element heading = heading_element(outer + 1, setting_);
    setting_.level = outer;
    // Should a letter come twice, the first is the place to jump to.
    if (letters_.insert(letter).second) heading.id(letter_id(letter));
    Element list("ul");
    list.in_class("index");
    while (at < entries_.size() && model::index_group(entries_.at(at)) == letter) list.add(set_word(entries_.at(at++)));
    return Element("section").in_class("letter").add(heading.say(letter)).add(list);
  }

  Markup set_word(const IndexEntry& entry) {
    Element item("li");
    const auto named = see_.find(entry.word);
    if (named != see_.end() && named_.insert(entry.word).second) item.id(named->second);
    return item.add(set_reference(entry));
  }

  Markup set_reference(const IndexEntry& entry) {
    if (!entry.see.empty()) return set_see(entry.see, entry.word);
    if (entry.targets.size() == 1) return set_link(entry.targets.front(), entry.word);
    Markup out = words(entry.word);
    for (const std::string& target : entry.targets) {
      out += words(", ");
      out += set_link(target, title_of(target));
    }
    return out;
  }

  Markup set_see(const std::string& word, const std::string& label) {
    Markup out = words(label + ", ");
    out += Element("i").say("see");
    out += words(" ");
    const auto named = see_.find(word);
    out += named == see_.end() ? words(word) : Element("a").href(Url::within(named->second)).say(word).markup();
    return out;
  }

  Markup set_link(const std::string& target, const std::string& label) {
    const std::optional<Url> address = address_of(target, setting_);
    return address ? Element("a").href(*address).say(label).markup() : words(label);
  }

  std::string title_of(const std::string& target) const {
    const std::optional<Place> place = setting_.plan.place(target);
    const Page* page = place ? setting_.plan.page_at(place->path) : nullptr;
    return page != nullptr ? page->title : target;
  }

  const std::vector<IndexEntry>& entries_;
  Setting& setting_;
  std::map<std::string, Id> see_;  ///< words that others refer to
  std::set<std::string> named_;
  std::set<std::string> letters_;
};

}  // namespace

Markup set_index(const model::IndexList& index, Setting& setting) { return IndexSetter(index, setting).set(); }

}  // namespace benchleaf::html
