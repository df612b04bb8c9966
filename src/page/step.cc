// In: one step of a job. Out: a strip: the number hangs in a column of its own, what shows that it is done stands under the
// words; a rule parts steps.
#include <algorithm>
#include <utility>

#include "page/blocks.h"
#include "page/drawing.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

struct StepLook {
  Look number, words;
  double indent_mm;
};

/// Steps of a sheet of the bench: a little larger than its other words, and narrow.
Look dense(Look look) {
  look.size_pt = 10.6;
  look.leading_pt = 12.5;
  return look;
}

StepLook look_of(const Setting& setting, model::Step::Size size, Length width) {
  if (setting.dense) return {dense(look::sub_head()), dense(look::dense()), 7};
  if (width < setting.mm(100)) return {look::sub_head(), look::entry_body(), 7};
  if (size == model::Step::Size::large) return {look::large_step_number(), look::large_step(), 12};
  return {look::step_number(), look::step(), 10};
}

void put_lines(Strips& strips, Strips lines) {
  for (Strip& line : lines) strips.push_back(std::move(line));
}

}  // namespace

void set_step(Setting& setting, const model::Step& step, Target& target) {
  // Steps that follow each other are one list.
  if (target.steps < 0) target.steps = setting.add_tag(Role::list, target.parent);
  const TagId item = setting.add_tag(Role::list_item, target.steps);
  const TagId label = setting.add_tag(Role::label, item);
  const StepLook look = look_of(setting, step.size, target.width);
  const Length indent = from_mm(look.indent_mm + (step.box ? 4 : 0));
  const Length width = target.width - indent;
  model::Runs mark = {model::text_run(std::to_string(step.number))};
  if (step.box) {
    model::Run box;
    box.kind = model::Run::Kind::tick;
    mark.insert(mark.begin(), {box, model::text_run("\u2002")});
  }
  Strip number = stacked(Words(setting, mark, look.number, label).set(setting, indent));
  const TagId body = setting.add_tag(Role::list_body, item);
  Strips lines = set_paragraph(setting, step.runs, look.words, width, body, 0);
  if (!step.see.empty()) put_lines(lines, set_paragraph(setting, step.see, look::see(), width, body, from_mm(0.3)));
  if (!step.proof.empty()) put_lines(lines, set_paragraph(setting, step.proof, look::step_proof(), width, body, from_mm(0.4)));
  Strip words = stacked(std::move(lines));
  Strip whole;
  whole.height = std::max(words.height, look.number.leading());
  overlay(whole, std::move(number), 0, setting.dense ? 0 : -from_mm(0.6));
  overlay(whole, std::move(words), indent, 0);
  const Length above_rule = from_mm(setting.dense ? 0.2 : 0.9);
  whole.items.push_back(rule(0, whole.height + above_rule, target.width, 0.25, print_color(model::Ink::rule)));
  whole.height += above_rule + from_mm(0.2);
  whole.before = from_mm(1.1);
  target.galley.strips.push_back(std::move(whole));
}

}  // namespace benchleaf::page
