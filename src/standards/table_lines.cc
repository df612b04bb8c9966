// In and out: published tables and their line format.
//   benchleaf-tables 1
//   table  name key title source publication edition trust date transcription note
//   column name title quantity
//   row    key trust source note cell cell ...        (cells in the order of the columns)
// Parts stand between tabs, as base/line_parts.h writes them.

#include "standards/table_lines.h"

#include <cstddef>
#include <utility>

#include "base/line_parts.h"

namespace benchleaf::standards {
namespace {

using base::add_part;
using base::line_of;

constexpr std::string_view kHead = "benchleaf-tables 1";
constexpr std::size_t kTableParts = 11;
constexpr std::size_t kColumnParts = 4;
constexpr std::size_t kRowParts = 5;  // before the cells

std::string row_line(const model::PublishedTable& table, const model::PublishedTable::Row& row) {
  std::string line = line_of({"row", row.key, model::trust_name(row.trust), row.source, row.note});
  for (const auto& column : table.columns) {
    const auto cell = row.cells.find(column.name);
    add_part(line, cell == row.cells.end() ? std::string_view() : std::string_view(cell->second));
  }
  return line;
}

/// Takes lines one by one; a line that does not fit ends the reading.
class LineReader {
 public:
  bool take(std::string_view line) {
    const auto parts = base::parts_of(line);
    if (parts[0] == "table") return take_table(parts);
    if (tables_.empty()) return false;
    if (parts[0] == "column") return take_column(parts);
    return parts[0] == "row" && take_row(parts);
  }

  std::vector<model::PublishedTable> tables() { return std::move(tables_); }

 private:
  bool take_table(const std::vector<std::string>& parts) {
    if (parts.size() != kTableParts) return false;
    const auto trust = model::trust_from_name(parts[7]);
    if (!trust) return false;
    model::PublishedTable table;
    table.name = parts[1];
    table.key = parts[2];
    table.title = parts[3];
    table.source = parts[4];
    table.publication = parts[5];
    table.edition = parts[6];
    table.trust = *trust;
    table.date_read = parts[8];
    table.transcription = parts[9];
    table.note = parts[10];
    tables_.push_back(std::move(table));
    return true;
  }

  bool take_column(const std::vector<std::string>& parts) {
    if (parts.size() != kColumnParts) return false;
    tables_.back().columns.push_back({parts[1], parts[2], parts[3]});
    return true;
  }

  bool take_row(const std::vector<std::string>& parts) {
    const auto& columns = tables_.back().columns;
    if (parts.size() != kRowParts + columns.size()) return false;
    const auto trust = model::trust_from_name(parts[2]);
    if (!trust) return false;
    model::PublishedTable::Row row;
    row.key = parts[1];
    row.trust = *trust;
    row.source = parts[3];
    row.note = parts[4];
    for (std::size_t i = 0; i < columns.size(); ++i) row.cells.emplace(columns[i].name, parts[kRowParts + i]);
    tables_.back().rows.push_back(std::move(row));
    return true;
  }

  std::vector<model::PublishedTable> tables_;
};

}  // namespace

std::string table_lines(const std::vector<model::PublishedTable>& tables) {
  std::string text(kHead);
  text += '\n';
  for (const auto& table : tables) {
    text += line_of({"table", table.name, table.key, table.title, table.source, table.publication, table.edition,
                     model::trust_name(table.trust), table.date_read, table.transcription, table.note}) +
            "\n";
    for (const auto& column : table.columns) text += line_of({"column", column.name, column.title, column.quantity}) + "\n";
    for (const auto& row : table.rows) text += row_line(table, row) + "\n";
  }
  return text;
}

std::optional<std::vector<model::PublishedTable>> read_table_lines(std::string_view text) {
  LineReader reader;
  bool head = true;
  while (!text.empty()) {
    const std::string_view line = base::take_line(text);
    if (head ? line != kHead : !reader.take(line)) return std::nullopt;
    head = false;
  }
  if (head) return std::nullopt;
  return reader.tables();
}

}  // namespace benchleaf::standards
