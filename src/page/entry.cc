// In: one record's entry. Out: strips: the look-up key large at the left with its picture, what is known at the right;
// or a title over the full measure; a short entry in its column, name first. An entry up to a third of a page high stays whole.
#include <algorithm>
#include <utility>

#include "page/blocks.h"
#include "page/columns.h"
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
    key = look::small_head();
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

/// Space, rule, and the place of the entry as a whole, on its first strip.
void open_entry(const model::Entry& entry, Strip& first, Length width) {
  const bool small = entry.rank == model::Entry::Rank::small;
  const Length under_rule = from_mm(small ? 1.2 : 1.6);
  shift(first, 0, under_rule);
  first.height += under_rule;
  first.before = from_mm(small ? 1.6 : 3.4);
  first.items.insert(first.items.begin(),
                     rule(0, 0, width, small ? 0.25 : 0.75, print_color(small ? model::Ink::rule : model::Ink::ink)));
  first.places.push_back({entry.anchor, 0});
  first.running = entry.running_key;
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

/// What goes in columns made one strip each.
Strips columns_joined(Setting& setting, const Galley& galley) {
  Strips joined;
  const Strips& strips = galley.strips;
  for (std::size_t i = 0; i < strips.size();) {
    if (strips[i].columns == 1) {
      joined.push_back(strips[i++]);
      continue;
    }
    std::size_t end = i;
    while (end < strips.size() && strips[end].columns == strips[i].columns) ++end;
    joined.push_back(in_columns(galley, i, end, setting.paper.block_width, setting.paper.block_height));
    i = end;
  }
  return joined;
}

bool has_columns(const Strips& strips) {
  return std::any_of(strips.begin(), strips.end(), [](const Strip& strip) { return strip.columns > 1; });
}

/// Gives the strips to the galley, joined into one if they are up to a third of a page high: more would leave holes.
void close_entry(Setting& setting, const model::Entry& entry, Strips strips, Target& target) {
  const Length most = setting.paper.block_height / 3;
  if (has_columns(strips) && (entry.whole || total_height(strips) <= 3 * most)) {
    Galley galley{std::move(strips), target.galley.heads, false};
    Strips joined = columns_joined(setting, galley);
    strips = total_height(joined) <= most || entry.whole ? std::move(joined) : std::move(galley.strips);
  }
  if (total_height(strips) <= most && !has_columns(strips)) {
    Strip whole = stacked(std::move(strips));
    whole.keep_next = false;
    strips = {std::move(whole)};
  } else if (!has_columns(strips)) {
    keep_start(strips);
    keep_end(strips);
    strips.back().keep_next = false;
  }
  const int spread = entry.whole ? setting.next_spread() : 0;
  for (Strip& strip : strips) {
    strip.spread = spread;
    target.galley.strips.push_back(std::move(strip));
  }
}

/// Name at the left, the rest at the right. The left column lies over as many strips of the right one as it needs.
Strips beside(Strip left, Galley right, Length offset, Galley& heads_to) {
  const int first_head = static_cast<int>(heads_to.heads.size());
  Strips strips;
  Strip first;
  const Length left_height = left.height;
  overlay(first, std::move(left), 0, 0);  // the name is read before what is said of it
  std::size_t taken = 0;
  Length height = 0;
  while (taken < right.strips.size() && (taken == 0 || height < left_height || right.strips[taken - 1].keep_next)) {
    Strip& part = right.strips[taken];
    if (taken > 0) height += part.before;
    const Length own = part.height;
    overlay(first, std::move(part), offset, height);
    height += own;
    ++taken;
  }
  first.height = std::max(height, left_height);
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
  open_entry(entry, strips.front(), target.width);
  close_entry(setting, entry, std::move(strips), target);
}

/// Name, other names and words under each other in the width there is.
void set_short(Setting& setting, const model::Entry& entry, Target& target, TagId section, int level) {
  Strips strips = name_lines(setting, entry, target.width, section, level);
  for (Strip& name : strips) name.keep_next = true;
  if (entry.drawing) strips.push_back(drawing_strip(setting, *entry.drawing, target.width, section));
  Galley rest = set_apart(setting, entry.blocks, target.width, section, level);
  const int first_head = static_cast<int>(target.galley.heads.size());
  for (Strip& head : rest.heads) target.galley.heads.push_back(std::move(head));
  for (Strip& strip : rest.strips) {
    if (strip.head >= 0) strip.head += first_head;
    strips.push_back(std::move(strip));
  }
  open_entry(entry, strips.front(), target.width);
  close_entry(setting, entry, std::move(strips), target);
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
  open_entry(entry, strips.front(), target.width);
  close_entry(setting, entry, std::move(strips), target);
}

}  // namespace

void set_entry(Setting& setting, const model::Entry& entry, Target& target) {
  const TagId section = setting.add_tag(Role::sect, target.parent);
  setting.linked.clear();
  const int level = std::min(target.heading_level + 1, 4);
  const bool titled = entry.rank == model::Entry::Rank::title || entry.rank == model::Entry::Rank::short_title;
  if (titled) {
    setting.outline.push_back({2, model::plain_text(entry.key), entry.anchor});
    set_titled(setting, entry, target, section, level);
  } else if (entry.rank == model::Entry::Rank::small) {
    set_short(setting, entry, target, section, level);
  } else {
    set_keyed(setting, entry, target, section, level);
  }
}

}  // namespace benchleaf::page
