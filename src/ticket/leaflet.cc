// In: the words of a ticket. Out: its pages: the front sheet in the order of use, then the sheets of the jobs.
#include <algorithm>
#include <memory>

#include "compose/entry_maker.h"
#include "compose/figures/cell_drawing.h"
#include "compose/imprint.h"
#include "compose/uses.h"
#include "ticket/figure_of_job.h"
#include "ticket/sheet_blocks.h"
#include "ticket/sheet_builder.h"
#include "ticket/warning_panel.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Block;
using model::Blocks;
using model::LeafletRow;
using model::LeafletSheet;
using model::Paragraph;
using Column = LeafletRow::Column;

class SheetSetter {
 public:
  SheetSetter(const compose::Desk& desk, const Bench& bench, const Plan& plan, const Sheets& sheets)
      : desk_(desk), bench_(bench), plan_(plan), sheets_(sheets) {}

  LeafletSheet front() const {
    LeafletSheet sheet = head();
    // A history makes the sheet long, and what to do in an emergency belongs on its first page.
    const bool long_sheet = !bench_.watch.visits.empty();
    if (long_sheet) add_emergency(sheet);
    add_history(sheet);
    if (plan_.one_page)
      add_brief(sheet);
    else
      add_plan(sheet);
    add_readings(sheet);
    add_waiting(sheet);
    add_questions(sheet);
    if (!long_sheet) add_emergency(sheet);
    add_card(sheet);
    return sheet;
  }

  /// Causes and questions where they are too many for the front page.
  std::vector<LeafletSheet> behind_front() const {
    LeafletSheet sheet;
    sheet.title = "Causes, and what is still to be found out";
    sheet.key = key();
    sheet.anchor = "sheet/causes";
    sheet.may_share = true;
    for (const SheetSection& section : sheets_.front) {
      if (section.id.rfind("causes-", 0) == 0) sheet.rows.push_back(row_of({{column_of(section), 1.0}}));
    }
    for (const char* id : {"questions", "questions-inside"}) {
      if (const SheetSection* section = sheets_.section(id)) sheet.rows.push_back(row_of({{column_of(*section), 1.0}}, false));
    }
    if (sheet.rows.empty() || plan_.one_page) return {};
    return {sheet};
  }

  std::vector<LeafletSheet> jobs() const {
    std::vector<LeafletSheet> all;
    for (const JobSheet& job : sheets_.jobs) {
      LeafletSheet sheet;
      sheet.key = std::to_string(job.number);
      const PlanJob* planned = plan_.job(job.procedure);
      sheet.title = planned == nullptr ? job.steps.title : job_title(desk_, *planned);
      sheet.anchor = "sheet/" + job.procedure.id();
      sheet.subtitle = key() + ", job " + sheet.key + " of " + std::to_string(sheets_.jobs.size());
      if (sheet.title != job.steps.title) sheet.subtitle += "; in the handbook: " + job.steps.title;
      sheet.may_share = true;
      add_job_rows(job, sheet);
      all.push_back(std::move(sheet));
    }
    return all;
  }

 private:
  struct Part {
    std::string id;
    double share = 1;
  };

  void add_plan(LeafletSheet& sheet) const {
    side_by_side(sheet, {{"watch", 1.2}, {"never", 2.0}});
    side_by_side(sheet, {{"cell", 1.15}, {"gasket", 1.0}, {"crystal", 1.0}});
    run_in(sheet, "parts");
    side_by_side(sheet, {{"work", 1.0}});
  }

  /// One page in all: what is never done in a paragraph, and the steps across the page.
  void add_brief(LeafletSheet& sheet) const {
    side_by_side(sheet, {{"cell", 1.25}, {"gasket", 1.0}, {"watch", 1.35}});
    run_in(sheet, "parts");
    if (const SheetSection* never = sheets_.section("never")) {
      model::Runs runs;
      for (const SheetLine& line : never->lines) {
        if (!runs.empty()) runs.push_back(model::text_run("\u2002"));
        for (const model::Runs& cell : line.cells) {
          for (const model::Run& run : cell) {
            if (run.kind != model::Run::Kind::verdict || runs.empty()) runs.push_back(run);  // one mark leads the paragraph
          }
          if (&cell != &line.cells.back()) runs.push_back(model::text_run(" "));
        }
      }
      sheet.rows.push_back(row_of({{{compose::paragraph_block(std::move(runs), Paragraph::Role::dense)}, 1.0}}));
    }
    for (const JobSheet& job : sheets_.jobs) sheet.rows.push_back(row_of({{steps_of(job.steps.lines), 1.0}}, false));
  }

