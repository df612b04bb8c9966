// In: nothing but where the page stands. Out: the page for labels as it is read without a script; assets/labels.js makes the
// form.
#include "html/label_form.h"

namespace benchleaf::html {

Markup set_label_form(Setting& setting) {
  Markup out = Element("h1").say(setting.page.title);
  out += Element("p").in_class("lead").say(
      "For a bottle: name, strength, hazard words and diamonds, what it never meets. For a bag: number and size, with what you "
      "lay on it drawn at true size. On sheets of common sizes, starting at the first free label.");
  Element place("div"), calls("ul");
  place.in_class("labels-place");
  place.add(Element("p").in_class("note").say(
      "This page makes labels with a script, which your browser does not run. The terminal makes the same:"));
  for (const char* call :
       {"benchleaf label isopropanol --date 2026-11-30", "benchleaf label 393 --copies 4 --start 5 --grid 63.5x38.1",
        "benchleaf label --mixture acetic-acid:5 --name \"Crust bath\""})
    calls.add(Element("li").add(Element("code").say(call)));
  out += place.add(calls);
  return out;
}

}  // namespace benchleaf::html
