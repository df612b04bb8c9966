// Rules about hazard classes of substances: class and statement belong together, the entry of annex VI is followed, limits meet,
// and a flammable liquid has the category of its flash point.

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/id.h"
#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/flammable.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Substance;
using report::Rule;
using Row = model::PublishedTable::Row;

constexpr std::string_view kSupplementary = "supplementary";

std::string class_path(std::size_t i, const char* field) { return "classes." + std::to_string(i) + "." + field; }

std::optional<double> percent(const Substance& substance, std::size_t i, const char* field,
                              const std::optional<base::Quantity>& quantity) {
  return stated_value(substance, class_path(i, field), quantity, Unit::percent_by_mass);
}

std::string limit_text(const std::optional<double>& limit) { return limit ? shown(*limit, Unit::percent_by_mass) : "no limit"; }

/// Codes as they stand in prose: H225, EUH066, P305.
std::vector<std::string> codes_in(std::string_view text) {
  std::vector<std::string> codes;
  if (text.find_first_of("HP") == std::string_view::npos) return codes;
  std::string word;
  const auto flush = [&] {
    const std::size_t letters = word.substr(0, 3) == "EUH" ? 3 : 1;
    const bool begins = letters == 3 || (!word.empty() && (word[0] == 'H' || word[0] == 'P'));
    const bool digits = word.size() >= letters + 3 && word.find_first_not_of("0123456789", letters) >= letters + 3 &&
                        (word[letters] >= '1' && word[letters] <= '5') && word.size() <= letters + 5;
    const std::size_t tail = word.find_first_not_of("0123456789", letters);
    const bool three = tail == std::string::npos ? word.size() == letters + 3 : tail == letters + 3;
    if (begins && digits && three && !(word[0] == 'P' && word.size() > 4)) codes.push_back(word);
    word.clear();
  };
  for (const char c : std::string(text) + " ") {
    const bool letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (letter) word += c;
    if (!letter) flush();
  }
  return codes;
}

/// Grades of the scale P look like P codes; a record that names an abrasive grade is not about statements.
bool is_grade(const Proof& proof, const std::string& code) {
  const auto& rows = standards::rows_of(proof.tables, "abrasive-grades");
  return std::any_of(rows.begin(), rows.end(), [&](const Row& row) { return standards::cell_text(row, "grade") == code; });
}

bool is_sign(const Proof& proof, const std::string& code) { return proof.tables.safety_sign(code) != nullptr; }

const char* table_for(const std::string& code) { return code[0] == 'P' ? "precautionary-statements" : "hazard-statements"; }

void unknown_code(const Proof& proof, const model::Record& record, const std::string& path, const std::string& code) {
  std::vector<std::string> known;
  for (const auto& row : standards::rows_of(proof.tables, table_for(code))) known.push_back(row.key);
  proof.findings.add(Rule::statement_unknown, record.span_of(path), "there is no statement " + code + " in the table of its kind",
                     did_you_mean(base::nearest_word(code, known)));
}

/// One row of annex VI that a record ought to state.
struct Harmonised {
  const Row* row;
  std::optional<double> from, below;
};

std::vector<Harmonised> harmonised(const Proof& proof, const std::string& index) {
  std::vector<Harmonised> rows;
  for (const auto& row : standards::rows_of(proof.tables, "annex-vi-classes")) {
    if (standards::cell_text(row, "index") != index) continue;
    rows.push_back({&row, standards::cell_value(row, "from", Unit::percent_by_mass),
                    standards::cell_value(row, "below", Unit::percent_by_mass)});
  }
  return rows;
}

bool same_class(const Substance::HazardClass& stated, const Row& row) {
  return stated.name == standards::cell_text(row, "class") && stated.statement == standards::cell_text(row, "statement");
}

void check_limits(const Proof& proof, const Substance& substance, std::size_t i, const Harmonised& entry) {
  const auto& stated = substance.classes[i];
  const auto from = percent(substance, i, "from", stated.from), below = percent(substance, i, "below", stated.below);
  const bool from_differs = substance.usable(class_path(i, "from")) && from != entry.from;
  const bool below_differs = substance.usable(class_path(i, "below")) && below != entry.below;
  if (!from_differs && !below_differs) return;
  const char* field = from_differs ? "from" : "below";
  const std::string found = limit_text(from_differs ? from : below),
                    expected = limit_text(from_differs ? entry.from : entry.below);
  proof.findings
      .add(Rule::substance_limits, substance.span_of(class_path(i, field)),
           "found " + found + " as " + field + " of " + stated.name + ", but annex VI has " + expected,
           "correct it, or state the disagreement under conflicts:")
      .notes.push_back({entry.row->span, "table annex-vi-classes"});
}

void check_against_entry(const Proof& proof, const Substance& substance) {
  const auto entries = harmonised(proof, substance.index_number);
  if (entries.empty() || has_conflict(substance, "classes")) return;
  std::vector<bool> met(entries.size(), false);
  for (std::size_t i = 0; i < substance.classes.size(); ++i) {
    const auto& stated = substance.classes[i];
    const auto found =
        std::find_if(entries.begin(), entries.end(), [&](const Harmonised& one) { return same_class(stated, *one.row); });
    if (found != entries.end()) {
      met[static_cast<std::size_t>(found - entries.begin())] = true;
      check_limits(proof, substance, i, *found);
    } else if (stated.name != kSupplementary) {
      proof.findings.add(
          Rule::substance_limits, substance.span_of(class_path(i, "class")),
          "found " + stated.name + " " + stated.statement + ", which the entry " + substance.index_number + " does not have",
          "take it out, or state it under conflicts: with its source");
    }
  }
  for (std::size_t i = 0; i < entries.size(); ++i) {
    if (met[i]) continue;
    const std::string name = standards::cell_text(*entries[i].row, "class");
    proof.findings
        .add(Rule::substance_limits, substance.span_of("classes"),
             "the entry " + substance.index_number + " has " + name + " " + standards::cell_text(*entries[i].row, "statement") +
                 ", which is missing here",
             "add it")
        .notes.push_back({entries[i].row->span, "table annex-vi-classes"});
  }
}

