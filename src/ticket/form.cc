// In: the questions about a watch, the records. Out: the form of the page, with what can be chosen.
#include "ticket/form.h"

#include <algorithm>
#include <map>
#include <utility>

#include "compose/desk.h"
#include "compose/figures/measure_pictures.h"
#include "derive/demonstration.h"
#include "ticket/questions.h"

namespace benchleaf::compose {

namespace {

using Choices = std::vector<model::FormChoice>;
using Section = Question::Section;

const std::map<Section, const char*>& titles() {
  static const std::map<Section, const char*> kTitles = {{Section::watch, "The watch"},       {Section::build, "How it is built"},
                                                         {Section::cells, "Cells and leaks"}, {Section::crystal, "Crystal"},
                                                         {Section::gasket, "Gasket"},         {Section::ready, "What lies ready"},
                                                         {Section::jobs, "What is done"}};
  return kTitles;
}

/// Words to choose from where they are no records.
const std::map<std::string, Choices>& word_choices() {
  static const std::map<std::string, Choices> kChoices = {
      {"display", {{"lcd", "grey figures"}, {"led", "red figures"}, {"hands", "hands"}}},
      {"back",
       {{"snap", "snaps on"}, {"screwed", "is screwed in"}, {"four-screws", "four screws"}, {"none", "no back: from the front"}}},
      {"lume", {{"none", "none"}, {"some", "some: it is left alone"}}},
      {"crust.colour",
       {{"white", "white"},
        {"grey", "grey"},
        {"green", "green"},
        {"black", "black"},
        {"brown", "brown"},
        {"oily", "an oily film"}}},
      {"crystal-signs.scratches", {{"soft", "soft swirls"}, {"hard", "hard lines"}}},
      {"crystal-signs.feels", {{"warm", "warm"}, {"cool", "cool"}}},
      {"nail", {{"catches", "it catches"}, {"seen-only", "it does not: the scratch is only seen"}}}};
  return kChoices;
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
    choices.push_back({id, number + cell.designation + ", " + plain_words(cell.system)});
  }
  std::sort(choices.begin(), choices.end(), [](const auto& one, const auto& other) { return one.label < other.label; });
  return choices;
}

/// What can be chosen for a field: words of its own, else records.
Choices choices_of(const std::string& field, const model::KnowledgeBase& records) {
  const auto words = word_choices().find(field);
  if (words != word_choices().end()) return words->second;
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
        one.allowed.push_back({allowed, record == nullptr ? allowed.text() : record->title});
      }
      slots.push_back(std::move(one));
    }
  }
  return slots;
}

std::shared_ptr<const model::Drawing> picture_of(const std::string& field) {
  if (field == "gasket-seat") return seat_picture();
  if (field == "old-gasket.inside") return gasket_inside_picture();
  if (field == "old-gasket.section") return section_picture();
  if (field == "groove.depth") return groove_picture();
  if (field == "crystal-size.diameter") return crystal_picture();
  if (field == "nail") return scratch_picture();
  if (field == "lug-width") return lugs_picture();
  return field == "cell-size.diameter" ? cell_picture() : nullptr;
}

model::FormQuestion question_of(const Question& question, const model::KnowledgeBase& records) {
  model::FormQuestion asked;
  asked.field = question.field;
  asked.what = question.what;
  asked.how = question.how;
  asked.answer = question.answer;
  asked.example = question.example;
  asked.choices = choices_of(asked.field, records);
  if (question.answer == Question::Answer::jobs) asked.slots = slots_of(records);
  asked.picture = picture_of(asked.field);
  return asked;
}

}  // namespace

model::TicketForm ticket_form(const model::KnowledgeBase& records) {
  model::TicketForm form;
  for (const Question& question : questions()) {
    const std::string title = titles().at(question.section);
    if (form.sections.empty() || form.sections.back().title != title) form.sections.push_back({title, {}});
    form.sections.back().questions.push_back(question_of(question, records));
  }
  return form;
}

}  // namespace benchleaf::compose
