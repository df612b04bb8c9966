// In: the content of a page and what it has used. Out: the whole page. Whatever needs a script is put in by the script, so
// that without one no dead control stands there; the policy lets nothing load but what lies beside the pages.
#include "html/frame.h"

#include <algorithm>

#include "html/assets.h"
#include "html/signs.h"

namespace benchleaf::html {

namespace {

/// Chapters on the bar of a narrow screen, beside `more`.
constexpr std::size_t kBarPlaces = 5;

constexpr std::string_view kPolicy =
    "default-src 'none'; style-src 'self'; script-src 'self' 'wasm-unsafe-eval'; base-uri 'none'; form-action 'none'";

Element page_link(const Page& page, const Setting& setting) {
  Element link("a");
  link.href(address_of(page, setting));
  if (&page == &setting.page) link.set("aria-current", "page");
  return link;
}

Element chapter_link(const model::Chapter& chapter, const Setting& setting) {
  const Page& page = setting.plan.page_of(chapter);
  Element link("a");
  link.href(address_of(page, setting));
  if (&page == &setting.page)
    link.set("aria-current", "page");
  else if (&chapter == setting.page.chapter)
    link.set("aria-current", "true");
  link.add(Element("b").say(std::to_string(chapter.number))).say(" ");
  return link.add(Element("span").say(chapter.tab.empty() ? chapter.title : chapter.tab));
}

const Page* neighbour(const Setting& setting, int step) {
  const auto& pages = setting.plan.pages();
  const auto here = &setting.page - pages.data();
  const auto there = here + step;
  return there < 0 || there >= static_cast<std::ptrdiff_t>(pages.size()) ? nullptr : &pages.at(static_cast<std::size_t>(there));
}

/// What a browser shows of a title; a longer one loses its end anyway, and the page says it in full.
constexpr std::size_t kLongestTitle = 70;

/// The words that fit, with an ellipsis for the rest.
std::string cut_title(const std::string& title) {
  if (title.size() <= kLongestTitle) return title;
  std::size_t end = title.rfind(' ', kLongestTitle - 3);
  if (end == std::string::npos || end == 0) {
    end = kLongestTitle - 3;
    while (end > 0 && (static_cast<unsigned char>(title.at(end)) & 0xC0) == 0x80) --end;
  }
  return title.substr(0, end) + "\xE2\x80\xA6";
}

/// The page first, then as much of where it stands as fits.
std::string head_title(const Setting& setting) {
  const Page& page = setting.page;
  std::string title = cut_title(page.title);
  if (page.kind == Page::Kind::home) return title;
  const std::string book = " \xE2\x80\x93 " + setting.plan.book().title;
  const std::string chapter = page.entry != nullptr ? " \xE2\x80\x93 " + page.chapter->title : std::string();
  if (title.size() + chapter.size() + book.size() <= kLongestTitle) title += chapter;
  if (title.size() + book.size() <= kLongestTitle) title += book;
  return title;
}

/// In the order in which they run.
std::vector<std::string_view> scripts_of(const Page& page) {
  std::vector<std::string_view> paths{kAskPath, kFieldsPath, kPlacesPath, kPagePath, kTrueSizePath};
  if (page.kind == Page::Kind::entry) paths.push_back(kStepsPath);
  if (page.kind == Page::Kind::calculator) paths.push_back(kCalculatorPath);
  if (page.kind == Page::Kind::ticket) paths.insert(paths.end(), {kYamlPath, kTicketFormPath});
  if (page.kind == Page::Kind::labels) paths.push_back(kLabelsPath);
  return paths;
}

Markup set_document_head(const Setting& setting) {
  Element head("head");
  head.add(Element("meta").set("charset", "utf-8"));
  head.add(Element("meta").set("http-equiv", "Content-Security-Policy").set("content", kPolicy));
  head.add(Element("meta").set("name", "viewport").set("content", "width=device-width, initial-scale=1"));
  head.add(Element("meta").set("name", "color-scheme").set("content", "light dark"));
  head.add(Element("title").say(head_title(setting)));
  head.add(Element("link").set("rel", "stylesheet").href(Url::between(setting.page.path, kStylePath)));
  for (const std::string_view path : scripts_of(setting.page)) head.add(script(Url::between(setting.page.path, path)));
  if (const Page* before = neighbour(setting, -1))
    head.add(Element("link").set("rel", "prev").href(address_of(*before, setting)));
  if (const Page* after = neighbour(setting, 1)) head.add(Element("link").set("rel", "next").href(address_of(*after, setting)));
  return head;
}

/// The pages about the book as a whole: contents, index if there is one, what stands on its cover.
std::vector<const Page*> book_pages(const Setting& setting) {
  std::vector<const Page*> pages;
  for (const Page* page :
       {setting.plan.page_at(kTicketPath), setting.plan.page_at(kLabelFormPath), setting.plan.page_at(kCalculatorsPath),
        setting.plan.page_at(kContentsPath), setting.plan.index_page(), setting.plan.page_at(kAboutPath)}) {
    if (page != nullptr) pages.push_back(page);
  }
  return pages;
}

/// Short words for the pages that belong to no chapter.
std::string short_title(const Page& page) {
  if (page.kind == Page::Kind::about) return "About";
  if (page.kind == Page::Kind::calculators) return "Calculators";
  if (page.kind == Page::Kind::ticket) return "Ticket";
  if (page.kind == Page::Kind::labels) return "Labels";
  return page.kind == Page::Kind::contents ? "Contents" : "Index";
}

Markup set_top(const Setting& setting) {
  Element list("ul");
  for (const Page* page : book_pages(setting)) list.add(Element("li").add(page_link(*page, setting).say(short_title(*page))));
  Element brand = page_link(setting.plan.pages().front(), setting).in_class("brand").say(setting.plan.book().title);
  return Element("header").in_class("top").add(brand).add(Element("nav").set("aria-label", "Book").add(list));
}

Markup set_thumb_index(const Setting& setting) {
  Element list("ul");
  for (const model::Chapter& chapter : setting.plan.book().chapters) list.add(Element("li").add(chapter_link(chapter, setting)));
  return Element("nav").in_class("thumb").set("aria-label", "Chapters").add(list);
}

/// Five chapters, the current one always among them, and all of them under `more`.
Markup set_bottom_bar(const Setting& setting) {
  const auto& chapters = setting.plan.book().chapters;
  Element list("ul"), all("ul");
  const auto is_current = [&](const model::Chapter& chapter) { return &chapter == setting.page.chapter; };
  const auto current = std::find_if(chapters.begin(), chapters.end(), is_current);
  for (std::size_t i = 0; i < std::min(kBarPlaces, chapters.size()); ++i) {
    const bool last_place = i + 1 == kBarPlaces;
    const bool beyond = current != chapters.end() && static_cast<std::size_t>(current - chapters.begin()) >= kBarPlaces;
    list.add(Element("li").add(chapter_link(last_place && beyond ? *current : chapters.at(i), setting)));
  }
  for (const model::Chapter& chapter : chapters) all.add(Element("li").add(chapter_link(chapter, setting)));
  for (const Page* page : book_pages(setting)) all.add(Element("li").add(page_link(*page, setting).say(short_title(*page))));
  Element more("details");
  more.add(Element("summary").say("more")).add(all);
  return Element("nav").in_class("bar").set("aria-label", "Chapters, short").add(list).add(more);
}

Markup set_breadcrumb(Setting& setting) {
  const Page& page = setting.page;
  Element list("ol");
  if (page.kind == Page::Kind::calculator) {
    const Page& all = *setting.plan.page_at(kCalculatorsPath);
    list.add(Element("li").add(Element("a").href(address_of(all, setting)).say(all.title)));
    return Element("nav").in_class("breadcrumb").set("aria-label", "Breadcrumb").add(list);
  }
  if (page.kind != Page::Kind::entry) return {};
  list.add(
      Element("li").add(Element("a").href(address_of(setting.plan.page_of(*page.chapter), setting)).say(page.chapter->title)));
  if (page.section != nullptr) {
    const std::string section = model::plain_text(page.section->runs);
    const bool named = setting.plan.place_of_anchor(page.section->anchor).has_value();
    Element item("li");
    if (named)
      item.add(Element("a").href(*address_of(page.section->anchor, setting)).say(section));
    else
      item.say(section);
    if (!section.empty()) list.add(item);
  }
  return Element("nav").in_class("breadcrumb").set("aria-label", "Breadcrumb").add(list);
}

Markup set_turn(const Setting& setting) {
  Element list("ul");
  if (const Page* before = neighbour(setting, -1)) {
    list.add(Element("li").in_class("before").add(
        Element("a").href(address_of(*before, setting)).add(Element("span").say("Previous")).say(" ").say(before->title)));
  }
  if (const Page* after = neighbour(setting, 1)) {
    list.add(Element("li").in_class("after").add(
        Element("a").href(address_of(*after, setting)).add(Element("span").say("Next")).say(" ").say(after->title)));
  }
  return Element("nav").in_class("turn").set("aria-label", "Previous and next page").add(list);
}

/// What whoever reports an error has to name.
Markup set_report_line(const Setting& setting) {
  const Page& page = setting.page;
  const std::string file = page.entry != nullptr ? "content/" + page.entry->anchor + ".yaml" : "html/" + page.path;
  Element line("p");
  line.in_class("report").say("Something wrong on this page? Report it with ").add(Element("code").say(file));
  return line.say(" and edition " + setting.plan.book().edition + ".");
}

Markup set_foot(const Setting& setting) {
  const model::Book& book = setting.plan.book();
  Element line("p");
  line.say("Edition " + book.edition);
  if (!book.date.empty()) {
    Element date("time");
    if (!book.iso_date.empty()) date.set("datetime", book.iso_date);
    line.say(", ").add(date.say(book.date));
  }
  Element foot("footer");
  foot.in_class("foot").add(line).add(set_report_line(setting));
  if (!book.standing_line.empty()) foot.add(Element("p").say(book.standing_line));
  return foot;
}

}  // namespace

std::string framed(const Markup& content, Setting& setting) {
  const Id main_id = Id::of_frame("main_content");
  Element main("main");
  main.id(main_id).set("tabindex", "-1");
  if (setting.page.entry != nullptr) main.set("data-record", setting.page.entry->anchor);
  main.add(set_breadcrumb(setting)).add(content);
  // The home page brings the whole legend itself.
  if (setting.page.kind != Page::Kind::home) main.add(legend(setting));
  main.add(set_turn(setting));
  Element body("body");
  body.add(Element("a").in_class("skip").href(Url::within(main_id)).say("Skip to the page"));
  body.add(sprite(setting)).add(set_top(setting)).add(set_thumb_index(setting));
  body.add(main).add(set_foot(setting)).add(set_bottom_bar(setting));
  Element root("html");
  root.set("lang", setting.plan.book().language).set("data-root", Url::to_root(setting.page.path).text());
  return document(root.add(set_document_head(setting)).add(body));
}

}  // namespace benchleaf::html
