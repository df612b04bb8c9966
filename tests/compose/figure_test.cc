// Pictures drawn from facts: what is measured on them is what the facts and a reckoning of the test's own say.
#include <cmath>
#include <map>
#include <numbers>
#include <set>
#include <string>
#include <vector>

#include "compose/drawn.h"
#include "compose/real_book.h"
#include "support/catch.h"

using namespace benchleaf;
using test::boxes_of;
using test::drawings_of;
using test::words_of;

namespace {

double value_of(const std::string& fact) {
  const model::Fact* found = test::real_book().derived.facts.find(fact);
  REQUIRE(found != nullptr);
  REQUIRE(found->value);
  return *found->value;
}

}  // namespace

TEST_CASE("the nest has a circle at true size for every whole inside of its series", "[compose]") {
  const auto& inside = test::real_book().records.gaskets.at("round-0-7").inside;
  std::set<int> wanted;
  for (int mm = static_cast<int>(*inside.from->value_in(base::Unit::millimetre));
       mm <= *inside.to->value_in(base::Unit::millimetre); ++mm)
    wanted.insert(mm);
  CHECK(wanted.size() > 30);
  std::multiset<int> drawn;
  for (const model::Drawing* nest : drawings_of("nest")) {
    CHECK(nest->true_size);
    const auto circles = boxes_of(*nest, [](const model::PathShape&) { return true; });
    const auto words = words_of(*nest);
    REQUIRE(circles.size() == words.size());
    for (std::size_t i = 0; i < circles.size(); ++i) {
      const int mm = std::stoi(words[i]->text);
      drawn.insert(mm);
      INFO(mm);
      CHECK(circles[i].width() == Approx(mm));
      CHECK(circles[i].height() == Approx(mm));
      // The figure stands under its circle and over the next one, its capitals 0.71 of the type high.
      CHECK(words[i]->at.y - 0.71 * words[i]->height_mm > circles[i].top);
      if (i > 0) CHECK(words[i]->at.y < circles[i - 1].top);
      CHECK(nest->alt.find(words[i]->text) != std::string::npos);
    }
  }
  CHECK(drawn == std::multiset<int>(wanted.begin(), wanted.end()));
}

/// Millimetres of the drawing for a micrometre of depth: one scale for every step.
constexpr double kDepthScale = 0.24;

TEST_CASE("the depth profile takes a scratch and twice the grain of each paper, to one scale", "[compose]") {
  // Mirror makers' rule of two grains a pit, and medians of FEPA P grades 43-1 as lists print them: 21.8, 15.3, 12.6, 8.4 µm.
  const std::vector<double> taken = {60, 2 * 21.8, 2 * 15.3, 2 * 12.6, 2 * 8.4};
  const auto drawings = drawings_of("drawn-steps");
  REQUIRE(drawings.size() == 1);
  const auto frames =
      boxes_of(*drawings[0], [](const model::PathShape& path) { return !path.dash_mm.empty() && path.steps.size() > 3; });
  REQUIRE(frames.size() == taken.size());
  double whole = 0;
  for (std::size_t i = 0; i < taken.size(); ++i) {
    INFO(i);
    whole += taken[i];
    CHECK(frames[i].height() / kDepthScale == Approx(taken[i]));
    if (i > 0) CHECK(frames[i].top == Approx(frames[i - 1].bottom));
  }
  // The last step ends as deep as the ladder takes at most from the whole.
  const model::Fact* removal =
      test::real_book().derived.facts.find("page/polishing#scratch-ladder.steps.p800-p1200-p1500-p2500.removal");
  REQUIRE(removal != nullptr);
  REQUIRE(removal->high);
  CHECK(*removal->high == Approx(whole));
  CHECK((frames.back().bottom - frames.front().top) / kDepthScale == Approx(*removal->high));
  for (const char* words : {"P800 takes 20", "P1200 takes 43.6", "polish takes 16.8"}) {
    CHECK(drawings[0]->alt.find(words) != std::string::npos);
  }
}

