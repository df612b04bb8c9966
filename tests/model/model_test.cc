// Checks of the small functions of the model. Expected values: read off by eye, or sums of the geometry named beside.

#include "support/catch.h"

#include <cmath>
#include <string>

#include "model/book.h"
#include "model/fact.h"
#include "model/node.h"
#include "model/record.h"

using namespace benchleaf::model;

namespace {

Node scalar(std::string text) {
  Node node;
  node.type = NodeType::string;
  node.text = std::move(text);
  return node;
}

Node list_of(std::vector<Node> items) {
  Node node;
  node.type = NodeType::sequence;
  node.items = std::move(items);
  return node;
}

Node mapping_of(std::vector<std::pair<std::string, Node>> members) {
  Node node;
  node.type = NodeType::mapping;
  for (auto& [key, value] : members) node.members.push_back({key, {}, std::move(value)});
  return node;
}

}  // namespace

TEST_CASE("a path walks keys and list places, and nothing else") {
  const Node root = mapping_of({{"a", list_of({scalar("x"), mapping_of({{"b", scalar("y")}})})}, {"0", scalar("z")}});
  CHECK(root.at_path("a.0")->text == "x");
  CHECK(root.at_path("a.1.b")->text == "y");
  CHECK(root.at_path("0")->text == "z");
  CHECK(root.at_path("") == &root);
  for (const char* none : {"a.2", "a.-1", "a.b", "a.0.b", "b", "a.01x", "a.99999999999999999999", "a.", "."}) {
    INFO(none);
    CHECK(root.at_path(none) == nullptr);
  }
}

TEST_CASE("a record knows which of its values can be used") {
  Record record;
  record.unusable = {"size.height", "loads.2"};
  CHECK(record.usable("size.diameter"));
  CHECK(record.usable("sizes"));
  CHECK_FALSE(record.usable("size.height"));
  CHECK_FALSE(record.usable("size"));
  CHECK_FALSE(record.usable("loads.2.current"));
  CHECK(record.usable("loads.20"));
  CHECK_FALSE(record.usable("loads"));
  record.unusable = {""};
  CHECK_FALSE(record.usable("size.diameter"));
}

TEST_CASE("ids and references have one form") {
  for (const char* good : {"a", "sr754w", "round-0-7", "a1-b2"}) CHECK(is_record_id(good));
  for (const char* bad : {"", "1a", "A", "a-", "-a", "a--b", "a_b", "a.b", "é"}) {
    INFO(bad);
    CHECK_FALSE(is_record_id(bad));
  }
  CHECK(is_record_id(std::string(48, 'a')));
  CHECK_FALSE(is_record_id(std::string(49, 'a')));
  CHECK(RecordRef("cell/sr754w").is(Kind::cell));
  CHECK(RecordRef("cell/sr754w").id() == "sr754w");
  CHECK(RecordRef(Kind::cell, "sr754w") == RecordRef("cell/sr754w"));
  for (const char* bad : {"sr754w", "cells/sr754w", "cell/", "cell/SR", "cell/a/b", "/a"}) {
    INFO(bad);
    CHECK_FALSE(RecordRef(bad).kind());
    CHECK(RecordRef(bad).id() == bad);
  }
  CHECK(all_kinds().size() == 24);
  for (Kind kind : all_kinds()) CHECK(kind_from_name(kind_name(kind)) == kind);
}

TEST_CASE("the id of a fact has a record and a path") {
  CHECK(FactId("cell/sr754w#size.height").record == "cell/sr754w");
  CHECK(FactId("cell/sr754w#size.height").path == "size.height");
  CHECK(FactId("cell/sr754w#size.height").kind() == Kind::cell);
  CHECK(FactId("cell/sr754w").path.empty());
  CHECK_FALSE(FactId("table/cell-systems#S.nominal").kind());
}

