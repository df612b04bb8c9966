// In: published tables in their general form. Out: the typed lists that calculators look into, and look-ups by key.
#include "model/tables.h"

#include <algorithm>
#include <utility>

namespace benchleaf::model {

namespace {

/// Reads the cells of one row; the first cell that does not fit is the row's fault.
class RowReader {
 public:
  RowReader(const PublishedTable& table, std::size_t row, std::vector<TableFault>& faults)
      : table_(table), row_(row), faults_(faults) {}

  std::string word(std::string_view column) {
    const auto& cells = table_.rows.at(row_).cells;
    auto found = cells.find(column);
    if (found == cells.end()) fail(column, "the cell is missing");
    return found == cells.end() ? std::string() : found->second;
  }

  /// A measured value; a cell that says `not stated` or the like is a fault here.
  base::Quantity quantity(std::string_view column) {
    std::optional<base::Quantity> value = optional_quantity(column);
    if (!value) fail(column, "the cell states no quantity");
    return value.value_or(base::Quantity{});
  }

  std::optional<base::Quantity> optional_quantity(std::string_view column) {
    auto parsed = base::parse_quantity(word(column));
    const auto* value = std::get_if<base::Quantity>(&parsed);
    if (value == nullptr) fail(column, "the cell is no quantity");
    if (value == nullptr || !value->has_value()) return std::nullopt;
    return *value;
  }

  int whole_number(std::string_view column) {
    const std::string text = word(column);
    const bool digits = !text.empty() && text.size() < 7 && text.find_first_not_of("0123456789") == std::string::npos;
    if (digits) return std::stoi(text);
    fail(column, "the cell is no whole number");
    return 0;
  }

  RowOrigin origin() const {
    const PublishedTable::Row& row = table_.rows.at(row_);
    std::string source = table_.publication;
    if (!table_.edition.empty()) source += ", " + table_.edition;
    return {"table/" + table_.name + "#" + row.key, row.trust, std::move(source)};
  }

  /// The source record of the row, else of the table.
  std::string cite() const { return table_.rows.at(row_).source; }

  bool whole() const { return whole_; }

 private:
  void fail(std::string_view column, std::string message) {
    if (whole_) faults_.push_back({table_.name, static_cast<int>(row_), std::string(column), std::move(message)});
    whole_ = false;
  }

  const PublishedTable& table_;
  std::size_t row_;
  std::vector<TableFault>& faults_;
  bool whole_ = true;
};

CellSystem cell_system_of(RowReader& row) {
  return {row.word("letter"),
          row.word("system"),
          row.word("name"),
          row.quantity("nominal"),
          row.optional_quantity("end"),
          row.quantity("lowest"),
          row.quantity("highest"),
          row.word("status") == "withdrawn",
          row.origin()};
}

CellDiameter cell_diameter_of(RowReader& row) {
  return {row.whole_number("code"), row.quantity("diameter"), row.quantity("tolerance"), row.origin()};
}

CellShortForm cell_short_form_of(RowReader& row) {
  return {row.word("short"), row.word("long"), row.whole_number("code"), row.whole_number("tenths"), row.origin()};
}

CellSuffix cell_suffix_of(RowReader& row) {
  return {row.word("letter"), row.word("meaning"), row.word("electrolyte"), row.origin()};
}

CellDrain cell_drain_of(RowReader& row) { return {row.word("suffix"), row.word("drain"), row.origin()}; }

CellSizeLimit cell_size_limit_of(RowReader& row) {
  return {row.word("size"),           row.quantity("diameter-max"), row.quantity("diameter-min"),
          row.quantity("height-max"), row.quantity("height-min"),   row.origin()};
}

SafetySign safety_sign_of(RowReader& row) { return {row.word("number"), row.word("title"), row.word("family"), row.origin()}; }

SignalWord signal_word_of(RowReader& row) {
  return {row.word("word"), row.word("severity"), row.word("likelihood"), row.word("meaning"), row.word("colour"), row.origin()};
}

ReactiveGroup reactive_group_of(RowReader& row) {
  ReactiveGroup group{row.word("group"), {}, row.origin()};
  const std::string members = row.word("members");
  for (std::size_t at = 0; at < members.size();) {
    const std::size_t end = std::min(members.find(' ', at), members.size());
    if (end > at) group.members.push_back(members.substr(at, end - at));
    at = end + 1;
  }
  return group;
}

ReactivePair reactive_pair_of(RowReader& row) {
  return {row.word("one"),  row.word("other"),  row.word("product"), row.word("effect"),
          row.word("open"), row.word("closed"), row.cite(),          row.origin()};
}

HazardCaution hazard_caution_of(RowReader& row) {
  return {row.word("hazard"), row.word("caution"), row.word("why"), row.word("before-the-step") == "full", row.origin()};
}

StepWord step_word_of(RowReader& row) { return {row.word("verb"), row.word("object"), row.word("means"), row.origin()}; }

MercuryFree mercury_free_of(RowReader& row) { return {row.word("system"), row.whole_number("year"), row.origin()}; }

template <typename Typed>
void fill(const Tables& tables, std::string_view name, Typed (*typed)(RowReader&), std::vector<Typed>& list,
          std::vector<TableFault>& faults) {
  const PublishedTable* table = tables.find(name);
  if (table == nullptr) {
    faults.push_back({std::string(name), -1, {}, "the table is missing"});
    return;
  }
  for (std::size_t i = 0; i < table->rows.size(); ++i) {
    RowReader row(*table, i, faults);
    Typed one = typed(row);
    if (row.whole()) list.push_back(std::move(one));
  }
}

template <typename Row, typename Key, typename Wanted>
const Row* row_with(const std::vector<Row>& rows, Key Row::*key, const Wanted& wanted) {
  auto found = std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.*key == wanted; });
  return found == rows.end() ? nullptr : &*found;
}

}  // namespace

