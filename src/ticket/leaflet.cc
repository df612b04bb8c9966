// In: the words of a ticket. Out: its pages: the front sheet in the order of use, then the sheets of the jobs.
#include <algorithm>
#include <memory>

#include "compose/entry_maker.h"
#include "compose/figures/cell_drawing.h"
#include "compose/imprint.h"
#include "compose/uses.h"
#include "ticket/figure_of_job.h"
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

model::Runs boxed(const model::Runs& runs) {
  model::Run tick;
  tick.kind = model::Run::Kind::tick;
  model::Runs all = {std::move(tick), model::text_run("\u00A0")};
  all.insert(all.end(), runs.begin(), runs.end());
  return all;
}

Block heading(const SheetSection& section) {
  return {model::Heading{2, {model::text_run(section.title)}, "section/" + section.id, section.note}};
}

/// What the words are set with.
struct Paper {
  const compose::Desk& desk;
  const Bench& bench;
  const Sheets& sheets;
};

std::string anchor_of(const RecordRef& caution) { return "full/" + caution.id(); }

/// Whether a strip finds the message of its caution in full on this ticket.
bool stands_in_full(const Sheets& sheets, const RecordRef& caution) {
  return std::any_of(sheets.jobs.begin(), sheets.jobs.end(), [&caution](const JobSheet& job) {
    return std::any_of(job.steps.lines.begin(), job.steps.lines.end(), [&caution](const SheetLine& line) {
      return line.kind == Kind::caution && !line.again && line.record == caution;
    });
  });
}

/// The page of the full message: on this ticket, else in the handbook where one was bound.
model::Runs page_of(const Paper& paper, const RecordRef& caution) {
  if (stands_in_full(paper.sheets, caution)) return {model::text_run(" "), model::page_run(anchor_of(caution))};
  const std::string page = paper.bench.page ? paper.bench.page(caution) : std::string();
  return page.empty() ? model::Runs() : model::Runs{model::text_run(" handbook p.\u00A0" + page, model::Style::bold)};
}

Block caution_block(const Paper& paper, const SheetLine& line) {
  const auto* caution = paper.desk.records.find<model::Caution>(line.record);
  if (caution == nullptr) return compose::paragraph_block({model::text_run(line.record)});
  model::Message message = compose::message_of(paper.desk, *caution);
  message.hazard = {model::text_run(caution->hazard)};  // why it harms is the handbook's to say
  const bool brief = line.again && !caution->harm_in_brief.empty();
  message.length = brief ? model::Message::Length::brief : model::Message::Length::full;
  if (brief) {
    for (model::Run& run : page_of(paper, line.record)) message.avoid_in_brief.push_back(std::move(run));
    return {std::move(message)};
  }
  if (!line.again) message.anchor = anchor_of(line.record);
  if (!caution->first_aid.empty() && !line.again) {
    message.avoid.push_back(model::text_run(" If it happens: ", model::Style::bold));
    message.avoid.push_back(model::text_run(caution->first_aid));
  }
  return {std::move(message)};
}

Block line_block(const Paper& paper, const SheetLine& line) {
  if (line.kind == Kind::caution) return caution_block(paper, line);
  const model::Runs runs = line.cells.empty() ? model::Runs() : line.cells.front();
  if (line.kind == Kind::key) return compose::paragraph_block(runs, Paragraph::Role::key);
  return compose::paragraph_block(line.kind == Kind::tick ? boxed(runs) : runs, Paragraph::Role::dense);
}

Block picture_block(std::shared_ptr<const model::Drawing> drawing) {
  model::Table table;
  table.name = "figure";
  table.columns = {compose::column({})};
  model::TableCell picture;
  picture.drawing = std::move(drawing);
  model::TableRow row;
  row.cells = {std::move(picture)};
  table.rows.push_back(std::move(row));
  return {std::move(table)};
}

/// Lines one under the other; those of several cells as one table.
void add_lines(const Paper& paper, const SheetSection& section, std::vector<model::Column> columns, Blocks& blocks) {
  model::Table table;
  table.name = section.id;
  table.columns = std::move(columns);
  for (const SheetLine& line : section.lines) {
    if (line.kind == Kind::caution || line.cells.size() < 2) continue;
    model::TableRow row;
    for (const model::Runs& cell : line.cells) row.cells.push_back(compose::cell(cell));
    table.rows.push_back(std::move(row));
  }
  if (!table.rows.empty()) blocks.push_back({std::move(table)});
  for (const SheetLine& line : section.lines) {
    if (line.kind == Kind::caution || line.cells.size() < 2) blocks.push_back(line_block(paper, line));
  }
}

class SheetSetter {
 public:
  SheetSetter(const compose::Desk& desk, const Bench& bench, const Plan& plan, const Sheets& sheets)
      : desk_(desk), bench_(bench), plan_(plan), sheets_(sheets) {}

