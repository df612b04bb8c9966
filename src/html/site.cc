// In: a book. Out: the files of its site.
#include "html/site.h"

#include "html/assets.h"
#include "html/blocks.h"
#include "html/calculator.h"
#include "html/contents.h"
#include "html/entry.h"
#include "html/frame.h"
#include "html/home.h"
#include "html/runs.h"
#include "html/search_data.h"

namespace benchleaf::html {

namespace {

Markup set_chapter(const model::Chapter& chapter, Setting& setting) {
  Markup out = Element("p").in_class("chapter-number").say("Chapter " + std::to_string(chapter.number));
  out += Element("h1").say(chapter.title);
  setting.last_heading = chapter.title;
  const std::span<const model::Block> blocks(chapter.blocks);
  out += set_blocks(blocks.subspan(opening_heading(chapter) != nullptr ? 1 : 0), setting);
  return out;
}

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
    case Page::Kind::chapter: return set_chapter(*setting.page.chapter, setting);
    case Page::Kind::entry: return set_entry_page(*setting.page.entry, setting);
  }
  return {};
}

}  // namespace

std::map<std::string, std::string> render_site(const model::Book& book, report::Findings& findings) {
  const Plan plan(book);
  std::map<std::string, std::string> files;
  for (const Asset& asset : assets()) files.emplace(asset.path, asset.text);
  files.emplace(kSearchDataPath, search_data(book.search, plan));
  std::map<std::string, std::string> dead;  // target to the first page that asks for it
  for (const Page& page : plan.pages()) {
    Setting setting(plan, page);
    const Markup content = set_page(setting);
    files.emplace(page.path, framed(content, setting));
    for (const std::string& target : setting.dead) dead.try_emplace(target, page.path);
  }
  for (const auto& [target, path] : dead) {
    findings.add(report::Rule::html_dead_link, {}, "page " + path + " links to \"" + target + "\", which is not in the book",
                 "set the words without a link, or add the record to a chapter");
  }
  return files;
}

}  // namespace benchleaf::html
