// In: a state of the content. Out: the rows of its bench charts as plain words.

#include "compose/changes/chart_rows.h"

#include <set>
#include <utility>
#include <variant>

#include "compose/charts/chart.h"
#include "model/signs.h"

namespace benchleaf::compose {
namespace {

class RowList {
 public:
  std::vector<ChartRow> take() { return std::move(rows_); }

  void add(const model::SheetSet& chart) {
    for (const model::Sheet& side : chart.sides) {
      for (const model::Panel& panel : side.panels) {
        const std::string place = "chart/" + chart.id + "#" + panel.title;
        if (!seen_.insert(place).second) continue;
        row_ = {};
        say(panel.note);
        keep(place);
        for (const auto& block : panel.blocks) {
          std::visit([this, &place](const auto& what) { add(what, place); }, block);
        }
      }
    }
  }

 private:
  void add(const model::Paragraph& paragraph, const std::string& place) {
    say(paragraph.runs);
    keep(place + ": words");
  }

  void add(const model::Table& table, const std::string& place) {
    std::string beside;  // what hangs beside this row and those above it
    for (const auto& row : table.rows) {
      if (row.cells.empty()) continue;
      row_ = {};
      std::string first = take_text(row.cells.front().runs);
      if (row.cells.front().hangs) beside = first;
      if (!beside.empty() && row.cells.size() > 1) first = beside + " \u00D7 " + take_text(row.cells[1].runs);
      const std::string key = place + ": " + first;
      const std::vector<model::Runs> lines = lines_of(row.cells.back().runs);
      if (lines.size() > 1) {
        add_lines(lines, key);
        continue;
      }
      for (std::size_t i = 1; i < row.cells.size(); ++i) say(row.cells[i].runs);
      keep(key);
    }
  }

  /// Each line under one key is found by the words it begins with.
  void add_lines(const std::vector<model::Runs>& lines, const std::string& key) {
    const std::vector<std::string> facts = row_.facts;
    for (const model::Runs& line : lines) {
      row_ = {{}, {}, facts};
      say(line);
      keep(key + (line.empty() ? "" : ", " + line.front().text));
    }
  }

  static std::vector<model::Runs> lines_of(const model::Runs& runs) {
    std::vector<model::Runs> lines(1);
    for (const auto& run : runs) {
      if (run.kind == model::Run::Kind::line_break) {
        lines.emplace_back();
      } else {
        lines.back().push_back(run);
      }
    }
    return lines;
  }

  void add(const model::Matrix& matrix, const std::string& place) {
    for (const auto& row : matrix.rows) {
      for (std::size_t i = 0; i < row.cells.size() && i < matrix.columns.size(); ++i) {
        const std::string down = take_text(row.head), across = take_text(matrix.columns[i]);
        row_.text = row.cells[i] ? std::string(model::verdict_words(*row.cells[i])) : "no data";
        keep(place + ": " + down + " on " + across);
      }
    }
  }

  void add(const model::Pictures& row, const std::string& place) {
    for (std::size_t i = 0; i < row.pictures.size(); ++i) {
      say(row.pictures[i].words);
      keep(place + ": picture " + std::to_string(i + 1));
    }
  }

  void add(const model::Fields& fields, const std::string& place) {
    for (const model::Runs& line : fields.lines) say(line);
    keep(place + ": lines to fill in");
  }

  void add(const model::Messages& row, const std::string& place) {
    for (const auto& message : row.messages) {
      row_.facts.push_back(message.record);
      row_.text = std::string(model::message_word(message.word)) + " ";
      say(message.hazard);
      say(message.avoid);
      keep(place + ": " + message.record);
    }
  }

  /// The words of a key; the row rests on its facts all the same.
  std::string take_text(const model::Runs& runs) {
    const std::string before = std::exchange(row_.text, {});
    say(runs);
    return std::exchange(row_.text, before);
  }

  void say(const model::Runs& runs) {
    std::string text;
    for (const auto& run : runs) {
      if (run.kind == model::Run::Kind::text || run.kind == model::Run::Kind::verdict) text += run.text;
      if (run.kind == model::Run::Kind::line_break) text += " / ";
      if (run.kind == model::Run::Kind::trust_sign) text += " (" + model::trust_words(run.trust, run.derived) + ")";
      for (const std::string& about : {run.fact, run.target}) {
        if (!about.empty()) row_.facts.push_back(about);
      }
    }
    row_.text += (row_.text.empty() || row_.text.ends_with(' ') || text.empty() ? "" : " | ") + text;
  }

  /// A second row of one key is told by its place.
  void keep(std::string id) {
    std::string own = id;
    for (int i = 2; !seen_.insert("row " + own).second; ++i) own = id + ", " + std::to_string(i);
    row_.id = std::move(own);
    rows_.push_back(std::exchange(row_, {}));
  }

  ChartRow row_;
  std::vector<ChartRow> rows_;
  std::set<std::string> seen_;
};

}  // namespace

std::vector<ChartRow> chart_rows(const State& state) {
  report::Findings of_charts;  // an empty panel is told by bind
  RowList rows;
  for (const auto& chart : make_charts(state.records, state.tables, state.derived, of_charts)) rows.add(chart);
  return rows.take();
}

}  // namespace benchleaf::compose
