// Classes of mixtures: each limit at, just under and just over, specific limits of annex VI, and two parts that only together
// pass one. Limits: Regulation (EC) No 1272/2008, annex I, tables 3.2.3, 3.3.3, 3.8.3.4.5, 3.10.3 and 4.1.1, and annex VI for the
// entries, as helpdesk slides, explaining pages and published safety sheets give them; where that says memory, from memory.

#include "standards/mixture.h"

#include <algorithm>
#include <set>
#include <string>

#include "standards/real_schema.h"

using namespace benchleaf;
using standards::HazardLine;
using standards::Mixture;
using standards::MixturePart;

namespace {

const model::Tables& tables() {
  static const test::RealSchema kSchema;
  return kSchema.tables;
}

MixturePart part(double percent, std::vector<HazardLine> hazards) { return {"part", percent, std::move(hazards)}; }

std::set<std::string> statements(std::vector<MixturePart> parts) {
  Mixture mixture;
  mixture.parts = std::move(parts);
  std::set<std::string> codes;
  for (const auto& found : standards::classify(mixture, tables()).classes) codes.insert(found.statement);
  return codes;
}

bool has(const std::vector<MixturePart>& parts, const std::string& code) { return statements(parts).count(code) == 1; }

/// A generic limit: an ingredient of the class makes the mixture so from this share on.
struct Bound {
  const char* ingredient;
  const char* ingredient_code;
  double limit;
  const char* code;
};

// From memory: the rows for the eye below Eye Dam. 1 and for the life in water.
constexpr Bound kBounds[] = {{"Skin Corr. 1A", "H314", 5, "H314"},      {"Skin Corr. 1B", "H314", 1, "H315"},
                             {"Skin Irrit. 2", "H315", 10, "H315"},     {"Skin Corr. 1C", "H314", 3, "H318"},
                             {"Eye Dam. 1", "H318", 3, "H318"},         {"Eye Dam. 1", "H318", 1, "H319"},
                             {"Skin Corr. 1B", "H314", 1, "H319"},      {"Eye Irrit. 2", "H319", 10, "H319"},
                             {"STOT SE 3", "H335", 20, "H335"},         {"STOT SE 3", "H336", 20, "H336"},
                             {"Asp. Tox. 1", "H304", 10, "H304"},       {"Aquatic Acute 1", "H400", 25, "H400"},
                             {"Aquatic Chronic 1", "H410", 25, "H410"}, {"Aquatic Chronic 1", "H410", 2.5, "H411"},
                             {"Aquatic Chronic 2", "H411", 25, "H411"}, {"Aquatic Chronic 2", "H411", 2.5, "H412"},
                             {"Aquatic Chronic 3", "H412", 25, "H412"}};

}  // namespace

TEST_CASE("each generic limit holds at it and above, and not under it") {
  for (const Bound& bound : kBounds) {
    INFO(bound.ingredient << " at " << bound.limit << " gives " << bound.code);
    const std::vector<HazardLine> hazards = {{bound.ingredient, bound.ingredient_code, {}, {}}};
    CHECK(has({part(bound.limit, hazards)}, bound.code));
    CHECK(has({part(bound.limit * 1.001, hazards)}, bound.code));
    CHECK_FALSE(has({part(bound.limit * 0.999, hazards)}, bound.code));
  }
}

TEST_CASE("two parts that only together pass a limit") {
  for (const Bound& bound : kBounds) {
    INFO(bound.ingredient << " at " << bound.limit << " gives " << bound.code);
    const std::vector<HazardLine> hazards = {{bound.ingredient, bound.ingredient_code, {}, {}}};
    const double half = bound.limit / 2;
    if (half < 1) continue;  // below its cut-off a part does not count at all, see the next case
    CHECK_FALSE(has({part(half, hazards)}, bound.code));
    CHECK(has({part(half, hazards), part(half, hazards)}, bound.code));
    CHECK_FALSE(has({part(half, hazards), part(half * 0.998, hazards)}, bound.code));
  }
}

