// The book in one file: every name once, every address leads to a name, and the policy names each script by its hash.
#include "html/single.h"

#include <regex>
#include <set>

#include "html/rehome.h"
#include "html/sample_book.h"
#include "support/catch.h"

namespace benchleaf::html_tests {

namespace {

std::vector<std::string> all_of(const std::string& text, const std::string& pattern) {
  std::vector<std::string> found;
  const std::regex wanted(pattern);
  for (std::sregex_iterator match(text.begin(), text.end(), wanted), end; match != end; ++match)
    found.push_back((*match)[1].str());
  return found;
}

}  // namespace

TEST_CASE("an address of the site becomes one within the file") {
  CHECK(html::address_in_single("#a", "cell/x.html") == "#cell_x__a");
  CHECK(html::address_in_single("y.html", "cell/x.html") == "#cell_y");
  CHECK(html::address_in_single("../tool/y.html#b", "cell/x.html") == "#tool_y__b");
  CHECK(html::address_in_single("cell/x.html", "index.html") == "#cell_x");
}

TEST_CASE("the content of a page changes in its names, addresses and headings alone") {
  const std::string page =
      R"(<h1 id="t">A &lt; b href="z.html"</h1><p><a href="../tool/y.html">c</a><svg><use href="#s"></use></svg></p>)";
  CHECK(html::rehomed(page, "cell/x.html", 2) ==
        R"(<h3 id="cell_x__t">A &lt; b href="z.html"</h3><p><a href="#tool_y">c</a><svg><use href="#s"></use></svg></p>)");
}

TEST_CASE("names stand once, and no address leads out of the file or nowhere") {
  const std::string file = html::render_single(sample_book(), {"var program = 1;"});
  const std::string body = file.substr(file.find("<body>"), file.find("<script>") - file.find("<body>"));
  const auto names = all_of(body, R"re( id="([^"]+)")re");
  const std::set<std::string> known(names.begin(), names.end());
  CHECK(names.size() == known.size());
  CHECK(names.size() > 60);
  const auto addresses = all_of(body, R"re(<a [^>]*href="([^"]+)")re");
  CHECK(addresses.size() > 60);
  for (const std::string& address : addresses) {
    INFO(address);
    REQUIRE(address.front() == '#');
    CHECK(known.count(address.substr(1)) == 1);
  }
}

TEST_CASE("the policy has a hash for each script and one for the style") {
  const std::string file = html::render_single(sample_book(), {"var program = 1;"});
  CHECK(all_of(file.substr(0, 2500), "('sha256-[A-Za-z0-9+/]{43}=')").size() == all_of(file, "(<script>)").size() + 1);
  CHECK(all_of(file, "(var program = 1;)").size() == 1);
  CHECK(file.find("'self'") == std::string::npos);
  CHECK(file.find("unsafe-inline") == std::string::npos);
}

}  // namespace benchleaf::html_tests
