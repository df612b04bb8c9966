// In: records as they were read. Out: the places of their files where a slip can happen.

#include "slips/places.h"

#include <algorithm>
#include <string_view>

#include "base/ascii.h"

namespace benchleaf::test {
namespace {

using model::Node;
using model::Record;

bool is_number(std::string_view word) { return !word.empty() && word.find_first_not_of("0123456789") == std::string_view::npos; }

/// `steps.2.with.0` as `steps.*.with.*`, and every entry below basis as one field.
std::string without_numbers(const std::string& path) {
  constexpr std::string_view kBasis = "basis.";
  if (path.substr(0, kBasis.size()) == kBasis) {
    const std::string last = path.substr(path.rfind('.') + 1);
    constexpr std::string_view kOwn[] = {"source", "trust", "where", "as-of"};
    const bool own =
        path.find('.', kBasis.size()) != std::string::npos && std::find(std::begin(kOwn), std::end(kOwn), last) != std::end(kOwn);
    return own ? "basis.*." + last : "basis.*";
  }
  std::string field;
  for (std::size_t at = 0; at <= path.size();) {
    const std::size_t dot = std::min(path.find('.', at), path.size());
    const std::string word = path.substr(at, dot - at);
    field += (field.empty() ? "" : ".") + (is_number(word) ? std::string("*") : word);
    at = dot + 1;
  }
  return field;
}

/// A code is one word, or a few of which one is a number: `SR44W`, `Flam. Liq. 3`.
bool is_code(const std::string& text) {
  const auto spaces = std::count(text.begin(), text.end(), ' ');
  if (spaces == 0) return !text.empty() && text.back() != '.';
  constexpr std::ptrdiff_t kFew = 2;
  return spaces <= kFew && is_number(text.substr(text.rfind(' ') + 1));
}

class Walk {
 public:
  Walk(const Record& record, Places& places) : record_(record), places_(places) {
    for (const auto& reference : record.references) references_.emplace(reference.path, &reference);
  }

  void walk(const Node& node, const std::string& path) {
    const std::string field = std::string(model::kind_name(record_.kind)) + (path.empty() ? "" : " " + without_numbers(path));
    if (node.is_scalar()) {
      places_.values[field].push_back({&record_, path, field, sort_of(node, path), &node, reference_at(path)});
      return;
    }
    const std::string front = path.empty() ? std::string() : path + ".";
    for (std::size_t i = 0; i < node.members.size(); ++i) {
      const std::string inner = front + node.members[i].key;
      const std::string name = std::string(model::kind_name(record_.kind)) + " " + without_numbers(inner);
      places_.members[name].push_back({&record_, name, &node, i, holds_prose(node.members[i].value, inner)});
      walk(node.members[i].value, inner);
    }
    for (std::size_t i = 0; i < node.items.size(); ++i) walk(node.items[i], front + std::to_string(i));
  }

 private:
  const model::ReferencePlace* reference_at(const std::string& path) const {
    const auto found = references_.find(path);
    return found == references_.end() ? nullptr : found->second;
  }

  Sort sort_of(const Node& node, const std::string& path) const {
    const auto& quantities = record_.quantity_paths;
    if (std::find(quantities.begin(), quantities.end(), path) != quantities.end()) return Sort::quantity;
    if (reference_at(path) != nullptr) return Sort::reference;
    return is_code(node.text) ? Sort::code : Sort::prose;
  }

  bool holds_prose(const Node& node, const std::string& path) const {
    if (node.is_scalar()) return sort_of(node, path) == Sort::prose;
    return !node.items.empty() && holds_prose(node.items.front(), path + ".0");
  }

  const Record& record_;
  Places& places_;
  std::map<std::string, const model::ReferencePlace*> references_;
};

bool is_continuation(char byte) { return (static_cast<unsigned char>(byte) & 0xC0) == 0x80; }

/// The last line on which something of a value stands.
int last_line(const Node& node) {
  int line = node.span.line;
  for (const auto& member : node.members) line = std::max(line, last_line(member.value));
  for (const Node& item : node.items) line = std::max(line, last_line(item));
  return line;
}

std::size_t after_line(const std::string& text, int line) {
  std::size_t at = 0;
  for (int i = 0; i < line; ++i) at = std::min(text.find('\n', at), text.size() - 1) + 1;
  return at;
}

}  // namespace

Places places_of(const model::KnowledgeBase& base) {
  Places places;
  for (const Record* record : base.all()) Walk(*record, places).walk(record->root, {});
  return places;
}

std::string file_of(const Record& record) { return record.reference() + (record.kind == model::Kind::page ? ".md" : ".yaml"); }

std::size_t byte_at(const std::string& text, int line, int column) {
  std::size_t at = after_line(text, line - 1);
  for (int i = 1; i < column && at < text.size(); ++i) {
    ++at;
    while (at < text.size() && is_continuation(text[at])) ++at;
  }
  return at;
}

std::optional<Change> stretch_of(const std::string& text, const Node& node) {
  if (node.span.line == 0 || node.text.empty()) return std::nullopt;
  const std::size_t begin = byte_at(text, node.span.line, node.span.column) + (node.quoted ? 1 : 0);
  if (text.compare(begin, node.text.size(), node.text) != 0) return std::nullopt;
  return Change{begin, begin + node.text.size(), node.text};
}

std::optional<Change> stretch_of_member(const std::string& text, const Node& mapping, std::size_t index) {
  const auto& member = mapping.members.at(index);
  const std::size_t begin = byte_at(text, member.key_span.line, member.key_span.column);
  const std::size_t line = after_line(text, member.key_span.line - 1);
  const bool block = text.find_first_not_of(' ', line) == begin;
  if (block) return Change{line, after_line(text, last_line(member.value)), {}};
  const bool alone = mapping.members.size() == 1;
  if (alone) return std::nullopt;
  if (index + 1 < mapping.members.size()) {
    const auto& next = mapping.members.at(index + 1);
    if (next.key_span.line != member.key_span.line) return std::nullopt;
    return Change{begin, byte_at(text, next.key_span.line, next.key_span.column), {}};
  }
  const auto value = stretch_of(text, member.value);
  const std::size_t comma = text.rfind(',', begin);
  if (!value || comma == std::string::npos || comma < line) return std::nullopt;
  return Change{comma, value->end + (member.value.quoted ? 1 : 0), {}};
}

}  // namespace benchleaf::test
