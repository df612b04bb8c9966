// Sentences of records, charts and pages say what calculators and tables decide; a sentence that says something else is found.
#include "prove/spoken_answers.h"

#include "prove/rule_files.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

const test::Checked::Schema& schema() {
  static const test::Checked::Schema kSchema;
  return kSchema;
}

prove::SpokenAnswers said_in(test::FileTexts content) {
  test::Checked checked(schema(), std::move(content));
  return prove::spoken_answers({checked.base, checked.tables, checked.derived, checked.findings});
}

/// A book of one word of the trade with this meaning, and of what a ladder of grades is made from.
prove::SpokenAnswers said_by(const std::string& meaning) {
  const test::DiskFiles content("content");
  test::FileTexts files{{"term/word.yaml", "id: word\nterm: word\nmeaning: \"" + meaning + "\"\n"}};
  for (const char* path : {"material/acrylic.yaml", "abrasive/fepa-p.yaml"}) files[path] = content.read(path).value();
  return said_in(std::move(files));
}

}  // namespace

TEST_CASE("what calculators and tables decide is said alike in every sentence of the content") {
  const prove::SpokenAnswers said = said_in(test::texts_below("content"));
  std::string faults;
  for (const auto& fault : said.faults) faults += fault.message + "\n";
  INFO(faults);
  CHECK(said.faults.empty());
  CHECK(said.undecided.empty());
  CHECK(said.held > 20);
}

TEST_CASE("a sentence that says another grade, share or year is found") {
  // Medians of FEPA P: P800 21.8 and P1500 12.6 micrometres, pits twice as deep; squeeze 15 to 30 % and stretch 1 to 5 % of the
  // table gland-limits.
  CHECK(said_by("A scratch that the nail catches starts with P800; one that is only seen starts with P2500.").faults.empty());
  CHECK(said_by("A scratch that the nail catches starts with P1500.").faults.size() == 1);
  CHECK(said_by("Nail catches: P800. Only seen: P1500.").faults.size() == 1);
  CHECK(said_by("Closing flattens it by 15 to 30 %.").faults.empty());
  CHECK(said_by("Closing flattens it by 10 to 40 %.").faults.size() == 1);
  CHECK(said_by("An inside 1 to 5 % smaller than the seat.").faults.empty());
  CHECK(said_by("An inside 2 to 8 % smaller than the seat.").faults.size() == 1);
  CHECK(said_by("Bought elsewhere after 2025.").faults.empty());
  CHECK(said_by("Bought elsewhere after 2015.").faults.size() == 1);
  CHECK(said_by("It says nothing of the kind.").held == 0);
}
