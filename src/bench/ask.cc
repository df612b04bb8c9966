// In: inputs as typed, facts of records, tables. Out: figures in the units that a calculator works in, or the one fault that
// ends the run.

#include "bench/ask.h"

#include <algorithm>
#include <utility>
#include <variant>

#include "base/ascii.h"
#include "base/id.h"
#include "base/number.h"
#include "bench/typed.h"
#include "model/record_ref.h"
#include "model/tables.h"
#include "standards/cell_code.h"
#include "standards/cell_limits.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

std::string bound(double value, Unit unit) { return base::to_terminal(base::printed(base::shortest_text(value), unit)); }

Amount amount_of(const base::Quantity& quantity, const base::Interval& in_unit) {
  Amount amount;
  amount.nominal = in_unit.nominal;
  amount.low = in_unit.low;
  amount.high = in_unit.high;
  amount.has_ends = quantity.has_ends();
  amount.printed = base::printed(quantity);
  return amount;
}

/// Of a cell that is not on file, what its name says of its size; empty where it is no designation.
std::string size_by_name(const std::string& text, const model::Tables& tables) {
  const auto parsed = standards::parse_designation(text);
  const auto* designation = std::get_if<standards::Designation>(&parsed);
  if (designation == nullptr) return {};
  const auto read = standards::read_cell_code(*designation, tables);
  const auto* code = std::get_if<standards::CellCode>(&read);
  if (code == nullptr) return {};
  const double height = standards::height_range(code->tenths).low;
  return "its name says " + base::to_terminal(base::printed(code->diameter->diameter)) + " by " +
         bound(height, Unit::millimetre) + ": ask cell-swap by these measures";
}

}  // namespace

std::string Ask::text(std::string_view input) const {
  const auto found = inputs_.find(input);
  return found == inputs_.end() ? std::string() : found->second.text;
}

void Ask::fail(std::string_view input, std::string reason, std::string hint) {
  if (refusal_) return;
  refusal_ = Refusal{std::string(input), std::move(reason), std::move(hint)};
}

Result Ask::refused() const { return bench::refused(std::string(calculator_.name), refusal_.value_or(Refusal{})); }

Amount Ask::amount(std::string_view input, Unit unit, Plausible plausible) {
  const auto found = inputs_.find(input);
  if (found == inputs_.end()) {
    fail(input, "is missing");
    if (refusal_) refusal_->show_example = true;
    return exactly(plausible.least);
  }
  return read(input, found->second, unit, plausible);
}

Amount Ask::signed_amount(std::string_view input, Unit unit, Plausible plausible) {
  constexpr std::string_view kMinus = "\xE2\x88\x92";
  const auto found = inputs_.find(input);
  if (found == inputs_.end()) return amount(input, unit, plausible);
  Given given = found->second;
  const bool hyphen = given.text.rfind('-', 0) == 0;
  if (!hyphen && given.text.rfind(kMinus, 0) != 0) return read(input, given, unit, plausible);
  given.text.erase(0, hyphen ? 1 : kMinus.size());
  const Amount turned = read(input, given, unit, {-plausible.most, -plausible.least});
  return exactly(0) - turned;
}

Amount Ask::read(std::string_view input, const Given& given, Unit unit, Plausible plausible) {
  const Typed typed = read_typed(given.text, unit, context_.tables);
  if (const auto* error = std::get_if<base::QuantityError>(&typed.read)) {
    fail(input, error->message, error->hint);
    if (refusal_) refusal_->show_example = true;
    return exactly(plausible.least);
  }
  const auto& quantity = std::get<base::Quantity>(typed.read);
  const auto in_unit = quantity.in(unit);
  if (!in_unit) {
    fail(input, "no figure was given");
    return exactly(plausible.least);
  }
  if (!(in_unit->low >= plausible.least) || !(in_unit->high <= plausible.most)) {
    fail(input, base::to_terminal(base::printed(quantity)) + " lies outside " + bound(plausible.least, unit) + " to " +
                    bound(plausible.most, unit));
    return exactly(plausible.least);
  }
  if (!typed.note.empty()) notes_.push_back(std::string(input) + ": " + typed.note);
  Amount amount = amount_of(quantity, *in_unit);
  amount.trust = model::weaker(given.trust, typed.trust);
  for (const auto& fact : {given.fact, typed.fact}) {
    if (!fact.empty()) amount.facts.push_back(fact);
  }
  return amount;
}

base::Interval Ask::reading(std::string_view input) const {
  const Typed typed = read_typed(text(input), Unit::millimetre, context_.tables);
  const auto* quantity = std::get_if<base::Quantity>(&typed.read);
  return quantity == nullptr ? base::Interval{} : standards::reading_of(*quantity);
}

std::string Ask::choice(std::string_view input, const std::vector<std::string>& words, const std::string& otherwise) {
  if (!has(input)) return otherwise;
  const std::string given = base::lower_ascii(text(input));
  if (std::find(words.begin(), words.end(), given) != words.end()) return given;
  fail(input, "is one of " + base::or_list(words));
  return otherwise;
}

std::string Ask::word(const std::string& record, const std::string& path) const {
  const model::Fact* fact = context_.facts.find(record + "#" + path);
  return fact == nullptr ? std::string() : fact->printed;
}

