// Where a back is lifted and how a crystal sits: what is measured on the pictures, by the scale that they state themselves,
// is what records say.
#include <cmath>
#include <regex>
#include <string>
#include <vector>

#include "compose/drawn.h"
#include "compose/real_book.h"
#include "support/catch.h"

using namespace benchleaf;
using model::Ink;
using test::Box;

namespace {

constexpr double kSections = 45;  // plans of backs end left of it

/// `5` of `gasket 5 times its size`, as it stands in the picture.
double scale_of(const model::Drawing& drawing, const std::string& thing) {
  const std::regex times(thing + " ([0-9]+) times");
  for (const auto* words : test::words_of(drawing)) {
    std::smatch found;
    if (std::regex_search(words->text, found, times)) return std::stod(found[1]);
  }
  FAIL("no scale of " << thing);
  return 0;
}

double millimetres(const std::optional<base::Quantity>& quantity) {
  REQUIRE(quantity);
  return *quantity->value_in(base::Unit::millimetre);
}

const model::TextShape* word(const model::Drawing& drawing, const std::string& text) {
  for (const auto* words : test::words_of(drawing)) {
    if (words->text == text) return words;
  }
  return nullptr;
}

std::vector<Box> filled(const model::Drawing& drawing, Ink fill, double from = 0) {
  std::vector<Box> found;
  for (const Box& box : test::boxes_of(drawing, [&](const auto& path) { return path.fill == fill; })) {
    if (box.left >= from) found.push_back(box);
  }
  return found;
}

/// The round of the gasket, the only round thing in the section of a back.
Box gasket_of(const model::Drawing& drawing) {
  for (const Box& box : filled(drawing, Ink::paper, kSections)) {
    if (std::abs(box.width() - box.height()) < 1e-6) return box;
  }
  FAIL("no gasket");
  return {};
}

void stays_inside(const model::Drawing& drawing) {
  for (const Box& box : test::boxes_of(drawing, [](const auto&) { return true; })) {
    CHECK(box.left >= 0);
    CHECK(box.top >= 0);
    CHECK(box.right <= drawing.width_mm);
    CHECK(box.bottom <= drawing.height_mm);
  }
  for (const auto* words : test::words_of(drawing)) {
    CHECK(words->height_mm >= 2.2);
    CHECK(words->at.y < drawing.height_mm);
    if (words->fact.empty()) continue;
    const model::Fact* fact = test::real_book().derived.facts.find(words->fact);
    REQUIRE(fact != nullptr);
    CHECK(words->text == fact->printed);
  }
}

const model::Drawing& back(std::size_t number) {
  const auto drawings = test::drawings_of("drawn-backs");
  REQUIRE(drawings.size() == 4);
  return *drawings[number];
}

const model::Drawing& crystal(std::size_t number) {
  const auto drawings = test::drawings_of("drawn-crystal-fits");
  REQUIRE(drawings.size() == 4);
  return *drawings[number];
}

/// Thickness of the crystal where its section breaks off.
double drawn_thickness(const model::Drawing& drawing) {
  double right = 0;
  Box end;
  for (const model::Shape& shape : drawing.shapes) {
    const auto* path = std::get_if<model::PathShape>(&shape);
    if (path == nullptr || path->fill != Ink::light_fill || !path->dash_mm.empty()) continue;
    for (const auto& step : path->steps) right = std::max(right, step.to.x);
    for (const auto& step : path->steps) {
      if (step.to.x != right) continue;
      end.top = std::min(end.top, step.to.y), end.bottom = std::max(end.bottom, step.to.y);
    }
  }
  return end.height();
}

/// The dashed part between the edge that is held and the free one, then the line of the least oversize if there is one.
std::vector<Box> dashed(const model::Drawing& drawing) {
  return test::boxes_of(drawing, [](const auto& path) { return !path.dash_mm.empty(); });
}

void has_thickness_and_oversize(const model::Drawing& drawing, const model::Crystal& record) {
  const auto& facts = test::real_book().derived.facts;
  const model::Fact* thickness = facts.find(record.reference() + "#thickness");
  const model::Fact* oversize = facts.find(record.reference() + "#oversize");
  REQUIRE((thickness != nullptr && thickness->low && thickness->high));
  REQUIRE((oversize != nullptr && oversize->low && oversize->high));
  CHECK(drawn_thickness(drawing) / scale_of(drawing, "thickness") == Approx((*thickness->low + *thickness->high) / 2));
  const auto free = dashed(drawing);
  REQUIRE(free.size() == 2);
  const double scale = scale_of(drawing, "oversize");
  CHECK(2 * free[0].width() / scale == Approx(*oversize->high));
  CHECK(2 * (free[0].right - free[1].left) / scale == Approx(*oversize->low));
  // The held edge is the wall of the seat, and the skirt stands against it.
  const Box dome = filled(drawing, Ink::light_fill).front();
  CHECK(dome.left == Approx(free[0].right));
  CHECK(word(drawing, "half of") != nullptr);
  CHECK(word(drawing, oversize->printed) != nullptr);
  CHECK(drawing.alt.find("half of " + oversize->printed) != std::string::npos);
}

}  // namespace

