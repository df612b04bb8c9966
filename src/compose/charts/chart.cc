// In: chart records, everything they name. Out: sheets with their panels filled, ready to be set on any paper.
#include "compose/charts/chart.h"

#include <algorithm>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "base/id.h"
#include "compose/charts/chart_pages.h"
#include "compose/charts/panels.h"
#include "compose/imprint.h"
#include "compose/uses.h"
#include "model/paper_size.h"

namespace benchleaf::compose {

namespace {

using Filler = PanelBlocks (*)(const Desk&, const Wanted&);

Filler filler_of(const std::string& shows) {
  static const std::map<std::string, Filler> kFillers = {{"abrasive-grades", abrasive_grades},
                                                         {"cautions", hurt_messages},
                                                         {"cell-charges", cell_charges},
                                                         {"cell-numbers", cell_numbers},
                                                         {"cell-sizes", cell_sizes},
                                                         {"consumption-limits", consumption_limits},
                                                         {"crust-key", crust_key},
                                                         {"gasket-nest", gasket_nest},
                                                         {"lithium-charges", lithium_charges},
                                                         {"lithium-sizes", lithium_sizes},
                                                         {"material-matrix", material_matrix},
                                                         {"meeting-matrix", meeting_matrix},
                                                         {"never-together", never_together},
                                                         {"page-answers", page_answers},
                                                         {"page-key", page_key},
                                                         {"pictures", picture_row},
                                                         {"plating-marks", plating_marks},
                                                         {"rows", word_rows},
                                                         {"twin-scale", twin_scale},
                                                         {"words", words_only}};
  const auto filler = kFillers.find(shows);
  return filler == kFillers.end() ? nullptr : filler->second;
}

/// Once for all papers.
void report_once(const Desk& desk, report::Rule rule, base::Span where, std::string message, std::string hint) {
  const auto& all = desk.findings.all();
  if (std::none_of(all.begin(), all.end(), [&](const auto& one) { return one.rule == rule && one.where == where; }))
    desk.findings.add(rule, where, std::move(message), std::move(hint));
}

/// A picture that nothing draws, or a panel that stays empty, at its own line.
void report_faults(const Desk& desk, const model::Chart& chart, std::size_t place, bool empty) {
  const Wanted& wanted = chart.panels[place];
  const std::string path = "panels." + std::to_string(place);
  for (std::size_t i = 0; i < wanted.pictures.size(); ++i) {
    const std::string& name = wanted.pictures[i].name;
    if (bench_picture(name) != nullptr) continue;
    const std::string nearest = base::nearest_word(name, bench_picture_names());
    report_once(desk, report::Rule::compose_request, chart.span_of(path + ".pictures." + std::to_string(i) + ".name"),
                "there is no picture " + name,
                nearest.empty() ? "pictures are " + listed(bench_picture_names()) : "did you mean " + nearest + "?");
  }
  if (!empty) return;
  report_once(desk, report::Rule::chart_empty_panel, chart.span_of(path + ".shows"),
              "nothing fills the panel \"" + wanted.title + "\"", "name records that `" + wanted.shows + "` can show");
}

/// Panels of words name the record that says more; all others name what they show.
bool names_more(const std::string& shows) {
  return shows == "rows" || shows == "pictures" || shows == "words" || shows == "page-key";
}

model::Panel make_panel(const Desk& desk, const model::Chart& chart, std::size_t place) {
  const Wanted& wanted = chart.panels[place];
  model::Panel panel;
  panel.title = wanted.title;
  if (!wanted.note.empty()) panel.note = {model::text_run(wanted.note)};
  if (names_more(wanted.shows) && !wanted.records.empty()) panel.page = more_at(wanted.records.front());
  panel.keep = wanted.keep;
  panel.spare = wanted.spare;
  panel.wide = wanted.wide;
  if (const Filler fill = filler_of(wanted.shows)) panel.blocks = fill(desk, wanted);
  report_faults(desk, chart, place, panel.blocks.empty());
  return panel;
}

bool is_small(const std::string& paper) {
  const model::PaperSize* size = model::paper_size(paper);
  return size != nullptr && size->small;
}

model::Sheet make_side(const Desk& desk, const model::Chart& chart, const std::vector<std::size_t>& panels,
                       const std::string& which) {
  const model::Handbook& handbook = desk.records.handbook;
  model::Sheet sheet;
  sheet.title = chart.title;
  sheet.subtitle = chart.subtitle;
  sheet.imprint = imprint(handbook) + which;
  sheet.addition = sentence_case(overlay_line(desk.records));
  for (const std::size_t place : panels) sheet.panels.push_back(make_panel(desk, chart, place));
  return sheet;
}

/// The chart on its small or on its large papers; without papers it has no sides.
model::SheetSet make_chart(const Desk& desk, const model::Chart& chart, bool small) {
  model::SheetSet set;
  set.id = chart.id;
  set.title = chart.title;
  set.language = desk.records.handbook.language;
  set.iso_date = iso_date(desk.records.handbook);
  set.landscape = chart.orientation == model::Orientation::landscape;
  for (const std::string& paper : chart.papers) {
    if (is_small(paper) == small) set.papers.push_back(paper);
  }
  std::map<int, std::vector<std::size_t>> sides;  // places in the list of panels
  for (std::size_t i = 0; i < chart.panels.size(); ++i)
    sides[small ? chart.panels[i].small_side : chart.panels[i].side].push_back(i);
  sides.erase(0);
  if (set.papers.empty()) return set;
  for (const auto& [side, panels] : sides) {
    const std::string which = sides.size() > 1 ? ", side\u00A0" + std::to_string(side) : std::string();
    set.sides.push_back(make_side(desk, chart, panels, which));
  }
  set.runs_over = set.sides.size() == 1;
  return set;
}

}  // namespace

std::vector<model::SheetSet> make_charts(const model::KnowledgeBase& records, const model::Tables& tables,
                                         const derive::Derived& derived, report::Findings& findings) {
  const Uses uses(records);
  const Desk desk{records, tables, derived, uses, findings};
  std::vector<model::SheetSet> charts;
  for (const auto& [id, chart] : records.charts) {
    for (const bool small : {true, false}) {
      model::SheetSet set = make_chart(desk, chart, small);
      if (!set.sides.empty()) charts.push_back(std::move(set));
    }
  }
  return charts;
}

}  // namespace benchleaf::compose
