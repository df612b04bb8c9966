// Rules about grades of abrasives: a grade carries its scale, the scale its medians, and a finer grade a higher number.

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/ascii.h"
#include "base/id.h"
#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Abrasive;
using model::Record;
using report::Rule;

/// How the grades of a scale begin: P800, F800, #800; on the others the bare number is the grade.
std::string_view mark_of(std::string_view scale) {
  if (scale == "P" || scale == "F") return scale;
  return scale == "JIS" ? "#" : "";
}

bool is_bare(std::string_view grade) { return !grade.empty() && grade.find_first_not_of("0123456789") == std::string_view::npos; }

std::string grade_path(std::size_t i, const char* field) { return "grades." + std::to_string(i) + "." + field; }

double number_of(std::string_view grade) {
  const std::size_t digits = grade.find_first_of("0123456789");
  return digits == std::string_view::npos ? 0 : base::parse_decimal(grade.substr(digits)).value_or(0);
}

std::optional<double> median_of(const Abrasive& abrasive, std::size_t i) {
  return stated_value(abrasive, grade_path(i, "median"), abrasive.grades[i].median, Unit::micrometre);
}

const model::PublishedTable::Row* published_grade(const Proof& proof, std::string_view scale, std::string_view grade) {
  for (const auto& row : standards::rows_of(proof.tables, "abrasive-grades")) {
    if (standards::cell_text(row, "scale") == scale && standards::cell_text(row, "grade") == grade) return &row;
  }
  return nullptr;
}

/// A figure of a grade, its column in the table, and what it is called.
struct GradeFigure {
  const char* column;
  const char* words;
  const std::optional<base::Quantity>* value;
};

void check_published(const Proof& proof, const Abrasive& abrasive, std::size_t i, const model::PublishedTable::Row& row,
                     const GradeFigure& figure) {
  const auto found = stated_value(abrasive, grade_path(i, figure.column), *figure.value, Unit::micrometre);
  const auto expected = standards::cell_value(row, figure.column, Unit::micrometre);
  if (!found || !expected || *found == *expected) return;
  proof.findings
      .add(Rule::abrasive_median, abrasive.span_of(grade_path(i, figure.column)),
           "found " + shown(*figure.value) + ", but " + abrasive.grades[i].grade + " has " + figure.words + " of " +
               shown(*expected, Unit::micrometre),
           "correct it, or correct the grade")
      .notes.push_back({row.span, "the row of the table"});
}

/// Every grade that a record or the table has.
std::vector<std::string> known_grades(const Proof& proof) {
  std::set<std::string> grades;
  for (const auto& row : standards::rows_of(proof.tables, "abrasive-grades")) grades.insert(standards::cell_text(row, "grade"));
  for (const auto& [id, abrasive] : proof.base.abrasives) {
    for (const auto& grade : abrasive.grades) grades.insert(grade.grade);
  }
  return {grades.begin(), grades.end()};
}

/// A grade that a step or a drawer names.
struct Named {
  const Record* record;
  std::string path;
  std::string grade;
  const Abrasive* scale;  ///< where the place names the scale as well, else nullptr
};

std::vector<Named> named_grades(const Proof& proof) {
  std::vector<Named> named;
  for (const auto& [id, procedure] : proof.base.procedures) {
    for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
      named.push_back({&procedure, "steps." + std::to_string(i) + ".grade", procedure.steps[i].grade, nullptr});
    }
  }
  for (const auto& [id, stock] : proof.base.stocks) {
    for (std::size_t i = 0; i < stock.items.size(); ++i) {
      const auto* scale = record_of(proof, model::Kind::abrasive, stock.items[i].item);
      named.push_back({&stock, "items." + std::to_string(i) + ".grade", stock.items[i].grade,
                       scale == nullptr ? nullptr : &proof.base.abrasives.at(scale->id)});
    }
  }
  named.erase(std::remove_if(named.begin(), named.end(),
                             [](const Named& one) { return one.grade.empty() || !one.record->usable(one.path); }),
              named.end());
  return named;
}

bool has_grade(const Abrasive& abrasive, const std::string& grade) {
  return std::any_of(abrasive.grades.begin(), abrasive.grades.end(), [&](const auto& one) { return one.grade == grade; });
}

