// In: any bytes. Out: nothing; aborts where the YAML reader breaks its word.
#include <algorithm>

#include "fuzz/property.h"
#include "read/yaml_builder.h"
#include "read/yaml_reader.h"

namespace {

using benchleaf::fuzz::must;
using benchleaf::model::Node;

/// Levels below a node, itself included where it is a list or a mapping.
std::size_t depth_of(const Node& node) {
  std::size_t deepest = 0;
  for (const Node& item : node.items) deepest = std::max(deepest, depth_of(item));
  for (const auto& member : node.members) deepest = std::max(deepest, depth_of(member.value));
  return node.is_scalar() ? 0 : deepest + 1;
}

void check_span(const benchleaf::base::Span& span, int lines) {
  must(span.line >= 0 && span.line <= lines, "a place lies in the file");
  must(span.column >= 0 && span.length >= 0, "a place has a column and a length");
}

void check_places(const Node& node, int lines) {
  check_span(node.span, lines);
  for (const Node& item : node.items) check_places(item, lines);
  for (const auto& member : node.members) {
    check_span(member.key_span, lines);
    check_places(member.value, lines);
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text = benchleaf::fuzz::text_of(data, size);
  benchleaf::report::Findings findings;
  const auto tree = benchleaf::read::read_yaml({text, 0, 1}, findings);
  int lines = 1;
  for (const char c : text) lines += c == '\n' ? 1 : 0;
  must(tree.root || findings.has_errors(), "no tree without a finding");
  for (const auto& finding : findings.all()) {
    check_span(finding.where, lines);
    must(!finding.message.empty(), "a finding says something");
  }
  if (!tree.root) return 0;
  check_places(*tree.root, lines);
  must(depth_of(*tree.root) <= benchleaf::read::kMostDepth, "no tree beyond the deepest level");
  return 0;
}
