// In: tags, pieces of content, links. Out: the objects of the structure tree (ISO 32000-1, 14.7).
#include "pdf/structure.h"

#include <algorithm>
#include <utility>

#include "pdf/roles.h"
#include "pdf/tree.h"

namespace benchleaf::pdf {

Structure::Structure(const page::Document& document, const std::vector<Piece>& pieces, const std::vector<ObjectNumber>& pages,
                     const Links& links, ListNumbering numbering, ObjectNumber first)
    : document_(document),
      pieces_(pieces),
      pages_(pages),
      links_(links),
      first_(first),
      order_(document.tags, pieces),
      numbering_(std::move(numbering)) {
  for (std::size_t i = 0; i < links.all().size(); ++i) areas_[links.all().at(i).area->tag].push_back(i);
  for (std::size_t i = 0; i < document.tags.size(); ++i) {
    const page::TagId tag = static_cast<page::TagId>(i);
    if (!document.tags.at(i).more().id.empty()) {
      names_.emplace(document.tags.at(i).more().id, tag);
    } else if (document.tags.at(i).role == page::Role::note) {
      // ISO 14289-1, 7.9: every note has a name of its own.
      names_.emplace(note_names_[tag] = "note-" + std::to_string(i), tag);
    }
  }
  page_begin_.assign(document.pages.size() + 1, pieces.size());
  for (std::size_t i = pieces.size(); i-- > 0;) page_begin_.at(static_cast<std::size_t>(pieces.at(i).page)) = i;
  for (std::size_t page = document.pages.size(); page-- > 0;) {
    page_begin_.at(page) = std::min(page_begin_.at(page), page_begin_.at(page + 1));  // a page without pieces
  }
}

ObjectNumber Structure::name_tree() const { return parent_tree() + tree_objects(document_.pages.size() + links_.all().size()); }

ObjectNumber Structure::next_number() const { return name_tree() + (names_.empty() ? 0 : tree_objects(names_.size())); }

void Structure::write(FileOutput& out) {
  write_root(out);
  write_scopes(out);
  for (std::size_t tag = 0; tag < document_.tags.size(); ++tag) write_element(out, static_cast<page::TagId>(tag));
  write_parent_tree(out);
  if (names_.empty()) return;
  std::vector<std::map<std::string, page::TagId>::const_iterator> names;
  for (auto name = names_.cbegin(); name != names_.cend(); ++name) names.push_back(name);
  write_tree(out, name_tree(),
             {"/Names", names.size(), [&](std::string& bytes, std::size_t i) { append_bytes(bytes, names.at(i)->first); },
              [&](std::string& bytes, std::size_t i) { append_reference(bytes, element(names.at(i)->second)); }});
}

void Structure::write_root(FileOutput& out) const {
  out.begin(root());
  std::string& bytes = out.bytes();
  bytes += "<</Type/StructTreeRoot/K ";
  append_reference(bytes, element(0));
  bytes += "/ParentTree ";
  append_reference(bytes, parent_tree());
  bytes += "/ParentTreeNextKey ";
  append_integer(bytes, static_cast<std::int64_t>(document_.pages.size() + links_.all().size()));
  if (!names_.empty()) {
    bytes += "/IDTree ";
    append_reference(bytes, name_tree());
  }
  bytes += ">>";
  out.end();
}

void Structure::write_scopes(FileOutput& out) const {
  for (const page::Tag::Scope one : {page::Tag::Scope::row, page::Tag::Scope::column}) {
    out.begin(scope(one));
    out.bytes() += scope_attributes(one);
    out.end();
  }
}

/// The page on which the element's own content begins; -1 if it has none.
int Structure::page_of(page::TagId tag) const {
  const Piece* first = order_.first_piece(tag);
  if (first != nullptr) return first->page;
  const page::Tag& element = document_.tags.at(static_cast<std::size_t>(tag));
  return element.more().box ? element.more().box_page : -1;
}

void Structure::write_element(FileOutput& out, page::TagId tag) {
  const page::Tag& element_tag = document_.tags.at(static_cast<std::size_t>(tag));
  out.begin(element(tag));
  std::string& bytes = out.bytes();
  bytes += "<</S/";
  bytes += role_name(element_tag.role);
  bytes += "/P ";
  append_reference(bytes, tag == 0 ? root() : element(element_tag.parent));
  const int page = page_of(tag);
  if (page >= 0) {
    bytes += "/Pg ";
    append_reference(bytes, pages_.at(static_cast<std::size_t>(page)));
  }
  append_kids(bytes, tag, page);
  if (is_plain_head(element_tag)) {
    bytes += "/A ";
    append_reference(bytes, scope(element_tag.scope));
  } else {
    const auto numbering = numbering_.find(tag);
    append_attributes(bytes, element_tag, numbering == numbering_.end() ? std::string_view() : numbering->second, document_);
  }
  append_texts(bytes, tag);
  bytes += ">>";
  out.end();
}

void Structure::append_kids(std::string& out, page::TagId tag, int page) {
  const std::vector<Kid> kids = order_.kids_of(tag);
  const auto areas = areas_.find(tag);
  const std::size_t count = kids.size() + (areas == areas_.end() ? 0 : areas->second.size());
  most_kids_ = std::max(most_kids_, count);
  if (count == 0) return;
  out += count == 1 ? "/K " : "/K[";
  bool first = true;
  const auto part = [&first, &out] {
    if (!first) out += ' ';
    first = false;
  };
  for (const Kid& kid : kids) {
    part();
    if (kid.kind == Kid::Kind::element) {
      append_reference(out, element(static_cast<page::TagId>(kid.index)));
    } else {
      append_piece(out, pieces_.at(kid.index), page);
    }
  }
  if (areas != areas_.end()) {
    for (std::size_t link : areas->second) {
      part();
      append_link(out, link, page);
    }
  }
  if (count > 1) out += ']';
}

void Structure::append_piece(std::string& out, const Piece& piece, int page) const {
  if (piece.page == page) {
    append_integer(out, piece.id);
    return;
  }
  out += "<</Type/MCR/Pg ";
  append_reference(out, pages_.at(static_cast<std::size_t>(piece.page)));
  out += "/MCID ";
  append_integer(out, piece.id);
  out += ">>";
}

void Structure::append_link(std::string& out, std::size_t link, int page) const {
  out += "<</Type/OBJR/Obj ";
  append_reference(out, links_.number(link));
  if (links_.all().at(link).page != page) {
    out += "/Pg ";
    append_reference(out, pages_.at(static_cast<std::size_t>(links_.all().at(link).page)));
  }
  out += ">>";
}

void Structure::append_texts(std::string& out, page::TagId id) const {
  const page::Tag& tag = document_.tags.at(static_cast<std::size_t>(id));
  const auto append = [&out](std::string_view key, const std::string& text) {
    if (text.empty()) return;
    out += key;
    append_text(out, text);
  };
  append("/T", tag.more().title);
  append("/Alt", tag.more().alt);
  const auto note = note_names_.find(id);
  const std::string& name = note == note_names_.end() ? tag.more().id : note->second;
  if (name.empty()) return;
  out += "/ID";
  append_bytes(out, name);
}

/// Keys 0 and up are pages, each with the elements of its pieces by their numbers; behind them stand the links.
void Structure::write_parent_tree(FileOutput& out) const {
  write_tree(out, parent_tree(),
             {"/Nums", document_.pages.size() + links_.all().size(),
              [](std::string& bytes, std::size_t key) { append_integer(bytes, static_cast<std::int64_t>(key)); },
              [this](std::string& bytes, std::size_t key) { append_parents(bytes, key); }});
}

void Structure::append_parents(std::string& out, std::size_t key) const {
  if (key >= document_.pages.size()) {
    append_reference(out, element(links_.all().at(key - document_.pages.size()).area->tag));
    return;
  }
  out += '[';
  for (std::size_t i = page_begin_.at(key); i < page_begin_.at(key + 1); ++i) {
    if (i > page_begin_.at(key)) out += ' ';
    append_reference(out, element(pieces_.at(i).tag));
  }
  out += ']';
}

}  // namespace benchleaf::pdf
