// In: one mapping of a checked tree. Out: its values by key, typed, without those that a finding was raised about.
#include "read/decode_fields.h"

#include <algorithm>
#include <utility>

#include "read/canonical.h"

namespace benchleaf::read {

namespace {

using model::Node;
using model::NodeType;

std::optional<base::Quantity> quantity_of(const Node& node) {
  return node.quantity ? std::optional(*node.quantity) : std::nullopt;
}

}  // namespace

std::string Fields::inner(std::string_view key) const {
  return path_.empty() ? std::string(key) : path_ + "." + std::string(key);
}

bool Fields::usable(const std::string& path) const {
  return std::find(context_->unusable.begin(), context_->unusable.end(), path) == context_->unusable.end();
}

bool Fields::whole() const {
  return std::none_of(context_->unusable.begin(), context_->unusable.end(), [this](const std::string& broken) {
    return broken.size() >= path_.size() && broken.compare(0, path_.size(), path_) == 0 &&
           (broken.size() == path_.size() || broken.at(path_.size()) == '.');
  });
}

const Node* Fields::value(std::string_view key) const {
  const Node* node = node_->find(key);
  return node != nullptr && usable(inner(key)) ? node : nullptr;
}

std::string Fields::text(std::string_view key) const {
  const Node* node = value(key);
  return node != nullptr && node->is_scalar() ? node->text : std::string();
}

std::vector<std::string> Fields::texts(std::string_view key) const {
  std::vector<std::string> words;
  const Node* node = value(key);
  if (node == nullptr) return words;
  for (std::size_t i = 0; i < node->items.size(); ++i) {
    if (usable(inner(key) + "." + std::to_string(i))) words.push_back(node->items.at(i).text);
  }
  return words;
}

int Fields::count(std::string_view key, int otherwise) const {
  const Node* node = value(key);
  std::optional<double> number = node != nullptr ? number_of(*node) : std::nullopt;
  bool fits = number && *number >= -1e9 && *number <= 1e9;
  return fits ? static_cast<int>(*number) : otherwise;
}

bool Fields::flag(std::string_view key) const {
  const Node* node = value(key);
  return node != nullptr && is_true(*node);
}

std::optional<base::Quantity> Fields::quantity(std::string_view key) const {
  const Node* node = value(key);
  return node != nullptr ? quantity_of(*node) : std::nullopt;
}

std::vector<base::Quantity> Fields::quantities(std::string_view key) const {
  std::vector<base::Quantity> list;
  const Node* node = value(key);
  if (node == nullptr) return list;
  for (std::size_t i = 0; i < node->items.size(); ++i) {
    if (!usable(inner(key) + "." + std::to_string(i))) continue;
    if (std::optional<base::Quantity> quantity = quantity_of(node->items.at(i))) list.push_back(*quantity);
  }
  return list;
}

model::RecordRef Fields::target(const std::string& path, const Node& node) const {
  auto found = context_->targets.find(path);
  return found == context_->targets.end() ? model::RecordRef(node.text) : found->second;
}

model::RecordRef Fields::reference(std::string_view key) const {
  const Node* node = value(key);
  return node != nullptr ? target(inner(key), *node) : model::RecordRef();
}

model::References Fields::references(std::string_view key) const {
  model::References list;
  const Node* node = value(key);
  if (node == nullptr) return list;
  for (std::size_t i = 0; i < node->items.size(); ++i) {
    const std::string path = inner(key) + "." + std::to_string(i);
    if (usable(path)) list.push_back(target(path, node->items.at(i)));
  }
  return list;
}

model::Verdict Fields::verdict(std::string_view key) const {
  const std::string word = text(key);
  if (word == "ok") return model::Verdict::use;
  return word == "with-care" ? model::Verdict::with_limits : model::Verdict::never;
}

std::optional<Fields> Fields::part(std::string_view key) const {
  const Node* node = value(key);
  if (node == nullptr || node->type != NodeType::mapping) return std::nullopt;
  return Fields(*node, inner(key), *context_);
}

std::vector<Fields> Fields::parts(std::string_view key) const {
  std::vector<Fields> list;
  const Node* node = value(key);
  if (node == nullptr) return list;
  for (std::size_t i = 0; i < node->items.size(); ++i) {
    list.emplace_back(node->items.at(i), inner(key) + "." + std::to_string(i), *context_);
  }
  return list;
}

base::Span Fields::span(std::string_view key) const {
  const Node* node = node_->find(key);
  return node != nullptr ? node->span : node_->span;
}

}  // namespace benchleaf::read
