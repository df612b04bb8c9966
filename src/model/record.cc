// In: the parts that every record has. Out: places and bases of values by their paths.
#include "model/record.h"

#include <algorithm>

namespace benchleaf::model {

namespace {

/// Whether `inner` is `outer` or lies within it: `size.diameter` lies within `size`.
bool lies_within(std::string_view inner, std::string_view outer) {
  if (outer.empty()) return true;
  if (inner.substr(0, outer.size()) != outer) return false;
  return inner.size() == outer.size() || inner.at(outer.size()) == '.';
}

std::string_view parent_of(std::string_view path) {
  std::size_t dot = path.rfind('.');
  return dot == std::string_view::npos ? std::string_view() : path.substr(0, dot);
}

}  // namespace

base::Span Record::span_of(std::string_view path) const {
  while (!path.empty()) {
    if (const Node* node = root.at_path(path)) return node->span;
    path = parent_of(path);
  }
  return span;
}

bool Record::usable(std::string_view path) const {
  return std::none_of(unusable.begin(), unusable.end(),
                      [path](const std::string& broken) { return lies_within(path, broken) || lies_within(broken, path); });
}

const Basis* Record::basis_for(std::string_view path) const {
  while (!path.empty()) {
    auto found = basis.find(path);
    if (found != basis.end()) return &found->second;
    path = parent_of(path);
  }
  return nullptr;
}

void take_as_given(Record& record) {
  for (const std::string& path : record.basis_paths) {
    if (record.basis_for(path) == nullptr) record.basis.emplace(path, Basis{{}, {}, Trust::given, {}, record.span_of(path)});
  }
}

}  // namespace benchleaf::model
