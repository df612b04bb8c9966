#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "model/knowledge_base.h"

namespace benchleaf::compose {

/// A verdict of a liquid or an abrasive on a material, found from the material's side.
struct LiquidVerdict {
  model::RecordRef agent;  ///< a liquid or an abrasive
  std::string path;        ///< `on-materials.3` in its record
  const model::OnMaterial* item = nullptr;
};

/// Who names whom: the references of the records, read backwards. Points into the knowledge base.
class Uses {
 public:
  explicit Uses(const model::KnowledgeBase& records);

  /// Records of a kind that name this one, ordered by id; with a field, those that name it there: `made-of`.
  model::References named_by(const model::RecordRef& reference, model::Kind kind, std::string_view field = {}) const;
  /// What liquids and abrasives do to a material, liquids first.
  const std::vector<LiquidVerdict>& liquids_on(const model::RecordRef& material) const;

 private:
  struct Use {
    model::RecordRef record;
    std::string path;  ///< `made-of.0.substance` in it
  };
  std::map<model::RecordRef, std::vector<Use>> named_by_;
  std::map<model::RecordRef, std::vector<LiquidVerdict>> liquids_;
};

}  // namespace benchleaf::compose