// Annex I, table 1.1: 1 % for skin and eyes, 0.1 % for Aquatic Acute 1 and Chronic 1.
TEST_CASE("a part under its cut-off does not count") {
  const std::vector<HazardLine> irritant = {{"Skin Irrit. 2", "H315", {}, {}}};
  CHECK(has({part(9, irritant), part(1, irritant)}, "H315"));
  CHECK_FALSE(has({part(9.01, irritant), part(0.99, irritant)}, "H315"));
}

// Annex I, table 3.2.3: ten times the corrosive and the irritant together, from 10 % on.
TEST_CASE("corrosive and irritant add up to an irritant") {
  const std::vector<HazardLine> corrosive = {{"Skin Corr. 1B", "H314", {}, {}}};
  const std::vector<HazardLine> irritant = {{"Skin Irrit. 2", "H315", {}, {}}};
  CHECK_FALSE(has({part(5, irritant)}, "H315"));
  // tens of a part: 0.5 of the one limit is 5 % of an irritant; the corrosive counts from 1 % on, which alone is an irritant
  CHECK(has({part(1, corrosive), part(5, irritant)}, "H315"));
  CHECK_FALSE(has({part(0.99, corrosive), part(5, irritant)}, "H315"));
}

TEST_CASE("H335 and H336 are counted apart") {
  const auto codes = statements({part(15, {{"STOT SE 3", "H335", {}, {}}}), part(15, {{"STOT SE 3", "H336", {}, {}}})});
  CHECK(codes.count("H335") == 0);
  CHECK(codes.count("H336") == 0);
}

namespace {

// Annex VI, index 607-002-00-6: limits of acetic acid, as a page for classifiers quotes the entry.
const std::vector<HazardLine>& acetic_acid() {
  static const std::vector<HazardLine> kLines = {{"Skin Corr. 1A", "H314", 90, {}},
                                                 {"Skin Corr. 1B", "H314", 25, 90},
                                                 {"Skin Irrit. 2", "H315", 10, 25},
                                                 {"Eye Irrit. 2", "H319", 10, 25}};
  return kLines;
}

// Annex VI, index 008-003-00-9: limits of hydrogen peroxide, as the registry of intentions prints the entry.
const std::vector<HazardLine>& peroxide() {
  static const std::vector<HazardLine> kLines = {{"Skin Corr. 1A", "H314", 70, {}}, {"Skin Corr. 1B", "H314", 50, 70},
                                                 {"Skin Irrit. 2", "H315", 35, 50}, {"Eye Dam. 1", "H318", 8, 50},
                                                 {"Eye Irrit. 2", "H319", 5, 8},    {"STOT SE 3", "H335", 35, {}}};
  return kLines;
}

// Annex VI, index 011-002-00-6: limits of sodium hydroxide, as an industry summary prints them.
const std::vector<HazardLine>& lye() {
  static const std::vector<HazardLine> kLines = {{"Skin Corr. 1A", "H314", 5, {}},
                                                 {"Skin Corr. 1B", "H314", 2, 5},
                                                 {"Skin Irrit. 2", "H315", 0.5, 2},
                                                 {"Eye Irrit. 2", "H319", 0.5, 2}};
  return kLines;
}

std::string corrosive_class(double percent, const std::vector<HazardLine>& hazards) {
  Mixture mixture;
  mixture.parts = {part(percent, hazards)};
  for (const auto& found : standards::classify(mixture, tables()).classes) {
    if (found.statement == "H314") return found.hazard_class;
  }
  return "none";
}

}  // namespace

