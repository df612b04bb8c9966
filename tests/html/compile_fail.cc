// Each CASE from 1 on must not compile; case 0 must, or the others would fail for a reason of their own.
#include "html/markup.h"

std::string build(const std::string& words_of_a_book) {
  benchleaf::html::Element element("p");
#if CASE == 0
  element.set("value", words_of_a_book).say(words_of_a_book).in_class("note");
#elif CASE == 1
  element.add(words_of_a_book);  // words without escaping
#elif CASE == 2
  benchleaf::html::Element("script").say(words_of_a_book);  // an element that runs
#elif CASE == 3
  element.set("onclick", words_of_a_book);  // a handler
#elif CASE == 4
  element.set("style", words_of_a_book);  // a style
#elif CASE == 5
  element.set("href", words_of_a_book);  // an address that is not one of the site's
#elif CASE == 6
  element.set(words_of_a_book.c_str(), "x");  // a name that is not known here
#elif CASE == 7
  element.in_class(words_of_a_book.c_str());
#elif CASE == 8
  benchleaf::html::Markup markup = words_of_a_book;
#elif CASE == 9
  element.set("id", words_of_a_book);
#elif CASE == 10
  benchleaf::html::Url url(words_of_a_book);
#endif
  return element.markup().bytes();
}
