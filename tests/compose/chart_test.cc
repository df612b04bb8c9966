// The charts of the content: filled panels, order of numbers, verdicts as the records state them.
#include "compose/charts/chart.h"

#include <algorithm>
#include <cctype>
#include <iterator>
#include <set>
#include <string>
#include <vector>

#include "compose/charts/chart_pages.h"
#include "compose/meetings.h"
#include "derive/natural_order.h"
#include "real_book.h"
#include "support/catch.h"

using namespace benchleaf;
using test::real_book;

namespace {

std::vector<model::SheetSet> real_charts(report::Findings& findings) {
  return compose::make_charts(real_book().records, real_book().tables, real_book().derived, findings);
}

template <class Block>
std::vector<const Block*> blocks_of(const std::vector<model::SheetSet>& charts, const std::string& panel_title) {
  std::vector<const Block*> found;
  for (const auto& chart : charts) {
    for (const auto& side : chart.sides) {
      for (const auto& panel : side.panels) {
        for (const auto& block : panel.blocks) {
          const auto* one = std::get_if<Block>(&block);
          if (one != nullptr && panel.title == panel_title) found.push_back(one);
        }
      }
    }
  }
  return found;
}

/// Whether a head is the name of the record, short or plain.
template <class RecordType>
bool names(const model::Runs& head, const RecordType& record) {
  const std::string text = model::plain_text(head);
  std::string short_name = record.short_name;
  if (!short_name.empty()) short_name[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(short_name[0])));
  return text == short_name || text == record.title || text.rfind(record.title + ", ", 0) == 0;
}

}  // namespace

TEST_CASE("every panel of every chart is filled", "[compose]") {
  report::Findings findings;
  const auto charts = real_charts(findings);
  CHECK(findings.all().empty());
  std::set<std::string> ids;
  int panels = 0;
  for (const auto& chart : charts) {
    ids.insert(chart.id);
    CHECK_FALSE(chart.papers.empty());
    for (const auto& side : chart.sides) {
      CHECK(side.imprint.find("edition") != std::string::npos);
      for (const auto& panel : side.panels) {
        CHECK_FALSE(panel.blocks.empty());
        ++panels;
      }
    }
  }
  CHECK(ids == std::set<std::string>{"cells", "gaskets-and-crystals", "liquids", "one-sheet"});
  CHECK(panels > 25);
}

TEST_CASE("numbers of a chart stand in the order in which they are looked up", "[compose]") {
  report::Findings findings;
  const auto charts = real_charts(findings);
  const auto tables = blocks_of<model::Table>(charts, "By number");
  REQUIRE_FALSE(tables.empty());
  std::vector<std::string> keys;
  for (const auto& row : tables.front()->rows) keys.push_back(model::plain_text(row.cells.front().runs));
  CHECK(keys.size() > 45);
  for (std::size_t i = 1; i < keys.size(); ++i) CHECK(derive::natural_less(keys[i - 1], keys[i]));
}

TEST_CASE("a cross of the matrix is the verdict that the liquid states", "[compose]") {
  report::Findings findings;
  const auto charts = real_charts(findings);
  const auto matrices = blocks_of<model::Matrix>(charts, "Liquid on material");
  REQUIRE_FALSE(matrices.empty());
  const auto& records = real_book().records;
  const model::Matrix& matrix = *matrices.front();
  REQUIRE(matrix.rows.size() == records.chemistries.size());
  REQUIRE(matrix.columns.size() == records.materials.size());
  int never = 0;
  for (const auto& [id, liquid] : records.chemistries) {
    const auto row =
        std::find_if(matrix.rows.begin(), matrix.rows.end(), [&](const auto& one) { return names(one.head, liquid); });
    INFO(id);
    REQUIRE(row != matrix.rows.end());
    for (const auto& [material_id, material] : records.materials) {
      const auto column =
          std::find_if(matrix.columns.begin(), matrix.columns.end(), [&](const auto& one) { return names(one, material); });
      INFO(material_id);
      REQUIRE(column != matrix.columns.end());
      std::optional<model::Verdict> stated;
      for (const auto& item : liquid.on_materials) {
        if (item.material == material.reference()) stated = item.verdict;
      }
      CHECK(row->cells[static_cast<std::size_t>(column - matrix.columns.begin())] == stated);
      never += stated == model::Verdict::never;
    }
  }
  CHECK(never > 50);
}