void bare_number(const Proof& proof, const Record& record, const std::string& path, const std::string& number) {
  proof.findings.add(Rule::abrasive_bare_number, record.span_of(path),
                     "found the bare number " + number + ", which is another grain on every scale",
                     "write the scale in front: P" + number + ", F" + number + " or #" + number);
}

/// The number in front of or behind the word grit, in prose: `800 grit`, `grit 800`.
std::optional<std::string> bare_grit_in(std::string_view text) {
  if (base::lower_ascii(text).find("grit") == std::string::npos) return std::nullopt;
  const std::string words = " " + plain_words(text) + " ";
  std::vector<std::string> list;
  for (std::size_t at = 1; at < words.size();) {
    const std::size_t end = words.find(' ', at);
    list.push_back(words.substr(at, end - at));
    at = end + 1;
  }
  for (std::size_t i = 0; i < list.size(); ++i) {
    if (list[i] != "grit") continue;
    if (i > 0 && is_bare(list[i - 1])) return list[i - 1];
    if (i + 1 < list.size() && is_bare(list[i + 1])) return list[i + 1];
  }
  return std::nullopt;
}

}  // namespace

void check_grade_scales(const Proof& proof) {
  for (const auto& [id, abrasive] : proof.base.abrasives) {
    if (!abrasive.usable("scale")) continue;
    const std::string_view mark = mark_of(abrasive.scale);
    for (std::size_t i = 0; i < abrasive.grades.size(); ++i) {
      const std::string& grade = abrasive.grades[i].grade;
      const bool fits = grade.substr(0, mark.size()) == mark && is_bare(grade.substr(mark.size()));
      if (fits || grade.empty() || !abrasive.usable(grade_path(i, "grade"))) continue;
      const std::string number = base::shortest_text(number_of(grade));
      proof.findings
          .add(Rule::abrasive_scale, abrasive.span_of(grade_path(i, "grade")),
               "found " + grade + " on the scale " + abrasive.scale, "write " + std::string(mark) + number)
          .notes.push_back({abrasive.span_of("scale"), "the scale"});
    }
  }
}

void check_bare_numbers(const Proof& proof) {
  for (const Named& one : named_grades(proof)) {
    const bool scale_says = one.scale != nullptr && mark_of(one.scale->scale).empty();
    if (is_bare(one.grade) && !scale_says) bare_number(proof, *one.record, one.path, one.grade);
  }
  for (const Record* record : proof.base.all()) {
    visit_scalars(*record, [&](const std::string& path, const model::Node& node) {
      if (const auto number = bare_grit_in(node.text)) bare_number(proof, *record, path, *number);
    });
  }
}

void check_named_grades(const Proof& proof) {
  const auto known = known_grades(proof);
  for (const Named& one : named_grades(proof)) {
    const bool scale_says = one.scale != nullptr && mark_of(one.scale->scale).empty();
    if (is_bare(one.grade) && !scale_says) continue;
    if (one.scale != nullptr && one.scale->usable("grades") && !has_grade(*one.scale, one.grade)) {
      proof.findings
          .add(Rule::abrasive_grade, one.record->span_of(one.path), "the scale " + one.scale->id + " has no grade " + one.grade,
               "name a grade of the scale, or add it there")
          .notes.push_back({one.scale->span_of("grades"), "the grades of " + one.scale->reference()});
    } else if (one.scale == nullptr && std::find(known.begin(), known.end(), one.grade) == known.end()) {
      proof.findings.add(Rule::abrasive_grade, one.record->span_of(one.path), "no scale has a grade " + one.grade,
                         did_you_mean(base::nearest_word(one.grade, known)));
    }
  }
}

void check_medians(const Proof& proof) {
  for (const auto& [id, abrasive] : proof.base.abrasives) {
    if (!abrasive.usable("scale")) continue;
    for (std::size_t i = 0; i < abrasive.grades.size(); ++i) {
      const auto& grade = abrasive.grades[i];
      const auto* row = published_grade(proof, abrasive.scale, grade.grade);
      if (row == nullptr) continue;
      check_published(proof, abrasive, i, *row, {"median", "a median", &grade.median});
      const auto* spread = standards::row_of(proof.tables, "grade-spreads", grade.grade);
      if (spread == nullptr) continue;
      check_published(proof, abrasive, i, *spread, {"tolerance", "a tolerance", &grade.tolerance});
      check_published(proof, abrasive, i, *spread, {"largest", "a largest grain", &grade.largest});
    }
  }
}

