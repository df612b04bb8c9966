// In: the parts that every record has. Out: names of kinds, references, places and bases of values by their paths.
#include "model/record.h"

#include <algorithm>

namespace benchleaf::model {

namespace {

struct KindWords {
  std::string_view name;
  std::string_view plural;
};

constexpr KindWords kKinds[] = {
#define BENCHLEAF_KIND(name, folder, Struct, list, plural) {folder, plural},
#include "model/kinds.def"
#undef BENCHLEAF_KIND
};

const KindWords& words(Kind kind) { return kKinds[static_cast<std::size_t>(kind)]; }

constexpr std::size_t kMostIdLength = 48;

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

std::string_view kind_name(Kind kind) { return words(kind).name; }
std::string_view kind_plural(Kind kind) { return words(kind).plural; }

std::optional<Kind> kind_from_name(std::string_view name) {
  for (Kind kind : all_kinds()) {
    if (kind_name(kind) == name) return kind;
  }
  return std::nullopt;
}

const std::vector<Kind>& all_kinds() {
  static const std::vector<Kind> kAll = {
#define BENCHLEAF_KIND(name, folder, Struct, list, plural) Kind::name,
#include "model/kinds.def"
#undef BENCHLEAF_KIND
  };
  return kAll;
}

bool is_record_id(std::string_view text) {
  if (text.empty() || text.size() > kMostIdLength || text.front() < 'a' || text.front() > 'z') return false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text.at(i);
    bool sign = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    bool hyphen = c == '-' && i + 1 < text.size() && text.at(i + 1) != '-';
    if (!sign && !hyphen) return false;
  }
  return true;
}

std::optional<std::pair<Kind, std::string>> split_reference(std::string_view reference) {
  std::size_t slash = reference.find('/');
  if (slash == std::string_view::npos) return std::nullopt;
  std::optional<Kind> kind = kind_from_name(reference.substr(0, slash));
  std::string_view id = reference.substr(slash + 1);
  if (!kind || !is_record_id(id)) return std::nullopt;
  return std::pair<Kind, std::string>{*kind, std::string(id)};
}

std::string Record::reference() const { return std::string(kind_name(kind)) + "/" + id; }

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
