// In: what is asked for a ticket. Out: its page as it is read without a script; assets/ticket-form.js makes a form of it.
#include "html/ticket_form.h"

#include "html/drawings.h"

namespace benchleaf::html {

namespace {

using Answer = model::FormQuestion::Answer;

const char* answer_word(Answer answer) {
  switch (answer) {
    case Answer::words: return "words";
    case Answer::measure: return "measure";
    case Answer::number: return "number";
    case Answer::one_of: return "one-of";
    case Answer::some_of: return "some-of";
    case Answer::grades: return "grades";
    case Answer::gaskets: return "gaskets";
    case Answer::jobs: return "jobs";
  }
  return "";
}

Element choice_list(const std::vector<model::FormChoice>& choices) {
  Element list("ul");
  list.in_class("choices");
  for (const model::FormChoice& choice : choices) list.add(Element("li").set("data-record", choice.value).say(choice.label));
  return list;
}

Element slot(const model::FormQuestion::Slot& one) {
  Element place("div");
  place.in_class("slot").set("data-record", one.procedure).set("data-label", one.name);
  return place.add(Element("p").say(one.asks)).add(choice_list(one.allowed));
}

/// Long lists stay closed until they are asked for.
Markup choices_of(const model::FormQuestion& question) {
  if (question.choices.empty()) return {};
  constexpr std::size_t kShort = 8;
  const Element list = choice_list(question.choices);
  if (question.choices.size() <= kShort) return list;
  Element more("details");
  return more.add(Element("summary").say(std::to_string(question.choices.size()) + " to choose from")).add(list);
}

Element set_question(const model::FormQuestion& question) {
  Element place("div");
  place.in_class("question").set("data-record", question.field).set("data-answer", answer_word(question.answer));
  if (question.picture) place.add(ornament(*question.picture, "measured"));
  place.add(Element("h3").in_class("no-rule").say(question.what)).add(Element("p").in_class("how").say(question.how));
  if (!question.example.empty())
    place.add(Element("p").in_class("example").say("for example ").add(Element("code").say(question.example)));
  place.add(choices_of(question));
  for (const model::FormQuestion::Slot& one : question.slots) place.add(slot(one));
  return place;
}

}  // namespace

Markup set_ticket_form(Setting& setting) {
  Markup out = Element("h1").say(setting.page.title);
  out += Element("p").in_class("lead").say(
      "What is known of one watch becomes a plan: what never touches it, what to find out, what to get, and the work in its "
      "order. "
      "Leave empty what you do not know; it becomes a check. Nothing leaves this page.");
  Element place("div");
  place.in_class("ticket-place");
  place.add(
      Element("p").in_class("note").say("This page plans with a script, which your browser does not run. Below stands what it "
                                        "would ask: write it into a watch file, and "
                                        "plan it at the terminal."));
  for (const model::FormSection& section : setting.plan.book().ticket_form.sections) {
    Element part("section");
    part.add(Element("h2").say(section.title));
    for (const model::FormQuestion& question : section.questions) part.add(set_question(question));
    place.add(part);
  }
  place.add(Element("p").in_class("note").say("At the terminal: ").add(Element("code").say("benchleaf ticket WATCH.yaml")));
  out += place;
  return out;
}

}  // namespace benchleaf::html
