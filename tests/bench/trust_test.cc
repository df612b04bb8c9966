// No answer is trusted more than what it rests on. What it rests on is found by force: every figure of a table, or of all
// records of a kind, is changed, and whatever answer changes with it must fall in trust when that table or kind does.
// A property; no published figure.

#include "support/catch.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "base/number.h"
#include "base/outside_tool.h"
#include "base/quantity.h"
#include "bench/vectors.h"
#include "model/tables.h"

using namespace benchleaf;
using model::Trust;

namespace {

constexpr std::array kFactors = {0.6, 1.7};
constexpr std::size_t kEvery = 13;  // of the generated calls, so that each calculator has some

/// Every request of the outside vectors, and some of those that the oracle makes up.
const std::vector<std::string>& requests() {
  static const std::vector<std::string> kRequests = [] {
    std::set<std::string> all;
    for (const auto& vector : test::read_vectors("tests/bench/outside_vectors.txt")) all.insert(vector.request);
    const auto made_up = test::vectors_of(base::lines_of("python3 tests/bench/oracle.py"));
    for (std::size_t i = 0; i < made_up.size(); i += kEvery) all.insert(made_up[i].request);
    return std::vector<std::string>(all.begin(), all.end());
  }();
  return kRequests;
}

struct Asked {
  std::string name;
  bench::Inputs inputs;
};

Asked asked(const std::string& request) {
  const auto parts = test::split(request, "; ");
  Asked call{parts.front(), {}};
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const std::size_t equals = parts[i].find('=');
    call.inputs.emplace(parts[i].substr(0, equals), bench::Given{parts[i].substr(equals + 1), Trust::given, {}});
  }
  return call;
}

bench::Result run(const std::string& request, const model::Tables& tables, const model::FactBase& facts) {
  const Asked call = asked(request);
  return bench::reckon(call.name, call.inputs, {tables, facts});
}

/// Every number of a quantity times a factor; words stay.
std::string scaled(const std::string& cell, double factor) {
  if (!std::holds_alternative<base::Quantity>(base::parse_quantity(cell))) return cell;
  std::string text;
  for (std::size_t i = 0; i < cell.size();) {
    const std::size_t end = std::min(cell.find_first_not_of("0123456789.", i), cell.size());
    const bool of_unit = i > 0 && std::isalpha(static_cast<unsigned char>(cell[i - 1])) != 0;  // `m3`
    const auto number = of_unit ? std::nullopt : base::parse_decimal(cell.substr(i, end - i));
    if (number) text += base::fixed_text(*number * factor, 9, base::Trailing::cut);
    if (!number) text += cell.substr(i, std::max<std::size_t>(end - i, 1));
    i = std::max(end, i + 1);
  }
  return text;
}

/// The tables with one of them changed.
template <typename Change>
model::Tables with_table(const std::string& name, Change change) {
  auto published = test::workshop().schema.tables.published;
  for (auto& table : published) {
    if (table.name != name) continue;
    for (auto& row : table.rows) change(table, row);
  }
  std::vector<model::TableFault> faults;
  return model::make_tables(std::move(published), faults);
}

model::Tables with_figures(const std::string& name, double factor) {
  return with_table(name, [factor](const model::PublishedTable& table, model::PublishedTable::Row& row) {
    for (auto& [column, cell] : row.cells) {
      if (column != table.key) cell = scaled(cell, factor);
    }
  });
}

model::Tables without_trust(const std::string& name) {
  return with_table(name, [](const model::PublishedTable&, model::PublishedTable::Row& row) { row.trust = Trust::invented; });
}

/// The facts with those of one kind of records changed.
template <typename Change>
model::FactBase with_kind(const std::string& kind, Change change) {
  model::FactBase facts;
  for (auto fact : test::workshop().figures.all()) {
    if (fact.id.rfind(kind + "/", 0) == 0) change(fact);
    facts.add(std::move(fact));
  }
  return facts;
}

std::set<std::string> kinds() {
  std::set<std::string> found;
  for (const auto& fact : test::workshop().figures.all()) found.insert(fact.id.substr(0, fact.id.find('/')));
  return found;
}

bool differs(const bench::Output& one, const bench::Output& other) {
  return one.value != other.value || one.low != other.low || one.high != other.high || one.printed != other.printed;
}

/// An output by its name and how many of that name stand before it: a gasket has several `rejected`.
using Place = std::pair<std::string, std::size_t>;
/// The outputs of each request that changed.
using Changed = std::map<std::string, std::set<Place>>;

std::map<Place, const bench::Output*> by_place(const bench::Result& result) {
  std::map<Place, const bench::Output*> places;
  for (const auto& output : result.outputs) {
    std::size_t before = 0;
    while (places.count({output.name, before}) == 1) ++before;
    places.emplace(Place{output.name, before}, &output);
  }
  return places;
}

