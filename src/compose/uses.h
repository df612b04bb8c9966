#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "model/knowledge_base.h"

namespace benchleaf::compose {

/// A verdict of a liquid or an abrasive on a material, found from the material's side.
struct LiquidVerdict {
  std::string agent;  ///< `chemistry/ID` or `abrasive/ID`
  std::string path;   ///< `on-materials.3` in its record
  const model::OnMaterial* item = nullptr;
};

/// Who names whom: the references of the records, read backwards. Points into the knowledge base.
class Uses {
 public:
  explicit Uses(const model::KnowledgeBase& records);

  /// Records of a kind that name this one, ordered by id.
  std::vector<std::string> named_by(std::string_view reference, model::Kind kind) const;
  /// What liquids and abrasives do to `material/ID`, liquids first.
  const std::vector<LiquidVerdict>& liquids_on(std::string_view material) const;

 private:
  std::map<std::string, std::vector<std::string>, std::less<>> named_by_;
  std::map<std::string, std::vector<LiquidVerdict>, std::less<>> liquids_;
};

}  // namespace benchleaf::compose
