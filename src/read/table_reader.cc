// In: tables/*.yaml and fonts.yaml of the schema folder. Out: typed tables and the list of fonts.
#include "read/table_reader.h"

#include <optional>
#include <utility>

#include "model/fact.h"
#include "read/decode_fields.h"
#include "read/quantity_check.h"
#include "read/schema_file.h"
#include "read/shape_words.h"

namespace benchleaf::read {

namespace {

using model::PublishedTable;
using report::Rule;

/// What is wrong with a cell of a column of quantities.
std::optional<QuantityFinding> fault_of(const model::Node& cell, const PublishedTable::Column& column) {
  std::optional<base::Dimension> dimension = base::dimension_named(column.quantity);
  if (!dimension) return std::nullopt;
  auto read = read_quantity(cell, {*dimension});
  auto* fault = std::get_if<QuantityFinding>(&read);
  return fault == nullptr ? std::nullopt : std::optional(std::move(*fault));
}

/// Reads one table whose file has passed its shape.
class TableReader {
 public:
  TableReader(const SchemaFile& file, report::Findings& findings)
      : file_(file), findings_(findings), context_{file.report.unusable, {}}, fields_(*file.root, {}, context_) {}

  PublishedTable read(const std::string& stem) {
    table_.file = file_.file;
    table_.name = fields_.text("name");
    table_.title = fields_.text("title");
    table_.key = fields_.text("key");
    table_.source = source_reference(fields_.text("source"));
    table_.publication = fields_.text("publication");
    table_.edition = fields_.text("edition");
    table_.trust = model::trust_from_name(fields_.text("trust")).value_or(model::Trust::memory);
    table_.date_read = fields_.text("date-read");
    table_.transcription = fields_.text("transcription");
    table_.note = fields_.text("note");
    for (const Fields& column : fields_.parts("columns")) {
      table_.columns.push_back({column.text("name"), column.text("title"), column.text("quantity")});
      const std::string& quantity = table_.columns.back().quantity;
      if (quantity.empty() || base::dimension_named(quantity)) continue;
      findings_.add(Rule::table_cell, column.span("quantity"), in_marks(quantity) + " is no dimension", {});
    }
    if (table_.name != stem) {
      findings_.add(Rule::table_name, fields_.span("name"),
                    "the table is called " + in_marks(table_.name) + " but its file " + in_marks(stem), "give both one name");
    }
    if (const model::Node* rows = file_.root->find("rows")) {
      for (const model::Node& row : rows->items) add(row);
    }
    return std::move(table_);
  }

 private:
  static std::string source_reference(const std::string& id) {
    if (id.empty() || model::RecordRef(id).kind()) return id;
    return model::RecordRef(model::Kind::source, id);
  }

  const PublishedTable::Column* column(std::string_view name) const {
    for (const PublishedTable::Column& one : table_.columns) {
      if (one.name == name) return &one;
    }
    return nullptr;
  }

  void add(const model::Node& node) {
    PublishedTable::Row row;
    row.trust = table_.trust;
    row.source = table_.source;
    row.span = node.span;
    for (const model::Member& member : node.members) cell(member, row);
    for (const PublishedTable::Column& one : table_.columns) {
      if (row.cells.find(one.name) != row.cells.end()) continue;
      findings_.add(Rule::table_cell, node.span, "the cell " + in_marks(one.name) + " is missing", "write it, or \"not stated\"");
    }
    auto key = row.cells.find(table_.key);
    if (key == row.cells.end()) return;
    row.key = key->second;
    for (const PublishedTable::Row& other : table_.rows) {
      if (other.key != row.key) continue;
      findings_.add(Rule::table_key, node.span, "the row " + in_marks(row.key) + " stands here again", "keep one of the two")
          .notes.push_back({other.span, "first used here"});
      return;
    }
    table_.rows.push_back(std::move(row));
  }

