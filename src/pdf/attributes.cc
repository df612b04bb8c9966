// In: a structure element. Out: its attribute objects (ISO 32000-1, 14.8.5), each with the owner that defines them.
#include "pdf/attributes.h"

#include <cstddef>
#include <utility>
#include <vector>

#include "base/utf8.h"
#include "page/packed.h"
#include "pdf/syntax.h"

namespace benchleaf::pdf {

namespace {

/// Digits and letters count; of the signs, which cannot, only the shape is told.
std::string_view numbering_of(std::string_view label) {
  const std::u32string codes = base::code_points(label);
  if (codes.empty()) return "Disc";
  const char32_t first = codes.front();
  const bool single = codes.size() == 1 || !((codes[1] >= U'a' && codes[1] <= U'z') || (codes[1] >= U'A' && codes[1] <= U'Z'));
  if (first >= U'0' && first <= U'9') return "Decimal";
  if (single && first >= U'a' && first <= U'z') return "LowerAlpha";
  if (single && first >= U'A' && first <= U'Z') return "UpperAlpha";
  if (first == U'\u25CB' || first == U'\u25E6') return "Circle";
  if ((first >= U'\u25A0' && first <= U'\u25AB') || (first >= U'\u2610' && first <= U'\u2612')) return "Square";
  return "Disc";
}

std::string_view scope_name(page::Tag::Scope scope) { return scope == page::Tag::Scope::row ? "Row" : "Column"; }

std::string table_attributes(const page::Tag& tag) {
  std::string out;
  if (tag.role == page::Role::header_cell && tag.scope != page::Tag::Scope::none) {
    out += "/Scope/";
    out += scope_name(tag.scope);
  }
  if (tag.more().column_span > 1) {
    out += "/ColSpan ";
    append_integer(out, tag.more().column_span);
  }
  if (!tag.more().headers.empty()) {
    out += "/Headers[";
    for (const std::string& header : tag.more().headers) append_bytes(out, header);
    out += ']';
  }
  return out.empty() ? out : "<</O/Table" + out + ">>";
}

std::string layout_attributes(const page::Tag& tag, const page::Document& document) {
  if (!tag.more().box) return {};
  std::string out = "<</O/Layout/Placement/Block/BBox";
  append_rough_box(out, *tag.more().box, document.pages.at(static_cast<std::size_t>(tag.more().box_page)).height);
  return out + ">>";
}

std::string list_attributes(std::string_view numbering) {
  return numbering.empty() ? std::string() : "<</O/List/ListNumbering/" + std::string(numbering) + ">>";
}

const page::Tag* label_of(const page::Document& document, page::TagId id) {
  if (id < 0) return nullptr;
  const page::Tag* tag = &document.tags.at(static_cast<std::size_t>(id));
  if (tag->role != page::Role::label && tag->parent >= 0) tag = &document.tags.at(static_cast<std::size_t>(tag->parent));
  return tag->role == page::Role::label ? tag : nullptr;
}

/// The list that a label belongs to, or nothing where it stands elsewhere.
page::TagId list_of(const page::Document& document, const page::Tag& label) {
  if (label.parent < 0) return page::kLayoutArtifact;
  const page::TagId list = document.tags.at(static_cast<std::size_t>(label.parent)).parent;
  return list >= 0 && document.tags.at(static_cast<std::size_t>(list)).role == page::Role::list ? list : page::kLayoutArtifact;
}

}  // namespace

bool is_plain_head(const page::Tag& tag) {
  return tag.role == page::Role::header_cell && tag.scope != page::Tag::Scope::none && tag.more().column_span == 1 &&
         tag.more().headers.empty();
}

std::string scope_attributes(page::Tag::Scope scope) {
  page::Tag tag;
  tag.role = page::Role::header_cell;
  tag.scope = scope;
  return table_attributes(tag);
}

ListNumbering list_numbering(const page::Document& document) {
  ListNumbering numbering;
  for (const page::Page& page : document.pages) {
    bool labels = false;
    page::for_each_tag(page, [&](page::TagId tag) { labels = labels || label_of(document, tag) != nullptr; });
    if (!labels) continue;
    page::for_each_item(page, [&](const page::Item& item) {
      const page::Tag* label = label_of(document, item.tag);
      if (label == nullptr) return;
      const page::TagId list = list_of(document, *label);
      if (list < 0 || numbering.count(list) > 0) return;
      const page::TextItem* text = std::get_if<page::TextItem>(&item.what);
      numbering.emplace(list, numbering_of(text == nullptr ? std::string_view() : text->text));
    });
  }
  return numbering;
}

void append_attributes(std::string& out, const page::Tag& tag, std::string_view numbering, const page::Document& document) {
  std::vector<std::string> objects;
  for (std::string object : {table_attributes(tag), layout_attributes(tag, document), list_attributes(numbering)}) {
    if (!object.empty()) objects.push_back(std::move(object));
  }
  if (objects.empty()) return;
  out += objects.size() > 1 ? "/A[" : "/A";
  for (const std::string& object : objects) out += object;
  if (objects.size() > 1) out += ']';
}

}  // namespace benchleaf::pdf
