#pragma once

#include <string>
#include <vector>

#include "page/display.h"
#include "pdf/file_output.h"

namespace benchleaf::pdf {

/// The link annotations of a document: one for each area that has a structure element and a target.
class Links {
 public:
  explicit Links(const page::Document& document);

  struct Link {
    int page = 0;
    const page::LinkArea* area = nullptr;
  };
  const std::vector<Link>& all() const { return links_; }
  /// The annotations become the objects from `first` on.
  void number_from(ObjectNumber first) { first_ = first; }
  ObjectNumber number(std::size_t link) const { return first_ + static_cast<ObjectNumber>(link); }
  ObjectNumber next_number() const { return number(links_.size()); }
  /// Appends `/Annots[...]` if the page has links.
  void append_annotations(std::string& out, int page) const;
  /// Key of the first link in the parent tree; the others follow.
  int first_key() const { return static_cast<int>(document_.pages.size()); }
  void write(FileOutput& out) const;

 private:
  const page::Document& document_;
  std::vector<Link> links_;              ///< by page
  std::vector<std::size_t> page_begin_;  ///< by page: where its links begin
  ObjectNumber first_ = 0;
};

/// Whether a link area can become a link at all.
bool is_link(const page::Document& document, const page::LinkArea& area);

}  // namespace benchleaf::pdf