TEST_CASE("specific limits of annex VI take the place of the generic ones") {
  using Codes = std::set<std::string>;
  const Codes none, irritant = {"H315", "H319"};
  CHECK(statements({part(5, acetic_acid())}) == none);
  CHECK(statements({part(9.99, acetic_acid())}) == none);
  CHECK(statements({part(10, acetic_acid())}) == irritant);
  CHECK(statements({part(24.99, acetic_acid())}) == irritant);
  CHECK(corrosive_class(25, acetic_acid()) == "Skin Corr. 1B");
  CHECK(corrosive_class(89.99, acetic_acid()) == "Skin Corr. 1B");
  CHECK(corrosive_class(90, acetic_acid()) == "Skin Corr. 1A");

  CHECK(statements({part(0.49, lye())}) == none);
  CHECK(statements({part(0.5, lye())}) == irritant);
  CHECK(statements({part(1.99, lye())}) == irritant);
  CHECK(corrosive_class(2, lye()) == "Skin Corr. 1B");
  CHECK(corrosive_class(4.99, lye()) == "Skin Corr. 1B");
  CHECK(corrosive_class(5, lye()) == "Skin Corr. 1A");

  CHECK(statements({part(3, peroxide())}) == none);
  CHECK(statements({part(4.99, peroxide())}) == none);
  CHECK(statements({part(5, peroxide())}) == Codes{"H319"});
  CHECK(statements({part(7.99, peroxide())}) == Codes{"H319"});
  CHECK(statements({part(8, peroxide())}) == Codes{"H318"});
  CHECK(statements({part(34.99, peroxide())}) == Codes{"H318"});
  CHECK(statements({part(35, peroxide())}) == Codes{"H315", "H318", "H335"});
  CHECK(corrosive_class(50, peroxide()) == "Skin Corr. 1B");
  CHECK(corrosive_class(70, peroxide()) == "Skin Corr. 1A");
}

// Guidance on the CLP criteria, part 1, 1.6.3.3.3: shares, each through its own limit, from a sum of 1 on.
TEST_CASE("parts with specific limits add up through them") {
  CHECK_FALSE(has({part(5, acetic_acid())}, "H315"));
  CHECK_FALSE(has({part(0.25, lye())}, "H315"));
  // below its own limit of 0.5 % the lye is under its cut-off, annex I, 1.1.2.2.2
  CHECK_FALSE(has({part(9.9, acetic_acid()), part(0.25, lye())}, "H315"));
  // 12.5 of 25 and 1 of 2
  CHECK(has({part(12.5, acetic_acid()), part(1, lye())}, "H314"));
  CHECK_FALSE(has({part(12.4, acetic_acid()), part(1, lye())}, "H314"));
}

// Annex I, 3.1.3.6: a part of Acute Tox. 4 by mouth counts as 500 mg/kg, so that 25 % of it is 2000 mg/kg and no less harmful.
TEST_CASE("harm by mouth goes by the estimate for the whole") {
  const std::vector<HazardLine> harmful = {{"Acute Tox. 4", "H302", {}, {}}};
  CHECK(has({part(25, harmful)}, "H302"));
  CHECK(has({part(25.1, harmful)}, "H302"));
  CHECK_FALSE(has({part(24.9, harmful)}, "H302"));
  CHECK(has({part(12.5, harmful), part(12.5, harmful)}, "H302"));
}

// Annex I, table 2.6.1: by flash point and boiling point, never by percent.
TEST_CASE("flammable liquids go by flash and boiling point") {
  const auto code = [](double flash, double boiling) -> std::string {
    Mixture mixture;
    mixture.parts = {part(100, {{"Flam. Liq. 2", "H225", {}, {}}})};
    mixture.flash_point = flash;
    mixture.boiling = boiling;
    const auto classes = standards::classify(mixture, tables()).classes;
    return classes.empty() ? "none" : classes.front().statement;
  };
  CHECK(code(22.9, 35) == "H224");
  CHECK(code(22.9, 35.1) == "H225");
  CHECK(code(23, 30) == "H226");
  CHECK(code(23, 80) == "H226");
  CHECK(code(60, 80) == "H226");
  CHECK(code(60.1, 80) == "none");
}