TEST_CASE("the gasket in its groove keeps its rubber and has the squeeze that is printed", "[compose]") {
  const auto drawings = drawings_of("drawn-groove");
  REQUIRE(drawings.size() == 1);
  const auto rubber = boxes_of(*drawings[0], [](const model::PathShape& path) { return path.fill == model::Ink::light_fill; });
  const auto groove = boxes_of(*drawings[0], [](const model::PathShape& path) { return path.fill == model::Ink::paper; });
  REQUIRE(rubber.size() == 3);
  REQUIRE(groove.size() == 1);
  const double scale = 20;
  // A ring of 0.7 mm, inside 27.5 mm, on a boss of 28 mm: length and section by constant volume, by hand.
  const double stretched = 0.7 * std::sqrt(27.5 / 28);
  CHECK(rubber[0].width() == Approx(0.7 * scale));
  CHECK(rubber[1].width() == Approx(stretched * scale));
  CHECK(rubber[2].height() == Approx(0.55 * scale));
  CHECK(groove[0].height() == Approx(0.55 * scale));
  CHECK(groove[0].width() == Approx(0.95 * scale));
  const double squeezed_area =
      (rubber[2].width() - 0.55 * scale) * 0.55 * scale + std::numbers::pi * std::pow(0.55 * scale / 2, 2);
  CHECK(squeezed_area == Approx(std::numbers::pi * std::pow(stretched * scale / 2, 2)));
  CHECK(rubber[2].width() < groove[0].width());
  const std::string id = "page/gaskets#gasket-fit.groove.28-mm.";
  CHECK(value_of(id + "squeeze") == Approx(100 * (1 - rubber[2].height() / rubber[1].height())));
  CHECK(value_of(id + "fill") == Approx(100 * squeezed_area / (groove[0].width() * groove[0].height())));
  CHECK(value_of(id + "stretch") == Approx(100 * (28 - 27.5) / 27.5));
}

TEST_CASE("a bar of volts lies between end and nominal voltage on the scale under it", "[compose]") {
  // Nominal and end voltages of IEC 60086 systems as encyclopaedia pages print them: S 1.55 and 1.2, L 1.5 and 1.0, C 3 and 2.
  const std::vector<std::pair<double, double>> volts = {{1.2, 1.55}, {1.0, 1.5}, {2.0, 3.0}};
  const auto drawings = drawings_of("drawn-voltages");
  REQUIRE(drawings.size() == 1);
  const auto bars = boxes_of(*drawings[0], [](const model::PathShape& path) { return path.fill == model::Ink::light_fill; });
  REQUIRE(bars.size() == volts.size());
  // The scale is read as a reader does: by the places of its figures.
  std::map<std::string, double> place;
  for (const auto* text : words_of(*drawings[0])) {
    if (text->anchor == model::TextShape::Anchor::middle) place[text->text] = text->at.x;
  }
  REQUIRE(place.count("0\u2009V") == 1);
  const double nought = place["0\u2009V"];
  const double volt = place["1\u2009V"] - nought;
  CHECK(place["3\u2009V"] - nought == Approx(3 * volt));
  for (std::size_t i = 0; i < volts.size(); ++i) {
    INFO(i);
    CHECK((bars[i].left - nought) / volt == Approx(volts[i].first));
    CHECK((bars[i].right - nought) / volt == Approx(volts[i].second));
  }
  CHECK(drawings[0]->alt.find("no curves") != std::string::npos);
}

TEST_CASE("a picture that lacks what it is drawn from is a finding", "[compose]") {
  const auto rules_of_page = [](const std::string& body) {
    const std::string handbook =
        "title: A handbook\nedition: \"1\"\ndate: 2026-03\nlanguage: en-GB\nformat: 1\npapers: [a4]\nchapters:\n"
        "  - { id: all, number: 1, title: All of it, tab: All, pages: [one], kinds: [gasket] }\n";
    const std::string page = "---\nid: one\ntitle: One\nlead: One.\ntrust: memory\n---\n\nOne.\n\n```bench\n" + body + "```\n";
    const std::string gasket =
        "id: ring\ntitle: Ring\nprofile: round\nsection: 0.7 mm\ninside: { from: 8 mm, to: 12 mm, step: 1 mm }\n"
        "material: rubber\nseats: [case-back]\nmoving: false\nbasis:\n  inside: { trust: memory }\n";
    const auto made = test::book_of({{"handbook.yaml", handbook}, {"page/one.md", page}, {"gasket/ring.yaml", gasket}});
    return test::rules_of(made.findings);
  };
  CHECK(rules_of_page("show: nest\nwords: A nest\nseries: ring\n").find("compose.request") == std::string::npos);
  CHECK(rules_of_page("show: nest\nseries: ring\n").find("compose.request") != std::string::npos);
  CHECK(rules_of_page("show: nest\nwords: A nest\nseries: none-such\n").find("compose.request") != std::string::npos);
  CHECK(rules_of_page("show: reckoned\ndrawn: no-such\nwords: It\nname: it\ncalculator: gasket-fit\nrows:\n"
                      "  - { seat: 28 mm }\ncolumns: [ideal-inside]\n")
            .find("compose.request") != std::string::npos);
}
