// The line format of figures: what is written is read back. House format, no outside source.

#include "support/catch.h"

#include "bench/figure_lines.h"
#include "bench/request.h"
#include "bench/vectors.h"
#include "standards/table_lines.h"

using namespace benchleaf;

TEST_CASE("the figures of all records come back as they were") {
  const auto& figures = test::workshop().figures;
  REQUIRE(figures.all().size() > 1000);
  const auto back = bench::read_figure_lines(bench::figure_lines(figures));
  REQUIRE(back);
  REQUIRE(back->all().size() == figures.all().size());
  for (std::size_t i = 0; i < figures.all().size(); ++i) {
    const auto& one = figures.all()[i];
    const auto& other = back->all()[i];
    INFO(one.id);
    CHECK(one.id == other.id);
    CHECK(one.value == other.value);
    CHECK(one.low == other.low);
    CHECK(one.high == other.high);
    CHECK(one.unit == other.unit);
    CHECK(one.printed == other.printed);
    CHECK(one.trust == other.trust);
  }
}

TEST_CASE("a request is answered with tables and figures in one text") {
  const auto& workshop = test::workshop();
  const std::string lines = standards::table_lines(workshop.schema.tables.published) + bench::figure_lines(workshop.figures);
  const std::string answer =
      bench::answer_request(bench::read_library(lines), "gasket-fit\nseat=31.85mm\nseries=round-0-8", bench::Form::text);
  CHECK(answer == bench::result_text(workshop.ask("gasket-fit; seat=31.85mm; series=round-0-8")));
  const std::string tables_alone = standards::table_lines(workshop.schema.tables.published);
  CHECK(bench::answer_request(bench::read_library(tables_alone), "cell-decode\ndesignation=SR44", bench::Form::text)
            .rfind("cell-decode\n", 0) == 0);
  CHECK(bench::answer_request(bench::read_library(lines + "rubbish\n"), "x", bench::Form::text) ==
        "the figures of this page cannot be read\n");
}

TEST_CASE("what is no figure text is refused") {
  CHECK_FALSE(bench::read_figure_lines(""));
  CHECK_FALSE(bench::read_figure_lines("benchleaf-figures 2\n"));
  CHECK(bench::read_figure_lines("benchleaf-figures 1\n")->all().empty());
  CHECK(bench::read_figure_lines("benchleaf-figures 1\na#b\thandbook\tmm\t1\t\t\t1 mm\n"));
  CHECK_FALSE(bench::read_figure_lines("benchleaf-figures 1\na#b\thandbook\tmm\t1\t\t\n"));
  CHECK_FALSE(bench::read_figure_lines("benchleaf-figures 1\na#b\tcertain\tmm\t1\t\t\t1 mm\n"));
  CHECK_FALSE(bench::read_figure_lines("benchleaf-figures 1\na#b\thandbook\tmm\tnan\t\t\t1 mm\n"));
}
