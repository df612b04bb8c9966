// In: what a calculator asks. Out: its page as it is read without a script; scripts/calculator.js makes a form of it.
#include "html/calculator.h"

#include "html/drawings.h"

namespace benchleaf::html {

namespace {

Element input_row(const model::CalculatorInput& input) {
  Element row("tr");
  row.set("data-record", input.name);
  Element head("th");
  head.set("scope", "row");
  if (input.picture) head.add(ornament(*input.picture, "measured"));
  row.add(head.say(input.name));
  row.add(Element("td").in_class("prose").say(input.what));
  row.add(Element("td").add(Element("code").say(input.example)));
  return row.add(Element("td").say(input.required ? "needed" : ""));
}

Markup inputs_table(const model::CalculatorSheet& sheet) {
  Element head("tr"), body("tbody");
  for (const char* title : {"input", "what it is", "for example", ""}) {
    const bool named = *title != '\0';
    head.add(named ? Element("th").set("scope", "col").say(title) : Element("td"));
  }
  for (const model::CalculatorInput& input : sheet.inputs) body.add(input_row(input));
  Element table("table");
  table.in_class("inputs").add(Element("thead").add(head)).add(body);
  return Element("div").in_class("table-frame").add(table);
}

std::string as_sentence(const std::string& text) {
  std::string sentence = text;
  if (!sentence.empty() && sentence.front() >= 'a' && sentence.front() <= 'z') sentence.front() -= 'a' - 'A';
  return sentence + ".";
}

/// What is typed at the terminal for an answer: the inputs that are needed, else the first.
std::string terminal_line(const model::CalculatorSheet& sheet) {
  std::string line = "benchleaf reckon " + sheet.name;
  bool any = false;
  for (const model::CalculatorInput& input : sheet.inputs) {
    if (!input.required) continue;
    line += " \"" + input.name + "=" + input.example + "\"";
    any = true;
  }
  if (!any && !sheet.inputs.empty()) line += " \"" + sheet.inputs.front().name + "=" + sheet.inputs.front().example + "\"";
  return line;
}

}  // namespace

Markup set_calculators(Setting& setting) {
  Markup out = Element("h1").say(setting.page.title);
  out += Element("p").in_class("lead").say(
      "Each answers with its working, its formula and how far to trust it. They reckon on this page and send nothing.");
  Element list("ul");
  list.in_class("doors");
  for (const Page& page : setting.plan.pages()) {
    if (page.kind != Page::Kind::calculator) continue;
    Element words_of_door("div");
    words_of_door.add(Element("h2").in_class("no-rule").add(Element("a").href(address_of(page, setting)).say(page.title)));
    list.add(Element("li").add(words_of_door.add(Element("p").say(as_sentence(page.calculator->does)))));
  }
  out += list;
  return out;
}

Markup set_calculator(const model::CalculatorSheet& sheet, Setting& setting) {
  Markup out = Element("h1").say(setting.page.title);
  out += Element("p").in_class("lead").say(as_sentence(sheet.does));
  Element place("div");
  place.id(Id::of_frame("calculator_place")).set("data-record", sheet.name);
  place.add(inputs_table(sheet));
  place.add(Element("p").in_class("note").say("At the terminal: ").add(Element("code").say(terminal_line(sheet))));
  out += place;
  return out;
}

}  // namespace benchleaf::html
