// In: a record. Out: what it says, without how it is written down.

#include "compose/changes/record_tree.h"

#include <algorithm>
#include <array>
#include <map>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "model/book.h"

namespace benchleaf::compose {
namespace {

using model::Node;
using model::NodeType;

using Targets = std::map<std::string, std::string, std::less<>>;

constexpr std::array<std::string_view, 4> kOfBasis = {"trust", "source", "where", "as-of"};

/// One space wherever the file has spaces or line ends.
std::string on_one_line(std::string_view text) {
  std::string line;
  for (const char c : text) {
    const bool space = c == ' ' || c == '\n' || c == '\t' || c == '\r';
    if (!space) line += c;
    if (space && !line.empty() && line.back() != ' ') line += ' ';
  }
  if (!line.empty() && line.back() == ' ') line.pop_back();
  return line;
}

std::string below(const std::string& path, std::string_view name) {
  return path.empty() ? std::string(name) : path + "." + std::string(name);
}

Node word(std::string text) {
  Node node;
  node.type = NodeType::string;
  node.text = on_one_line(text);
  return node;
}

Node list(std::vector<Node> items) {
  Node node;
  node.type = NodeType::sequence;
  node.items = std::move(items);
  return node;
}

/// Copies a tree and leaves out what says nothing or is told elsewhere.
class TreeCopy {
 public:
  TreeCopy(const std::vector<model::ReferencePlace>& references, const model::Record* record, const Named& named)
      : record_(record) {
    for (const auto& reference : references) {
      if (!reference.target.empty()) targets_.emplace(reference.path, named(reference.target));
    }
  }

  Node copy(const Node& node, const std::string& path = {}) const {
    Node out;
    out.type = node.type;
    if (node.is_scalar()) {
      const auto target = targets_.find(path);
      out.text = target == targets_.end() ? on_one_line(node.text) : target->second;
    }
    for (const auto& member : node.members) {
      if (!is_told_elsewhere(path, member.key)) {
        out.members.push_back({member.key, member.key_span, copy(member.value, below(path, member.key))});
      }
    }
    for (std::size_t i = 0; i < node.items.size(); ++i) out.items.push_back(copy(node.items[i], below(path, std::to_string(i))));
    return out;
  }

 private:
  bool is_told_elsewhere(const std::string& path, const std::string& key) const {
    if (record_ == nullptr) return false;
    if (path.empty()) return key == "id" || key == "basis";
    return record_->basis.count(path) > 0 && std::find(kOfBasis.begin(), kOfBasis.end(), key) != kOfBasis.end();
  }

  Targets targets_;
  const model::Record* record_;
};

/// The prose of a page as a tree: headings, paragraphs, lists, tables, and what its blocks ask for.
class Prose {
 public:
  explicit Prose(const Named& named) : named_(named) {}

  Node body_of(const model::Page& page) const {
    const TreeCopy copy({}, nullptr, named_);
    std::vector<Node> parts;
    for (const auto& part : page.parts) {
      const auto* block = std::get_if<model::Block>(&part);
      parts.push_back(block != nullptr ? block_tree(*block) : copy.copy(std::get<model::DerivedRequest>(part).body));
    }
    return list(std::move(parts));
  }

 private:
  std::string marked(const model::Run& run) const {
    std::string text = run.fact.empty() ? run.text : run.text + "<" + named_(run.fact) + ">";
    if (!run.target.empty() && run.fact.empty()) text = "[" + text + "](" + named_(run.target) + ")";
    if (has(run.style, model::Style::code)) text = "`" + text + "`";
    if (has(run.style, model::Style::bold)) text = "**" + text + "**";
    if (has(run.style, model::Style::italic)) text = "*" + text + "*";
    return text;
  }

  std::string marked(const model::Runs& runs) const {
    std::string text;
    for (const auto& run : runs) text += run.kind == model::Run::Kind::line_break ? " / " : marked(run);
    return text;
  }

  Node blocks_tree(const model::Blocks& blocks) const {
    if (blocks.size() == 1) return block_tree(blocks.front());
    std::vector<Node> items;
    for (const auto& block : blocks) items.push_back(block_tree(block));
    return list(std::move(items));
  }

  Node table_tree(const model::Table& table) const {
    std::vector<Node> rows;
    std::string head;
    for (const auto& column : table.columns) head += (head.empty() ? "" : " | ") + marked(column.head);
    rows.push_back(word(head));
    for (const auto& row : table.rows) {
      std::string text;
      for (std::size_t i = 0; i < row.cells.size(); ++i) text += (i == 0 ? "" : " | ") + marked(row.cells[i].runs);
      rows.push_back(word(text));
    }
    return list(std::move(rows));
  }

  /// What Markdown makes: headings, paragraphs, lists, tables.
  Node block_tree(const model::Block& block) const {
    if (const auto* heading = std::get_if<model::Heading>(&block.what)) {
      return word(std::string(static_cast<std::size_t>(heading->level), '#') + " " + marked(heading->runs));
    }
    if (const auto* paragraph = std::get_if<model::Paragraph>(&block.what)) return word(marked(paragraph->runs));
    if (const auto* table = std::get_if<model::Table>(&block.what)) return table_tree(*table);
    const auto* entries = std::get_if<model::List>(&block.what);
    if (entries == nullptr) return {};
    std::vector<Node> items;
    if (entries->ordered) items.push_back(word("in this order"));
    for (const auto& item : entries->items) items.push_back(blocks_tree(item));
    return list(std::move(items));
  }

  const Named& named_;
};

/// A mark that no record may hold parts what would else run together.
constexpr const char* kMark = "\x1F";

std::string joined(const Node& node, bool sorted) {
  if (node.is_scalar()) return sorted ? kMark + node.text + kMark : node.text;
  std::vector<std::string> parts;
  for (const auto& item : node.items) parts.push_back(joined(item, sorted));
  for (const auto& member : node.members) parts.push_back(member.key + ": " + joined(member.value, sorted));
  const bool mapping = node.type == NodeType::mapping;
  if (sorted && mapping) std::sort(parts.begin(), parts.end());
  std::string text;
  for (const auto& part : parts) text += (text.empty() ? "" : mapping ? "; " : ", ") + part;
  return sorted ? (mapping ? "{" : "[") + text + (mapping ? "}" : "]") : text;
}

}  // namespace

Told told(const model::Record& record, const Named& named) {
  Told one{record.reference(), &record, TreeCopy(record.references, &record, named).copy(record.root)};
  if (record.kind == model::Kind::page) {
    one.tree.members.push_back({"body", {}, Prose(named).body_of(static_cast<const model::Page&>(record))});
  }
  return one;
}

Told told(const model::Handbook& handbook, const Named& named) {
  return {"handbook", nullptr, TreeCopy(handbook.references, nullptr, named).copy(handbook.root)};
}

std::string basis_words(const model::Record& record, std::string_view path) {
  const model::Basis* basis = record.basis_for(path);
  if (basis == nullptr) return {};
  std::string words(model::trust_name(basis->trust));
  for (const std::string& part : {basis->source.text(), basis->where}) {
    if (!part.empty()) words += ", " + part;
  }
  return basis->as_of.empty() ? words : words + ", as of " + basis->as_of;
}

std::string flat_text(const Node& node) { return joined(node, false); }
std::string sorted_text(const Node& node) { return joined(node, true); }

}  // namespace benchleaf::compose