// Annex I, 3.2.3.1.2: a pH of 2 and less or 11.5 and more calls for judgement, and is not decided by it.
TEST_CASE("an extreme pH is told and not decided") {
  const auto undecided = [](double low, double high) {
    Mixture mixture;
    mixture.parts = {part(1, {{"Skin Irrit. 2", "H315", {}, {}}})};
    mixture.ph_low = low;
    mixture.ph_high = high;
    const auto found = standards::classify(mixture, tables());
    CHECK(found.classes.empty());
    return std::any_of(found.undecided.begin(), found.undecided.end(), [](const standards::Undecided& one) {
      return one.question == standards::OpenQuestion::extreme_acid || one.question == standards::OpenQuestion::extreme_base;
    });
  };
  CHECK(undecided(2, 2));
  CHECK_FALSE(undecided(2.1, 2.1));
  CHECK(undecided(11.5, 11.5));
  CHECK_FALSE(undecided(11.4, 11.4));
}

// Worked examples as they were published, each with its page. Of a substance of which the publication gives a lethal dose, the
// class of that dose is taken, as annex I does where no dose is known; the class of the whole is then the same.
// What the United Nations' sub-committee on the Globally Harmonized System published with its drafts:
TEST_CASE("worked examples of the sub-committee on the GHS come out as published") {
  const std::vector<HazardLine> harmful = {{"Acute Tox. 4", "H302", {}, {}}};
  SECTION("ST/SG/AC.10/C.4/2008/23, 3.1a, page 1: 16 % of 1,600 mg/kg, 4 % of 200 to 2,000 and 80 % of 3,450: category 4") {
    CHECK(statements({part(16, harmful), part(4, {{"Acute Tox. 3", "H301", {}, {}}}), part(80, {})}) ==
          std::set<std::string>{"H302"});
  }
  SECTION("ST/SG/AC.10/C.4/2008/23, annex 2, example 3, page 1: one harmful part of 4 %, by mouth: not classified") {
    CHECK(statements({part(4, harmful), part(96, {})}).empty());
  }
  SECTION("ST/SG/AC.10/C.4/2008/23, 3.1d (a), page 1, by mouth: 40 % of 400 mg/kg, 26 % of 2,737 and 23 % of 4,500: category 4") {
    CHECK(statements({part(26, {}), part(23, {}), part(40, harmful), part(11, {})}) == std::set<std::string>{"H302"});
  }
  SECTION("ST/SG/AC.10/C.4/2008/23, 3.1d (b), page 1, breathed: 26 % of 11 mg/l, 23 % of 19, 40 % of 4: category 3, danger") {
    const std::vector<HazardLine> breathed = {{"Acute Tox. 4", "H332", {}, {}}};
    Mixture mixture;
    mixture.parts = {part(26, breathed), part(23, breathed), part(11, {}),
                     part(40, {{"Acute Tox. 3", "H331", {}, {}}, {"Acute Tox. 4", "H302", {}, {}}})};
    const auto label = standards::label_of(standards::classify(mixture, tables()), false, tables());
    CHECK(label.statements == std::vector<std::string>{"H302", "H331"});
    CHECK(label.signal == "danger");
  }
  MixturePart first = part(0.01, {{"Aquatic Acute 1", "H400", {}, {}}, {"Aquatic Chronic 1", "H410", {}, {}}});
  first.m_acute = first.m_chronic = 10;
  const std::vector<MixturePart> four = {first, part(1, {{"Aquatic Chronic 2", "H411", {}, {}}}),
                                         part(25, {{"Aquatic Chronic 4", "H413", {}, {}}}), part(73.99, {})};
  SECTION("ST/SG/AC.10/C.4/2012/25, 4.1a, page 1, short term: 0.1 % against 25 %: not classified") {
    CHECK_FALSE(has(four, "H400"));
  }
  SECTION("ST/SG/AC.10/C.4/2012/25, 4.1a, page 1, long term: chronic 4 by 26.01 %") {
    CHECK(statements(four) == std::set<std::string>{"H413"});
  }
}

