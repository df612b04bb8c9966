// In: the plan of the site. Out: the contents as nested lists of links: chapter, section, the entries in it.
#include "html/contents.h"

#include "html/runs.h"

namespace benchleaf::html {

namespace {

/// A section of a chapter, or the part before the first section, with the entries that stand in it.
struct Part {
  const model::Heading* heading = nullptr;
  std::vector<const model::Entry*> entries;
};

std::vector<Part> parts_of(const model::Chapter& chapter) {
  std::vector<Part> parts(1);
  for (const model::Block& outer : chapter.blocks) {
    for_each_block(outer, [&](const model::Block& block) {
      const auto* heading = std::get_if<model::Heading>(&block.what);
      if (heading != nullptr && heading->level <= 2 && heading != opening_heading(chapter)) parts.push_back({heading, {}});
      if (const auto* entry = std::get_if<model::Entry>(&block.what)) parts.back().entries.push_back(entry);
    });
  }
  return parts;
}

Markup set_heading(const model::Heading& heading, Setting& setting) {
  const Markup text = set_runs_plainly(heading.runs, setting);
  const std::optional<Place> place = setting.plan.place_of_anchor(heading.anchor);
  if (heading.anchor.empty() || !place) return text;
  return Element("a").href(*address_of(heading.anchor, setting)).add(text);
}

Markup set_entries(const std::vector<const model::Entry*>& entries, Setting& setting) {
  Element list("ul");
  list.in_class("contents-entries");
  for (const model::Entry* entry : entries) {
    const Page& page = setting.plan.page_of(*entry);
    list.add(Element("li").add(Element("a").href(address_of(page, setting)).say(page.title)));
  }
  return entries.empty() ? Markup() : list.markup();
}

Markup set_chapter(const model::Chapter& chapter, Setting& setting) {
  Element item("li"), sections("ul");
  Element title("span");
  title.in_class("chapter").add(Element("span").in_class("number").say(std::to_string(chapter.number))).say(" ");
  title.add(Element("a").href(address_of(setting.plan.page_of(chapter), setting)).say(chapter.title));
  item.add(title);
  bool any_section = false;
  for (const Part& part : parts_of(chapter)) {
    if (part.heading == nullptr) {
      item.add(set_entries(part.entries, setting));
    } else {
      sections.add(Element("li").add(set_heading(*part.heading, setting)).add(set_entries(part.entries, setting)));
      any_section = true;
    }
  }
  return any_section ? item.add(sections) : item;
}

}  // namespace

Markup set_contents(Setting& setting) {
  Element list("ul");
  list.in_class("contents");
  for (const model::Chapter& chapter : setting.plan.book().chapters) list.add(set_chapter(chapter, setting));
  return list;
}

}  // namespace benchleaf::html
