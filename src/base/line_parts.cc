// In and out: lines of plain text whose parts stand between tabs, the form in which the page gets tables, figures and records.
#include "base/line_parts.h"

#include <cstddef>

namespace benchleaf::base {

void add_part(std::string& line, std::string_view part) {
  if (!line.empty()) line += '\t';
  for (const char c : part) {
    switch (c) {
      case '\t': line += "\\t"; break;
      case '\n': line += "\\n"; break;
      case '\\': line += "\\\\"; break;
      default: line += c;
    }
  }
}

std::string line_of(std::initializer_list<std::string_view> parts) {
  std::string line;
  for (const auto part : parts) add_part(line, part);
  return line;
}

std::vector<std::string> parts_of(std::string_view line) {
  std::vector<std::string> parts(1);
  for (std::size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (c == '\t') {
      parts.emplace_back();
    } else if (c == '\\' && i + 1 < line.size()) {
      ++i;
      parts.back() += line[i] == 't' ? '\t' : line[i] == 'n' ? '\n' : line[i];
    } else {
      parts.back() += c;
    }
  }
  return parts;
}

std::string_view take_line(std::string_view& text) {
  const std::size_t end = text.find('\n');
  const std::string_view line = text.substr(0, end);
  text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
  return line;
}

}  // namespace benchleaf::base