TEST_CASE("worked examples of offices that apply the regulation come out as published") {
  const std::vector<HazardLine> corrosive = {{"Skin Corr. 1B", "H314", {}, {}}};
  SECTION("seminar of the European agency's helpdesk of 5 March 2012, slide 3, example 1: 0.8 % of an irritant: no irritant") {
    CHECK(statements({part(9.2, {}), part(0.8, {{"Skin Irrit. 2", "H315", {}, {}}}), part(90, {})}).empty());
  }
  SECTION("a Czech handbook for the trade, 4.8.6.2: 4 % of a corrosive part is no corrosive, and an irritant at most") {
    CHECK(corrosive_class(4, corrosive) == "none");
    CHECK(has({part(4, corrosive), part(96, {})}, "H315"));
  }
  SECTION("the same, where its sheet says 3 to 7 %: the upper end counts, and the whole is corrosive") {
    CHECK(corrosive_class(7, corrosive) == "Skin Corr. 1B");
  }
  // Its 8.2A, 8.2B and 8.2C are categories 1A, 1B and 1C.
  SECTION("New Zealand, User Guide to Thresholds and Classifications, page 168, for example: too little of A, enough with B: B") {
    Mixture mixture;
    mixture.parts = {part(3, {{"Skin Corr. 1A", "H314", {}, {}}}), part(3, corrosive), part(94, {})};
    const auto found = standards::classify(mixture, tables()).classes;
    const auto is = [&found](const char* name) {
      return std::any_of(found.begin(), found.end(), [name](const auto& one) { return one.hazard_class == name; });
    };
    CHECK(is("Skin Corr. 1B"));
    CHECK_FALSE(is("Skin Corr. 1A"));
  }
  // Only P lasts in water, so that it alone counts for the long term: 10 x 100 x 0.05 % = 50 %.
  SECTION("New Zealand, User Guide to Thresholds and Classifications, page 295, table 19.5: mixture Z is 9.1B and no 9.1A") {
    MixturePart p = part(0.05, {{"Aquatic Acute 1", "H400", {}, {}}, {"Aquatic Chronic 1", "H410", {}, {}}});
    p.m_acute = p.m_chronic = 100;
    const std::vector<MixturePart> z = {part(5, {}), p, part(1, {{"Aquatic Acute 1", "H400", {}, {}}}), part(40, {}),
                                        part(53.95, {})};
    CHECK(statements(z) == std::set<std::string>{"H411"});
  }
}

// ST/SG/AC.10/C.4/2008/23, 3.2.3.3a (a), pages 1 and 2: 4 % of a corrosive acid of pH 1.8, the whole at pH 4. The publication
// decides for category 1, since nobody knows that the acid adds up; here that is told as possible, and the sum beside it.
TEST_CASE("a corrosive acid of which nobody says that it adds up is told") {
  Mixture mixture;
  mixture.parts = {part(4, {{"Skin Corr. 1A", "H314", {}, {}}}), part(5, {{"Skin Irrit. 2", "H315", {}, {}}}), part(91, {})};
  mixture.ph_low = mixture.ph_high = 4;
  const auto asks = [](const standards::Classification& found) {
    return std::any_of(found.undecided.begin(), found.undecided.end(),
                       [](const standards::Undecided& one) { return one.question == standards::OpenQuestion::additivity; });
  };
  CHECK_FALSE(asks(standards::classify(mixture, tables())));
  mixture.parts.front().acid_or_base = true;
  const auto found = standards::classify(mixture, tables());
  CHECK(asks(found));
  const auto perhaps = standards::label_of(found, true, tables());
  CHECK(std::count(perhaps.statements.begin(), perhaps.statements.end(), "H314") == 1);
  CHECK(standards::label_of(found, false, tables()).statements == std::vector<std::string>{"H315", "H318"});
  mixture.parts.front().percent = 0.9;
  CHECK_FALSE(asks(standards::classify(mixture, tables())));
}