  LeafletContext context() const { return {desk_, bench_, sheets_}; }

  std::string key() const { return plan_.number.empty() ? plan_.watch : plan_.number; }

  LeafletSheet head() const {
    LeafletSheet sheet;
    sheet.anchor = "sheet/front";
    sheet.key = key();
    // the number stands beside the title, which may name it too
    sheet.title = plan_.title;
    compose::Line first(desk_);
    compose::Line second(desk_);
    sheet.right = {first.say("in ").blank(20).say(" due ").blank(22).take(),
                   second.say("owner ").blank(24).say(" tel. ").blank(14).take()};
    return sheet;
  }

  static LeafletRow row_of(std::vector<std::pair<Blocks, double>> columns, bool whole = true) {
    LeafletRow row;
    row.whole = whole;
    for (auto& [blocks, share] : columns) row.columns.push_back({share, std::move(blocks)});
    return row;
  }

  Blocks column_of(const SheetSection& section) const {
    Blocks blocks = {sheet_heading(section)};
    add_lines(context(), section, columns_of(section), blocks);
    for (const auto& drawing : section.drawings) blocks.push_back(picture_block(drawing));
    return blocks;
  }

  static std::vector<model::Column> columns_of(const SheetSection& section) {
    using compose::column;
    const auto left = model::Column::Align::left;
    if (section.id == "work") return {column({}, left, false, 64), column({}, left, false, 9.5), column({})};
    if (section.id == "never") return {column({}, left, false, 40), column({})};
    if (section.id == "waits") return {column({}, left, false, 70), column({})};
    if (section.id == "history")
      return {column("date"), column("cell fitted"),   column("old cell"), column("new cell"),
              column("draw"), column("rate, s a day"), column("gasket"),   column("what was done")};
    if (section.id.rfind("causes-", 0) == 0) return {column({}), column({}), column({})};
    const std::size_t count = section.lines.empty() ? 1 : section.lines.front().cells.size();
    return std::vector<model::Column>(std::max<std::size_t>(1, count), column({}));
  }

  void side_by_side(LeafletSheet& sheet, const std::vector<Part>& parts) const {
    std::vector<std::pair<Blocks, double>> columns;
    for (const Part& part : parts) {
      for (const SheetSection& section : sheets_.front) {
        if (section.id != part.id) continue;
        Blocks blocks = column_of(section);
        add_cell_drawing(section, blocks);
        columns.emplace_back(std::move(blocks), part.share);
      }
    }
    const bool whole = parts.size() > 1 || (parts.front().id != "waits" && parts.front().id != "work");
    if (!columns.empty()) sheet.rows.push_back(row_of(std::move(columns), whole));
  }

  /// A short section as one paragraph behind its title.
  void run_in(LeafletSheet& sheet, std::string_view id) const {
    const SheetSection* section = sheets_.section(id);
    if (section == nullptr) return;
    model::Runs runs = {model::text_run(section->title + ": ", model::Style::bold)};
    for (const SheetLine& line : section->lines) {
      for (const model::Runs& cell : line.cells) {
        runs.insert(runs.end(), cell.begin(), cell.end());
        runs.push_back(model::text_run(&cell == &line.cells.back() ? "\u2002" : ": "));
      }
    }
    sheet.rows.push_back(row_of({{{compose::paragraph_block(std::move(runs), Paragraph::Role::dense)}, 1.0}}));
  }

  /// A paragraph while they are few and without a caution, a table when there are more.
  void add_waiting(LeafletSheet& sheet) const {
    constexpr std::size_t kFew = 3;
    const SheetSection* section = sheets_.section("waits");
    if (section == nullptr) return;
    const bool warns = std::any_of(section->lines.begin(), section->lines.end(),
                                   [](const SheetLine& line) { return line.kind == Kind::caution; });
    if (section->lines.size() > kFew || warns)
      side_by_side(sheet, {{"waits", 1.0}});
    else
      run_in(sheet, "waits");
  }

