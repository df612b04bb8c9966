// Out: the card that is filled in when a watch comes in: side 1 at the door, side 2 with the back off. Its fields are those of a
// watch record, so that the card can be typed in line by line.
#include "ticket/intake_card.h"

#include <string>
#include <utility>
#include <vector>

#include "compose/figures/measure_pictures.h"
#include "compose/imprint.h"
#include "ticket/damage_sketch.h"

namespace benchleaf::ticket {

namespace {

using model::Runs;

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

/// A word and a line to write on, one after the other.
Runs write(const std::vector<std::pair<std::string, double>>& blanks, const std::string& unit = {}) {
  Runs runs;
  for (const auto& [word, mm] : blanks) {
    runs.push_back(model::text_run((runs.empty() ? "" : "  ") + word + " ", model::Style::bold));
    runs.push_back(blank(mm));
  }
  if (!unit.empty()) runs.push_back(model::text_run("\u00A0" + unit));
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

Runs joined(Runs one, const Runs& other) {
  one.push_back(model::text_run("  "));
  one.insert(one.end(), other.begin(), other.end());
  return one;
}

model::Panel panel(std::string title, std::vector<Runs> lines) {
  model::Panel made;
  made.title = std::move(title);
  for (Runs& line : lines) made.blocks.emplace_back(model::Paragraph{std::move(line), model::Paragraph::Role::body});
  return made;
}

model::Panel pictured(std::string title, std::vector<std::shared_ptr<const model::Drawing>> drawings, const std::string& how,
                      std::vector<Runs> lines) {
  model::Panel made;
  made.title = std::move(title);
  model::Pictures pictures;
  for (auto& drawing : drawings)
    pictures.pictures.push_back({std::move(drawing), {model::text_run(pictures.pictures.empty() ? how : std::string())}});
  made.blocks.emplace_back(std::move(pictures));
  for (Runs& line : lines) made.blocks.emplace_back(model::Paragraph{std::move(line), model::Paragraph::Role::body});
  return made;
}

model::Sheet side(const model::Handbook& handbook, std::string title, std::string subtitle) {
  model::Sheet sheet;
  sheet.title = std::move(title);
  sheet.subtitle = std::move(subtitle);
  sheet.imprint = compose::imprint(handbook);
  return sheet;
}

model::Sheet at_the_door(const model::Handbook& handbook) {
  model::Sheet sheet = side(handbook, "Intake card", "side 1, at the door; pencil");
  model::Panel damage =
      pictured("Mark the damage", {damage_sketch()}, "\u00D7 dent   / scratch   ~ worn gold   \u25CB missing   ! crack", {});
  damage.wide = true;
  sheet.panels = {
      panel("The watch", {write({{"number", 20}, {"in", 18}}), write({{"due", 18}, {"may cost", 20}}), write({{"owner", 52}}),
                          write({{"telephone", 48}}), write({{"wish", 56}}), write({{"found", 54}})}),
      panel("What it is",
            {choose("display", {"grey figures", "red figures", "hands"}),
             choose("back", {"snap", "screwed", "four screws", "none"}),
             choose("case", {"steel", "gold colour", "chrome", "plastic"}), write({{"gold mark", 40}}),
             joined(choose("crystal", {"acrylic", "glass", "not sure"}), {}), choose("scratch", {"nail catches", "seen only"})}),
      panel("Ask", {choose("charges itself", {"no", "by light", "by motion"}), choose("crown", {"in", "out", "none"}),
                    choose("rain, sweat", {"worn in it", "never"}), choose("lume", {"none", "some: leave it"}),
                    choose("leak", {"none", "white", "green", "black", "oily"}),
                    write({{"buttons", 12}, {"missing", 12}, {"stuck", 12}}), write({{"module number", 36}})}),
      panel("Earlier cells",
            {write({{"fitted", 18}, {"number", 16}, {"ended", 20}}), write({{"fitted", 18}, {"number", 16}, {"ended", 20}}),
             write({{"fitted", 18}, {"number", 16}, {"ended", 20}})}),
      std::move(damage)};
  return sheet;
}

model::Sheet back_off(const model::Handbook& handbook) {
  model::Sheet sheet = side(handbook, "Measures", "side 2, back off; millimetres");
  sheet.panels = {
      pictured(
          "Cell", {compose::cell_picture()}, "an old one is swollen: measure the well",
          {write({{"how many", 10}, {"marked", 30}}), write({{"width", 16}, {"height", 16}}),
           write({{"well across", 16}, {"deep", 16}}), joined(choose("plus looks", {"up", "down"}), write({{"volts", 14}}))}),
      pictured("Seat", {compose::seat_picture()}, "boss, bore or face, three ways; never from the old gasket",
               {choose("it is a", {"boss", "bore", "face"}), write({{"s", 16}, {"", 16}, {"", 16}})}),
      pictured("Old gasket", {compose::gasket_inside_picture(), compose::section_picture()}, "it tells the section",
               {choose("it is", {"round", "flat", "tar"}), write({{"inside", 16}, {"outside", 16}}),
                write({{"section", 16}, {"flat: high", 14}})}),
      pictured("Groove", {compose::groove_picture()}, "height of putty, back closed by thumbs",
               {write({{"depth", 16}, {"width", 16}}), write({{"four places", 12}, {"", 12}, {"", 12}, {"", 12}})}),
      pictured("Crystal", {compose::crystal_picture()}, "soft jaws; round: two directions",
               {choose("it is", {"round", "shaped", "flat", "domed"}), write({{"width", 16}, {"length", 16}}),
                write({{"thickness", 16}, {"dome", 16}}), choose("print beneath", {"none", "some"})}),
      pictured("Lugs", {compose::lugs_picture()}, "inside to inside", {write({{"width", 16}, {"tip of the bar", 14}})}),
      panel("Buttons, pressed once", {write({{"1", 56}}), write({{"2", 56}}), write({{"3", 56}}), write({{"4", 56}})}),
      panel("Counted", {write({{"cells in", 12}, {"cells out", 12}}), write({{"screws", 12}, {"photographs", 12}})})};
  return sheet;
}

}  // namespace

model::SheetSet intake_card(const model::Handbook& handbook) {
  model::SheetSet card;
  card.id = "intake-card";
  card.title = "Intake card";
  card.language = handbook.language;
  card.iso_date = compose::iso_date(handbook);
  card.papers = {"a4", "letter"};
  card.sides = {at_the_door(handbook), back_off(handbook)};
  return card;
}

}  // namespace benchleaf::ticket
