// In: lines of a ticket. Out: blocks: words with their box, cautions in their two lengths, tables, pictures.
#include "ticket/sheet_blocks.h"

#include <algorithm>

#include "compose/entry_maker.h"

namespace benchleaf::ticket {

using Kind = SheetLine::Kind;
using model::Block;
using model::Blocks;
using model::Paragraph;
using model::RecordRef;

namespace {

model::Runs boxed(const model::Runs& runs) {
  model::Run tick;
  tick.kind = model::Run::Kind::tick;
  model::Runs all = {std::move(tick), model::text_run("\u00A0")};
  all.insert(all.end(), runs.begin(), runs.end());
  return all;
}

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
model::Runs page_of(const LeafletContext& context, const RecordRef& caution) {
  if (stands_in_full(context.sheets, caution)) return {model::text_run(" "), model::page_run(anchor_of(caution))};
  const std::string page = context.bench.page ? context.bench.page(caution) : std::string();
  return page.empty() ? model::Runs() : model::Runs{model::text_run(" handbook p.\u00A0" + page, model::Style::bold)};
}

Block caution_block(const LeafletContext& context, const SheetLine& line) {
  const auto* caution = context.desk.records.find<model::Caution>(line.record);
  if (caution == nullptr) return compose::paragraph_block({model::text_run(line.record)});
  model::Message message = compose::message_of(context.desk, *caution);
  message.hazard = {model::text_run(caution->hazard)};  // why it harms is the handbook's to say
  const bool brief = line.again && !caution->harm_in_brief.empty();
  message.length = brief ? model::Message::Length::brief : model::Message::Length::full;
  if (brief) {
    for (model::Run& run : page_of(context, line.record)) message.avoid_in_brief.push_back(std::move(run));
    return {std::move(message)};
  }
  if (!line.again) message.anchor = anchor_of(line.record);
  if (!caution->first_aid.empty() && !line.again) {
    message.avoid.push_back(model::text_run(" If it happens: ", model::Style::bold));
    message.avoid.push_back(model::text_run(caution->first_aid));
  }
  return {std::move(message)};
}

}  // namespace

Block sheet_heading(const SheetSection& section) {
  return {model::Heading{2, {model::text_run(section.title)}, "section/" + section.id, section.note}};
}

Block line_block(const LeafletContext& context, const SheetLine& line) {
  if (line.kind == Kind::caution) return caution_block(context, line);
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

void add_lines(const LeafletContext& context, const SheetSection& section, std::vector<model::Column> columns, Blocks& blocks) {
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
    if (line.kind == Kind::caution || line.cells.size() < 2) blocks.push_back(line_block(context, line));
  }
}

}  // namespace benchleaf::ticket