  /// The cell drawn true beside the blank for what was fitted.
  void add_cell_drawing(const SheetSection& section, Blocks& blocks) const {
    if (section.id != "cell" || section.lines.empty()) return;
    const model::Cell* cell = desk_.cell(section.lines.front().record);
    const auto drawing = cell == nullptr ? nullptr : compose::cell_section(desk_, *cell);
    if (drawing == nullptr || blocks.size() < 2) return;
    model::Table table;
    table.name = "cell-key";
    table.columns = {compose::column({}), compose::column({})};
    model::TableRow row;
    model::TableCell picture;
    picture.drawing = drawing;
    row.cells = {compose::cell(section.lines.back().cells.front()), picture};
    table.rows.push_back(std::move(row));
    blocks.back() = {std::move(table)};
  }

  /// Three columns of readings: what is read with its blank, the healthy figure at the right.
  Blocks readings_in_three(const SheetSection& section) const {
    constexpr std::size_t kSide = 3;
    model::Table table;
    table.name = "readings";
    table.gap_mm = 1;
    for (const double wide : {41.0, 37.0, 35.5}) {
      table.columns.push_back(compose::column({}, model::Column::Align::left, false, wide));
      table.columns.push_back(compose::column({}, model::Column::Align::right, false, 22.8));
    }
    const std::size_t rows = (section.lines.size() + kSide - 1) / kSide;
    for (std::size_t i = 0; i < rows; ++i) {
      model::TableRow row;
      for (std::size_t at = i; at < kSide * rows; at += rows) {
        const bool there = at < section.lines.size();
        row.cells.push_back(compose::cell(there ? reading_words(section.lines[at], at >= rows) : model::Runs()));
        row.cells.push_back(compose::cell(there ? section.lines[at].cells[2] : model::Runs()));
      }
      table.rows.push_back(std::move(row));
    }
    return {sheet_heading(section), {std::move(table)}};
  }

  /// `apart` keeps it from the figure of the column before.
  static model::Runs reading_words(const SheetLine& line, bool apart) {
    model::Runs runs;
    if (apart) runs.push_back(model::text_run("\u2002"));
    runs.insert(runs.end(), line.cells[0].begin(), line.cells[0].end());
    runs.push_back(model::text_run(" "));
    runs.insert(runs.end(), line.cells[1].begin(), line.cells[1].end());
    return runs;
  }

  void add_readings(LeafletSheet& sheet) const {
    if (const SheetSection* section = sheets_.section("readings"))
      sheet.rows.push_back(row_of({{readings_in_three(*section), 1.0}}));
  }

  /// Three lines beside the signal word, at the same place on every front sheet.
  void add_emergency(LeafletSheet& sheet) const {
    const SheetSection* section = sheets_.section("emergency");
    if (section == nullptr) return;
    model::Table table;
    table.name = "emergency";
    table.columns = {compose::column({}, model::Column::Align::left, false, 30), compose::column({}),
                     compose::column({}, model::Column::Align::left, false, 59)};
    for (const SheetLine& line : section->lines) {
      model::TableRow row;
      row.cells.emplace_back();
      for (const model::Runs& cell : line.cells) row.cells.push_back(compose::cell(cell));
      row.joins_next = true;
      table.rows.push_back(std::move(row));
    }
    table.rows.front().cells.front().drawing = warning_panel();
    table.rows.front().cells.front().hangs = true;
    table.rows.back().joins_next = false;
    sheet.rows.push_back(row_of({{{{std::move(table)}}, 1.0}}));
  }

  /// In the owner's words, not in those for the bench.
  static Block notice_of(const SheetLine& line) {
    model::Message message;
    message.length = model::Message::Length::brief;
    message.harm_in_brief = line.cells.front();
    return {std::move(message)};
  }

  static Block line_block_without_box(const SheetLine& line) {
    return compose::paragraph_block(line.cells.front(), Paragraph::Role::dense);
  }