TEST_CASE("the blade goes into the seam as deep as the procedure lets it, and not to the gasket", "[compose]") {
  const model::Drawing& drawing = back(0);
  const double scale = scale_of(drawing, "depth and gasket");
  std::smatch deepest;
  const auto& procedure = test::real_book().records.procedures.at("open-a-snap-back");
  REQUIRE(std::regex_search(procedure.stop.front(), deepest, std::regex("deeper than ([0-9.]+) mm")));
  const auto blades = filled(drawing, Ink::accent);
  REQUIRE(blades.size() == 2);
  const auto metal = filled(drawing, Ink::dark_fill, kSections);
  REQUIRE(metal.size() == 1);
  CHECK((blades[1].right - metal[0].left) / scale == Approx(std::stod(deepest[1])));
  CHECK(blades[1].bottom <= metal[0].top + 1e-9);
  const Box gasket = gasket_of(drawing);
  CHECK(gasket.width() / scale == Approx(millimetres(test::real_book().records.gaskets.at("round-0-7").section)));
  CHECK(blades[1].right < gasket.left);
  CHECK(word(drawing, "case knife") != nullptr);
  CHECK(word(drawing, "lip") != nullptr);
  CHECK(drawing.alt.find("at most 2") != std::string::npos);
  stays_inside(drawing);
}

TEST_CASE("both pins of the wrench stand on the floor of notches that lie opposite", "[compose]") {
  const model::Drawing& drawing = back(1);
  const auto pins = filled(drawing, Ink::accent);
  REQUIRE(pins.size() == 3);
  const Box rim = filled(drawing, Ink::light_fill).front();
  CHECK(pins[0].left + pins[0].right + pins[1].left + pins[1].right == Approx(2 * (rim.left + rim.right)));
  CHECK(pins[0].top == Approx(pins[1].top));
  bool stands = false;
  for (const model::Shape& shape : drawing.shapes) {
    const auto* path = std::get_if<model::PathShape>(&shape);
    if (path == nullptr || path->fill != Ink::light_fill) continue;
    for (const auto& step : path->steps)
      stands =
          stands || (step.to.x <= pins[2].left && step.to.x > pins[2].left - 1 && std::abs(step.to.y - pins[2].bottom) < 1e-9);
  }
  CHECK(stands);
  const double section = millimetres(test::real_book().records.gaskets.at("round-0-7").section);
  for (const std::size_t number : {1, 2}) {
    CHECK(gasket_of(back(number)).width() / scale_of(back(number), "gasket") == Approx(section));
    stays_inside(back(number));
  }
  CHECK(drawing.alt.find("anticlockwise") != std::string::npos);
}

TEST_CASE("screws of a back are numbered crosswise, and no tool goes to a watch that has no back", "[compose]") {
  const model::Drawing& drawing = back(2);
  const auto at = [&](const char* number) {
    const auto* words = word(drawing, number);
    REQUIRE(words != nullptr);
    return words->at;
  };
  for (const auto& [one, other] : {std::pair("1", "2"), std::pair("3", "4")}) {
    CHECK(at(one).x != Approx(at(other).x));
    CHECK(at(one).y != Approx(at(other).y));
  }
  CHECK(at("1").y == Approx(at("3").y));
  CHECK(at("1").x == Approx(at("4").x));
  CHECK(filled(back(3), Ink::accent).empty());
  CHECK(word(back(3), "no seam") != nullptr);
  stays_inside(back(3));
}

TEST_CASE("acrylic crystals have their thickness and their oversize, each to the scale that is stated", "[compose]") {
  const auto& crystals = test::real_book().records.crystals;
  has_thickness_and_oversize(crystal(0), crystals.at("acrylic-press-fit"));
  has_thickness_and_oversize(crystal(1), crystals.at("acrylic-tension-ring"));
  CHECK(word(crystal(1), "tension ring") != nullptr);
  for (const std::size_t number : {0, 1, 2, 3}) stays_inside(crystal(number));
}

