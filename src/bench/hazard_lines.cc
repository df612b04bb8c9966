// In: the name of a substance. Out: its hazard classes with their limits, from the facts of its record or from annex VI.

#include "bench/hazard_lines.h"

#include <utility>

#include "base/number.h"
#include "model/record_ref.h"
#include "standards/table_view.h"

namespace benchleaf::bench {
namespace {

using model::Fact;
using Row = model::PublishedTable::Row;

constexpr std::string_view kEntries = "annex-vi-entries";
constexpr std::string_view kClasses = "annex-vi-classes";

const Row* entry_of(std::string_view name, const model::Tables& tables) {
  for (const auto& row : standards::rows_of(tables, kEntries)) {
    if (row.key == name || standards::cell_text(row, "substance") == name || standards::cell_text(row, "cas") == name)
      return &row;
  }
  return nullptr;
}

void use(const std::string& id, model::Trust trust, KnownHazards& known) {
  known.inputs.push_back(id);
  known.trust = model::weaker(known.trust, trust);
}

std::optional<double> percent_fact(const std::string& id, const Context& context, KnownHazards& known) {
  const Fact* fact = context.facts.find(id);
  if (fact == nullptr || !fact->value) return std::nullopt;
  use(id, fact->trust, known);
  return base::tidy(*fact->value);
}

void read_factors(const Row& entry, KnownHazards& known) {
  known.m_acute = base::parse_decimal(standards::cell_text(entry, "m-acute")).value_or(1);
  known.m_chronic = base::parse_decimal(standards::cell_text(entry, "m-chronic")).value_or(1);
}

/// What the record states: `substance/ID#classes.0.class` and so on.
KnownHazards from_facts(const std::string& record, const Context& context) {
  KnownHazards known;
  for (int i = 0;; ++i) {
    const std::string item = record + "#classes." + std::to_string(i) + ".";
    const Fact* hazard_class = context.facts.find(item + "class");
    const Fact* statement = context.facts.find(item + "statement");
    if (hazard_class == nullptr || statement == nullptr) break;
    use(statement->id, statement->trust, known);
    known.lines.push_back({hazard_class->printed, statement->printed, percent_fact(item + "from", context, known),
                           percent_fact(item + "below", context, known)});
  }
  return known;
}

KnownHazards from_table(const Row& entry, const model::Tables& tables) {
  KnownHazards known;
  read_factors(entry, known);
  for (const auto& row : standards::rows_of(tables, kClasses)) {
    if (standards::cell_text(row, "index") != entry.key) continue;
    use("table/" + std::string(kClasses) + "#" + row.key + ".statement", row.trust, known);
    known.lines.push_back({standards::cell_text(row, "class"), standards::cell_text(row, "statement"),
                           standards::cell_value(row, "from", base::Unit::percent_by_mass),
                           standards::cell_value(row, "below", base::Unit::percent_by_mass)});
  }
  return known;
}

/// Whether any fact speaks of this substance.
bool has_facts(const std::string& record, const Context& context) { return context.facts.find(record + "#acts-as") != nullptr; }

/// That it has none, where a table says so; else it is not known.
KnownHazards without_lines(const std::string& substance, const Context& context) {
  KnownHazards known;
  const Row* row = standards::row_of(context.tables, "no-classes", substance);
  known.known = row != nullptr;
  known.trust = model::Trust::memory;
  if (row != nullptr) use("table/no-classes#" + substance + ".says", row->trust, known);
  return known;
}

/// Statements that a share calls for and no entry of annex VI holds.
void add_supplementary(const Context& context, KnownHazards& known) {
  for (const auto& row : standards::rows_of(context.tables, "supplementary-limits")) {
    if (standards::cell_text(row, "substance") != known.substance) continue;
    use("table/supplementary-limits#" + row.key + ".from", row.trust, known);
    known.lines.push_back({"supplementary", standards::cell_text(row, "statement"),
                           standards::cell_value(row, "from", base::Unit::percent_by_mass), std::nullopt});
  }
}

/// Whether its record says that it is an acid or a base.
void read_acidity(const std::string& record, const Context& context, KnownHazards& known) {
  const Fact* acts_as = context.facts.find(record + "#acts-as");
  known.acid_or_base = acts_as != nullptr && (acts_as->printed == "acid" || acts_as->printed == "base");
  if (known.acid_or_base) use(acts_as->id, acts_as->trust, known);
}

std::string substance_named(std::string_view name, const Row* entry, const Context& context) {
  if (entry != nullptr) return standards::cell_text(*entry, "substance");
  const std::string text(name);
  if (has_facts("substance/" + text, context) || context.names == nullptr) return text;
  const Resolution found = context.names->resolve(name, {"substance"});
  return found.state == Resolution::State::found ? model::RecordRef(found.record).id() : text;
}

}  // namespace

std::optional<KnownHazards> hazards_of(std::string_view name, const Context& context) {
  const Row* entry = entry_of(name, context.tables);
  const std::string substance = substance_named(name, entry, context);
  if (entry == nullptr) entry = entry_of(substance, context.tables);
  const std::string record = "substance/" + substance;
  const bool recorded = has_facts(record, context);
  if (!recorded && entry == nullptr && standards::row_of(context.tables, "no-classes", substance) == nullptr) return std::nullopt;
  KnownHazards known = recorded ? from_facts(record, context) : KnownHazards{};
  if (known.lines.empty()) known = entry == nullptr ? without_lines(substance, context) : from_table(*entry, context.tables);
  if (entry != nullptr) read_factors(*entry, known);
  known.substance = substance;
  read_acidity(record, context, known);
  add_supplementary(context, known);
  return known;
}

}  // namespace benchleaf::bench
