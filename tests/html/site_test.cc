// The whole site of the sample book: every page whole, every way leads somewhere, every fact carries its id.
#include "html/site.h"

#include <algorithm>
#include <map>
#include <set>

#include "html/sample_book.h"
#include "html/tokenizer.h"
#include "support/catch.h"

namespace benchleaf::html_tests {

namespace {

using Site = std::map<std::string, Tokens>;

Site read_site(const model::Book& book, report::Findings& findings) {
  Site site;
  for (const auto& [path, bytes] : html::render_site(book, findings)) {
    if (!path.ends_with(".html")) continue;
    site[path] = tokenize(bytes);
    INFO(path);
    REQUIRE(site[path].fault == "");
  }
  return site;
}

const Site& sample_site() {
  static const Site site = [] {
    report::Findings findings;
    return read_site(sample_book(), findings);
  }();
  return site;
}

/// RFC 3986, section 5.2.4, for the relative addresses that the site uses.
std::string resolved(const std::string& from, std::string path) {
  std::string folder = from.substr(0, from.find_last_of('/') == std::string::npos ? 0 : from.find_last_of('/') + 1);
  while (path.starts_with("../")) {
    path = path.substr(3);
    folder.pop_back();
    folder = folder.substr(0, folder.find_last_of('/') == std::string::npos ? 0 : folder.find_last_of('/') + 1);
  }
  return folder + path;
}

std::set<std::string> ids_of(const Tokens& tokens) {
  std::set<std::string> ids;
  for (const Token& token : tokens.all) {
    if (token.has_attribute("id")) ids.insert(token.attribute("id"));
  }
  return ids;
}

std::vector<const Token*> elements(const Tokens& tokens, std::string_view name) {
  std::vector<const Token*> found;
  for (const Token& token : tokens.all) {
    if (token.kind == Token::Kind::start && token.name == name) found.push_back(&token);
  }
  return found;
}

std::string text_of(const Tokens& tokens) {
  std::string text;
  for (const Token& token : tokens.all) text += token.text;
  return text;
}

/// What stands between the start tag that `at` points to and its end tag.
std::string text_inside(const Tokens& tokens, const Token* at) {
  std::string text;
  int depth = 0;
  for (const Token* token = at; token != tokens.all.data() + tokens.all.size(); ++token) {
    if (token->kind == Token::Kind::start) ++depth;
    if (token->kind == Token::Kind::end && --depth == 0) break;
    text += token->text;
  }
  return text;
}

}  // namespace

TEST_CASE("the site has a page for the home, contents, the book, each chapter and each entry", "[html]") {
  const Site& site = sample_site();
  for (const char* path : {"index.html", "contents.html", "about.html", "chapter/cells.html", "cell/sample-101.html",
                           "cell/sample-160.html", "procedure/clear-crust.html", "term/crust.html", "chapter/index.html"}) {
    INFO(path);
    CHECK(site.contains(path));
  }
  CHECK(site.size() == 3 + 12 + 60 + 1 + 5);  // as sample_book.cc makes them
}

TEST_CASE("every way in the site leads to a page, and to a name on it", "[html]") {
  const Site& site = sample_site();
  for (const auto& [path, tokens] : site) {
    for (const Token& token : tokens.all) {
      if (!token.has_attribute("href")) continue;
      const std::string href = token.attribute("href");
      INFO(path << " to " << href);
      const std::size_t hash = href.find('#');
      const std::string page = href.substr(0, hash);
      const std::string target = page.empty() ? path : resolved(path, page);
      if (token.name == "link" && token.attribute("rel") == "stylesheet") {
        CHECK(target == "assets/handbook.css");
        continue;
      }
      REQUIRE(site.contains(target));
      if (hash != std::string::npos) CHECK(ids_of(site.at(target)).contains(href.substr(hash + 1)));
    }
  }
}

TEST_CASE("each page is whole: language, policy, one title, one main heading, headings without a gap, names used once",
          "[html]") {
  for (const auto& [path, tokens] : sample_site()) {
    INFO(path);
    CHECK(tokens.all.front().kind == Token::Kind::doctype);
    REQUIRE(elements(tokens, "html").size() == 1);
    CHECK(elements(tokens, "html").front()->attribute("lang") == "en-GB");
    CHECK(elements(tokens, "main").size() == 1);
    CHECK(elements(tokens, "h1").size() == 1);
    const auto metas = elements(tokens, "meta");
    CHECK(std::any_of(metas.begin(), metas.end(), [](const Token* meta) {
      return meta->attribute("http-equiv") == "Content-Security-Policy" &&
             meta->attribute("content").starts_with("default-src 'none'");
    }));
    int level = 0;
    std::set<std::string> names;
    for (const Token& token : tokens.all) {
      if (token.kind != Token::Kind::start) continue;
      CHECK(token.name != "form");
      CHECK(token.name != "input");
      CHECK(token.name != "button");
      CHECK_FALSE(token.has_attribute("style"));
      if (token.has_attribute("id")) CHECK(names.insert(token.attribute("id")).second);
      if (token.name.size() == 2 && token.name.front() == 'h' && token.name.back() >= '1' && token.name.back() <= '6') {
        CHECK(token.name.back() - '0' <= level + 1);
        level = token.name.back() - '0';
      }
    }
  }
}

TEST_CASE("a fact is set with its id, its words and its value, and can be linked to in its entry", "[html]") {
  const Tokens& page = sample_site().at("cell/sample-101.html");
  bool found = false;
  for (const Token* data : elements(page, "data")) {
    CHECK_FALSE(data->attribute("data-fact").empty());
    if (data->attribute("data-fact") != "cell/sample-101#capacity") continue;
    found = true;
    CHECK(data->attribute("value") == "80 mAh");
    CHECK(data->attribute("id") == "capacity");
    CHECK(text_inside(page, data) == "80\u2009mAh");
  }
  CHECK(found);
}

TEST_CASE("figures that align keep their plain value", "[html]") {
  const Tokens& page = sample_site().at("cell/sample-101.html");
  std::vector<std::string> values;
  for (const Token* data : elements(page, "data")) {
    if (data->attribute("data-fact").starts_with("cell/sample-101#cell-life.")) values.push_back(data->attribute("value"));
  }
  CHECK(values == std::vector<std::string>{"2.6 to 4.4", "2.3 to 14.2", "0.4 to 0.8"});
}

TEST_CASE("a table has a caption, scopes and a frame that the keyboard reaches unless it folds", "[html]") {
  const Tokens& page = sample_site().at("chapter/tables.html");
  CHECK(elements(page, "caption").size() == elements(page, "table").size());
  for (const Token* head : elements(page, "th")) CHECK((head->attribute("scope") == "col" || head->attribute("scope") == "row"));
  const auto frames = elements(page, "div");
  const auto frame =
      std::find_if(frames.begin(), frames.end(), [](const Token* div) { return div->attribute("class") == "table-frame"; });
  REQUIRE(frame != frames.end());
  CHECK((*frame)->attribute("tabindex") == "0");
  CHECK(ids_of(page).contains((*frame)->attribute("aria-labelledby")));
  CHECK(text_inside(page, elements(page, "caption").front()) == "Gasket sizes of a made-up series");
}

TEST_CASE("a message says its word and stands inside the step it guards", "[html]") {
  const Tokens& page = sample_site().at("procedure/clear-crust.html");
  const auto lists = elements(page, "ol");
  const auto steps =
      std::find_if(lists.begin(), lists.end(), [](const Token* list) { return list->attribute("class") == "steps"; });
  REQUIRE(steps != lists.end());
  const std::string text = text_inside(page, *steps);
  const std::size_t danger = text.find("DANGER"), first = text.find("Take the cell out"), caution = text.find("CAUTION"),
                    second = text.find("Touch what is left");
  REQUIRE(danger != std::string::npos);
  REQUIRE(caution != std::string::npos);
  CHECK(danger < first);
  CHECK(first < caution);
  CHECK(caution < second);
  CHECK(text.find("NOTICE") == std::string::npos);  // guards no step
  CHECK(text_of(page).find("NOTICE") != std::string::npos);
}

TEST_CASE("a message that paper has in brief stands in full on a page, with the brief words to fold it to", "[html]") {
  const std::string text = text_of(sample_site().at("procedure/clear-crust.html"));
  CHECK(text.find("The crust is caustic. Keep it wet and off the skin.") != std::string::npos);
  CHECK(text.find("It burns. Keep it wet.") != std::string::npos);
}

TEST_CASE("signs have words, and a legend stands wherever one appears", "[html]") {
  for (const auto& [path, tokens] : sample_site()) {
    INFO(path);
    bool sign = false, legend = false;
    for (const Token& token : tokens.all) {
      if (token.attribute("class") == "legend") legend = true;
      if (token.name != "svg" || token.attribute("class") != "sign") continue;
      const Token& next = *(&token + 1);
      if (token.attribute("role") == "img") {
        sign = true;
        CHECK(next.name == "title");
        CHECK_FALSE((&next + 1)->text.empty());
      } else {
        CHECK(token.attribute("aria-hidden") == "true");
      }
    }
    CHECK((legend || !sign));
  }
}

TEST_CASE("previous and next lead through all pages once", "[html]") {
  const Site& site = sample_site();
  std::string path = "index.html";
  std::set<std::string> seen;
  while (!path.empty()) {
    INFO(path);
    REQUIRE(seen.insert(path).second);
    std::string next;
    for (const Token* link : elements(site.at(path), "link")) {
      if (link->attribute("rel") == "next") next = resolved(path, link->attribute("href"));
    }
    path = next;
  }
  CHECK(seen.size() == site.size());
}

TEST_CASE("the current chapter is marked in both indexes of chapters", "[html]") {
  int marked = 0;
  for (const Token* link : elements(sample_site().at("term/crust.html"), "a")) {
    if (!link->has_attribute("aria-current")) continue;
    CHECK(link->attribute("href") == "../chapter/words.html");
    ++marked;
  }
  CHECK(marked == 3);  // at the edge, on the bar, under `more`
}

TEST_CASE("a target that the book lacks is a finding and its words stay text", "[html]") {
  report::Findings findings;
  const Site site = read_site(sample_book(), findings);
  REQUIRE(findings.all().size() == 1);
  CHECK(findings.all().front().rule == report::Rule::html_dead_link);
  CHECK(findings.all().front().message.find("cell/missing") != std::string::npos);
  CHECK(text_of(site.at("chapter/tables.html")).find("a record that is not there") != std::string::npos);
}

TEST_CASE("the same book gives the same bytes", "[html]") {
  report::Findings one, two;
  CHECK(html::render_site(sample_book(), one) == html::render_site(sample_book(), two));
}

TEST_CASE("a book with nothing in it still gives whole pages", "[html]") {
  report::Findings findings;
  model::Book empty;
  empty.title = "Empty";
  const Site site = read_site(empty, findings);
  CHECK(site.size() == 3);
  CHECK(findings.all().empty());
}

TEST_CASE("two entries of one name get two pages, and the first keeps the address", "[html]") {
  model::Book book = sample_book();
  model::Chapter terms = terms_chapter();
  terms.id = "again";
  book.chapters.push_back(terms);
  report::Findings findings;
  const Site site = read_site(book, findings);
  CHECK(site.contains("term/crust.html"));
  CHECK(site.contains("term/crust-2.html"));
}

}  // namespace benchleaf::html_tests