TEST_CASE("trust weakens along the order of the design, and what the user typed weakens nothing") {
  const std::vector<Trust> order = {Trust::standard, Trust::handbook, Trust::dataset,
                                    Trust::trade,    Trust::memory,   Trust::invented};
  for (std::size_t i = 0; i < order.size(); ++i) {
    for (std::size_t j = 0; j < order.size(); ++j) CHECK(weaker(order[i], order[j]) == order[std::max(i, j)]);
    CHECK(weaker(Trust::given, order[i]) == order[i]);
    CHECK(weaker(order[i], Trust::given) == order[i]);
    CHECK(trust_from_name(trust_name(order[i])) == order[i]);
  }
  CHECK(weaker(Trust::given, Trust::given) == Trust::given);
  CHECK_FALSE(trust_from_name("certain"));
}

TEST_CASE("a fact base keeps its order and the first of two equal ids") {
  FactBase facts;
  Fact one;
  one.id = "cell/b#x";
  one.printed = "1";
  Fact two = one;
  two.printed = "2";
  Fact three = one;
  three.id = "cell/a#x";
  CHECK(facts.add(one));
  CHECK_FALSE(facts.add(two));
  CHECK(facts.add(three));
  CHECK(facts.find("cell/b#x")->printed == "1");
  CHECK(facts.find("cell/c#x") == nullptr);
  REQUIRE(facts.all().size() == 2);
  CHECK(facts.all().front().id == "cell/b#x");
}

TEST_CASE("plain text leaves signs and page numbers out") {
  Run break_run;
  break_run.kind = Run::Kind::line_break;
  const Runs runs = {text_run("Acid", Style::bold), break_run, link_run("burns", "caution/acid"), trust_run(Trust::trade, true),
                     page_run("caution/acid")};
  CHECK(plain_text(runs) == "Acid burns");
  CHECK(runs.at(2).target == "caution/acid");
  CHECK(has(Style::bold | Style::italic, Style::italic));
  CHECK_FALSE(has(Style::bold, Style::italic));
}

TEST_CASE("index entries stand under their letter, under one head for figures and one for signs") {
  CHECK(index_group({"gasket", "gasket", {}, {}, {}}) == "G");
  CHECK(index_group({"Gasket", "", {}, {}, {}}) == "G");
  CHECK(index_group({"393", "393", {}, {}, {}}) == "0\u20139");
  CHECK(index_group({"\u00B5A", "~", {}, {}, {}}) == "Signs");
  CHECK(index_group({}) == "Signs");
}

TEST_CASE("a drawn circle keeps its radius within the 0.03 % that four cubics allow") {
  // The cubic with handles 4/3 (sqrt 2 - 1) is a known approximation whose radius is at most 0.0273 % too large.
  const PathShape shape = circle({3, 4}, 2);
  REQUIRE(shape.steps.size() == 6);
  Mm from = shape.steps.front().to;
  for (std::size_t i = 1; i + 1 < shape.steps.size(); ++i) {
    const PathStep& step = shape.steps.at(i);
    REQUIRE(step.op == PathStep::Op::curve);
    for (double t = 0; t <= 1; t += 0.05) {
      const double s = 1 - t;
      const double x =
          s * s * s * from.x + 3 * s * s * t * step.control1.x + 3 * s * t * t * step.control2.x + t * t * t * step.to.x;
      const double y =
          s * s * s * from.y + 3 * s * s * t * step.control1.y + 3 * s * t * t * step.control2.y + t * t * t * step.to.y;
      CHECK(std::hypot(x - 3, y - 4) == Approx(2).epsilon(0.0003));
    }
    from = step.to;
  }
}

TEST_CASE("a rectangle has four corners, rounded no further than half its shorter side") {
  const PathShape plain = rectangle({1, 2}, 10, 4);
  REQUIRE(plain.steps.size() == 5);
  CHECK(plain.steps.at(2).to.x == 11);
  CHECK(plain.steps.at(2).to.y == 6);
  CHECK(plain.steps.back().op == PathStep::Op::close);
  const PathShape pill = rectangle({0, 0}, 10, 4, 5);
  for (const PathStep& step : pill.steps) {
    if (step.op == PathStep::Op::close) continue;
    CHECK(step.to.x >= 0);
    CHECK(step.to.x <= 10);
    CHECK(step.to.y >= 0);
    CHECK(step.to.y <= 4);
  }
}
