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

/// A word and a line to write on, one after the other; the figure is the share of the line that the blank takes.
Runs write(const std::vector<std::pair<std::string, double>>& blanks) {
  Runs runs;
  for (const auto& [word, share] : blanks) {
    if (!word.empty()) runs.push_back(model::text_run((runs.empty() ? "" : "\u2002") + word + " ", model::Style::bold));
    if (word.empty()) runs.push_back(model::text_run("\u2002"));
    runs.push_back(blank(share));
  }
  return runs;
}

/// A word and a box before each answer.
Runs choose(const std::string& word, const std::vector<std::string>& answers) {
  Runs runs;
  if (!word.empty()) runs.push_back(model::text_run(word + " ", model::Style::bold));
  for (const std::string& answer : answers) {
    runs.push_back(tick());
    runs.push_back(model::text_run("\u00A0" + answer + (&answer == &answers.back() ? "" : "  ")));
  }
  return runs;
}

Runs joined(Runs one, const Runs& other) {
  one.push_back(model::text_run("\u2002"));
  one.insert(one.end(), other.begin(), other.end());
  return one;
}

model::Panel panel(std::string title, const std::string& note, std::vector<Runs> lines,
                   std::shared_ptr<const model::Drawing> picture = nullptr) {
  model::Panel made;
  made.title = std::move(title);
  if (!note.empty()) made.note = {model::text_run(note)};
  made.wide = true;
  made.blocks.emplace_back(model::Fields{std::move(picture), std::move(lines)});
  return made;
}

constexpr double kBesideTwoLines = 4.4;  // letters of a picture that is set smaller, to stand beside two lines

/// A letter of the card in a picture of what is measured.
struct Letter {
  double x;
  double y;
  const char* text;
};

std::shared_ptr<const model::Drawing> lettered(const std::shared_ptr<const model::Drawing>& picture,
                                               const std::vector<Letter>& letters, double height_mm = 3) {
  model::Drawing drawing = *picture;
  for (const Letter& letter : letters) {
    model::TextShape shape;
    shape.at = {letter.x, letter.y};
    shape.text = letter.text;
    shape.height_mm = height_mm;
    shape.bold = true;
    drawing.shapes.emplace_back(std::move(shape));
  }
  return std::make_shared<const model::Drawing>(std::move(drawing));
}

model::Sheet side(const model::Handbook& handbook, std::string title, std::string subtitle) {
  model::Sheet sheet;
  sheet.title = std::move(title);
  sheet.subtitle = std::move(subtitle);
  sheet.imprint = compose::imprint(handbook);
  return sheet;
}

model::Panel damage() {
  model::Panel made;
  made.title = "Mark the damage";
  made.note = {model::text_run("\u00D7 dent   / scratch   ~ worn gold   \u25CB missing   ! crack")};
  made.wide = true;
  made.blocks.emplace_back(model::Pictures{{{damage_sketch(), {}}}});
  return made;
}

/// A line a cell, newest last, with words over its blanks.
model::Panel earlier_cells() {
  std::vector<Runs> lines;
  for (int i = 0; i < 3; ++i)
    lines.push_back(write({{"fitted", 2}, {"number", 2}, {"system", 1.6}, {"months", 1}, {"ended", 2.4}}));
  return panel("Earlier cells", "as told, or read inside the back", std::move(lines));
}

model::Sheet at_the_door(const model::Handbook& handbook) {
  model::Sheet sheet = side(handbook, "Intake card", "side 1, at the door");
  sheet.panels = {
      panel("The watch", "pencil",
            {write({{"number", 1}, {"in", 1}, {"due", 1}, {"may cost", 1}}), write({{"owner", 3}, {"telephone", 2}}),
             write({{"wish", 1}})}),
      panel("What it is", "",
            {joined(choose("display", {"grey figures", "red figures", "hands"}), write({{"module", 1}})),
             joined(choose("back", {"snap", "screwed", "four screws", "none"}), write({{"its mark", 1}})),
             joined(choose("case", {"steel", "gold colour", "chrome", "plastic"}), write({{"gold mark", 1}})),
             joined(choose("crystal", {"acrylic", "glass", "not sure"}), choose("scratch", {"nail catches", "seen only"})),
             joined(choose("charges itself", {"no", "by light", "by motion"}), choose("rain, sweat", {"worn in it", "never"})),
             joined(choose("leak", {"none", "white", "green", "black", "oily"}), write({{"cell bought", 1}})),
             joined(choose("crown", {"in", "out", "none"}), choose("lume", {"none", "some: leave it closed"})),
             write({{"buttons", 1}, {"missing", 1}, {"stuck", 1}}),
             write({{"gains or loses", 1}, {"s in days", 1}, {"found", 3}})}),
      damage(), earlier_cells()};
  return sheet;
}

model::Sheet back_off(const model::Handbook& handbook) {
  model::Sheet sheet = side(handbook, "Measures", "side 2, back off; mm");
  sheet.panels = {
      panel("Cell", "plastic callipers; an old one is swollen: measure the well",
            {write({{"how many", 1}, {"found marked", 3}}), write({{"width w", 1}, {"height h", 1}}),
             write({{"well across", 1}, {"deep", 1}}), joined(choose("plus looks", {"up", "down"}), write({{"volts", 1}}))},
            lettered(compose::cell_picture(), {{17.6, 3.4, "w"}, {21.4, 9, "h"}})),
      panel("Seat", "three ways; never from the old gasket",
            {choose("", {"boss, outside", "bore, inside", "face, inner wall"}), write({{"s", 1}, {"", 1}, {"", 1}})},
            lettered(compose::seat_picture(), {{21, 5, "s"}}, kBesideTwoLines)),
      panel("Old gasket", "half an hour after it came out",
            {choose("", {"round", "flat", "tar"}), write({{"inside i", 1}, {"outside o", 1}}),
             write({{"section c", 1}, {"flat: high", 1}})},
            compose::gasket_measures()),
      panel("Groove", "height of putty, back closed by thumbs",
            {write({{"depth d", 1}, {"width w", 1}}), write({{"four places", 1}, {"", 1}, {"", 1}, {"", 1}})},
            lettered(compose::groove_picture(), {{17.6, 4, "w"}, {21.4, 10.6, "d"}}, kBesideTwoLines)),
      panel("Crystal", "soft jaws; round: two directions",
            {joined(choose("", {"round", "shaped", "flat", "dome"}), choose("print", {"none", "some"})),
             write({{"width w", 1}, {"length l", 1}}), write({{"thickness t", 1}, {"dome", 1}}),
             write({{"bezel inside", 1}, {"rim", 1}, {"scratch deep", 1}})},
            lettered(compose::crystal_picture(), {{11.6, 13.6, "w"}, {23.4, 11, "t"}})),
      panel("Lugs, buttons, count", "",
            {write({{"lugs, inside", 1}, {"tip of the bar", 1}, {"hole", 1}}), write({{"button 1 does", 1}, {"2", 1}}),
             write({{"3", 1}, {"4", 1}}), write({{"cells in", 1}, {"out", 1}, {"screws", 1}, {"photographs", 1}})})};
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
  card.card = true;
  card.sides = {at_the_door(handbook), back_off(handbook)};
  return card;
}

}  // namespace benchleaf::ticket
