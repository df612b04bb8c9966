// Out: the card that is filled in when a watch comes in. Its fields are those of a watch record, so that the card can be typed in
// line by line.
#include "ticket/intake_card.h"

#include <string>
#include <utility>
#include <vector>

#include "compose/figures/measure_pictures.h"
#include "compose/imprint.h"

namespace benchleaf::compose {

namespace {

using model::Runs;

constexpr double kLine = 24;  // mm to write on

model::Run tick() {
  model::Run run;
  run.kind = model::Run::Kind::tick;
  return run;
}

model::Run blank(double mm) {
  model::Run run;
  run.kind = model::Run::Kind::blank;
  run.blank_mm = mm;
  return run;
}

/// A word and a line to write on.
Runs write(const std::string& word, double mm = kLine, const std::string& unit = {}) {
  Runs runs = {model::text_run(word + " ", model::Style::bold), blank(mm)};
  if (!unit.empty()) runs.push_back(model::text_run("\u00A0" + unit));
  return runs;
}

/// Three lines beside each other: a seat that is not round shows in them.
Runs seat_lines() {
  constexpr double kShort = 13;
  Runs runs = {model::text_run("seat ", model::Style::bold)};
  for (int i = 0; i < 3; ++i) {
    runs.push_back(blank(kShort));
    runs.push_back(model::text_run("  "));
  }
  runs.push_back(model::text_run("mm"));
  return runs;
}

/// A word and a box before each answer.
Runs choose(const std::string& word, const std::vector<std::string>& answers) {
  Runs runs = {model::text_run(word + "  ", model::Style::bold)};
  for (const std::string& answer : answers) {
    runs.push_back(tick());
    runs.push_back(model::text_run("\u00A0" + answer + "   "));
  }
  return runs;
}

model::Panel panel(std::string title, std::vector<Runs> lines) {
  model::Panel made;
  made.title = std::move(title);
  for (Runs& line : lines) made.blocks.emplace_back(model::Paragraph{std::move(line), model::Paragraph::Role::body});
  return made;
}

model::Panel pictured(std::string title, std::shared_ptr<const model::Drawing> drawing, std::string how,
                      std::vector<Runs> lines) {
  model::Panel made;
  made.title = std::move(title);
  made.blocks.emplace_back(model::Pictures{{{std::move(drawing), {model::text_run(std::move(how))}}}});
  for (Runs& line : lines) made.blocks.emplace_back(model::Paragraph{std::move(line), model::Paragraph::Role::body});
  return made;
}

model::Sheet front(const model::Handbook& handbook) {
  model::Sheet sheet;
  sheet.title = "Intake card";
  sheet.subtitle = "pencil; what is not known stays empty";
  sheet.imprint = imprint(handbook);
  sheet.panels = {
      panel("The watch", {write("number", 20), write("date", 20), write("owner", 30), write("found", 46)}),
      panel("What it is",
            {choose("display", {"grey figures", "red figures", "hands"}), choose("back", {"snap", "screwed", "four screws"}),
             choose("case", {"steel", "gold colour", "chrome", "plastic"}), write("mark", 22),
             choose("crystal", {"acrylic", "glass"}), choose("leak", {"none", "white", "green", "black"}),
             choose("lume", {"none", "some: leave it"})}),
      pictured("Cell", cell_picture(), "number on the can; width, height", {write("number"), write("size", 20, "mm")}),
      pictured("Gasket seat", seat_picture(), "outside of the boss, three times", {seat_lines()}),
      pictured("Groove", groove_picture(), "height of putty, back closed", {write("depth", 14, "mm"), write("width", 14, "mm")}),
      pictured("Crystal", crystal_picture(), "soft jaws, two directions",
               {write("width", 14, "mm"), write("thickness", 14, "mm")}),
      pictured("Scratch", scratch_picture(), "a nail across it", {choose("nail", {"catches", "seen only"})}),
      pictured("Lugs", lugs_picture(), "inside to inside", {write("width", 14, "mm")}),
      panel("Counted", {write("cells in", 10), write("cells out", 10)})};
  return sheet;
}

}  // namespace

model::SheetSet intake_card(const model::Handbook& handbook) {
  model::SheetSet card;
  card.id = "intake-card";
  card.title = "Intake card";
  card.language = handbook.language;
  card.iso_date = iso_date(handbook);
  card.papers = {"a4", "letter"};
  card.sides = {front(handbook)};
  return card;
}

}  // namespace benchleaf::compose
