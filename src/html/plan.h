#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "html/markup.h"
#include "model/book.h"

namespace benchleaf::html {

inline constexpr std::string_view kContentsPath = "contents.html";
inline constexpr std::string_view kAboutPath = "about.html";
inline constexpr std::string_view kCalculatorsPath = "calculators.html";
inline constexpr std::string_view kTicketPath = "ticket.html";
inline constexpr std::string_view kLabelFormPath = "labels.html";

/// One page of the site, in the order in which a reader turns them.
struct Page {
  enum class Kind { home, contents, about, calculators, calculator, ticket, labels, chapter, entry };
  Kind kind = Kind::home;
  std::string path;                         ///< `cell/sr754w.html`
  std::string title;                        ///< plain words
  const model::Chapter* chapter = nullptr;  ///< of a chapter or an entry
  const model::Entry* entry = nullptr;
  const model::Heading* section = nullptr;             ///< the section that an entry stands in, if any
  const model::CalculatorSheet* calculator = nullptr;  ///< of the page of one
};

/// Where a target of the book lies: a page, and a name on it unless the page itself is meant.
struct Place {
  std::string path;
  std::optional<Id> id;
};

/// The pages of a book and the place of every anchor in it, worked out before the first page is written. The first
/// bearer of an anchor keeps it; an entry comes before a heading, a row or a fact with the same name.
class Plan {
 public:
  explicit Plan(const model::Book& book);

  const model::Book& book() const { return *book_; }
  const std::vector<Page>& pages() const { return pages_; }
  /// Nullptr when no such page is there.
  const Page* page_at(std::string_view path) const;
  const Page& page_of(const model::Chapter& chapter) const;
  const Page& page_of(const model::Entry& entry) const;
  /// The place of exactly this anchor.
  std::optional<Place> place_of_anchor(std::string_view anchor) const;
  /// Of an entry, a heading, a row, a chapter (`chapter/ID`) or a fact in its own entry; none when the book lacks it. A
  /// fact that its entry does not print leads to the entry.
  std::optional<Place> place(std::string_view target) const;
  /// Every anchor of the book with its place.
  const std::map<std::string, Place, std::less<>>& places() const { return places_; }
  /// The page that holds the alphabetical index; nullptr without one.
  const Page* index_page() const { return index_path_.empty() ? nullptr : page_at(index_path_); }

 private:
  class Walk;
  void add_page(Page page, std::string wanted_path);
  void add_anchor(const std::string& anchor, const std::string& path, std::string_view name);

  const model::Book* book_;
  std::vector<Page> pages_;
  std::map<std::string, std::size_t, std::less<>> by_path_;
  std::map<const model::Chapter*, std::size_t> by_chapter_;
  std::map<const model::Entry*, std::size_t> by_entry_;
  std::map<std::string, Place, std::less<>> places_;
  std::set<std::string> names_;  ///< `path#name`, taken
  std::string index_path_;
};

/// The heading that opens a chapter and repeats its title, or nullptr: it names the page and is not set again.
const model::Heading* opening_heading(const model::Chapter& chapter);

/// Calls `visit` for each block in book order: the block itself, then those inside it. The blocks of an entry are its own
/// affair and are not visited.
template <typename Visit>
void for_each_block(const model::Block& block, const Visit& visit) {
  visit(block);
  if (const auto* list = std::get_if<model::List>(&block.what)) {
    for (const model::Blocks& item : list->items) {
      for (const model::Block& inner : item) for_each_block(inner, visit);
    }
  }
}

}  // namespace benchleaf::html
