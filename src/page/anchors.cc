// In: the book. Out: the names of all its places, so that a link is known to lead somewhere before anything is set.
#include "page/anchors.h"

namespace benchleaf::page {
namespace {

void collect(const model::Block& block, std::set<std::string>& anchors);

struct Collector {
  std::set<std::string>& anchors;
  void operator()(const model::Heading& heading) const {
    if (!heading.anchor.empty()) anchors.insert(heading.anchor);
  }
  void operator()(const model::Entry& entry) const {
    anchors.insert(entry.anchor);
    for (const auto& block : entry.blocks) collect(*block, anchors);
  }
  void operator()(const model::Table& table) const {
    for (const model::TableRow& row : table.rows) {
      if (!row.anchor.empty()) anchors.insert(row.anchor);
    }
  }
  void operator()(const model::List& list) const {
    for (const model::Blocks& item : list.items) {
      for (const model::Block& block : item) collect(block, anchors);
    }
  }
  template <class Other>
  void operator()(const Other&) const {}
};

void collect(const model::Block& block, std::set<std::string>& anchors) { std::visit(Collector{anchors}, block.what); }

}  // namespace

std::string chapter_anchor(const model::Chapter& chapter) { return "chapter/" + chapter.id; }

std::set<std::string> anchors_of(const model::Book& book) {
  std::set<std::string> anchors;
  for (const model::Chapter& chapter : book.chapters) {
    anchors.insert(chapter_anchor(chapter));
    for (const model::Block& block : chapter.blocks) collect(block, anchors);
  }
  return anchors;
}

}  // namespace benchleaf::page
