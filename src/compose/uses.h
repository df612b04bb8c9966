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

  /// Records of a kind that name this one, ordered by id; with a field, those that name it there: `made-of`.
  std::vector<std::string> named_by(std::string_view reference, model::Kind kind, std::string_view field = {}) const;
  /// What liquids and abrasives do to `material/ID`, liquids first.
  const std::vector<LiquidVerdict>& liquids_on(std::string_view material) const;

 private:
  struct Use {
    std::string record;
    std::string path;  ///< `made-of.0.substance` in it
  };
  std::map<std::string, std::vector<Use>, std::less<>> named_by_;
  std::map<std::string, std::vector<LiquidVerdict>, std::less<>> liquids_;
};

}  // namespace benchleaf::compose