std::string Ask::title(const std::string& record) const {
  const std::string title = word(record, "title");
  return title.empty() ? record : title;
}

std::vector<std::string> Ask::records(std::string_view kind) const { return records_of(context_.facts, kind); }

std::string Ask::record(std::string_view input, const std::vector<std::string>& kinds) {
  const FactNames by_facts(context_.facts);
  const Names& names = context_.names == nullptr ? by_facts : *context_.names;
  const Resolution found = names.resolve(text(input), kinds);
  if (found.state == Resolution::State::found) return found.record;
  if (found.state == Resolution::State::ambiguous) {
    fail(input, "can be " + base::or_list(found.readings), "name the one that is meant");
    return {};
  }
  std::string hint = (found.hints.size() == 1 ? "did you mean " : "known: ") + base::or_list(found.hints);
  if (found.hints.size() == 1) hint += "?";
  if (found.hints.empty()) hint.clear();
  const bool of_cells = std::find(kinds.begin(), kinds.end(), "cell") != kinds.end();
  const std::string size = of_cells ? size_by_name(text(input), context_.tables) : std::string();
  if (!size.empty()) hint = size;
  if (context_.facts.all().empty()) hint = "give the folder of the content";
  fail(input, "no " + base::or_list(kinds) + " of this name is on file", hint);
  return {};
}

std::optional<Amount> Ask::of_fact(const std::string& id, Unit unit) const {
  const model::Fact* fact = context_.facts.find(id);
  if (fact == nullptr || (!fact->value && !fact->low)) return std::nullopt;
  const auto written = base::unit_named(fact->unit);
  const Unit from = fact->unit.empty() ? Unit::one : written.value_or(Unit::one);
  if (!base::convertible(from, unit)) return std::nullopt;
  const auto convert = [from, unit](double value) {
    return from == unit ? value : base::tidy(base::from_si(base::to_si(value, from), unit));
  };
  Amount amount;
  amount.has_ends = fact->low && fact->high;
  const double low = fact->low.value_or(fact->value.value_or(0));
  const double high = fact->high.value_or(low);
  amount.low = convert(low);
  amount.high = convert(high);
  amount.nominal = fact->value ? convert(*fact->value) : base::tidy((amount.low + amount.high) / 2);
  amount.trust = fact->trust;
  amount.facts.push_back(id);
  amount.printed = fact->printed;
  return amount;
}

std::optional<Amount> Ask::stated(const std::string& record, const std::string& path, Unit unit) const {
  return of_fact(record + "#" + path, unit);
}

Amount Ask::needed(std::string_view input, const std::string& record, const std::string& path, Unit unit) {
  if (auto amount = stated(record, path, unit)) return *amount;
  if (!failed()) fail(input, record + " does not state its " + path);
  return exactly(1);
}

const model::PublishedTable* Ask::table(const std::string& name) const { return context_.tables.find(name); }

std::vector<std::string> Ask::row_keys(const std::string& table_name) const {
  std::vector<std::string> keys;
  const model::PublishedTable* found = table(table_name);
  if (found == nullptr) return keys;
  for (const auto& row : found->rows) keys.push_back(row.key);
  return keys;
}

std::string Ask::row_word(const std::string& table_name, const std::string& key, const std::string& column) const {
  const model::PublishedTable* found = table(table_name);
  if (found == nullptr) return {};
  for (const auto& row : found->rows) {
    const auto cell = row.cells.find(column);
    if (row.key == key && cell != row.cells.end()) return cell->second;
  }
  return {};
}

Caution Ask::caution(const std::string& key) {
  constexpr const char* kTable = "calculator-cautions";
  const std::string id = row_word(kTable, key, "caution");
  if (id.empty()) fail("", "the table calculator-cautions does not say caution of " + key);
  return {model::RecordRef(model::Kind::caution, id).text(), row_word(kTable, key, "words"),
          row_word(kTable, key, "hurts") == "yes"};
}

std::optional<Amount> Ask::row_if_any(const std::string& table_name, const std::string& key, const std::string& column,
                                      Unit unit) const {
  const model::PublishedTable* found = table(table_name);
  if (found == nullptr) return std::nullopt;
  for (const auto& row : found->rows) {
    if (row.key != key) continue;
    const auto cell = row.cells.find(column);
    if (cell == row.cells.end()) return std::nullopt;
    const auto parsed = base::parse_quantity(cell->second);
    const auto* quantity = std::get_if<base::Quantity>(&parsed);
    if (quantity == nullptr) return std::nullopt;
    const auto in_unit = quantity->in(unit);
    if (!in_unit) return std::nullopt;
    Amount amount = amount_of(*quantity, *in_unit);
    amount.trust = row.trust;
    amount.facts.push_back("table/" + table_name + "#" + key + "." + column);
    return amount;
  }
  return std::nullopt;
}

Amount Ask::row(const std::string& table_name, const std::string& key, const std::string& column, Unit unit) {
  if (auto amount = row_if_any(table_name, key, column, unit)) return *amount;
  fail("", "the table " + table_name + " does not say " + column + " of " + key);
  return exactly(1);
}

}  // namespace benchleaf::bench
