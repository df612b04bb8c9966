// In: the text of a rule's case. Out: its files, wrong and right.

#include "report/samples.h"

namespace benchleaf::report {
namespace {

bool takes(std::string_view line, std::string_view start, std::string& rest) {
  if (line.substr(0, start.size()) != start) return false;
  rest = std::string(line.substr(start.size()));
  return true;
}

}  // namespace

std::optional<RuleSample> read_sample(std::string_view text) {
  RuleSample sample;
  RuleSample::Half* half = nullptr;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    const std::string_view line = text.substr(0, end);
    text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
    std::string rest;
    if (takes(line, "=== ", rest)) {
      if (rest != "wrong" && rest != "right") return std::nullopt;
      half = rest == "wrong" ? &sample.wrong : &sample.right;
    } else if (half == nullptr) {
      return std::nullopt;
    } else if (takes(line, "--- ", rest)) {
      half->files.emplace_back(rest, std::string());
    } else if (takes(line, "expect ", rest)) {
      half->expected.push_back(rest);
    } else if (half->files.empty()) {
      return std::nullopt;
    } else {
      half->files.back().second += std::string(line) + "\n";
    }
  }
  const bool whole = !sample.wrong.files.empty() && !sample.right.files.empty() && !sample.wrong.expected.empty();
  return whole && sample.right.expected.empty() ? std::optional(sample) : std::nullopt;
}

}  // namespace benchleaf::report
