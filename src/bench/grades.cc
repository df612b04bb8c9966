// In: grades as they are printed on papers and stones. Out: what grain they can be, by the scales that the records know.

#include "bench/grades.h"

#include <algorithm>

#include "base/ascii.h"
#include "base/id.h"
#include "bench/answer.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

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

std::string digits_of(const std::string& name) {
  const std::size_t at = name.find_first_of("0123456789");
  return at == std::string::npos ? std::string() : name.substr(at);
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

std::vector<Grade> grades_named(Ask& ask, std::string_view input, const std::string& name) {
  std::vector<Grade> found;
  const bool bare = !name.empty() && base::is_digit(name.front());
  for (const auto& record : ask.records("abrasive")) {
    for (auto& grade : grades_of_record(ask, record)) {
      // A bare number may stand on any scale that counts in grit; grains in micrometres say so themselves.
      const bool same = bare ? digits_of(grade.name) == name && grade.scale != "micrometre"
                             : base::lower_ascii(grade.name) == base::lower_ascii(name);
      if (same) found.push_back(std::move(grade));
    }
  }
  if (found.empty()) ask.fail(input, "a grade of that name has no published grain here", "write P800, #1000 or F400");
  std::stable_sort(found.begin(), found.end(), coarser);
  return found;
}

const Grade& coarsest(const std::vector<Grade>& grades) { return grades.front(); }
const Grade& finest(const std::vector<Grade>& grades) { return grades.back(); }

std::string scales_text(const std::vector<Grade>& grades) {
  std::string text;
  for (const auto& grade : grades) {
    text += (text.empty() ? "" : ", ") + grade.scale + " " + shown(grade.median, Unit::micrometre);
  }
  return text;
}

}  // namespace benchleaf::bench