  LeafletSheet front() const {
    LeafletSheet sheet = head();
    add_history(sheet);
    if (plan_.one_page)
      add_brief(sheet);
    else
      add_plan(sheet);
    add_readings(sheet);
    side_by_side(sheet, {{"waits", 1.0}});
    add_questions(sheet);
    add_emergency(sheet);
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
      sheet.title = job.steps.title;
      sheet.anchor = "sheet/" + job.procedure.id();
      sheet.subtitle = key() + ", job " + sheet.key + " of " + std::to_string(sheets_.jobs.size());
      sheet.may_share = true;
      sheet.rows.push_back(job_row(job));
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
    side_by_side(sheet, {{"watch", 1.0}, {"never", 1.9}});
    side_by_side(sheet, {{"cell", 1.15}, {"gasket", 1.0}, {"crystal", 1.0}});
    side_by_side(sheet, {{"parts", 1.0}});
    side_by_side(sheet, {{"work", 1.0}});
  }

  /// One page in all: what is never done in a paragraph, and the steps across the page.
  void add_brief(LeafletSheet& sheet) const {
    side_by_side(sheet, {{"cell", 1.0}, {"gasket", 0.95}, {"watch", 1.5}});
    side_by_side(sheet, {{"parts", 1.0}});
    if (const SheetSection* never = sheets_.section("never")) {
      model::Runs runs;
      for (const SheetLine& line : never->lines) {
        if (!runs.empty()) runs.push_back(model::text_run("\u2003"));
        for (const model::Runs& cell : line.cells) {
          runs.insert(runs.end(), cell.begin(), cell.end());
          runs.push_back(model::text_run(" "));
        }
      }
      sheet.rows.push_back(row_of({{{compose::paragraph_block(std::move(runs), Paragraph::Role::dense)}, 1.0}}));
    }
    for (const JobSheet& job : sheets_.jobs) sheet.rows.push_back(row_of({{steps_of(job), 1.0}}, false));
  }

  Paper paper() const { return {desk_, bench_, sheets_}; }

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
    Blocks blocks = {heading(section)};
    add_lines(paper(), section, columns_of(section), blocks);
    for (const auto& drawing : section.drawings) blocks.push_back(picture_block(drawing));
    return blocks;
  }

  static std::vector<model::Column> columns_of(const SheetSection& section) {
    using compose::column;
    const auto left = model::Column::Align::left;
    if (section.id == "work") return {column({}, left, false, 64), column({}, left, false, 9.5), column({})};
    if (section.id == "never") return {column({}, left, false, 42), column({})};
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

  /// Two columns of readings: what is read, the blank, the healthy figure.
  Blocks readings_in_two(const SheetSection& section) const {
    using compose::column;
    constexpr auto kRight = model::Column::Align::right;
    constexpr auto kLeft = model::Column::Align::left;
    model::Table table;
    table.name = "readings";
    table.gap_mm = 1;
    for (int half = 0; half < 2; ++half) {
      table.columns.push_back(column({}, kLeft, false, 33.5));
      table.columns.push_back(column({}, kLeft, false, 29.5));
      table.columns.push_back(column({}, kRight, false, 28));
    }
    const std::size_t rows = (section.lines.size() + 1) / 2;
    for (std::size_t i = 0; i < rows; ++i) {
      model::TableRow row;
      for (const std::size_t at : {i, rows + i}) {
        for (std::size_t cell = 0; cell < 3; ++cell)
          row.cells.push_back(compose::cell(at < section.lines.size() ? section.lines[at].cells[cell] : model::Runs()));
      }
      table.rows.push_back(std::move(row));
    }
    return {heading(section), {std::move(table)}};
  }

  void add_readings(LeafletSheet& sheet) const {
    if (const SheetSection* section = sheets_.section("readings"))
      sheet.rows.push_back(row_of({{readings_in_two(*section), 1.0}}));
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

  /// To cut off: what was fitted, what was done, and that it is not water resistant.
  void add_card(LeafletSheet& sheet) const {
    const SheetSection* section = sheets_.section("card");
    if (section == nullptr) return;
    Blocks left = {heading(*section)};
    Blocks right;
    for (const SheetLine& line : section->lines) {
      if (line.record.is(model::Kind::caution))
        right.push_back(notice_of(line));
      else
        left.push_back(line_block(paper(), line));
    }
    sheet.rows.push_back(row_of({{std::move(left), 2.7}, {std::move(right), 1.0}}));
    sheet.rows.back().cut_above = true;
  }

  /// On the front where they are few.
  void add_questions(LeafletSheet& sheet) const {
    if (!plan_.one_page) return;
    for (const char* id : {"questions", "questions-inside"}) {
      if (const SheetSection* section = sheets_.section(id)) sheet.rows.push_back(row_of({{column_of(*section), 1.0}}));
    }
  }

  void add_history(LeafletSheet& sheet) const { side_by_side(sheet, {{"history", 1.0}}); }

  Blocks steps_of(const JobSheet& job) const {
    Blocks blocks;
    int number = 0;
    for (const SheetLine& line : job.steps.lines) {
      if (line.kind != Kind::step) {
        blocks.push_back(line_block(paper(), line));
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
    if (const auto drawing = figure_of_job(desk_, bench_, job.procedure)) {
      blocks.push_back(picture_block(drawing));
    }
    for (const SheetSection& section : job.beside) {
      blocks.push_back(heading(section));
      for (const SheetLine& line : section.lines) blocks.push_back(line_block(paper(), line));
    }
    return blocks;
  }

  LeafletRow job_row(const JobSheet& job) const { return row_of({{steps_of(job), 1.75}, {beside(job), 1.0}}, false); }

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
