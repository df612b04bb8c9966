// In: a book. Out: the files of its site.
#include "html/site.h"

#include "html/assets.h"
#include "html/frame.h"
#include "html/page_content.h"
#include "html/places.h"

namespace benchleaf::html {

std::map<std::string, std::string> render_site(const model::Book& book, report::Findings& findings) {
  const Plan plan(book);
  std::map<std::string, std::string> files;
  for (const Asset& asset : assets()) files.emplace(asset.path, asset.text);
  files.emplace(kPlacesPath, places_script(plan));
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