TEST_CASE("liquids and materials of one kind stand together, acrylic in its case beside loose acrylic", "[compose]") {
  report::Findings findings;
  const auto charts = real_charts(findings);
  const model::Matrix& matrix = *blocks_of<model::Matrix>(charts, "Liquid on material").at(0);
  CHECK(matrix.heads_at_both_ends);
  std::vector<std::string> rows;
  for (const auto& row : matrix.rows) rows.push_back(row.group);
  for (std::vector<std::string> kinds : {matrix.groups, rows}) {
    const auto end = std::unique(kinds.begin(), kinds.end());
    const std::set<std::string> once(kinds.begin(), end);
    CHECK(once.size() == static_cast<std::size_t>(end - kinds.begin()));
    CHECK(once.size() > 4);
    CHECK(once.count("") == 0);
  }
  std::vector<std::string> heads;
  for (const auto& head : matrix.columns) heads.push_back(model::plain_text(head));
  const auto fitted = std::find(heads.begin(), heads.end(), "Fitted acrylic");
  REQUIRE(fitted != heads.end());
  CHECK(*std::next(fitted) == "Loose acrylic");
  CHECK(std::find(heads.begin(), heads.end(), "Polycarbonate, PC") != heads.end());  // the plain name first
}

TEST_CASE("every cell that has a number stands on the chart of cells, by number and by size", "[compose]") {
  report::Findings findings;
  auto charts = real_charts(findings);
  std::erase_if(charts, [](const model::SheetSet& chart) { return chart.id != "cells"; });
  std::set<std::string> by_number, by_size;
  for (const auto& chart : charts) {
    for (const auto& side : chart.sides) {
      for (const auto& panel : side.panels) {
        for (const auto& block : panel.blocks) {
          const auto* table = std::get_if<model::Table>(&block);
          if (table == nullptr) continue;
          auto& words = panel.title == "By number" ? by_number : by_size;
          for (const auto& row : table->rows) {
            for (const auto& cell : row.cells) {
              for (const auto& run : cell.runs) words.insert(run.text);
            }
          }
        }
      }
    }
  }
  for (const auto& [id, cell] : real_book().records.cells) {
    INFO(id);
    for (const std::string& number : {cell.trade_number, cell.consumer_number}) {
      if (!number.empty()) CHECK(by_number.count(number) == 1);
    }
    const bool fits = cell.system == "silver-oxide" || cell.system.rfind("lithium", 0) == 0;
    if (fits) CHECK(by_size.count(cell.trade_number.empty() ? cell.designation : cell.trade_number) == 1);
    if (cell.system == "alkaline") CHECK(by_size.count(cell.consumer_number) == 1);
  }
}

TEST_CASE("what must never meet is never whichever of the two is named first", "[compose]") {
  // Bleach with ammonia gives chloramines, with acid chlorine; ammonia on silver oxide residue leaves explosive silver
  // nitride: warnings on household products and of laboratory handbooks (common practice, no single source).
  const auto& records = real_book().records;
  const auto& bleach = records.chemistries.at("household-bleach");
  const auto& window = records.chemistries.at("ammonia-glass-cleaner");
  const auto& vinegar = records.chemistries.at("white-vinegar");
  const auto& film = records.residues.at("silver-black-film");
  const compose::Uses uses(records);
  report::Findings findings;
  const compose::Desk desk{records, real_book().tables, real_book().derived, uses, findings};
  const auto meeting_verdict = [&desk](const model::Record& one, const model::Record& other) {
    return compose::meeting_verdict(desk, one, other);
  };
  using model::Verdict;
  CHECK(meeting_verdict(bleach, window) == Verdict::never);
  CHECK(meeting_verdict(window, bleach) == Verdict::never);
  CHECK(meeting_verdict(bleach, vinegar) == Verdict::never);
  CHECK(meeting_verdict(vinegar, bleach) == Verdict::never);
  CHECK(meeting_verdict(film, window) == Verdict::never);
  CHECK(meeting_verdict(window, film) == Verdict::never);
  CHECK_FALSE(meeting_verdict(vinegar, vinegar));
  // An acid and ammonia neutralise each other, by no word of either record: the table of reactive groups says so.
  const auto& citric = records.chemistries.at("citric-acid-solution");
  CHECK(meeting_verdict(citric, window) == Verdict::with_limits);
  CHECK(meeting_verdict(window, citric) == Verdict::with_limits);
}

