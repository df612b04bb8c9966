// Where a word may be parted by itself. Expected places: the house's rules for values, codes and dates; for dictionary
// words the dictionary itself, asked through `example` of libhyphen's own package, and any English dictionary.
#include "page/text/break_points.h"

#include "page/text/text_support.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

/// The word with `|` where it may be parted and nothing is put in, `=` where a hyphen is.
std::string marked(const std::string& word, bool dictionary = true) {
  std::string result;
  std::size_t done = 0;
  for (const page::BreakPoint& point : page::word_breaks(word, dictionary ? &test::book_hyphenator() : nullptr)) {
    result += word.substr(done, point.at - done) + (page::puts_hyphen(point.kind) ? "=" : "|");
    done = point.at;
  }
  return result + word.substr(done);
}

}  // namespace

TEST_CASE("words with figures are never parted") {
  for (const char* word :
       {"SR626SW", "LR44", "1+20", "1:20", "2026-11-01", "4.0-4.2", "EN13463-1", "non-SR626SW", "SR626SW-type", "20/30",
        "1/2-inch", "H2O2", "3\xC2\xA0millimetres", "9.5\xE2\x80\x89millimetres", "0.5\xE2\x80\x89mm-thick",
        "30\xE2\x80\x93"
        "40",
        "\xC2\xBCturns", "cell/sr754w", "30.x-compartment2"}) {
    CHECK(marked(word) == word);
  }
}

TEST_CASE("short words with signs stay whole") {
  for (const char* word : {"and/or", "mol/L", "mm/s", "e-mail", "X-ray", "NBR-FKM", "pH-strip", "IEC/EN", "don\xE2\x80\x99t",
                           "--", "-", "/", "\xE2\x80\x94"}) {
    CHECK(marked(word, false) == word);
  }
}

TEST_CASE("words of letters are parted behind hyphens, dashes and, if long, slashes") {
  CHECK(marked("silver-oxide", false) == "silver-|oxide");
  CHECK(marked("water-resistant-ish", false) == "water-|resistant-|ish");
  CHECK(marked("nitrile/fluorocarbon", false) == "nitrile/|fluorocarbon");
  CHECK(marked("cap\xE2\x80\x94then", false) == "cap\xE2\x80\x94|then");
  CHECK(marked("https://example.org/a/b-c", false) == "https://|example.org/|a/|b-|c");
}

TEST_CASE("capitals, formulas and words of five letters at most are not hyphenated") {
  for (const char* word : {"WARNING", "DANGER", "NiMH", "MnOxide", "cell", "into", "don\xE2\x80\x99ting",
                           "\xCE\xB1\xCE\xB2\xCE\xB3\xCE\xB4\xCE\xB5\xCE\xB6\xCE\xB7"}) {
    CHECK(marked(word) == word);
  }
}

TEST_CASE("at least two letters stand before a hyphen and three after") {
  for (const char* word : {"resistance", "lubrication", "movement", "corrosion", "Handbook",
                           "\xE2\x80\x9Chypochlorite,\xE2\x80\x9D", "identification"}) {
    const std::string text = marked(word);
    CHECK(text != word);
    const std::size_t first = text.find('=');
    const std::size_t last = text.rfind('=');
    CHECK(first >= 2);
    CHECK(text.size() - last - 1 >= 3);
  }
}

// the patterns hold "hy3phen" in all English sets since Liang's thesis of 1983
TEST_CASE("the dictionary's own word is parted where it says") {
  CHECK(marked("hyphen") == "hy=phen");
  CHECK(marked("hyphen,") == "hy=phen,");
  CHECK(marked("Hyphen") == "Hy=phen");
}

TEST_CASE("words too long for any dictionary stay whole") {
  CHECK(test::book_hyphenator().breaks(std::string(10000, 'a')).empty());
  CHECK(test::book_hyphenator().breaks("").empty());
  CHECK(test::book_hyphenator().breaks("handb00k").empty());
}

TEST_CASE("bytes that are no dictionary are a finding and part nothing") {
  for (const char* bytes : {"", "no dictionary\n", "ISO8859-1\nhy3ph\n", "UTF-8"}) {
    report::Findings findings;
    const page::Hyphenator hyphenator = page::Hyphenator::open(bytes, findings);
    REQUIRE(findings.all().size() == 1);
    CHECK(findings.all()[0].rule == report::Rule::font_hyphenation);
    CHECK(hyphenator.breaks("hyphen").empty());
  }
}
