// The type that keeps words and markup apart. Expected escapes and void elements: the HTML standard, sections 13.1.2 and 13.3.
#include "html/markup.h"

#include <type_traits>

#include "support/catch.h"

namespace benchleaf::html {

template <typename Text>
concept becomes_markup = std::is_convertible_v<Text, Markup> || std::is_constructible_v<Markup, Text>;
template <typename Text>
concept joins_markup = requires(Markup markup, Text text) {
  markup += text;
};
template <typename Text>
concept is_added_raw = requires(Element element, Text text) {
  element.add(text);
};
template <typename Text>
concept names_element = std::is_constructible_v<Element, Text>;
template <typename Text>
concept is_an_address = requires(Element element, Text text) {
  element.href(text);
};
template <typename Text>
concept is_an_id = requires(Element element, Text text) {
  element.id(text);
};

// Words of a book are strings; none of these ways into markup is open to them.
static_assert(!becomes_markup<std::string> && !becomes_markup<std::string_view> && !becomes_markup<const char*>);
static_assert(!joins_markup<std::string> && !joins_markup<std::string_view> && !joins_markup<const char*>);
static_assert(!is_added_raw<std::string> && !is_added_raw<std::string_view> && !is_added_raw<const char*>);
static_assert(!names_element<std::string> && !names_element<std::string_view>);
static_assert(!is_an_address<std::string> && !is_an_address<const char*>);
static_assert(!is_an_id<std::string> && !is_an_id<const char*>);
// The one way that is open.
static_assert(joins_markup<Markup> && is_added_raw<Markup> && is_added_raw<Element>);

TEST_CASE("words are escaped in text and in attributes", "[html]") {
  CHECK(words("a<b>&\"c'").bytes() == "a&lt;b&gt;&amp;\"c'");
  CHECK(Element("p").set("value", "a<b>&\"c'").say("x").markup().bytes() == "<p value=\"a&lt;b&gt;&amp;&quot;c'\">x</p>\n");
}

TEST_CASE("void elements have no end tag, others always have one", "[html]") {
  CHECK(Element("br").markup().bytes() == "<br>");
  CHECK(Element("span").markup().bytes() == "<span></span>");
}

TEST_CASE("classes stand in one attribute in front of the others", "[html]") {
  CHECK(Element("i").set("lang", "en").in_class("a").in_class("b").markup().bytes() == "<i class=\"a b\" lang=\"en\"></i>");
}

TEST_CASE("names made from words are letters, digits and hyphens and start with a letter", "[html]") {
  CHECK(Id::from_words("size.diameter").text() == "size-diameter");
  CHECK(Id::from_words("393").text() == "n-393");
  CHECK(Id::from_words("<>").text() == "n");
  CHECK(Id::from_words("").text() == "n");
  CHECK(Id::from_words("Crust (dry)").repeated(2).text() == "crust-dry-2");
  CHECK(Id::of_frame("letter_",
                     "0\xE2\x80\x93"
                     "9")
            .text() == "letter_0-9");
}

TEST_CASE("addresses are relative to the page that holds them", "[html]") {
  // RFC 3986, section 5.4, by hand: resolving each against `from` gives `to`.
  CHECK(Url::between("index.html", "cell/a.html").text() == "cell/a.html");
  CHECK(Url::between("cell/a.html", "index.html").text() == "../index.html");
  CHECK(Url::between("cell/a.html", "cell/b.html").text() == "b.html");
  CHECK(Url::between("cell/a.html", "term/b.html").text() == "../term/b.html");
  CHECK(Url::between("cell/a.html", "term/b.html").at(Id::from_words("x")).text() == "../term/b.html#x");
  CHECK(Url::within(Id::from_words("x")).text() == "#x");
}

}  // namespace benchleaf::html
