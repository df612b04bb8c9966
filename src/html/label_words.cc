// In: a label. Out: its words and drawings as HTML without links.
#include "html/label_words.h"

#include "html/drawings.h"
#include "html/runs.h"

namespace benchleaf::html {

std::string set_label(const model::Label& label, const std::vector<model::Runs>& lines) {
  const model::Book no_book;
  const Plan plan(no_book);
  Setting setting(plan, plan.pages().front());
  Element words("div"), foot("div");
  words.in_class("label-words");
  if (label.beside) words.add(Element("div").in_class("label-beside").add(picture(*label.beside)));
  words.add(Element("p").in_class("label-head").add(set_runs_plainly(label.head, setting)));
  for (const model::Runs& line : lines) words.add(Element("p").add(set_runs_plainly(line, setting)));
  foot.in_class("label-foot");
  if (label.below) foot.add(picture(*label.below));
  for (const model::Runs& line : label.foot) foot.add(Element("p").add(set_runs_plainly(line, setting)));
  Markup all = words;
  all += foot;
  return all.bytes();
}

}  // namespace benchleaf::html
