// In: a leaflet. Out: one page that can be sent and opened anywhere. It is set as the only chapter of a book, so that its blocks
// look as in the handbook.
#include "html/leaflet.h"

#include <algorithm>
#include <string_view>

#include "html/assets.h"
#include "html/blocks.h"
#include "html/signs.h"

namespace benchleaf::html {

namespace {

constexpr std::string_view kPolicy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";
/// The frame of the handbook has a bar at each side; a leaflet has none.
constexpr std::string_view kAlone =
    "body{display:block;margin:0 auto;max-width:46rem;padding:1rem}main{margin:0;padding:0;max-width:none}"
    "h2{break-after:avoid}li{break-inside:avoid}";

Markup head_of(const model::Leaflet& leaflet) {
  Element head("head");
  head.add(Element("meta").set("charset", "utf-8"));
  head.add(Element("meta").set("http-equiv", "Content-Security-Policy").set("content", kPolicy));
  head.add(Element("meta").set("name", "viewport").set("content", "width=device-width, initial-scale=1"));
  head.add(Element("meta").set("name", "color-scheme").set("content", "light dark"));
  return head.add(Element("title").say(leaflet.title));
}

/// No element of the handbook holds a style, so that no word of a book can; this one holds ours alone.
std::string with_style(std::string page) {
  const auto& all = assets();
  const auto sheet = std::find_if(all.begin(), all.end(), [](const Asset& one) { return one.path == kStylePath; });
  const std::size_t end = page.find("</head>");
  return page.insert(end, "<style>" + std::string(sheet->text) + std::string(kAlone) + "</style>");
}

}  // namespace

std::string render_leaflet(const model::Leaflet& leaflet, report::Findings& findings) {
  model::Book book;
  book.title = leaflet.title;
  book.language = leaflet.language;
  book.chapters.push_back({1, leaflet.id, leaflet.title, leaflet.title, model::blocks_of(leaflet), {}});
  const Plan plan(book);
  Setting setting(plan, plan.page_of(book.chapters.front()));
  setting.leaflet = true;
  Element main("main");
  main.add(Element("h1").say(leaflet.title)).add(Element("p").in_class("lead").say(leaflet.subtitle));
  main.add(set_blocks(std::span<const model::Block>(book.chapters.front().blocks), setting)).add(legend(setting));
  for (const std::string& target : setting.dead)
    findings.add(report::Rule::html_dead_link, {}, "the leaflet links to \"" + target + "\"", "set the words without a link");
  Element body("body");
  body.add(sprite(setting)).add(main);
  body.add(Element("footer").in_class("foot").add(Element("p").say(leaflet.imprint + ". " + leaflet.standing_line)));
  Element root("html");
  root.set("lang", leaflet.language);
  return with_style(document(root.add(head_of(leaflet)).add(body)));
}

}  // namespace benchleaf::html
