// cell-decode as a calculator: outputs, trust, refusals, text.

#include "support/catch.h"

#include <string>

#include "bench/calculator.h"
#include "standards/real_schema.h"

using namespace benchleaf;
using bench::Given;
using bench::Result;

namespace {

Result decode(const std::string& designation, model::Trust trust = model::Trust::given) {
  static const test::RealSchema kSchema;
  static const model::FactBase kNoFacts;
  return bench::reckon("cell-decode", {{"designation", Given{designation, trust, {}}}}, {kSchema.tables, kNoFacts});
}

const bench::Output& output(const Result& result, const char* name) {
  INFO(name);
  const bench::Output* found = result.find(name);
  REQUIRE(found != nullptr);
  return *found;
}

}  // namespace

TEST_CASE("SR754W: silver oxide 1.55 V, 7.9 mm, height from its digits (encyclopaedia pages on button cells)") {
  const Result result = decode("SR754W");
  CHECK_FALSE(result.refusal);
  CHECK(output(result, "system").printed == "silver oxide-zinc");
  CHECK(output(result, "nominal").value == 1.55);
  CHECK(output(result, "nominal").unit == "V");
  CHECK(output(result, "diameter").value == 7.9);
  CHECK(output(result, "diameter").low == Approx(7.75));
  CHECK(output(result, "diameter").high == 7.9);
  CHECK(output(result, "height").low == 5.4);
  CHECK(output(result, "height").high == 5.5);
  CHECK_FALSE(output(result, "height").value);  // the code never gives millimetres of height
  CHECK(output(result, "short-form").printed == "SR48");
  CHECK(output(result, "drain").printed == "high");
}

TEST_CASE("4SR44 has four times the voltage of its cell, as catalogue pages print it: 6.2 V") {
  const Result result = decode("4SR44");
  CHECK(output(result, "nominal").value == 6.2);
  CHECK(output(result, "cells").value == 4);
  CHECK(output(result, "long-form").printed == "4SR1154");
  CHECK(result.cautions.size() == 2);
}

TEST_CASE("the trust of an output is the weakest of input and rows") {
  CHECK(output(decode("SR754W"), "nominal").trust == model::Trust::handbook);
  CHECK(output(decode("SR754W"), "drain").trust == model::Trust::trade);
  CHECK(output(decode("SR41"), "height").trust == model::Trust::memory);  // the row of short size 41 is recalled
  CHECK(output(decode("SR754W", model::Trust::invented), "nominal").trust == model::Trust::invented);
  CHECK(output(decode("NR44"), "nominal").trust == model::Trust::memory);
}

TEST_CASE("outputs name the rows they rest on") {
  CHECK(output(decode("SR754W"), "nominal").inputs == std::vector<std::string>{"table/cell-systems#S.nominal"});
  const auto inputs = output(decode("SR48"), "diameter").inputs;
  CHECK(inputs == std::vector<std::string>{"table/cell-diameter-codes#7.tolerance", "table/cell-short-forms#48.long"});
}

TEST_CASE("a designation that is none is refused with the input at fault") {
  const Result result = decode("SR2O32");
  REQUIRE(result.refusal);
  CHECK(result.refusal->input == "designation");
  CHECK(result.outputs.empty());
  CHECK(bench::result_text(result) ==
        "cell-decode: refused: designation: a letter O stands among the digits of the size; for example designation=SR754W\n  "
        "hint: write the digit 0\n");
}

TEST_CASE("a withdrawn system and unknown letters are cautions") {
  CHECK(decode("MR754").cautions.front().text.find("withdrawn") != std::string::npos);
  CHECK(decode("CR2032H").cautions.front().text.find("letters H") != std::string::npos);
}

TEST_CASE("the text has plain spaces and hyphens only") {
  const std::string text = bench::result_text(decode("SR754W"));
  CHECK(text.find("\xE2\x80\x89") == std::string::npos);
  CHECK(text.find("\xE2\x88\x92") == std::string::npos);
  CHECK(text.find("nominal voltage") != std::string::npos);
  CHECK(text.find("7.9 mm +0 -0.15") != std::string::npos);
  CHECK(text.back() == '\n');
}
