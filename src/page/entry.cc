// In: one record's entry. Out: strips: the look-up key large at the left with its picture, what is known at the right;
// or a title over the full measure. Margin notes go with the first strip. An entry up to a third of a page high stays whole.
#include <algorithm>
#include <utility>

#include "page/blocks.h"
#include "page/drawing.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

void put_lines(Strips& strips, Strips lines, double before_mm) {
  if (!lines.empty()) lines.front().before = from_mm(before_mm);
  for (Strip& line : lines) strips.push_back(std::move(line));
}

/// Key, second name and aliases under each other; the key is the entry's heading.
Strips name_lines(Setting& setting, const model::Entry& entry, Length width, TagId section, int level) {
  Look key = look::page_title();
  Look second = look::second_name();
  if (entry.rank == model::Entry::Rank::key) key = look::entry_key();
  if (entry.rank == model::Entry::Rank::short_title) key = look::short_title();
  if (entry.rank == model::Entry::Rank::small) {
    key = look::second_name();
    second = look::alias();
  }
  Strips strips;
  put_lines(strips, Words(setting, entry.key, key, setting.add_heading(level, section)).set(setting, width), 0);
  put_lines(strips, set_paragraph(setting, entry.second, second, width, section, 0), 0.2);
  put_lines(strips, set_paragraph(setting, entry.aliases, look::alias(), width, section, 0), 0.3);
  return strips;
}

Strip drawing_strip(Setting& setting, const model::Drawing& drawing, Length width, TagId section) {
  Strip strip;
  strip.true_size = drawing.true_size;
  const double wide = static_cast<double>(from_mm(drawing.width_mm));
  const double scale = drawing.true_size ? 1.0 : std::min(1.0, static_cast<double>(width) / wide);
  strip.height = from_mm(drawing.height_mm * scale);
  strip.before = from_mm(2.4);
  strip.items = place_drawing(setting, drawing, scale, setting.add_figure(section, drawing.alt));
  return strip;
}

/// Space, rule, and the places and notes that belong to the entry as a whole, on its first strip.
void open_entry(Setting& setting, const model::Entry& entry, Strip& first, Length width, TagId section) {
  const bool small = entry.rank == model::Entry::Rank::small;
  const Length under_rule = from_mm(small ? 1.2 : 1.6);
  shift(first, 0, under_rule);
  first.height += under_rule;
  first.before = from_mm(small ? 1.6 : 3.4);
  first.items.insert(first.items.begin(),
                     rule(0, 0, width, small ? 0.25 : 0.75, print_color(small ? model::Ink::rule : model::Ink::ink)));
  first.places.push_back({entry.anchor, 0});
  first.running = entry.running_key;
  Length y = under_rule;
  for (const model::MarginNote& note : entry.margin) {
    MarginBox box = set_margin_note(setting, note, section);
    box.y = y;
    y += box.height;
    first.signs = true;
    first.margin.push_back(std::move(box));
  }
}

/// A name alone at the foot of a page sends the reader over it for nothing: some of the entry stays with it.
void keep_start(Strips& strips) {
  const Length start = from_mm(50);
  Length y = 0;
  for (std::size_t i = 0; i + 1 < strips.size() && y + strips[i].height < start; ++i) {
    y += strips[i].height;
    strips[i].keep_next = true;
  }
}

/// Nor is the reader sent over for a line or two of its end.
void keep_end(Strips& strips) {
  const Length end = from_mm(28);
  Length y = 0;
  for (std::size_t i = strips.size(); i-- > 1 && y + strips[i].height < end;) {
    y += strips[i].height;
    strips[i - 1].keep_next = true;
  }
}

/// Gives the strips to the galley, joined into one if they are up to a third of a page high: more would leave holes.
void close_entry(Setting& setting, Strips strips, Target& target) {
  if (total_height(strips) <= setting.paper.block_height / 3) {
    Strip whole = stacked(std::move(strips));
    whole.keep_next = false;
    target.galley.strips.push_back(std::move(whole));
    return;
  }
  keep_start(strips);
  keep_end(strips);
  strips.back().keep_next = false;
  for (Strip& strip : strips) target.galley.strips.push_back(std::move(strip));
}

