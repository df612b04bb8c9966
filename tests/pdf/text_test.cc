// Expected: the words and places that the trial was made of. Readers: poppler's pdftotext and pdffonts.
#include <map>
#include <string>
#include <vector>

#include "support/catch.h"
#include "trial.h"

namespace benchleaf::pdf {

namespace {

bool contains(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::string text_of(const std::string& path) { return run("pdftotext -layout " + path + " -").text; }

struct Word {
  double left = 0;
  double right = 0;
  int page = 0;
};

double number_after(const std::string& line, const std::string& key) {
  return std::stod(line.substr(line.find(key) + key.size()));
}

/// The words that pdftotext finds, with their boxes in pt; of words that come more than once, the first.
std::map<std::string, Word> words_of(const std::string& path) {
  std::map<std::string, Word> words;
  int page = 0;
  for (const std::string& line : lines_from("pdftotext -bbox " + path + " -")) {
    if (contains(line, "<page ")) ++page;
    if (!contains(line, "<word ")) continue;
    const std::size_t begin = line.find('>') + 1;
    words.emplace(line.substr(begin, line.find("</word>") - begin),
                  Word{number_after(line, "xMin=\""), number_after(line, "xMax=\""), page});
  }
  return words;
}

}  // namespace

TEST_CASE("every font is embedded as a subset with its texts", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::vector<std::string> lines = lines_from("pdffonts " + file.path());
  REQUIRE(lines.size() == 2 + 7);  // text, bold, italic, condensed, condensed bold, symbol, signs; the head takes two lines
  int drawn = 0;
  for (std::size_t i = 2; i < lines.size(); ++i) {
    INFO(lines[i]);
    if (contains(lines[i], "Type 3")) {
      ++drawn;
      CHECK(contains(lines[i], "Custom           yes no  yes"));  // embedded, whole, with its texts
      continue;
    }
    CHECK(lines[i].find('+') == 6);
    CHECK(contains(lines[i], "CID TrueType      Identity-H       yes yes yes"));
  }
  CHECK(drawn == 1);
}

TEST_CASE("the text comes back as it was set", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::string text = text_of(file.path());
  INFO(text);
  CHECK(contains(text, "An affluent office, a waffle and a fjord at ≥ 3 µA, −5 °C."));  // pdftotext parts words by plain spaces
  CHECK(contains(text, "diam\u00AD"));
  CHECK(contains(text, "⚠"));
}

TEST_CASE("a trust sign is read as its words and stands in its place", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  CHECK(contains(text_of(file.path()), "About nine years "));
  CHECK(contains(text_of(file.path()), " (trade practice, worked out)\n"));
  // The sign is as wide as high: poppler gives the box of its words.
  for (const auto& [word, place] : words_of(file.path())) {
    if (word == "(trade") CHECK(place.left == Approx(150).margin(0.05));
    if (word == "out)") CHECK(place.right == Approx(157).margin(0.05));
  }
}

TEST_CASE("ligatures are set as one glyph and read as letters", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial(fonts);
  const int page = trial.add_page("1");
  const page::TagId tag = trial.add_tag(page::Role::p, 0);
  const page::TextItem& item = trial.add_text(page, tag, {60'000, 100'000}, "affluent");
  REQUIRE(item.glyphs.size() == 6);  // a ffl u e n t: else the font has no ligature and the test shows nothing
  const TrialFile file(written(trial.document, fonts));
  CHECK(contains(text_of(file.path()), "affluent"));
}

TEST_CASE("words stand where the display list puts them", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial(fonts);
  const int page = trial.add_page("1");
  const page::TagId tag = trial.add_tag(page::Role::p, 0);
  struct Case {
    page::Face face;
    page::Length size;
    const char* word;
  };
  const std::vector<Case> cases = {
      {page::Face::text, 9'300, "AVATAR-To-Wall"},   {page::Face::condensed, 7'250, "Tottering-affluent"},
      {page::Face::text_bold, 47'000, "Waffle"},     {page::Face::mono, 8'000, "0O1lI-SR754W"},
      {page::Face::text_italic, 11'111, "Vauxhall"}, {page::Face::text, 110'000, "LyTo"}};
  std::map<std::string, Word> expected;
  page::Length y = 100'000;
  for (const Case& one : cases) {
    page::TextItem& item = trial.add_text(page, tag, {61'234, y}, one.word, {one.face, one.size, {}, 0});
    for (page::Glyph& glyph : item.glyphs) glyph.extra = 37;  // as tracking does
    const double last = static_cast<double>(item.glyphs.back().extra);
    expected[one.word] = {61.234, 61.234 + (width_of(item, fonts) - last) / 1000, 1};
    y += one.size + 20'000;
  }
  const TrialFile file(written(trial.document, fonts));
  const std::map<std::string, Word> found = words_of(file.path());
  for (const auto& [word, place] : expected) {
    INFO(word);
    REQUIRE(found.count(word) == 1);
    CHECK(found.at(word).left == Approx(place.left).margin(0.05));
    CHECK(found.at(word).right == Approx(place.right).margin(0.05));
  }
}

TEST_CASE("a long justified line ends where its advances say", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial(fonts);
  const int page = trial.add_page("1");
  page::TextItem& item =
      trial.add_text(page, trial.add_tag(page::Role::p, 0), {50'000, 100'000},
                     "The bezel stays with the case, but the crystal is pressed out to the front against the ring.");
  for (page::Glyph& glyph : item.glyphs) {
    if (item.text.at(glyph.cluster) == ' ') glyph.extra = 1'017;
  }
  const double end = 50 + width_of(item, fonts) / 1000;
  const TrialFile file(written(trial.document, fonts));
  CHECK(words_of(file.path()).at("ring.").right == Approx(end).margin(0.05));
}

TEST_CASE("turned text runs down or up the page", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial(fonts);
  const int page = trial.add_page("1");
  trial.add_text(page, page::kPaginationArtifact, {300'000, 100'000}, "Down", {page::Face::text, 10'000, {}, 1});
  trial.add_text(page, page::kPaginationArtifact, {400'000, 300'000}, "Up", {page::Face::text, 10'000, {}, 3});
  const TrialFile file(written(trial.document, fonts));
  for (const std::string& line : lines_from("pdftotext -bbox " + file.path() + " -")) {
    if (contains(line, ">Down<")) CHECK(number_after(line, "yMin=\"") == Approx(100).margin(0.05));
    if (contains(line, ">Up<")) CHECK(number_after(line, "yMax=\"") == Approx(300).margin(0.05));
  }
  const std::string text = text_of(file.path());
  CHECK(contains(text, "Down"));
  CHECK(contains(text, "Up"));
}

}  // namespace benchleaf::pdf
