// What is typed becomes words, sizes and names. Conversions: 1 in = 25.4 mm (ISO 31-1); folding: the Unicode character database,
// by the library that the book is set with.
#include "query/words.h"
#include "base/utf8.h"
#include "query/name_index.h"
#include "query/real_answers.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

std::string shown(std::string_view text) {
  std::string out;
  for (const query::Word& word : query::words_of(text)) out += (out.empty() ? "" : " ") + word.text;
  return out;
}

const query::NameIndex& names() {
  static const query::Vocabulary kVocabulary(test::real_content().tables);
  static const query::NameIndex kNames(test::real_content().records, test::real_content().tables, kVocabulary);
  return kNames;
}

/// The record that a name means among these kinds, `refused` with more than one, else `nothing`.
std::string means(std::string_view name, const std::vector<model::Kind>& kinds) {
  const query::Resolution found = names().resolve(name, kinds);
  if (found.record != nullptr) return std::string(model::kind_name(found.record->kind)) + "/" + found.record->id;
  return found.readings.empty() ? "nothing" : "refused";
}

}  // namespace

TEST_CASE("figures, units and signs are words of their own") {
  CHECK(shown("7.9x5.4mm") == "7.9 x 5.4 mm");
  CHECK(shown("7,90 \u00D7 5,40 mm") == "7.9 x 5.4 mm");
  CHECK(shown("29/64 in. by 7/32 in.") == "0.453125 in by 0.21875 in");
  CHECK(shown("395/399") == "395 399");
  CHECK(shown("377,376") == "377 376");
  CHECK(shown("0,311 x 0,213\"") == "0.311 x 0.213 \"");
  CHECK(shown("won't") == "wont");
  CHECK(shown("\u00D6l, wei\u00DF") == "ol weiss");
  CHECK(shown(" .,- ").empty());
}

TEST_CASE("letters with marks fold as the Unicode character database has it") {
  for (char32_t code = 0xC0; code < 0x180; ++code) {
    const std::string letter = base::to_utf8(code);
    const std::string folded = query::folded(letter);
    const bool plain = folded.size() <= 2 && folded[0] >= 'a' && folded[0] <= 'z';
    if (!plain) continue;  // letters that are not made of a letter and a mark stay as they are
    INFO(letter);
    CHECK(folded == base::fold(letter));
  }
}

TEST_CASE("forms of one word have one stem") {
  for (const auto& [one, other] : std::initializer_list<std::pair<const char*, const char*>>{{"batteries", "battery"},
                                                                                             {"closing", "closed"},
                                                                                             {"glasses", "glass"},
                                                                                             {"polarizer", "polariser"},
                                                                                             {"colour", "color"},
                                                                                             {"stopping", "stopped"},
                                                                                             {"scratches", "scratch"},
                                                                                             {"replacement", "replaces"},
                                                                                             {"millimetre", "millimeter"}}) {
    INFO(one << " " << other);
    CHECK(query::stem_of(one) == query::stem_of(other));
  }
  CHECK(query::stem_of("spring") == "spring");
  CHECK(query::stem_of("gas") == "gas");
  CHECK(query::stem_of("sr626sw") == "sr626sw");
}

TEST_CASE("a name means one record, or is refused") {
  using model::Kind;
  const std::vector<Kind> cell{Kind::cell}, liquid{Kind::chemistry}, material{Kind::material},
      residue{Kind::residue, Kind::substance};
  CHECK(means("CR2032", cell) == "cell/cr2032");
  CHECK(means("cr 2016", cell) == "cell/cr2016");
  CHECK(means("SR 754 W", cell) == "cell/sr754w");
  CHECK(means("ag13", cell) == "cell/lr1154");
  // Short sizes 44, 48 and 63 are 1154, 754 and 521 (table cell-short-forms).
  CHECK(means("LR44", cell) == "cell/lr1154");
  CHECK(means("SR63", cell) == "cell/sr521sw");
  CHECK(means("SR48", cell) == "refused");
  CHECK(means("626", cell) == "refused");
  CHECK(means("2032", cell) == "refused");  // manganese dioxide and carbon monofluoride
  CHECK(means("SR736SW", cell) == "cell/sr41sw");
  CHECK(means("SR1154W", cell) == "cell/sr44w");
  CHECK(means("999", cell) == "nothing");
  CHECK(means("alcohol", liquid) == "refused");
  CHECK(means("glue", liquid) == "refused");
  CHECK(means("ammonia", liquid) == "refused");
  CHECK(means("benzine", liquid) == "chemistry/light-naphtha");
  CHECK(means("deionized water", liquid) == "chemistry/distilled-water");
  CHECK(means("nail varnish remover", liquid) == "chemistry/acetone-neat");
  CHECK(means("aluminum", material) == "material/aluminium");
  CHECK(means("nylon", material) == "material/polyamide");
  CHECK(means("acrylic", material) == "material/acrylic");
  CHECK(means("crust", residue) == "refused");
  CHECK(means("verdigris", residue) == "substance/basic-copper-carbonate");
}

TEST_CASE("a hint stays in the system of the cell and with the liquid") {
  for (const std::string& name : names().nearest("SR755W", {model::Kind::cell})) CHECK(name.substr(0, 2) == "SR");
  CHECK(names().nearest("999", {model::Kind::cell}).empty());
  CHECK(names().nearest("acetne", {model::Kind::chemistry}) == std::vector<std::string>{"Acetone"});
}

TEST_CASE("whatever is typed is answered") {
  for (const std::string& query :
       {std::string(5000, 'x'), std::string("\xFF\xFE\x80"), std::string("7.9x"), std::string("x5.4"), std::string("7.9xx5.4"),
        std::string("...."), std::string("mm"), std::string("\u00D7\u00D7"), std::string("1.x.2"), std::string(3, '\0')}) {
    const query::Answers answers = test::real_answers().answer(query);
    CHECK(answers.hits.size() <= test::real_content().records.all().size());
  }
}
