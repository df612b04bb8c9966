// In: index entries in their order and the numbers of the pages. Out: the index, three columns a page.
#include <algorithm>
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

/// What has no page on paper, such as the invented records of the demonstration.
bool leads_nowhere(const model::IndexEntry& entry, const PageNumbers& numbers) {
  return entry.see.empty() && entry.under.empty() &&
         std::none_of(entry.targets.begin(), entry.targets.end(),
                      [&numbers](const std::string& target) { return numbers.find(target) != numbers.end(); });
}

constexpr double kUnderMm = 3;
/// A subject with so many lines stays in one column.
constexpr std::size_t kMostKept = 9;

/// The entry, and its sub-entries set in under it.
Strips entry_strips(Setting& setting, const model::IndexEntry& entry, const PageNumbers& numbers, Length width, TagId tag) {
  setting.linked.clear();
  Strips strips{stacked(set_paragraph(setting, entry_runs(entry, numbers), look::index_entry(), width, tag, 0))};
  strips.front().running = entry.word;
  for (const model::IndexEntry& under : entry.under) {
    setting.linked.clear();
    Strip line =
        stacked(set_paragraph(setting, entry_runs(under, numbers), look::index_entry(), width - from_mm(kUnderMm), tag, 0));
    shift(line, from_mm(kUnderMm), 0);
    strips.push_back(std::move(line));
  }
  return strips;
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
    if (leads_nowhere(entry, numbers)) continue;
    if (model::index_group(entry) != group) {
      group = model::index_group(entry);
      Strips letter = set_paragraph(setting, {model::text_run(group)}, look::section_head(), width, tag, from_mm(3));
      letter.back().keep_next = true;
      for (Strip& strip : letter) strips.push_back(std::move(strip));
    }
    Strips lines = entry_strips(setting, entry, numbers, width, tag);
    if (lines.size() <= kMostKept) {
      for (std::size_t i = 0; i + 1 < lines.size(); ++i) lines[i].keep_next = true;
    }
    for (Strip& line : lines) strips.push_back(std::move(line));
  }
  fill_columns(head, strips, kColumns, setting.paper, chapter, stack);
}

}  // namespace benchleaf::page