/// Name at the left, the rest at the right. The left column lies over as many strips of the right one as it needs.
Strips beside(Strip left, Galley right, Length offset, Galley& heads_to) {
  const int first_head = static_cast<int>(heads_to.heads.size());
  Strips strips;
  Strip first;
  std::size_t taken = 0;
  Length height = 0;
  while (taken < right.strips.size() && (taken == 0 || height < left.height || right.strips[taken - 1].keep_next)) {
    Strip& part = right.strips[taken];
    if (taken > 0) height += part.before;
    const Length own = part.height;
    overlay(first, std::move(part), offset, height);
    height += own;
    ++taken;
  }
  first.height = std::max(height, left.height);
  overlay(first, std::move(left), 0, 0);
  strips.push_back(std::move(first));
  for (; taken < right.strips.size(); ++taken) {
    Strip& part = right.strips[taken];
    shift(part, offset, 0);
    if (part.head >= 0) part.head += first_head;
    strips.push_back(std::move(part));
  }
  for (Strip& head : right.heads) {
    shift(head, offset, 0);
    heads_to.heads.push_back(std::move(head));
  }
  return strips;
}

void set_keyed(Setting& setting, const model::Entry& entry, Target& target, TagId section, int level) {
  const Length left_width = grid_width(setting.paper, 2);
  const Length offset = grid_left(setting.paper, 2);
  Strips names = name_lines(setting, entry, left_width, section, level);
  if (entry.drawing) names.push_back(drawing_strip(setting, *entry.drawing, left_width, section));
  Strip left = stacked(std::move(names));
  Galley right = set_apart(setting, entry.blocks, target.width - offset, section, level);
  Strips strips = beside(std::move(left), std::move(right), offset, target.galley);
  open_entry(setting, entry, strips.front(), target.width, section);
  close_entry(setting, std::move(strips), target);
}

void set_titled(Setting& setting, const model::Entry& entry, Target& target, TagId section, int level) {
  Strips names = name_lines(setting, entry, target.width, section, level);
  if (entry.drawing) names.push_back(drawing_strip(setting, *entry.drawing, target.width, section));
  Strips strips{stacked(std::move(names))};
  strips.front().keep_next = true;
  Galley rest = set_apart(setting, entry.blocks, target.width, section, level, false);
  const int first_head = static_cast<int>(target.galley.heads.size());
  for (Strip& head : rest.heads) target.galley.heads.push_back(std::move(head));
  for (Strip& strip : rest.strips) {
    if (strip.head >= 0) strip.head += first_head;
    if (strips.size() == 1) strip.before = from_mm(1.6);
    strips.push_back(std::move(strip));
  }
  open_entry(setting, entry, strips.front(), target.width, section);
  close_entry(setting, std::move(strips), target);
}

/// Label and sign on one side of the text block: the sign stands nearest to it.
std::vector<Item> note_items(Setting& setting, const model::MarginNote& note, TagId parent, Side side, Length& height) {
  const Length width = setting.paper.note_width;
  const Length sign = from_mm(3.4);
  const bool right = side == Side::verso;
  Strips lines = Words(setting, note.label, look::margin_label(), parent)
                     .set(setting, width - sign, right ? Look::Flush::right : Look::Flush::left);
  for (Strip& line : Words(setting, note.more, look::margin_more(), parent)
                         .set(setting, width - sign, right ? Look::Flush::right : Look::Flush::left)) {
    lines.push_back(std::move(line));
  }
  Strip whole = stacked(std::move(lines));
  shift(whole, right ? 0 : sign, 0);
  Strip mark =
      stacked(Words(setting, {model::trust_run(note.trust, note.derived)}, look::margin_label(), parent).set(setting, sign));
  overlay(whole, std::move(mark), right ? width - from_mm(2.2) : 0, 0);
  height = whole.height;
  return std::move(whole.items);
}

}  // namespace

MarginBox set_margin_note(Setting& setting, const model::MarginNote& note, TagId parent) {
  MarginBox box;
  const TagId words = setting.add_tag(Role::p, parent);  // nothing in the text refers to it: no Note of ISO 32000-1, 14.8.4.4
  box.verso = note_items(setting, note, words, Side::verso, box.height);
  box.recto = note_items(setting, note, words, Side::recto, box.height);
  box.height += from_mm(0.6);
  return box;
}

void set_entry(Setting& setting, const model::Entry& entry, Target& target) {
  const TagId section = setting.add_tag(Role::sect, target.parent);
  setting.linked.clear();
  const int level = std::min(target.heading_level + 1, 4);
  const bool titled = entry.rank == model::Entry::Rank::title || entry.rank == model::Entry::Rank::short_title;
  if (titled) {
    setting.outline.push_back({2, model::plain_text(entry.key), entry.anchor});
    set_titled(setting, entry, target, section, level);
  } else {
    set_keyed(setting, entry, target, section, level);
  }
}

}  // namespace benchleaf::page