/// Limits of one hazard in the order of their beginnings: where one step ends the next begins.
void check_steps_of(const Proof& proof, const Substance& substance) {
  std::map<std::string, std::vector<std::pair<double, std::size_t>>> steps;
  for (std::size_t i = 0; i < substance.classes.size(); ++i) {
    const auto& one = substance.classes[i];
    const auto from = percent(substance, i, "from", one.from);
    const std::string hazard = one.name.substr(0, one.name.find(' '));
    if (from && hazard != kSupplementary && hazard != "STOT" && hazard != "Acute") steps[hazard].emplace_back(*from, i);
  }
  for (auto& [hazard, list] : steps) {
    std::sort(list.begin(), list.end());
    for (std::size_t k = 0; k + 1 < list.size(); ++k) {
      const std::size_t lower = list[k].second, upper = list[k + 1].second;
      const auto below = percent(substance, lower, "below", substance.classes[lower].below);
      if (!substance.usable(class_path(lower, "below")) || below == list[k + 1].first) continue;
      proof.findings
          .add(Rule::substance_steps, substance.span_of(class_path(lower, "below")),
               "found " + limit_text(below) + " as the end of " + substance.classes[lower].name + ", but " +
                   substance.classes[upper].name + " begins at " + limit_text(list[k + 1].first),
               "let the one end where the other begins")
          .notes.push_back({substance.span_of(class_path(upper, "from")), "where the next step begins"});
    }
  }
}

/// The statement that a flash point calls for, `none` above the last category, or nothing where it lies on both sides.
std::optional<std::string> flammable_statement(const Proof& proof, const base::Interval& flash,
                                               const std::optional<double>& boiling) {
  std::optional<std::string> found;
  for (const double end : {base::tidy(flash.low), base::tidy(flash.high)}) {
    const auto* category = standards::flammable_category(proof.tables, end, boiling);
    const std::string statement = category == nullptr ? "none" : standards::cell_text(*category, "statement");
    if (found && *found != statement) return std::nullopt;
    found = statement;
  }
  return found;
}

}  // namespace

void check_class_statements(const Proof& proof) {
  const auto& rows = standards::rows_of(proof.tables, "hazard-classes");
  for (const auto& [id, substance] : proof.base.substances) {
    for (std::size_t i = 0; i < substance.classes.size(); ++i) {
      const auto& one = substance.classes[i];
      if (!substance.usable(class_path(i, "class")) || !substance.usable(class_path(i, "statement")) || one.name.empty())
        continue;
      const bool listed = std::any_of(rows.begin(), rows.end(), [&](const Row& row) { return same_class(one, row); });
      const bool supplementary = one.name == kSupplementary && one.statement.substr(0, 3) == "EUH";
      if (listed || supplementary) continue;
      proof.findings
          .add(Rule::substance_class, substance.span_of(class_path(i, "statement")),
               "found " + one.statement + " under " + one.name + ", which does not have that statement",
               "correct the class or the statement")
          .notes.push_back({substance.span_of(class_path(i, "class")), "the class"});
    }
  }
}

void check_statements_are_known(const Proof& proof) {
  for (const model::Record* record : proof.base.all()) {
    visit_scalars(*record, [&](const std::string& path, const model::Node& node) {
      for (const auto& code : codes_in(node.text)) {
        const bool known = standards::row_of(proof.tables, table_for(code), code) != nullptr;
        if (!known && !is_grade(proof, code) && !is_sign(proof, code)) unknown_code(proof, *record, path, code);
      }
    });
  }
}

void check_harmonised_classes(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) {
    if (substance.index_number.empty() || !substance.usable("index-number") || !substance.usable("classes")) continue;
    check_against_entry(proof, substance);
  }
}

void check_limit_steps(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) check_steps_of(proof, substance);
}

void check_flammable_categories(const Proof& proof) {
  for (const auto& [id, substance] : proof.base.substances) {
    const auto& point = substance.flash_point;
    if (!point || !substance.usable("flash-point") || !substance.usable("classes") || !substance.usable("boiling-point"))
      continue;
    const auto flash = point->has_value() ? point->in(Unit::degree_celsius) : std::nullopt;
    const bool no_flash = point->form == base::QuantityForm::none;
    if (!flash && !no_flash) continue;
    // Of a range of boiling the lower end counts, unless the range is that of many cuts.
    const auto boiling = substance.boiling_point ? substance.boiling_point->value_in(Unit::degree_celsius) : std::nullopt;
    const auto expected = no_flash ? std::optional<std::string>("none") : flammable_statement(proof, *flash, boiling);
    std::string found = "none", place = "flash-point";
    for (std::size_t i = 0; i < substance.classes.size(); ++i) {
      if (substance.classes[i].name.substr(0, 10) != "Flam. Liq.") continue;
      found = substance.classes[i].statement;
      place = class_path(i, "statement");
    }
    if (!expected || *expected == found || has_conflict(substance, "classes")) continue;
    proof.findings
        .add(Rule::flammable_category, substance.span_of(place),
             "found " + found + " for the flash point " + shown(point) + ", expected " + *expected,
             "correct the class, the flash point or the boiling point")
        .notes.push_back({substance.span_of("flash-point"), "the flash point"});
  }
}

}  // namespace benchleaf::prove
