#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "page/display.h"
#include "pdf/attributes.h"
#include "pdf/content.h"
#include "pdf/file_output.h"
#include "pdf/links.h"
#include "pdf/reading_order.h"

namespace benchleaf::pdf {

/// The structure tree of a document: root, elements, parent tree and, where elements have names, the tree of these.
/// Written from flat vectors straight into the file: as dictionaries of a library, elements cost ten times the memory.
class Structure {
 public:
  /// The objects are numbered from `first` on; `numbering` is that of the lists. Everything given must outlive the structure;
  /// the items of the pages are not asked for.
  Structure(const page::Document& document, const std::vector<Piece>& pieces, const std::vector<ObjectNumber>& pages,
            const Links& links, ListNumbering numbering, ObjectNumber first);

  ObjectNumber root() const { return first_; }
  /// The first number behind its own.
  ObjectNumber next_number() const;
  /// The most kids that one element has.
  std::size_t most_kids() const { return most_kids_; }
  void write(FileOutput& out);

 private:
  ObjectNumber scope(page::Tag::Scope scope) const { return scope == page::Tag::Scope::row ? first_ + 1 : first_ + 2; }
  ObjectNumber element(page::TagId tag) const { return first_ + 3 + tag; }
  ObjectNumber parent_tree() const { return element(static_cast<page::TagId>(document_.tags.size())); }
  ObjectNumber name_tree() const;
  void write_root(FileOutput& out) const;
  void write_scopes(FileOutput& out) const;
  void write_element(FileOutput& out, page::TagId tag);
  void append_kids(std::string& out, page::TagId tag, int page);
  void append_piece(std::string& out, const Piece& piece, int page) const;
  void append_link(std::string& out, std::size_t link, int page) const;
  void append_texts(std::string& out, page::TagId tag) const;
  void write_parent_tree(FileOutput& out) const;
  void append_parents(std::string& out, std::size_t key) const;
  int page_of(page::TagId tag) const;

  const page::Document& document_;
  const std::vector<Piece>& pieces_;
  const std::vector<ObjectNumber>& pages_;
  const Links& links_;
  const ObjectNumber first_;
  const ReadingOrder order_;
  const ListNumbering numbering_;
  std::map<page::TagId, std::vector<std::size_t>> areas_;  ///< links of each link element
  std::map<std::string, page::TagId> names_;               ///< elements with an id
  std::map<page::TagId, std::string> note_names_;          ///< ids that notes get which have none
  std::vector<std::size_t> page_begin_;                    ///< by page: where its pieces begin
  std::size_t most_kids_ = 0;
};

}  // namespace benchleaf::pdf