TEST_CASE("a glass stands in an L gasket of true section, larger than its inside", "[compose]") {
  const model::Drawing& drawing = crystal(2);
  const auto& ring = test::real_book().records.gaskets.at("crystal-l-0-4");
  const double scale = scale_of(drawing, "the rest");
  const auto rings = filled(drawing, Ink::paper);
  REQUIRE(rings.size() == 1);
  CHECK(rings[0].height() / scale == Approx(millimetres(ring.height)));
  const auto free = dashed(drawing);
  REQUIRE(free.size() == 1);
  CHECK((free[0].right - rings[0].left) / scale == Approx(millimetres(ring.wall)));
  // As the record of the glass has it: 0.1 mm larger than the inside of the ring.
  CHECK(2 * free[0].width() / scale_of(drawing, "oversize") == Approx(0.1));
  CHECK(free[0].left > rings[0].left);
  const model::Fact* thickness = test::real_book().derived.facts.find("crystal/mineral-flat-gasket#thickness");
  REQUIRE((thickness != nullptr && thickness->low && thickness->high));
  CHECK(drawn_thickness(drawing) / scale == Approx((*thickness->low + *thickness->high) / 2));
  // A cemented one has room instead.
  CHECK(dashed(crystal(3)).empty());
  CHECK(word(crystal(3), "half of") == nullptr);
}

TEST_CASE("a back or a crystal is not drawn against its own records", "[compose]") {
  const auto rules_of = [](const std::string& body, const std::string& stop, const std::string& fit) {
    const std::string page = "---\nid: one\ntitle: One\nlead: One.\ntrust: memory\n---\n\nOne.\n\n```bench\n" + body + "```\n";
    const auto made = test::book_of(
        {{"handbook.yaml",
          "title: A handbook\nedition: \"1\"\ndate: 2026-03\nlanguage: en-GB\nformat: 1\npapers: [a4]\nchapters:\n"
          "  - { id: all, number: 1, title: All of it, tab: All, pages: [one], kinds: [gasket, tool, term, procedure, crystal] "
          "}\n"},
         {"page/one.md", page},
         {"gasket/ring.yaml",
          "id: ring\ntitle: Ring\nprofile: round\nsection: 0.7 mm\ninside: { from: 8 mm, to: 12 mm, step: 1 mm }\n"
          "material: rubber\nseats: [case-back]\nmoving: false\n"},
         {"gasket/ell.yaml",
          "id: ell\ntitle: Ell\nprofile: l\nwall: 0.4 mm\nheight: 1.4 mm\ninside: { from: 8 mm, to: 12 mm, step: 1 mm }\n"
          "material: rubber\nseats: [crystal]\nmoving: false\n"},
         {"tool/knife.yaml", "id: knife\ntitle: Knife\nuse: Lifting.\ncheck: No burr.\n"},
         {"tool/spoon.yaml", "id: spoon\ntitle: Spoon\nuse: Stirring.\n"},
         {"term/lip.yaml", "id: lip\nterm: lip\nmeaning: A step.\n"},
         {"term/hook.yaml", "id: hook\nterm: hook\nmeaning: A hook.\n"},
         {"procedure/lift.yaml",
          "id: lift\ntitle: Lift\npurpose: It is pressed in.\ntools: [knife]\nsteps:\n"
          "  - { do: Set the blade into the lip., using: [knife] }\nstop:\n  - " +
              stop + "\n"},
         {"crystal/pane.yaml",
          "id: pane\ntitle: Pane\nmaterial: glass\nform: round-flat\nfixing: gasket\nthickness: 1.0 to 1.5 mm\n"
          "recognise: Flat.\nfit: " +
              fit + "\npolish: no\n"}});
    return test::rules_of(made.findings);
  };
  const auto refused = [&](const std::string& body, const std::string& stop = "It is in deeper than 2 mm",
                           const std::string& fit = "The glass 0.1 mm larger than the inside.") {
    return rules_of(body, stop, fit).find("compose.request") != std::string::npos;
  };
  const auto backs = [](const std::string& row) {
    return "show: backs\nwords: Backs\ngasket: ring\nrows:\n  - { " + row + " }\n";
  };
  const std::string snap = backs("back: snap, procedure: lift, tool: knife, place: lip, deepest: blade-depth");
  CHECK_FALSE(refused(snap));
  CHECK(refused(snap, "It is in deeper than 12 mm"));
  CHECK(refused(snap, "It is in deeper than 2.5 mm"));
  CHECK(refused(backs("back: snap, procedure: lift, tool: spoon, place: lip, deepest: blade-depth")));
  CHECK(refused(backs("back: snap, procedure: lift, tool: knife, place: hook, deepest: blade-depth")));
  CHECK(refused(backs("back: snap, procedure: lift, tool: knife, place: lip")));
  CHECK(refused(backs("back: glued, procedure: lift, tool: knife, place: lip")));
  const std::string fits =
      "show: crystal-fits\nwords: Fits\nrows:\n  - { crystal: pane, holder: lip, ring: ell, oversize: glass-over-ring }\n";
  CHECK_FALSE(refused(fits));
  CHECK(refused(fits, "It is in deeper than 2 mm", "The glass 0.2 mm larger than the inside."));
  CHECK(refused("show: crystal-fits\nwords: Fits\nrows:\n  - { crystal: pane }\n"));
  CHECK(refused("show: crystal-fits\nwords: Fits\nrows:\n  - { crystal: none-such }\n"));
}
