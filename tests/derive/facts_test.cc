// Facts over the real schema and content: ids, trust, order, relations, facts.jsonl.

#include "support/catch.h"

#include <algorithm>
#include <string>

#include <nlohmann/json.hpp>

#include "derive/derive.h"
#include "standards/real_schema.h"

using namespace benchleaf;
using model::Fact;
using model::Trust;

namespace {

struct Real {
  Real() : base(schema.content()), derived(derive::derive(base, schema.tables, schema.findings)) {}
  const Fact& fact(const std::string& id) const {
    INFO(id);
    const Fact* found = derived.facts.find(id);
    REQUIRE(found != nullptr);
    return *found;
  }
  test::RealSchema schema;
  model::KnowledgeBase base;
  derive::Derived derived;
};

const Real& real() {
  static const Real kReal;
  return kReal;
}

bool ends_with(const std::string& text, const std::string& end) {
  return text.size() >= end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0;
}

}  // namespace

TEST_CASE("a stated quantity is a fact with its value, print and provenance") {
  const Fact& diameter = real().fact("cell/sr754w#size.diameter");
  CHECK(diameter.value == 7.9);
  CHECK(diameter.unit == "mm");
  CHECK(diameter.printed == "7.9\xE2\x80\x89mm");
  CHECK(diameter.trust == Trust::handbook);
  CHECK(diameter.source.find("source/battery-handbook") == 0);
  CHECK_FALSE(diameter.derived);
}

TEST_CASE("a range has ends and no value; a mapping with a value is one fact") {
  const Fact& capacity = real().fact("cell/cr2032#capacity");
  CHECK_FALSE(capacity.value);
  CHECK(capacity.low == 225.0);
  CHECK(capacity.high == 240.0);
  CHECK(real().fact("cell/cr2032#capacity.load").printed.find("15") == 0);
  CHECK(real().derived.facts.find("cell/cr2032#capacity.value") == nullptr);
}

// content/README.md, Trust: a source gives the verdict, the bench the reason and the way of working.
TEST_CASE("reasons and ways of working beside a verdict are marked as usage at most") {
  CHECK(real().fact("chemistry/isopropanol#on-materials.1.verdict").trust == Trust::handbook);
  std::size_t seen = 0;
  for (const Fact& fact : real().derived.facts.all()) {
    for (const char* name : {".why", ".condition", ".when", ".effect"}) {
      if (fact.derived || fact.id.find("table/") == 0 || !ends_with(fact.id, name)) continue;
      INFO(fact.id);
      CHECK((fact.trust == Trust::trade || fact.trust == Trust::memory || fact.trust == Trust::invented));
      ++seen;
    }
  }
  CHECK(seen > 100);
}

// content/README.md, Trust: an item of a list may carry its own source and trust, which are no facts of the trade.
TEST_CASE("what an item says of its own source is no fact") {
  std::size_t seen = 0;
  for (const auto& fact : real().derived.facts.all()) {
    if (fact.id.substr(0, 6) == "table/") continue;
    ++seen;
    INFO(fact.id);
    const std::string last = fact.id.substr(fact.id.find_last_of(".#"));
    CHECK_FALSE((last == ".trust" || last == ".as-of"));
  }
  CHECK(seen > 3000);
}

TEST_CASE("numbers that name a cell are words, not quantities") {
  const Fact& number = real().fact("cell/sr754w#trade-number");
  CHECK(number.printed == "393");
  CHECK_FALSE(number.value);
  CHECK(number.trust == Trust::dataset);
}

TEST_CASE("a value that is not stated is a fact without a value") {
  const Fact& capacity = real().fact("cell/pr48#capacity");
  CHECK(capacity.printed == "not stated");
  CHECK_FALSE(capacity.value);
}

TEST_CASE("table rows are facts") {
  CHECK(real().fact("table/cell-systems#S.nominal").value == 1.55);
  CHECK(real().fact("table/cell-diameter-codes#7.diameter").value == 7.9);
  CHECK(real().fact("table/cell-short-forms#41.long").trust == Trust::memory);
}

TEST_CASE("ids are not repeated, prints are not empty, and derived facts name inputs that exist") {
  for (const auto& fact : real().derived.facts.all()) {
    INFO(fact.id);
    CHECK_FALSE(fact.printed.empty());
    if (!fact.derived) continue;
    CHECK_FALSE(fact.inputs.empty());
    CHECK_FALSE(fact.source.empty());
    for (const auto& input : fact.inputs) {
      const Fact* found = real().derived.facts.find(input);
      INFO("input " << input);
      REQUIRE(found != nullptr);
      const bool names_only = input.size() > 7 && input.substr(input.size() - 7) == "#system";
      if (!names_only) CHECK(model::weaker(fact.trust, found->trust) == fact.trust);
    }
  }
}

