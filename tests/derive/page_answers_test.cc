// What pages ask of calculators: the form of the request, and the facts that come of it.

#include "support/catch.h"

#include <string>
#include <utility>
#include <vector>

#include "derive/derive.h"
#include "derive/page_answers.h"
#include "standards/real_schema.h"

using namespace benchleaf;

namespace {

model::Node word(const std::string& text) {
  model::Node node;
  node.type = model::NodeType::string;
  node.text = text;
  return node;
}

model::Node mapping(const std::vector<std::pair<std::string, model::Node>>& members) {
  model::Node node;
  node.type = model::NodeType::mapping;
  for (const auto& [key, value] : members) node.members.push_back({key, {}, value});
  return node;
}

model::Node list(const std::vector<model::Node>& items) {
  model::Node node;
  node.type = model::NodeType::sequence;
  node.items = items;
  return node;
}

model::Node request(const std::vector<model::Node>& rows) {
  return mapping({{"show", word("reckoned")},
                  {"name", word("weights")},
                  {"calculator", word("water-pressure")},
                  {"rows", list(rows)},
                  {"columns", list({word("fresh")})}});
}

}  // namespace

TEST_CASE("a request is read row by row, and its facts have ids of letters, digits and hyphens") {
  const auto asked =
      derive::read_page_answers(request({mapping({{"depth", word("30 m")}}), mapping({{"depth", word("1.5 m")}})}));
  REQUIRE(asked);
  REQUIRE(asked->rows.size() == 2);
  CHECK(asked->keys == std::vector<std::string>{"depth"});
  CHECK(asked->fact_id("page/water", asked->rows[1], "fresh") == "page/water#water-pressure.weights.1-5-m.fresh");
}

TEST_CASE("what lacks a part, or gives rows of unlike inputs, is no request") {
  CHECK_FALSE(derive::read_page_answers(request({})));
  CHECK_FALSE(derive::read_page_answers(request({word("30 m")})));
  CHECK_FALSE(derive::read_page_answers(request({mapping({{"depth", word("30 m")}}), mapping({{"pressure", word("3 bar")}})})));
  CHECK_FALSE(derive::read_page_answers(mapping({{"show", word("trust-signs")}})));
  CHECK_FALSE(derive::read_page_answers(mapping({{"show", word("reckoned")}, {"name", word("x")}})));
}

TEST_CASE("the pages of the handbook print what calculators say") {
  test::RealSchema schema;
  const auto base = schema.content();
  const auto derived = derive::derive(base, schema.tables, schema.findings);
  const auto value = [&derived](const std::string& id) {
    const model::Fact* fact = derived.facts.find(id);
    INFO(id);
    REQUIRE(fact != nullptr);
    REQUIRE(fact->value);
    CHECK(fact->derived);
    return *fact->value;
  };
  // GNU units: 30 m*1000 kg/m^3*gravity -> bar; 32 mm by 1.02; 10 mg/(138.2055 g/mol)*2/(50 g/L/(60.052 g/mol)) is 0.174 mL.
  CHECK(value("page/water#water-pressure.weights-of-water.30-m.fresh") == Approx(2.941995));
  CHECK(value("page/gaskets#gasket-fit.insides.32-mm.ideal-inside") == Approx(31.37255));
  CHECK(value("page/leaks#crust-dose.swabs.potassium-carbonate.swabs") == 2);
}
