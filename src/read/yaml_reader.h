#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/span.h"
#include "model/node.h"
#include "report/finding.h"

namespace benchleaf::read {

/// Bytes of YAML: a whole file, or lines of one that begin at `first_line`.
struct YamlText {
  std::string_view text;
  base::FileId file = base::kNoFile;
  int first_line = 1;
};

/// What a file says, or no root where nothing of it can be used. `refused` are the places of keys and values that a
/// finding has been raised about already, so that no later check raises another.
struct YamlTree {
  std::optional<model::Node> root;
  std::vector<base::Span> refused;
};

inline constexpr std::size_t kMostRecordBytes = std::size_t{1} << 20;

/// Text to tree in the subset of YAML that records use: one document in UTF-8 without anchors, aliases, tags, merge
/// keys and duplicate keys. Every fault is one finding with its place; nothing is thrown.
YamlTree read_yaml(const YamlText& input, report::Findings& findings);

}  // namespace benchleaf::read
