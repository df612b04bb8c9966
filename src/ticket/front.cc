// In: a plan. Out: the first sections of the front sheet: what the watch is and what is wished, what is still to be found out.
#include <algorithm>

#include "bench/step_world.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Style;

/// `Snap-on back`: the label that the question offers for an answer.
std::string label_of(const SheetContext& context, std::string_view field, const std::string& value) {
  for (const auto& [id, question] : context.desk.records.questions) {
    if (question.field != field) continue;
    for (const auto& choice : question.choices) {
      if (choice.value == value) return choice.label;
    }
  }
  return compose::plain_words(value);
}

/// What it is, in a few words: module, back, crystal, case.
std::string description(const SheetContext& context) {
  const model::Watch& watch = context.watch;
  std::vector<std::string> words;
  const model::Module* module = context.context.module();
  if (module != nullptr)
    words.push_back(module->title);
  else if (!watch.display.empty())
    words.push_back(compose::sentence_case(label_of(context, "display", watch.display)));
  if (!watch.back.empty()) words.push_back("back: " + label_of(context, "back", watch.back));
  if (!watch.crystal.empty()) words.push_back(bench::words_for(context.context.world(), watch.crystal));
  if (watch.case_metal && !watch.case_metal->surface.empty())
    words.push_back("case: " + bench::words_for(context.context.world(), watch.case_metal->surface));
  return words.empty() ? std::string() : compose::listed(words, "; ") + ".";
}

/// The numbers of the jobs that answer a wish, or that they wait.
std::string answer_to(const SheetContext& context, const std::string& wish) {
  std::vector<std::string> numbers;
  bool waits = false;
  for (const PlanJob& job : context.plan.jobs) {
    const auto* rule = context.desk.records.find<model::Job>(job.job);
    if (rule == nullptr || !has(rule->answers, wish) || job.state == PlanJob::State::not_this_watch) continue;
    if (job.state == PlanJob::State::done)
      numbers.push_back(std::to_string(context.plan.number_of(job.procedure)));
    else
      waits = true;
  }
  if (!numbers.empty()) return "job " + compose::listed(numbers, ", ");
  return waits ? "waits, see below" : "no job on this ticket";
}

void add_watch(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("watch", "The watch");
  section.words(description(context));
  section.words(context.watch.found);
  for (const RecordRef& symptom : context.watch.symptoms) {
    compose::Line line = context.line();
    section.add(Kind::words, line.say("Symptom: ", Style::bold).say(context.desk.name(symptom) + ".").take(), symptom);
  }
  compose::Line wish = context.line();
  if (!context.watch.wants.empty()) wish.say("Wish: ", Style::bold | Style::accent).say(context.watch.wants + " ", Style::bold);
  for (const std::string& one : context.watch.wishes)
    wish.say(compose::sentence_case(label_of(context, "wishes", one)) + ": ").say(answer_to(context, one) + ". ", Style::bold);
  if (!wish.empty()) section.add(Kind::words, wish.take());
  section.close(front);
}

/// What is to be found out; the answers plan the jobs that wait.
void add_questions(const SheetContext& context, bool back_off, std::vector<SheetSection>& front) {
  SectionBuilder section(back_off ? "questions-inside" : "questions",
                         back_off ? "Find out with the back off" : "Find out first, back closed",
                         "with the answers plan the watch again");
  for (const PlanQuestion& open : context.plan.questions) {
    const auto* question = context.desk.records.find<model::Question>(open.question);
    if (question == nullptr || open.back_off != back_off) continue;
    compose::Line line = context.line();
    const std::string end = question->title.back() == '?' ? " " : ". ";
    section.add(Kind::tick, line.say(question->title + end, Style::bold).say(question->how + " ").blank(30).take(),
                open.question);
  }
  section.close(front);
}

}  // namespace

void add_front(const SheetContext& context, std::vector<SheetSection>& front) {
  add_history(context, front);
  add_history_told(context, front);
  add_watch(context, front);
  add_never(context, front);
  add_parts(context, front);
  add_work(context, front);
  add_readings(context, front);
  add_questions(context, false, front);
  add_questions(context, true, front);
  add_card(context, front);
}

}  // namespace benchleaf::ticket
