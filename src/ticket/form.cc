// In: the questions about a watch, the records. Out: the form of the page, with what can be chosen.
#include "ticket/form.h"

#include <algorithm>
#include <map>
#include <utility>

#include "compose/desk.h"
#include "compose/figures/measure_pictures.h"
#include "derive/demonstration.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

namespace {

using Choices = std::vector<model::FormChoice>;

std::string title_of(const std::string& section) {
  static const std::map<std::string, std::string, std::less<>> kTitles = {
      {"watch", "The watch"}, {"build", "How it is built"}, {"cells", "Cells and leaks"}, {"crystal", "Crystal"},
      {"gasket", "Gasket"},   {"ready", "In stock"},        {"jobs", "What is done"}};
  const auto found = kTitles.find(section);
  return found == kTitles.end() ? section : found->second;
}

template <typename RecordType, typename Wanted>
Choices records_of(const std::map<std::string, RecordType, std::less<>>& list, const Wanted& wanted) {
  Choices choices;
  for (const auto& [id, record] : list) {
    if (!derive::is_demonstration(record) && wanted(record)) choices.push_back({id, record.title});
  }
  std::sort(choices.begin(), choices.end(), [](const auto& one, const auto& other) { return one.label < other.label; });
  return choices;
}

constexpr auto kAll = [](const auto&) { return true; };

Choices cells_of(const model::KnowledgeBase& records) {
  Choices choices;
  for (const auto& [id, cell] : records.cells) {
    const std::string number = cell.trade_number.empty() ? std::string() : cell.trade_number + " ";
    choices.push_back({id, number + cell.designation + ", " + compose::plain_words(cell.system)});
  }
  std::sort(choices.begin(), choices.end(), [](const auto& one, const auto& other) { return one.label < other.label; });
  return choices;
}

/// What can be chosen for a question: words of its own, else records.
Choices choices_of(const model::Question& question, const model::KnowledgeBase& records) {
  if (!question.choices.empty()) {
    Choices choices;
    for (const auto& one : question.choices) choices.push_back({one.value, one.label});
    return choices;
  }
  const std::string& field = question.field;
  const auto of_case = [](bool plating) {
    return [plating](const model::Material& one) {
      return one.family == model::MaterialFamily::metal || one.family == model::MaterialFamily::plastic ||
             (plating && one.family == model::MaterialFamily::plating);
    };
  };
  if (field == "module") return records_of(records.modules, kAll);
  if (field == "crystal") return records_of(records.crystals, kAll);
  if (field == "gasket" || field == "on-hand.gaskets") return records_of(records.gaskets, kAll);
  if (field == "symptoms") return records_of(records.symptoms, kAll);
  if (field == "case.metal") return records_of(records.materials, of_case(false));
  if (field == "case.surface") return records_of(records.materials, of_case(true));
  if (field == "residues") return records_of(records.residues, kAll);
  if (field == "inside") return records_of(records.parts, kAll);
  if (field == "on-hand.liquids") return records_of(records.chemistries, kAll);
  if (field == "jobs") return records_of(records.procedures, kAll);
  return field == "cells-found" ? cells_of(records) : Choices();
}

std::vector<model::FormQuestion::Slot> slots_of(const model::KnowledgeBase& records) {
  std::vector<model::FormQuestion::Slot> slots;
  for (const auto& [id, procedure] : records.procedures) {
    for (const auto& slot : procedure.slots) {
      model::FormQuestion::Slot one{id, slot.name, slot.asks, {}};
      for (const model::RecordRef& allowed : slot.allowed) {
        const model::Record* record = records.find(allowed);
        one.allowed.push_back({allowed.text(), record == nullptr ? allowed.text() : record->title});
      }
      slots.push_back(std::move(one));
    }
  }
  return slots;
}

std::shared_ptr<const model::Drawing> picture_of(const std::string& picture) {
  if (picture == "seat") return compose::seat_picture();
  if (picture == "gasket-inside") return compose::gasket_inside_picture();
  if (picture == "section") return compose::section_picture();
  if (picture == "groove") return compose::groove_picture();
  if (picture == "crystal") return compose::crystal_picture();
  if (picture == "scratch") return compose::scratch_picture();
  if (picture == "lugs") return compose::lugs_picture();
  return picture == "cell" ? compose::cell_picture() : nullptr;
}

model::FormQuestion::Answer answer_of(const std::string& word) {
  using Answer = model::FormQuestion::Answer;
  static const std::map<std::string, Answer, std::less<>> kAnswers = {
      {"words", Answer::words},     {"measure", Answer::measure}, {"number", Answer::number},   {"one-of", Answer::one_of},
      {"some-of", Answer::some_of}, {"grades", Answer::grades},   {"gaskets", Answer::gaskets}, {"jobs", Answer::jobs}};
  const auto found = kAnswers.find(word);
  return found == kAnswers.end() ? Answer::words : found->second;
}

model::FormQuestion form_question(const model::Question& question, const model::KnowledgeBase& records) {
  model::FormQuestion asked;
  asked.field = question.field;
  asked.what = question.title;
  asked.how = question.how;
  asked.answer = answer_of(question.answer);
  asked.example = question.example;
  asked.choices = choices_of(question, records);
  if (asked.answer == model::FormQuestion::Answer::jobs) asked.slots = slots_of(records);
  asked.picture = picture_of(question.picture);
  return asked;
}

}  // namespace

model::TicketForm ticket_form(const model::KnowledgeBase& records) {
  model::TicketForm form;
  for (const model::Question* question : questions_in_order(records)) {
    const std::string title = title_of(question->section);
    if (form.sections.empty() || form.sections.back().title != title) form.sections.push_back({title, {}});
    form.sections.back().questions.push_back(form_question(*question, records));
  }
  return form;
}

}  // namespace benchleaf::ticket
