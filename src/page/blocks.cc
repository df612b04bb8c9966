// In: blocks of the book. Out: strips in a galley: headings, prose, lists, figures, steps, side-by-side blocks.
#include "page/blocks.h"

#include <algorithm>
#include <utility>

#include "page/drawing.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kDenseLeading = 1.1;  // of the type of a heading on a sheet of the bench

void append(Target& target, Strips strips) {
  for (Strip& strip : strips) target.galley.strips.push_back(std::move(strip));
}

/// Small words behind those of a heading, on its last line, or on lines of their own where that has no room for them.
void add_note(Setting& setting, const model::Heading& heading, const Look& look, TagId tag, Length width, Strips& lines) {
  const Length left = Words(setting, heading.runs, look, tag).natural_width(setting) + from_mm(2);
  const Look small = setting.sized(look::table_head());
  PlainLine note = set_plain(setting, heading.note, small, tag);
  if (left + note.width > width) {
    for (Strip& line : Words(setting, {model::text_run(heading.note)}, small, tag).set(setting, width)) {
      line.keep_next = true;
      lines.push_back(std::move(line));
    }
    return;
  }
  for (Item& item : note.items) {
    shift(item, left, lines.back().baseline);
    lines.back().items.push_back(std::move(item));
  }
}

/// One line of room above headings, more above the bigger ones.
void set_heading(Setting& setting, const model::Heading& heading, Target& target) {
  const int level = std::clamp(std::max(heading.level, target.least_level), 2, 4);
  const bool section = heading.level <= 3 && !target.beside_key;
  target.heading_level = level;
  if (section) setting.linked.clear();
  const TagId tag = setting.add_heading(level, target.parent);
  Look look = section ? look::section_head() : look::sub_head();
  if (setting.dense) look.leading_pt = look.size_pt * kDenseLeading;
  Strips lines = Words(setting, heading.runs, look, tag).set(setting, target.width);
  if (lines.empty()) return;
  for (Strip& line : lines) line.keep_next = true;
  lines.back().heading = true;
  lines.front().before = from_mm(section ? 4.4 : 2.4);
  const std::string anchor = heading.anchor.empty() ? setting.section_anchor() : heading.anchor;
  lines.front().places.push_back({anchor, 0});
  if (level == 2) lines.front().running = model::plain_text(heading.runs);
  if (level == 2) setting.outline.push_back({2, model::plain_text(heading.runs), anchor});
  if (!heading.note.empty()) add_note(setting, heading, look, tag, target.width, lines);
  if (section) {
    Strip& last = lines.back();
    last.items.push_back(rule(0, last.height + from_mm(0.4), target.width, 0.75, print_color(model::Ink::ink)));
    last.height += from_mm(setting.dense ? 0.8 : 1.4);
  }
  append(target, std::move(lines));
}

Look prose_look(const model::Paragraph& paragraph, const Target& target) {
  switch (paragraph.role) {
    case model::Paragraph::Role::body: return target.prose;
    case model::Paragraph::Role::lead: return target.beside_key ? target.prose : look::lead();
    case model::Paragraph::Role::dense: return look::dense();
    case model::Paragraph::Role::note: return look::note();
    case model::Paragraph::Role::key: return look::sheet_key();
  }
  return target.prose;
}

/// Words that announce what follows are lost at the foot of a page.
bool announces(const model::Paragraph& paragraph) {
  const std::string words = model::plain_text(paragraph.runs);
  return !words.empty() && words.back() == ':';
}

void set_prose(Setting& setting, const model::Paragraph& paragraph, Target& target) {
  const Look look = setting.sized(prose_look(paragraph, target));
  const bool first = target.galley.empty();
  const bool under_heading = !target.galley.strips.empty() && target.galley.strips.back().heading;
  const double apart_mm = paragraph.role == model::Paragraph::Role::dense ? 0.7 : 1.4;
  Strips lines = set_paragraph(setting, paragraph.runs, look, target.width, target.parent, first ? 0 : from_mm(apart_mm));
  // A line or two are not enough under a heading that ends a page.
  if (under_heading && lines.size() <= 2) {
    for (Strip& line : lines) line.keep_next = true;
  }
  if (announces(paragraph) && !lines.empty()) lines.back().keep_next = true;
  append(target, std::move(lines));
}