void check_grades_are_published(const Proof& proof) {
  for (const auto& [id, abrasive] : proof.base.abrasives) {
    const bool is_published = std::any_of(abrasive.grades.begin(), abrasive.grades.end(), [&](const auto& one) {
      return published_grade(proof, abrasive.scale, one.grade) != nullptr;
    });
    for (std::size_t i = 0; i < abrasive.grades.size() && is_published; ++i) {
      const std::string& grade = abrasive.grades[i].grade;
      if (grade.empty() || !abrasive.usable(grade_path(i, "grade")) || published_grade(proof, abrasive.scale, grade) != nullptr)
        continue;
      proof.findings.add(Rule::abrasive_grade, abrasive.span_of(grade_path(i, "grade")),
                         "the published scale " + abrasive.scale + " has no grade " + grade,
                         "correct it, or add it to the table");
    }
  }
}

void check_median_order(const Proof& proof) {
  for (const auto& [id, abrasive] : proof.base.abrasives) {
    const bool by_size = abrasive.scale == "micrometre";
    for (std::size_t i = 1; i < abrasive.grades.size(); ++i) {
      const auto coarse = median_of(abrasive, i - 1), fine = median_of(abrasive, i);
      const double before = number_of(abrasive.grades[i - 1].grade), after = number_of(abrasive.grades[i].grade);
      if (!coarse || !fine || before == 0 || after == 0) continue;
      const bool runs_on = by_size ? before > after : before < after;
      if (runs_on && *coarse > *fine) continue;
      proof.findings
          .add(Rule::abrasive_order, abrasive.span_of("grades." + std::to_string(i)),
               "found " + abrasive.grades[i].grade + " with " + shown(abrasive.grades[i].median) + " after " +
                   abrasive.grades[i - 1].grade + " with " + shown(abrasive.grades[i - 1].median),
               "list the grades from coarse to fine, and correct the figure that breaks the row")
          .notes.push_back({abrasive.span_of("grades." + std::to_string(i - 1)), "the grade before"});
    }
    for (std::size_t i = 0; by_size && i < abrasive.grades.size(); ++i) {
      const auto median = median_of(abrasive, i);
      if (!median || *median == number_of(abrasive.grades[i].grade)) continue;
      proof.findings.add(
          Rule::abrasive_order, abrasive.span_of(grade_path(i, "median")),
          "the grade " + abrasive.grades[i].grade + " is named by its size, but has " + shown(abrasive.grades[i].median),
          "correct one of the two");
    }
  }
}

void check_grain_spread(const Proof& proof) {
  for (const auto& [id, abrasive] : proof.base.abrasives) {
    for (std::size_t i = 0; i < abrasive.grades.size(); ++i) {
      const auto& grade = abrasive.grades[i];
      const auto median = median_of(abrasive, i);
      const auto tolerance = stated_value(abrasive, grade_path(i, "tolerance"), grade.tolerance, Unit::micrometre);
      const auto largest = stated_value(abrasive, grade_path(i, "largest"), grade.largest, Unit::micrometre);
      constexpr double kWidest = 0.4, kMost = 5;
      if (median && tolerance && *tolerance > *median * kWidest) {
        proof.findings.add(Rule::abrasive_spread, abrasive.span_of(grade_path(i, "tolerance")),
                           "found a tolerance of " + shown(grade.tolerance) + " on a median of " + shown(grade.median),
                           "read the two again");
      }
      if (median && largest && (*largest <= *median || *largest > *median * kMost)) {
        proof.findings.add(Rule::abrasive_spread, abrasive.span_of(grade_path(i, "largest")),
                           "found a largest grain of " + shown(grade.largest) + " on a median of " + shown(grade.median),
                           "read the two again");
      }
    }
  }
}

}  // namespace benchleaf::prove