  void cell(const model::Member& member, PublishedTable::Row& row) {
    const std::string& text = member.value.text;
    if (member.key == "trust") {
      row.trust = model::trust_from_name(text).value_or(row.trust);
    } else if (member.key == "source") {
      row.source = source_reference(text);
    } else if (member.key == "note") {
      row.note = text;
    } else if (const PublishedTable::Column* known = column(member.key)) {
      if (std::optional<QuantityFinding> fault = fault_of(member.value, *known)) {
        findings_.add(fault->rule, fault->where, std::move(fault->message), std::move(fault->hint));
      }
      row.cells.emplace(member.key, text);
      row.spans.emplace(member.key, member.value.span);
    } else {
      std::vector<std::string> names;
      for (const PublishedTable::Column& one : table_.columns) names.push_back(one.name);
      findings_.add(Rule::table_cell, member.key_span, "the table has no column " + in_marks(member.key),
                    "known columns: " + one_of(names));
    }
  }

  const SchemaFile& file_;
  report::Findings& findings_;
  DecodeContext context_;
  Fields fields_;
  PublishedTable table_;
};

/// The name of a file tables/NAME.yaml, or nothing.
std::optional<std::string> table_stem(const std::string& path) {
  const std::string_view folder = "tables/", ending = ".yaml";
  const bool fits = path.size() > folder.size() + ending.size() && path.compare(0, folder.size(), folder) == 0 &&
                    path.compare(path.size() - ending.size(), ending.size(), ending) == 0;
  if (!fits) return std::nullopt;
  return path.substr(folder.size(), path.size() - folder.size() - ending.size());
}

void tell(const model::TableFault& fault, const model::Tables& tables, report::Findings& findings) {
  const PublishedTable* table = tables.find(fault.table);
  if (table == nullptr) {
    findings.add(Rule::table_missing, {}, "the table " + in_marks(fault.table) + " is missing",
                 "give the schema folder with --schema");
    return;
  }
  const PublishedTable::Row& row = table->rows.at(static_cast<std::size_t>(fault.row));
  auto cell = row.spans.find(fault.column);
  if (cell == row.spans.end()) return;  // a missing cell has been told, and so has one that is no quantity at all
  for (const PublishedTable::Column& column : table->columns) {
    model::Node text;
    text.text = row.cells.at(fault.column);
    if (column.name == fault.column && fault_of(text, column)) return;
  }
  findings.add(Rule::table_cell, cell->second, fault.message + ": " + in_marks(row.cells.at(fault.column)), {});
}

FontEntry font_entry(const Fields& fields) {
  return {fields.text("role"),    fields.text("file"),   fields.text("path"), fields.text("package"),
          fields.text("version"), fields.text("sha256"), fields.span("file")};
}

}  // namespace

model::Tables read_tables(const FileSource& schema, const Shapes& shapes, base::FileTable& files, report::Findings& findings) {
  std::vector<PublishedTable> published;
  for (const FileEntry& entry : schema.list().value_or(std::vector<FileEntry>())) {
    std::optional<std::string> stem = table_stem(entry.path);
    if (!stem) continue;
    SchemaFile file = read_schema_file(schema, entry.path, "table", shapes, files, findings);
    if (file.root) published.push_back(TableReader(file, findings).read(*stem));
  }
  std::vector<model::TableFault> faults;
  model::Tables tables = model::make_tables(std::move(published), faults);
  for (const model::TableFault& fault : faults) tell(fault, tables, findings);
  return tables;
}

FontList read_fonts(const FileSource& schema, const Shapes& shapes, base::FileTable& files, report::Findings& findings) {
  FontList list;
  SchemaFile file = read_schema_file(schema, "fonts.yaml", "fonts", shapes, files, findings);
  if (!file.root) return list;
  const DecodeContext context{file.report.unusable, {}};
  const Fields fields(*file.root, {}, context);
  for (const Fields& font : fields.parts("fonts")) list.fonts.push_back(font_entry(font));
  if (std::optional<Fields> hyphenation = fields.part("hyphenation")) list.hyphenation = font_entry(*hyphenation);
  if (std::optional<Fields> profile = fields.part("profile")) list.profile = font_entry(*profile);
  return list;
}

}  // namespace benchleaf::read