/// The items hang from a label column; what follows the first line keeps its own breaks.
void set_list(Setting& setting, const model::List& list, Target& target) {
  const TagId list_tag = setting.add_tag(Role::list, target.parent);
  const Length indent = from_mm(5);
  int number = 0;
  for (const model::Blocks& blocks : list.items) {
    ++number;
    const TagId item = setting.add_tag(Role::list_item, list_tag);
    const TagId label = setting.add_tag(Role::label, item);
    const std::string mark = list.ordered ? std::to_string(number) + "." : "\u2013";
    PlainLine line = set_plain(setting, mark, target.prose, label);
    Galley galley;
    const TagId body = setting.add_tag(Role::list_body, item);
    Target inner{galley, target.width - indent, body, target.heading_level, target.least_level, true, target.prose};
    inner.prose.flush = Look::Flush::left;
    const model::Paragraph* only = blocks.size() == 1 ? std::get_if<model::Paragraph>(&blocks.front().what) : nullptr;
    if (only != nullptr) {
      galley.strips = Words(setting, only->runs, prose_look(*only, inner), body).set(setting, inner.width);
      keep_lines(galley.strips);
    } else {
      set_blocks(setting, blocks, inner);
    }
    if (galley.strips.empty()) continue;
    for (Strip& strip : galley.strips) shift(strip, indent, 0);
    Strip& first = galley.strips.front();
    first.before = from_mm(number == 1 ? 1.6 : 0.8);
    Length baseline = 0;
    for (const Item& placed : first.items) {
      if (const auto* text = std::get_if<TextItem>(&placed.what)) {
        baseline = text->at.y;
        break;
      }
    }
    for (Item& placed : line.items) {
      shift(placed, 0, baseline);
      first.items.insert(first.items.begin(), std::move(placed));
    }
    append(target, std::move(galley.strips));
  }
}

/// Columns of equal width side by side, in one strip.
void set_side_by_side(Setting& setting, const model::SideBySide& blocks, Target& target) {
  const int count = static_cast<int>(blocks.columns.size());
  if (count == 0) return;
  const Length width = column_width(target.width, count);
  Strip whole;
  for (int i = 0; i < count; ++i) {
    Galley galley;
    Target inner{galley, width, target.parent, target.heading_level, target.least_level, true, look::entry_body()};
    set_blocks(setting, blocks.columns[static_cast<std::size_t>(i)], inner);
    if (galley.strips.empty()) continue;
    galley.strips.front().before = 0;
    Strip column = stacked(std::move(galley.strips));
    whole.height = std::max(whole.height, column.height);
    overlay(whole, std::move(column), i * (width + from_mm(5)), 0);
  }
  if (whole.height == 0) return;
  whole.before = from_mm(2.4);
  target.galley.strips.push_back(std::move(whole));
}

struct Dispatch {
  Setting& setting;
  Target& target;
  void operator()(const model::Heading& heading) const { set_heading(setting, heading, target); }
  void operator()(const model::Paragraph& paragraph) const { set_prose(setting, paragraph, target); }
  void operator()(const model::List& list) const { set_list(setting, list, target); }
  void operator()(const model::Table& table) const { set_table(setting, table, target); }
  void operator()(const model::Message& message) const { set_message(setting, message, target); }
  void operator()(const model::Step& step) const { set_step(setting, step, target); }
  void operator()(const model::Entry& entry) const { set_entry(setting, entry, target); }
  void operator()(const model::SideBySide& blocks) const { set_side_by_side(setting, blocks, target); }
  void operator()(const model::IndexList&) const {}  // set when the numbers are known
};

}  // namespace

void set_block(Setting& setting, const model::Block& block, Target& target) {
  if (!std::holds_alternative<model::Step>(block.what)) target.steps = kLayoutArtifact;
  std::visit(Dispatch{setting, target}, block.what);
}

void set_blocks(Setting& setting, const model::Blocks& blocks, Target& target) {
  for (const model::Block& block : blocks) set_block(setting, block, target);
}

Galley set_apart(Setting& setting, const std::vector<std::shared_ptr<const model::Block>>& blocks, Length width, TagId parent,
                 int heading_level, bool beside_key) {
  Galley galley;
  Target inner{galley, width, parent, heading_level, heading_level + 1, beside_key, look::entry_body()};
  std::vector<const model::Block*> all;
  for (const auto& block : blocks) all.push_back(block.get());
  for (std::size_t at = 0; at < all.size(); ++at) {
    if (beside_key)
      set_block(setting, *all[at], inner);
    else
      set_in_columns(setting, all, at, inner);
  }
  if (!galley.strips.empty()) galley.strips.front().before = 0;
  return galley;
}

}  // namespace benchleaf::page
