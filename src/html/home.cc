// In: a book. Out: its front door and the page about it.
#include "html/home.h"

#include "html/blocks.h"
#include "html/runs.h"
#include "html/signs.h"

namespace benchleaf::html {

namespace {

/// The chapter's opening sentence where no line was written for its door.
const model::Runs* lead_of(const model::Chapter& chapter) {
  for (const model::Block& block : chapter.blocks) {
    const auto* paragraph = std::get_if<model::Paragraph>(&block.what);
    if (paragraph != nullptr && paragraph->role == model::Paragraph::Role::lead) return &paragraph->runs;
  }
  return nullptr;
}

Markup set_door(const model::Chapter& chapter, Setting& setting) {
  const model::Door& door = chapter.door;
  Element item("li");
  item.add(Element("span").in_class("door-number").set("aria-hidden", "true").say(std::to_string(chapter.number)));
  Element words_of_door("div");
  Element link("a");
  link.href(address_of(setting.plan.page_of(chapter), setting)).say(door.thing.empty() ? chapter.title : door.thing);
  words_of_door.add(Element("h3").add(link));
  const model::Runs* line = door.line.empty() ? lead_of(chapter) : &door.line;
  if (line != nullptr) words_of_door.add(Element("p").add(set_runs(*line, setting)));
  return item.add(words_of_door);
}

Markup set_edition(const model::Book& book) {
  const std::string date = book.date.empty() ? std::string() : ", " + book.date;
  Markup out = Element("p").in_class("edition").say("Edition " + book.edition + date);
  for (const std::string& imprint : book.imprints) out += Element("p").in_class("edition").say(imprint);
  return out;
}

/// The place of the search, which a script puts there; without one the lists lead on.
Markup set_ways(const Setting& setting) {
  Element line("p");
  line.say("Look a number or a name up in the ");
  if (const Page* index = setting.plan.index_page())
    line.add(Element("a").href(address_of(*index, setting)).say("index")).say(", or go by the ");
  line.add(Element("a").href(address_of(*setting.plan.page_at(kContentsPath), setting)).say("contents")).say(".");
  Markup out = Element("h2").in_class("no-rule").say("What have I got in front of me?");
  out += Element("div").id(Id::of_frame("search_place")).add(line);
  return out;
}

}  // namespace

Markup set_home(Setting& setting) {
  const model::Book& book = setting.plan.book();
  Markup out = Element("h1").say(book.title);
  if (!book.subtitle.empty()) out += Element("p").in_class("lead").say(book.subtitle);
  out += set_edition(book);
  out += set_ways(setting);
  Element doors("ul");
  doors.in_class("doors");
  for (const model::Chapter& chapter : book.chapters) doors.add(set_door(chapter, setting));
  out += Element("h2").in_class("no-rule").say("Start from the thing in hand");
  if (!book.chapters.empty()) out += doors;
  out += whole_legend(setting);
  return out;
}

Markup set_about(Setting& setting) {
  const model::Book& book = setting.plan.book();
  Markup out = Element("h1").say(setting.page.title);
  Element title("p");
  title.in_class("lead").say(book.title);
  if (!book.subtitle.empty()) title.say(". ").say(book.subtitle);
  out += title;
  out += set_edition(book);
  out += set_blocks(book.cover_notes, setting);
  return out;
}

}  // namespace benchleaf::html
