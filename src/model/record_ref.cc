// In: words that name records. Out: their kind and id, and the names of kinds.
#include "model/record_ref.h"

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

}  // namespace

std::string_view kind_name(Kind kind) { return words(kind).name; }
bool is_of_ticket(Kind kind) { return kind == Kind::job || kind == Kind::hold || kind == Kind::question || kind == Kind::look; }

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

RecordRef::RecordRef(std::string_view text) : text_(text) {
  const std::size_t slash = text.find('/');
  if (slash != std::string_view::npos && is_record_id(text.substr(slash + 1))) kind_ = kind_from_name(text.substr(0, slash));
}

RecordRef::RecordRef(Kind kind, std::string_view id) : kind_(kind) { text_.append(kind_name(kind)).append("/").append(id); }

std::string RecordRef::id() const { return kind_ ? text_.substr(kind_name(*kind_).size() + 1) : text_; }

FactId::FactId(std::string_view id)
    : record(id.substr(0, id.find('#'))), path(id.substr(std::min(id.size(), record.size() + 1))) {}

}  // namespace benchleaf::model