void note_changes(const std::string& request, const bench::Result& before, const bench::Result& after, Changed& changed) {
  const auto now = by_place(after);
  for (const auto& [place, output] : by_place(before)) {
    const auto found = now.find(place);
    if (found != now.end() && differs(*output, *found->second)) changed[request].insert(place);
  }
}

const std::vector<bench::Result>& untouched() {
  static const std::vector<bench::Result> kResults = [] {
    std::vector<bench::Result> results;
    for (const auto& request : requests()) results.push_back(test::workshop().ask(request));
    return results;
  }();
  return kResults;
}

/// What was seen to rest on something must say so once that is not to be trusted.
void check_fallen(const Changed& changed, const model::Tables& tables, const model::FactBase& facts, const std::string& what) {
  for (const auto& [request, places] : changed) {
    const auto fallen = run(request, tables, facts);
    const auto now = by_place(fallen);
    for (const auto& place : places) {
      REQUIRE(now.count(place) == 1);
      const Trust trust = now.at(place)->trust;
      INFO(request << ": " << place.first << " changes with " << what << " and is " << model::trust_name(trust));
      CHECK(trust == Trust::invented);
    }
  }
}

bool has_figures(const model::PublishedTable& table) {
  return std::any_of(table.columns.begin(), table.columns.end(), [](const auto& column) { return !column.quantity.empty(); }) ||
         std::any_of(table.rows.begin(), table.rows.end(), [](const auto& row) {
           return std::any_of(row.cells.begin(), row.cells.end(),
                              [](const auto& cell) { return scaled(cell.second, 2) != cell.second; });
         });
}

}  // namespace

TEST_CASE("an answer is trusted no more than the tables that it changes with") {
  const auto& shop = test::workshop();
  std::size_t tables_seen = 0;
  for (const auto& table : shop.schema.tables.published) {
    if (!has_figures(table)) continue;
    Changed changed;
    for (const double factor : kFactors) {
      const auto tables = with_figures(table.name, factor);
      for (std::size_t i = 0; i < requests().size(); ++i)
        note_changes(requests()[i], untouched()[i], run(requests()[i], tables, shop.figures), changed);
    }
    if (!changed.empty()) ++tables_seen;
    check_fallen(changed, without_trust(table.name), shop.figures, "table/" + table.name);
  }
  CHECK(tables_seen >= 12);
}

TEST_CASE("an answer is trusted no more than the records that it changes with") {
  const auto& shop = test::workshop();
  std::size_t kinds_seen = 0;
  for (const auto& kind : kinds()) {
    Changed changed;
    for (const double factor : kFactors) {
      const auto facts = with_kind(kind, [factor](model::Fact& fact) {
        for (auto* end : {&fact.value, &fact.low, &fact.high}) {
          if (*end) **end *= factor;
        }
      });
      for (std::size_t i = 0; i < requests().size(); ++i)
        note_changes(requests()[i], untouched()[i], run(requests()[i], shop.schema.tables, facts), changed);
    }
    if (!changed.empty()) ++kinds_seen;
    const auto fallen = with_kind(kind, [](model::Fact& fact) { fact.trust = Trust::invented; });
    check_fallen(changed, shop.schema.tables, fallen, kind + " records");
  }
  CHECK(kinds_seen >= 5);
}

TEST_CASE("an answer names what it rests on, and is trusted no more than the weakest of it") {
  for (const auto& result : untouched()) {
    for (const auto& output : result.outputs) {
      for (const auto& id : output.inputs) {
        INFO(result.calculator << " " << output.name << " rests on " << id);
        const auto ground = std::find_if(result.grounds.begin(), result.grounds.end(),
                                         [&id](const bench::Ground& one) { return one.fact == id; });
        REQUIRE(ground != result.grounds.end());
        CHECK(model::weaker(output.trust, ground->trust) == output.trust);
      }
    }
  }
}

TEST_CASE("what rests on no record and no table is of a handbook only where its formula is published") {
  constexpr std::array kPublished = {"IEC 60086", "Timoshenko", "Data Handbook"};
  std::size_t given = 0;
  for (const auto& result : untouched()) {
    for (const auto& output : result.outputs) {
      if (!output.inputs.empty()) continue;
      INFO(result.calculator << " " << output.name << " by " << output.formula << " " << model::trust_name(output.trust));
      if (output.trust == Trust::given) ++given;
      const bool published = std::any_of(kPublished.begin(), kPublished.end(),
                                         [&output](const char* name) { return output.formula.find(name) != std::string::npos; });
      if (!published) CHECK((output.trust == Trust::given || output.trust == Trust::trade || output.trust == Trust::memory));
    }
  }
  CHECK(given > 50);
}