const PublishedTable* Tables::find(std::string_view name) const { return row_with(published, &PublishedTable::name, name); }
const CellSystem* Tables::cell_system(std::string_view letter) const {
  return row_with(cell_systems, &CellSystem::letter, letter);
}
const CellSystem* Tables::cell_system_by_id(std::string_view system) const {
  return row_with(cell_systems, &CellSystem::system, system);
}
const CellDiameter* Tables::cell_diameter(int code) const { return row_with(cell_diameters, &CellDiameter::code, code); }
const CellShortForm* Tables::cell_short_form(std::string_view short_size) const {
  return row_with(cell_short_forms, &CellShortForm::short_size, short_size);
}
const CellSuffix* Tables::cell_suffix(std::string_view letter) const {
  return row_with(cell_suffixes, &CellSuffix::letter, letter);
}
const CellDrain* Tables::cell_drain(std::string_view suffix) const { return row_with(cell_drains, &CellDrain::suffix, suffix); }
const CellSizeLimit* Tables::cell_size_limit(std::string_view size) const {
  return row_with(cell_size_limits, &CellSizeLimit::size, size);
}
const SafetySign* Tables::safety_sign(std::string_view number) const {
  return row_with(safety_signs, &SafetySign::number, number);
}
const HazardCaution* Tables::hazard_caution(std::string_view hazard) const {
  return row_with(hazard_cautions, &HazardCaution::hazard, hazard);
}
const MercuryFree* Tables::mercury_free_from(std::string_view system) const {
  return row_with(mercury_free, &MercuryFree::system, system);
}
const SignalWord* Tables::signal_word(std::string_view word) const { return row_with(signal_words, &SignalWord::word, word); }

Tables make_tables(std::vector<PublishedTable> published, std::vector<TableFault>& faults) {
  Tables tables;
  tables.published = std::move(published);
  std::sort(tables.published.begin(), tables.published.end(),
            [](const PublishedTable& one, const PublishedTable& other) { return one.name < other.name; });
  fill(tables, "cell-systems", cell_system_of, tables.cell_systems, faults);
  fill(tables, "cell-diameter-codes", cell_diameter_of, tables.cell_diameters, faults);
  fill(tables, "cell-short-forms", cell_short_form_of, tables.cell_short_forms, faults);
  fill(tables, "cell-suffixes", cell_suffix_of, tables.cell_suffixes, faults);
  fill(tables, "cell-drains", cell_drain_of, tables.cell_drains, faults);
  fill(tables, "cell-size-limits", cell_size_limit_of, tables.cell_size_limits, faults);
  fill(tables, "safety-signs", safety_sign_of, tables.safety_signs, faults);
  fill(tables, "signal-words", signal_word_of, tables.signal_words, faults);
  fill(tables, "reactive-groups", reactive_group_of, tables.reactive_groups, faults);
  fill(tables, "reactive-pairs", reactive_pair_of, tables.reactive_pairs, faults);
  fill(tables, "hazard-cautions", hazard_caution_of, tables.hazard_cautions, faults);
  fill(tables, "step-words", step_word_of, tables.step_words, faults);
  fill(tables, "mercury-free", mercury_free_of, tables.mercury_free, faults);
  return tables;
}

}  // namespace benchleaf::model
