// Drawings at true size, and the signs by the look's own figures.
#include "html/drawings.h"

#include <algorithm>
#include <set>

#include "html/tokenizer.h"
#include "model/signs.h"
#include "support/catch.h"

namespace benchleaf::html_tests {

namespace {

using namespace model;

Drawing ring() {
  Drawing drawing;
  drawing.width_mm = 7.9;
  drawing.height_mm = 5.4;
  drawing.true_size = true;
  drawing.alt = "a <ring>";
  PathShape path = rectangle({0, 0}, 7.9, 5.4);
  path.fill = Ink::light_fill;
  path.stroke = Ink::ink;
  path.stroke_mm = 0.25;
  path.dash_mm = {2, 0.5};
  path.even_odd = true;
  TextShape text;
  text.at = {1, 2};
  text.text = "7.9";
  text.anchor = TextShape::Anchor::middle;
  text.fact = "cell/x#size.diameter";
  drawing.shapes = {path, text};
  return drawing;
}

}  // namespace

TEST_CASE("a drawing is as large as its millimetres say and has its words", "[html]") {
  const Tokens tokens = tokenize(html::picture(ring()).bytes());
  REQUIRE(tokens.fault == "");
  const Token& svg = tokens.all.front();
  CHECK(svg.name == "svg");
  CHECK(svg.attribute("width") == "7.9mm");
  CHECK(svg.attribute("height") == "5.4mm");
  CHECK(svg.attribute("viewBox") == "0 0 7.9 5.4");
  CHECK(svg.attribute("role") == "img");
  CHECK(svg.attribute("class") == "drawing");  // without `scales`: a true size is never scaled
  CHECK(tokens.all.at(1).name == "title");
  CHECK(tokens.all.at(2).text == "a <ring>");
}

TEST_CASE("paths and texts keep their places, colours are classes", "[html]") {
  const Tokens tokens = tokenize(html::picture(ring()).bytes());
  const auto path = std::find_if(tokens.all.begin(), tokens.all.end(), [](const Token& token) { return token.name == "path"; });
  REQUIRE(path != tokens.all.end());
  CHECK(path->attribute("d") == "M0 0L7.9 0L7.9 5.4L0 5.4Z");
  CHECK(path->attribute("class") == "fill-light stroke-ink");
  CHECK(path->attribute("stroke-width") == "0.25");
  CHECK(path->attribute("stroke-dasharray") == "2 0.5");
  CHECK(path->attribute("fill-rule") == "evenodd");
  const auto text = std::find_if(tokens.all.begin(), tokens.all.end(), [](const Token& token) { return token.name == "text"; });
  REQUIRE(text != tokens.all.end());
  CHECK(text->attribute("x") == "1");
  CHECK(text->attribute("text-anchor") == "middle");
  CHECK(text->attribute("data-fact") == "cell/x#size.diameter");
}

TEST_CASE("the bar under a true-size figure is 20 mm long", "[html]") {
  const Tokens tokens = tokenize(html::true_size_bar().bytes());
  REQUIRE(tokens.fault == "");
  const auto path = std::find_if(tokens.all.begin(), tokens.all.end(), [](const Token& token) { return token.name == "path"; });
  REQUIRE(path != tokens.all.end());
  CHECK(path->attribute("d") == "M0.15 2.85L20.15 2.85");  // 20.15 - 0.15 = 20 user units of 1 mm
}

TEST_CASE("every trust level has a sign and words of its own, worked out ones a bar below", "[html]") {
  std::set<std::string> drawn, said;
  for (Trust trust :
       {Trust::standard, Trust::handbook, Trust::dataset, Trust::trade, Trust::memory, Trust::invented, Trust::given}) {
    const Drawing plain = trust_sign(trust, false), barred = trust_sign(trust, true);
    CHECK(plain.width_mm == 10);
    CHECK(plain.height_mm == 10);
    CHECK(barred.height_mm == 12);
    CHECK(barred.shapes.size() == plain.shapes.size() + 1);
    drawn.insert(html::picture(plain).bytes().substr(html::picture(plain).bytes().find("</title>")));
    said.insert(trust_words(trust, false));
  }
  CHECK(drawn.size() == 7);
  CHECK(said.size() == 7);
  CHECK(trust_words(Trust::memory, true) == "recalled, worked out");
}

TEST_CASE("sign numbers lead to the general sign of their family and no further", "[html]") {
  // Families of ISO 7010: E safe condition, F fire, M mandatory, P prohibition, W warning. The general signs of E and F do
  // not exist, so their titles stand alone.
  CHECK(safety_sign("M004"));
  CHECK(safety_sign("P003"));
  CHECK(safety_sign("W021"));
  CHECK_FALSE(safety_sign("E011"));
  CHECK_FALSE(safety_sign("F001"));
  CHECK_FALSE(safety_sign(""));
}

}  // namespace benchleaf::html_tests
