// In: checked trees of what a ticket is planned by. Out: the typed records of jobs, holds, questions and looks.
#include <utility>

#include "read/decode.h"

namespace benchleaf::read {

namespace {

model::Condition condition(const Fields& fields) {
  model::Condition condition;
  for (const std::string_view trait : model::all_traits()) {
    model::Condition::Asked asked{std::string(trait), {}};
    for (const std::string& word : fields.texts(trait)) {
      if (const auto mark = model::mark_named(trait, word)) asked.any_of.push_back(*mark);
    }
    if (!asked.any_of.empty()) condition.traits.push_back(std::move(asked));
  }
  condition.surface = fields.references("surface");
  condition.residue = fields.references("residue");
  condition.symptom = fields.references("symptom");
  return condition;
}

std::vector<model::Condition> conditions(const Fields& fields, std::string_view key) {
  std::vector<model::Condition> all;
  for (const Fields& one : fields.parts(key)) all.push_back(condition(one));
  return all;
}

}  // namespace

void decode(const Fields& fields, model::Job& job) {
  job.procedure = fields.reference("procedure");
  job.stage = fields.text("stage");
  job.roles = fields.texts("roles");
  job.reason = fields.text("reason");
  job.answers = fields.texts("answers");
  job.on_request = fields.flag("on-request");
  job.usual = conditions(fields, "usual");
  job.only = conditions(fields, "only");
  job.otherwise = fields.text("otherwise");
  job.figure = fields.text("figure");
  job.figure_tool = fields.reference("figure-tool");
  job.figure_place = fields.reference("figure-place");
  job.after = fields.references("after");
  for (const Fields& one : fields.parts("brief")) job.brief.push_back({one.reference("caution"), one.text("do")});
}

void decode(const Fields& fields, model::Hold& hold) {
  hold.when = conditions(fields, "when");
  hold.stages = fields.texts("stages");
  hold.roles = fields.texts("roles");
  hold.procedures = fields.references("procedures");
  hold.but = fields.references("but");
  hold.because = fields.text("because");
  hold.until = fields.text("until");
  hold.cautions = fields.references("cautions");
}

void decode(const Fields& fields, model::Question& question) {
  question.field = fields.text("field");
  question.section = fields.text("section");
  question.order = fields.count("order", 0);
  question.how = fields.text("how");
  question.answer = fields.text("answer");
  question.example = fields.text("example");
  for (const Fields& one : fields.parts("choices")) question.choices.push_back({one.text("value"), one.text("label")});
  question.picture = fields.text("picture");
  question.back_off = fields.flag("back-off");
  question.open = conditions(fields, "open");
}

void decode(const Fields& fields, model::Look& look) {
  look.place = fields.text("place");
  look.order = fields.count("order", 0);
  look.when = conditions(fields, "when");
  look.jobs = fields.references("jobs");
  look.head = fields.text("head");
  look.text = fields.text("text");
  look.unit = fields.text("unit");
  look.blanks = fields.count("blanks", 0);
  look.per = fields.text("per");
  look.healthy = fields.text("healthy");
  look.caution = fields.reference("caution");
}

}  // namespace benchleaf::read
