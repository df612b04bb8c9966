// In: one record's entry. Out: its page, its full text inside a chapter, or its line in a register. The key is the largest
// thing on the page; names, drawing and trust of the stated values stand beside it.
#include "html/entry.h"

#include <algorithm>

#include "html/blocks.h"
#include "html/drawings.h"
#include "html/runs.h"
#include "html/signs.h"

namespace benchleaf::html {

namespace {

using model::Entry;

Markup set_names(const Entry& entry, Setting& setting) {
  Markup out;
  if (!entry.second.empty()) out += Element("p").in_class("second").add(set_runs(entry.second, setting));
  if (!entry.aliases.empty()) out += Element("p").in_class("aliases").add(set_runs(entry.aliases, setting));
  return out;
}

Markup set_picture(const Entry& entry) {
  if (!entry.drawing) return {};
  Element box("div");
  box.in_class("entry-picture").add(Element("div").in_class("picture").add(picture(*entry.drawing)));
  if (entry.drawing->true_size) box.add(true_size_bar());
  return box;
}

Markup set_margin(const Entry& entry, Setting& setting) {
  if (entry.margin.empty()) return {};
  Element list("ul");
  list.in_class("margin");
  for (const model::MarginNote& note : entry.margin) {
    Element item("li");
    const auto value = note.label.begin() + (note.label.empty() ? 0 : 1);
    item.add(Element("span").in_class("margin-label").add(set_runs(model::Runs(note.label.begin(), value), setting))).say(" ");
    item.add(Element("span").in_class("margin-value").add(set_runs(model::Runs(value, note.label.end()), setting)));
    item.say(" ").add(trust_sign(note.trust, note.derived, setting));
    if (!note.more.empty()) item.add(Element("p").add(set_runs(note.more, setting)));
    list.add(item);
  }
  return list;
}

/// What is stated and how far to trust it; behind the text, since it is looked at last.
Markup set_trust(const Entry& entry, Setting& setting) {
  const Markup rows = set_margin(entry, setting);
  if (rows.empty()) return {};
  setting.last_heading = "How far to trust what is stated";
  setting.level = 2;
  Element head("h2");
  add_part(head, setting);
  return Element("section").in_class("stated").add(head.say(setting.last_heading)).add(rows);
}

ClassName rank_class(Entry::Rank rank) {
  switch (rank) {
    case Entry::Rank::key: return "rank-key";
    case Entry::Rank::title:
    case Entry::Rank::short_title: return "rank-title";
    case Entry::Rank::small: return "rank-small";
  }
  return "rank-title";
}

/// What to call an entry that has no key.
Markup key_or_anchor(const Entry& entry, Markup key) { return key.empty() ? words(entry.anchor) : key; }

}  // namespace

Markup set_entry_page(const Entry& entry, Setting& setting) {
  Element head("div");
  head.in_class("entry-head").in_class(rank_class(entry.rank));
  Element names("div");
  names.in_class("names").add(Element("h1").add(key_or_anchor(entry, set_runs(entry.key, setting))));
  head.add(names.add(set_names(entry, setting))).add(set_picture(entry));
  setting.last_heading = setting.page.title;
  setting.raised = 1;  // the sections of an entry are the second level of its own page
  Markup out = head;
  const Markup content = set_blocks(entry.blocks, setting);
  const Markup trust = set_trust(entry, setting);
  out += own_contents(content, setting);
  out += content;
  out += trust;
  return out;
}

Markup set_small_entry(const Entry& entry, Setting& setting) {
  const int outer = setting.level;
  Element key = heading_element(outer + 1 + setting.raised, setting);
  const Url address = address_of(setting.plan.page_of(entry), setting);
  key.add(Element("a").href(address).add(key_or_anchor(entry, set_runs_plainly(entry.key, setting))));
  setting.last_heading = model::plain_text(entry.key);
  add_part(key, setting);
  Element section("section");
  section.in_class("small-entry").add(key).add(set_names(entry, setting)).add(set_picture(entry));
  section.add(set_margin(entry, setting)).add(set_blocks(entry.blocks, setting));
  setting.level = outer;
  return section;
}

Markup set_register(const std::vector<const Entry*>& entries, Setting& setting) {
  Element list("ul");
  const bool keys =
      std::all_of(entries.begin(), entries.end(), [](const Entry* entry) { return entry->rank == Entry::Rank::key; });
  list.in_class("register");
  if (keys) list.in_class("keys");
  for (const Entry* entry : entries) {
    Element link("a");
    link.href(address_of(setting.plan.page_of(*entry), setting));
    link.add(Element("b").in_class("key").add(key_or_anchor(*entry, set_runs_plainly(entry->key, setting))));
    if (!entry->second.empty()) {
      link.say(" ").add(Element("span").in_class("second").add(set_runs_plainly(entry->second, setting)));
    }
    Element item("li");
    item.add(link);
    if (!entry->aliases.empty()) {
      item.say(" ").add(Element("span").in_class("aliases").add(set_runs(entry->aliases, setting)));
    }
    list.add(item);
  }
  return list;
}

}  // namespace benchleaf::html
