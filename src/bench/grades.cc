// In: grades as they are printed on papers and stones. Out: what grain they can be, by the scales that the records know.

#include "bench/grades.h"

#include <algorithm>

#include "base/ascii.h"
#include "base/id.h"
#include "bench/answer.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kMicrometres = "micrometre";
constexpr const char* kScaleHint =
    "write P800, F800, #800 or ANSI 800: a P on the back means the European scale, # a Japanese stone, and a bare number is "
    "American paper or a cushioned cloth; the maker's figure in micrometres decides";

bool coarser(const Grade& one, const Grade& other) { return one.median.nominal > other.median.nominal; }

std::vector<Grade> grades_of_record(const Ask& ask, const std::string& record) {
  std::vector<Grade> grades;
  const std::string scale = ask.word(record, "scale");
  for (int i = 0;; ++i) {
    const std::string path = "grades." + std::to_string(i);
    const auto median = ask.stated(record, path + ".median", Unit::micrometre);
    if (!median) break;
    grades.push_back({ask.word(record, path + ".grade"), scale, *median});
  }
  std::stable_sort(grades.begin(), grades.end(), coarser);
  return grades;
}

std::string figures_of(const std::string& name) {
  const std::size_t at = name.find_first_of("0123456789");
  return at == std::string::npos ? std::string() : name.substr(at);
}

/// `P800`; of a grade that is printed as a bare number `ANSI 800`.
std::string full_name(const Grade& grade) {
  return base::is_digit(grade.name.front()) ? grade.scale + " " + grade.name : grade.name;
}

/// By its name, by scale and figures, parted or not, or by the figures alone; grains in micrometres say so themselves.
bool is_called(const Grade& grade, const std::string& typed) {
  const std::string figures = figures_of(grade.name);
  const std::string scale = base::lower_ascii(grade.scale);
  if (typed == figures) return grade.scale != kMicrometres;
  for (const char* between : {"", " ", "-"}) {
    if (typed == scale + between + figures) return true;
  }
  return typed == base::lower_ascii(grade.name);
}

}  // namespace

std::vector<Grade> grades_of_scale(Ask& ask, std::string_view input, const std::string& scale) {
  std::vector<std::string> names;
  const std::string wanted = base::lower_ascii(scale);
  for (const auto& record : ask.records("abrasive")) {
    const std::string name = ask.word(record, "scale");
    if (base::lower_ascii(name) == wanted || record == "abrasive/" + wanted) return grades_of_record(ask, record);
    names.push_back(name);
  }
  ask.fail(input, "is no known scale", names.empty() ? "give the folder of the content" : "known: " + base::or_list(names));
  return {};
}

std::optional<Grade> grade_named(Ask& ask, std::string_view input, const std::string& name) {
  std::vector<Grade> found;
  for (const auto& record : ask.records("abrasive")) {
    for (auto& grade : grades_of_record(ask, record)) {
      if (is_called(grade, base::lower_ascii(name))) found.push_back(std::move(grade));
    }
  }
  if (found.size() == 1) return found.front();
  if (found.empty()) {
    ask.fail(input, "a grade of that name has no published grain here", "write P800, #1000 or F400");
    return std::nullopt;
  }
  std::stable_sort(found.begin(), found.end(), coarser);
  std::vector<std::string> readings;
  for (const Grade& grade : found) readings.push_back(full_name(grade) + " (" + shown(grade.median, Unit::micrometre) + ")");
  ask.fail(input, name + " names no scale: it can be " + base::or_list(readings), kScaleHint);
  return std::nullopt;
}

}  // namespace benchleaf::bench