  /// To cut off: what was fitted, what was done, and that it is not water resistant.
  void add_card(LeafletSheet& sheet) const {
    const SheetSection* section = sheets_.section("card");
    if (section == nullptr) return;
    Blocks left = {sheet_heading(*section)};
    Blocks middle;
    Blocks right;
    for (const SheetLine& line : section->lines) {
      if (line.record.is(model::Kind::caution))
        right.push_back(notice_of(line));
      else
        (line.kind == Kind::tick ? middle : left).push_back(line_block_without_box(line));
    }
    sheet.rows.push_back(row_of({{std::move(left), 1.9}, {std::move(middle), 1.1}, {std::move(right), 0.9}}));
    sheet.rows.back().cut_above = true;
  }

  /// On the front where they are few.
  void add_questions(LeafletSheet& sheet) const {
    if (!plan_.one_page) return;
    for (const char* id : {"questions", "questions-inside"}) {
      if (const SheetSection* section = sheets_.section(id)) sheet.rows.push_back(row_of({{column_of(*section), 1.0}}));
    }
  }

  void add_history(LeafletSheet& sheet) const {
    side_by_side(sheet, {{"history", 1.0}});
    side_by_side(sheet, {{"history-told", 1.0}});
  }

  Blocks steps_of(const std::vector<SheetLine>& lines) const {
    Blocks blocks;
    int number = 0;
    for (const SheetLine& line : lines) {
      if (line.kind != Kind::step) {
        blocks.push_back(line_block(context(), line));
        continue;
      }
      model::Step step;
      step.number = ++number;
      step.box = true;
      step.runs = line.cells.front();
      blocks.push_back({std::move(step)});
    }
    return blocks;
  }

  Blocks beside(const JobSheet& job) const {
    Blocks blocks;
    for (const SheetSection& section : job.beside) {
      blocks.push_back(sheet_heading(section));
      for (const SheetLine& line : section.lines) blocks.push_back(line_block(context(), line));
    }
    return blocks;
  }

  /// What stands before the first step across the page, so that its messages stay low; then the steps with what stands beside
  /// them.
  void add_job_rows(const JobSheet& job, LeafletSheet& sheet) const {
    const auto& lines = job.steps.lines;
    const auto first = std::find_if(lines.begin(), lines.end(), [](const SheetLine& line) { return line.kind == Kind::step; });
    if (first != lines.begin()) sheet.rows.push_back(row_of({{steps_of({lines.begin(), first}), 1.0}}, false));
    Blocks right = beside(job);
    if (auto figure = figure_of_job(desk_, bench_, job.procedure)) right.insert(right.begin(), picture_block(std::move(figure)));
    sheet.rows.push_back(row_of({{steps_of({first, lines.end()}), 1.75}, {std::move(right), 1.0}}, false));
  }

  const compose::Desk& desk_;
  const Bench& bench_;
  const Plan& plan_;
  const Sheets& sheets_;
};

}  // namespace

model::Leaflet ticket_leaflet(const Bench& bench, const Plan& plan, const Sheets& sheets, Extent extent,
                              report::Findings& findings) {
  const compose::Uses uses(bench.records);
  const compose::Desk desk{bench.records, bench.tables, bench.derived, uses, findings};
  model::Leaflet leaflet;
  leaflet.id = plan.watch;
  leaflet.title = "Ticket " + (plan.number.empty() ? plan.watch : plan.number);
  leaflet.subtitle = plan.title;
  leaflet.imprint = compose::imprint(bench.records.handbook);
  if (const std::string line = compose::overlay_line(bench.records); !line.empty()) leaflet.imprint += ", " + line;
  leaflet.standing_line = bench.records.handbook.standing_line;
  leaflet.language = bench.records.handbook.language;
  leaflet.iso_date = compose::iso_date(bench.records.handbook);
  const SheetSetter setter(desk, bench, plan, sheets);
  leaflet.sheets.push_back(setter.front());
  if (extent == Extent::front || plan.one_page) return leaflet;
  for (LeafletSheet& sheet : setter.behind_front()) leaflet.sheets.push_back(std::move(sheet));
  for (LeafletSheet& sheet : setter.jobs()) leaflet.sheets.push_back(std::move(sheet));
  return leaflet;
}

}  // namespace benchleaf::ticket
