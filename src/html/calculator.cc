// In: what a calculator asks. Out: its page as it is read without a script; scripts/calculator.js makes a form of it.
#include "html/calculator.h"

#include <algorithm>

#include "html/calculator_questions.h"
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
  return Element("div").in_class("table-frame").set("role", "group").set("aria-label", "Inputs").set("tabindex", "0").add(table);
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

Markup group_head(const CalculatorQuestion& question) {
  Element head("h2");
  return head.say(question.group).say(" ").add(Element("span").in_class("moment").say(question.moment));
}

Markup calculator_line(const Page& page, const CalculatorQuestion* question, const Setting& setting) {
  Element item("li");
  item.add(Element("a").href(address_of(page, setting)).say(page.title));
  const std::string words = question == nullptr ? as_sentence(page.calculator->does)
                                                : std::string(question->needs) + " \xE2\x86\x92 " + std::string(question->gives);
  return item.add(Element("p").say(words));
}

}  // namespace

Markup set_calculators(Setting& setting) {
  Markup out = Element("h1").say(setting.page.title);
  out += Element("p").in_class("lead").say(
      "By the moment of the job: what you need \xE2\x86\x92 what you get. Each shows its working and how far to trust it. They "
      "run on "
      "this page and send nothing.");
  Element groups("div");
  groups.in_class("calculators");
  const auto& pages = setting.plan.pages();
  const auto is_calculator = [](const Page& page) { return page.kind == Page::Kind::calculator; };
  auto page = std::find_if(pages.begin(), pages.end(), is_calculator);
  while (page != pages.end() && is_calculator(*page)) {
    const CalculatorQuestion* first = question_of_calculator(page->calculator->name);
    Element part("section"), list("ul");
    part.add(first == nullptr ? Element("h2").say("More").markup() : group_head(*first));
    for (; page != pages.end() && is_calculator(*page); ++page) {
      const CalculatorQuestion* question = question_of_calculator(page->calculator->name);
      if ((question == nullptr) != (first == nullptr) || (question != nullptr && question->group != first->group)) break;
      list.add(calculator_line(*page, question, setting));
    }
    groups.add(part.add(list));
  }
  out += groups;
  return out;
}

Markup set_calculator(const model::CalculatorSheet& sheet, Setting& setting) {
  Markup out = Element("h1").say(setting.page.title);
  out += Element("p").in_class("lead").say(as_sentence(sheet.does));
  out += Element("div").in_class("calculator-place").set("data-record", sheet.name).add(inputs_table(sheet));
  out += Element("p").in_class("note").say("At the terminal: ").add(Element("code").say(terminal_line(sheet)));
  return out;
}

}  // namespace benchleaf::html
