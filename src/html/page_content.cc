// In: a page of the plan. Out: its content.
#include "html/page_content.h"

#include <span>

#include "html/blocks.h"
#include "html/calculator.h"
#include "html/contents.h"
#include "html/entry.h"
#include "html/home.h"
#include "html/label_form.h"
#include "html/runs.h"
#include "html/ticket_form.h"

namespace benchleaf::html {

namespace {

Markup set_chapter(const model::Chapter& chapter, Setting& setting) {
  Markup out = Element("p").in_class("chapter-number").say("Chapter " + std::to_string(chapter.number));
  out += Element("h1").say(chapter.title);
  setting.last_heading = chapter.title;
  const std::span<const model::Block> blocks(chapter.blocks);
  const Markup content = set_blocks(blocks.subspan(opening_heading(chapter) != nullptr ? 1 : 0), setting);
  out += own_contents(content, setting);
  out += content;
  return out;
}

}  // namespace

Markup set_page(Setting& setting) {
  switch (setting.page.kind) {
    case Page::Kind::home: return set_home(setting);
    case Page::Kind::contents: {
      Markup out = Element("h1").say(setting.page.title);
      out += set_contents(setting);
      return out;
    }
    case Page::Kind::about: return set_about(setting);
    case Page::Kind::calculators: return set_calculators(setting);
    case Page::Kind::calculator: return set_calculator(*setting.page.calculator, setting);
    case Page::Kind::ticket: return set_ticket_form(setting);
    case Page::Kind::labels: return set_label_form(setting);
    case Page::Kind::chapter: return set_chapter(*setting.page.chapter, setting);
    case Page::Kind::entry: return set_entry_page(*setting.page.entry, setting);
  }
  return {};
}

}  // namespace benchleaf::html
