// In: index entries in their order and the numbers of the pages. Out: the index, three columns a page.
#include <cstdlib>
#include <map>
#include <utility>

#include "page/front.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

/// The word, then the pages as links; `see` words lead on instead.
model::Runs entry_runs(const model::IndexEntry& entry, const PageNumbers& numbers) {
  model::Runs runs{model::text_run(entry.word)};
  if (!entry.see.empty()) {
    runs.push_back(model::text_run(" see ", model::Style::italic));
    runs.push_back(model::text_run(entry.see));
    return runs;
  }
  std::map<int, std::string> places;  // by page, each once
  for (const std::string& target : entry.targets) {
    const auto number = numbers.find(target);
    if (number != numbers.end()) places.emplace(std::atoi(number->second.c_str()), target);
  }
  bool first = true;
  for (const auto& [page, target] : places) {
    runs.push_back(model::text_run(first ? "\u2002" : ", "));
    runs.push_back(model::link_run(std::to_string(page), target, model::Style::bold));
    first = false;
  }
  return runs;
}

}  // namespace

void set_index(Setting& setting, const model::IndexList& index, const Strips& head, const PageNumbers& numbers, int chapter,
               TagId parent, PageStack& stack) {
  constexpr int kColumns = 3;
  const Length width = column_width(setting.paper.block_width, kColumns);
  const TagId tag = setting.add_tag(Role::index, parent);
  Strips strips;
  std::string group;
  for (const model::IndexEntry& entry : index.entries) {
    if (model::index_group(entry) != group) {
      group = model::index_group(entry);
      Strips letter = set_paragraph(setting, {model::text_run(group)}, look::section_head(), width, tag, from_mm(3));
      letter.back().keep_next = true;
      for (Strip& strip : letter) strips.push_back(std::move(strip));
    }
    setting.linked.clear();
    Strip strip = stacked(set_paragraph(setting, entry_runs(entry, numbers), look::index_entry(), width, tag, 0));
    strip.running = entry.word;
    strips.push_back(std::move(strip));
  }
  fill_columns(head, strips, kColumns, setting.paper, chapter, stack);
}

}  // namespace benchleaf::page