TEST_CASE("the gasket panel leads from a seat to the size that sits and from a groove to its section", "[compose]") {
  // The seal maker's band of 1 to 5 % of stretch and the usual 15 to 30 % of squeeze, by hand.
  report::Findings findings;
  auto charts = real_charts(findings);
  std::erase_if(charts, [](const model::SheetSet& chart) { return chart.id != "one-sheet"; });
  const auto tables = blocks_of<model::Table>(charts, "Gasket");
  REQUIRE(tables.size() >= 3);
  const auto says = [](const model::Table& table, const std::string& key) {
    for (const auto& row : table.rows) {
      if (model::plain_text(row.cells.front().runs) == key) return model::plain_text(row.cells.back().runs);
    }
    return std::string();
  };
  CHECK(says(*tables[0], "28") == "27.5");  // 27.5 is stretched by 1.8 %, 28 not at all
  CHECK(tables[0]->rows.size() > 15);
  for (const auto& row : tables[0]->rows) {
    const double seat = std::stod(model::plain_text(row.cells.front().runs));
    const double inside = std::stod(model::plain_text(row.cells.back().runs));
    INFO(seat << " " << inside);
    CHECK(seat / inside - 1 >= 0.01);
    CHECK(seat / inside - 1 <= 0.05);
  }
  CHECK(says(*tables[1], "0.5") == "0.35\u20130.42");  // 0.425 is not exceeded
  CHECK(says(*tables[1], "1.0") == "0.70\u20130.85");
  CHECK(says(*tables[2], "Feel").find("needs no push") != std::string::npos);
}

TEST_CASE("a message of a chart begins with what has happened and what to do", "[compose]") {
  report::Findings findings;
  const auto charts = real_charts(findings);
  const auto strips = blocks_of<model::Messages>(charts, "If it hurts");
  REQUIRE_FALSE(strips.empty());
  std::set<std::string> keys;
  for (const auto* strip : strips) {
    for (const auto& message : strip->messages) {
      REQUIRE(message.hazard.size() == 1);
      CHECK(message.hazard.front().style == model::Style::look_up);
      CHECK_FALSE(message.avoid.empty());
      keys.insert(message.hazard.front().text);
    }
  }
  CHECK(keys == std::set<std::string>{"Eye or skin", "Gas", "Left together", "Swallowed"});
}

TEST_CASE("a chart names the page of a liquid at the end of its row, and nothing of what stands in no book", "[compose]") {
  report::Findings findings;
  auto charts = real_charts(findings);
  auto bare = charts;
  const auto by_name = [](const std::string& record) {
    return record == "chemistry/white-vinegar" ? std::string("51") : std::string();
  };
  for (auto& chart : charts) compose::name_pages(chart, by_name, "handbook on A4");
  for (auto& chart : bare)
    compose::name_pages(
        chart, [](const std::string&) { return std::string(); }, "handbook on A4");
  const auto vinegar = real_book().records.chemistries.find("white-vinegar");
  REQUIRE(vinegar != real_book().records.chemistries.end());
  int named = 0;
  for (const auto* matrix : blocks_of<model::Matrix>(charts, "Liquid on material")) {
    for (const auto& row : matrix->rows) {
      const bool is_vinegar = names(row.head, vinegar->second);
      CHECK(model::plain_text(row.page) == (is_vinegar ? "51" : ""));
      named += is_vinegar ? 1 : 0;
    }
  }
  CHECK(named > 0);
  const auto columns_of = [](const std::vector<model::SheetSet>& set) {
    const auto tables = blocks_of<model::Table>(set, "Never together");
    REQUIRE_FALSE(tables.empty());
    return tables.front()->columns.size();
  };
  CHECK(columns_of(bare) == 2);
  const auto foot = [](const std::vector<model::SheetSet>& set) {
    std::string all;
    for (const auto& chart : set) {
      for (const auto& side : chart.sides) all += side.addition;
    }
    return all;
  };
  CHECK(foot(charts).find("Pages: handbook on A4") != std::string::npos);
  CHECK(foot(bare).empty());
}

TEST_CASE("each row of what must never meet names every partner, also those whose own row stands above", "[compose]") {
  report::Findings findings;
  const auto charts = real_charts(findings);
  std::string peroxide;
  for (const auto* table : blocks_of<model::Table>(charts, "Never together")) {
    for (const auto& row : table->rows) {
      if (model::plain_text(row.cells.front().runs) == "Peroxide") peroxide = model::plain_text(row.cells.at(1).runs);
    }
  }
  // Warnings of household products and laboratory handbooks: common practice, no single source.
  for (const char* partner : {"bleach", "vinegar", "acetone"}) CHECK(peroxide.find(partner) != std::string::npos);
}
