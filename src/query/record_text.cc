// In: a record. Out: its sentences, as they are searched and shown.
#include "query/record_text.h"

#include <array>

#include "model/knowledge_base.h"

namespace benchleaf::query {

namespace {

using model::Kind;

/// Where a record of each kind says in a sentence what it is about; the first that a record has.
constexpr std::array<const char*, 10> kSummaries = {"meaning", "hazard", "looks", "recognise", "purpose",
                                                    "lead",    "use",    "where", "found-in",  "publication"};
/// Where it says more.
constexpr std::array<const char*, 7> kMore = {"harm", "avoid", "first-aid", "care", "where", "found-in", "uses"};

bool is_text(const model::Record& record, const char* path, const model::Node* node) {
  return node != nullptr && node->type == model::NodeType::string && record.usable(path);
}

}  // namespace

std::string summary_of(const model::Record& record) {
  for (const char* path : kSummaries) {
    const model::Node* node = record.root.find(path);
    if (is_text(record, path, node)) return node->text;
  }
  const model::Node* uses = record.root.find("uses");
  if (uses == nullptr || !record.usable("uses")) return {};
  std::string text = uses->text;
  for (const auto& item : uses->items) text += (text.empty() ? "" : ", ") + item.text;
  return text;
}

std::vector<std::string> sentences_of(const model::Record& record) {
  std::vector<std::string> list;
  if (record.kind == Kind::source || record.kind == Kind::cell) return list;
  if (std::string summary = summary_of(record); !summary.empty()) list.push_back(std::move(summary));
  for (const char* path : kMore) {
    const model::Node* node = record.root.find(path);
    if (is_text(record, path, node) && (list.empty() || list.front() != node->text)) list.push_back(node->text);
    if (node == nullptr || !record.usable(path)) continue;
    for (const auto& item : node->items) list.push_back(item.text);
  }
  if (record.kind == Kind::symptom) {
    for (const auto& cause : static_cast<const model::Symptom&>(record).causes) list.push_back(cause.cause);
  }
  return list;
}

}  // namespace benchleaf::query
