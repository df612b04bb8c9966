// In: the checked files of the content, then those of its overlays. Out: one file for each record, the uppermost.
#include "read/overlays.h"

#include <cstddef>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <utility>

#include "read/canonical.h"
#include "read/file_start.h"

namespace benchleaf::read {

namespace {

base::Span place_of(const CheckedFile& file) {
  const model::Node* id = file.root.find("id");
  return id == nullptr ? start_of(file.file) : id->span;
}

bool says_the_same(const CheckedFile& one, const CheckedFile& other) {
  return one.body == other.body && canonical(one.root) == canonical(other.root);
}

void tell_twice(const CheckedFile& second, const CheckedFile& first, report::Findings& findings) {
  report::Finding& finding =
      findings.add(report::Rule::overlay_twice, place_of(second), "the record " + second.reference() + " stands in two overlays",
                   "leave it in one of them");
  finding.notes.push_back({place_of(first), "the other"});
}

}  // namespace

void lay_over(std::vector<CheckedFile>& files, report::Findings& findings) {
  std::map<model::RecordRef, std::size_t> uppermost;
  std::set<std::size_t> gone;
  for (std::size_t i = 0; i < files.size(); ++i) {
    CheckedFile& file = files.at(i);
    if (!file.name.kind) continue;
    const auto [below, first] = uppermost.emplace(file.reference(), i);
    if (first) continue;
    CheckedFile& other = files.at(below->second);
    if (other.overlay) {
      tell_twice(file, other, findings);
      gone.insert(i);
      continue;
    }
    const bool same = says_the_same(file, other);
    file.replaced = std::make_shared<const model::Replaced>(model::Replaced{place_of(other), std::move(other.root), same});
    gone.insert(below->second);
    below->second = i;
  }
  std::vector<CheckedFile> kept;
  for (std::size_t i = 0; i < files.size(); ++i) {
    if (gone.count(i) == 0) kept.push_back(std::move(files.at(i)));
  }
  files = std::move(kept);
}

}  // namespace benchleaf::read