TEST_CASE("facts stand by kind, then id, then path with digits as numbers") {
  const auto& facts = real().derived.facts.all();
  const auto place = [&](const char* id) {
    return std::find_if(facts.begin(), facts.end(), [&](const Fact& fact) { return fact.id == id; }) - facts.begin();
  };
  CHECK(place("cell/sr41w#designation") < place("cell/sr416sw#designation"));
  CHECK(place("cell/sr754w#designation") < place("abrasive/fepa-p#grades.2.median"));
  CHECK(place("abrasive/jis#grades.2.median") < place("abrasive/jis#grades.10.median"));
  CHECK(place("abrasive/jis#grades.10.median") < place("table/cell-systems#S.nominal"));
}

TEST_CASE("393: 309 is the same size and system, AG5 the same size and another (trade lists agree)") {
  const auto& peers = real().derived.relations.same_size(model::RecordRef("cell/sr754w"));
  const auto peer = [&](const char* cell) {
    const auto found = std::find_if(peers.begin(), peers.end(), [&](const derive::Peer& one) { return one.cell == cell; });
    REQUIRE(found != peers.end());
    return *found;
  };
  CHECK(peer("cell/sr754sw").same_system);
  CHECK_FALSE(peer("cell/lr754").same_system);
  CHECK(peers.front().cell == "cell/sr754sw");
  CHECK(real().fact("cell/sr754w#same-size.lr754").printed == "same size, OTHER system");
  CHECK(real().fact("cell/sr754w#same-size.sr754sw").printed == "same size, same system");
}

TEST_CASE("same size holds both ways, never with itself, and same system comes first") {
  for (const auto& [id, cell] : real().base.cells) {
    bool other_seen = false;
    for (const auto& peer : real().derived.relations.same_size(cell.reference())) {
      INFO(cell.reference().text() << " and " << peer.cell.text());
      CHECK(peer.cell != cell.reference());
      CHECK_FALSE((peer.same_system && other_seen));
      other_seen = other_seen || !peer.same_system;
      const auto& back = real().derived.relations.same_size(peer.cell);
      CHECK(std::any_of(back.begin(), back.end(), [&](const derive::Peer& one) {
        return one.cell == cell.reference() && one.same_system == peer.same_system && one.trust == peer.trust;
      }));
    }
  }
}

TEST_CASE("families of one size hold every sized cell once, by diameter, then height") {
  std::size_t cells = 0;
  const derive::SizeFamily* last = nullptr;
  for (const auto& family : real().derived.relations.sizes()) {
    cells += family.cells.size();
    if (last != nullptr) {
      CHECK(std::pair(last->diameter_mm, last->height_mm) < std::pair(family.diameter_mm, family.height_mm));
    }
    last = &family;
  }
  CHECK(cells == real().base.cells.size());
}

TEST_CASE("facts.jsonl: one object a line, in the order of the facts, readable by another reader") {
  const std::string text = derive::facts_jsonl(real().derived.facts);
  std::istringstream lines(text);
  std::string line;
  std::size_t at = 0;
  while (std::getline(lines, line)) {
    const auto json = nlohmann::json::parse(line);
    const Fact& fact = real().derived.facts.all().at(at++);
    REQUIRE(json.size() == 10);
    CHECK(json.at("id") == fact.id);
    CHECK(json.at("printed") == fact.printed);
    CHECK(json.at("trust") == model::trust_name(fact.trust));
    if (fact.value) CHECK(json.at("value").get<double>() == *fact.value);
    if (!fact.value) CHECK(json.at("value").is_null());
  }
  CHECK(at == real().derived.facts.all().size());
  CHECK(text.back() == '\n');
}

TEST_CASE("an invented value makes what follows from it invented") {
  model::KnowledgeBase base;
  model::Cell cell;
  cell.kind = model::Kind::cell;
  cell.id = "demo-cell";
  cell.designation = "SR754W";
  model::Node designation;
  designation.type = model::NodeType::string;
  designation.text = "SR754W";
  cell.root.type = model::NodeType::mapping;
  cell.root.members.push_back({"designation", {}, designation});
  cell.basis.emplace("designation", model::Basis{{}, "", Trust::invented, {}, {}});
  base.cells.emplace(cell.id, cell);
  report::Findings findings;
  const auto derived = derive::derive(base, real().schema.tables, findings);
  REQUIRE(derived.facts.find("cell/demo-cell#cell-decode.nominal") != nullptr);
  CHECK(derived.facts.find("cell/demo-cell#cell-decode.nominal")->trust == Trust::invented);
}
