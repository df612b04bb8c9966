// In: the bytes of a file and byte places in them. Out: spans in lines and code points.
#include "read/source_text.h"

#include <algorithm>

namespace benchleaf::read {

namespace {

/// Counting from the start of a line would make one long line cost its square; so counts are kept at these distances.
constexpr std::size_t kStretch = 256;

/// Every byte of well-formed UTF-8 but the trailing ones begins a code point.
std::size_t count_starts(std::string_view bytes) {
  return static_cast<std::size_t>(
      std::count_if(bytes.begin(), bytes.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

}  // namespace

SourceText::SourceText(std::string_view text, base::FileId file, int first_line)
    : text_(text), file_(file), first_line_(first_line), starts_{0} {
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text.at(i) == '\n') starts_.push_back(i + 1);
  }
  std::size_t count = 0;
  for (std::size_t i = 0; i <= text.size(); i += kStretch) {
    counts_.push_back(count);
    count += count_starts(text.substr(i, kStretch));
  }
}

std::size_t SourceText::code_points_before(std::size_t place) const {
  const std::size_t stretch = place / kStretch;
  return counts_.at(stretch) + count_starts(text_.substr(stretch * kStretch, place - stretch * kStretch));
}

std::size_t SourceText::line_index(std::size_t place) const {
  auto after = std::upper_bound(starts_.begin(), starts_.end(), place);
  return static_cast<std::size_t>(after - starts_.begin()) - 1;
}

std::string_view SourceText::line(std::size_t index) const {
  std::size_t start = starts_.at(index);
  std::size_t end = index + 1 < starts_.size() ? starts_.at(index + 1) - 1 : text_.size();
  if (end > start && text_.at(end - 1) == '\r') --end;
  return text_.substr(start, end - start);
}

base::Span SourceText::span(std::size_t place, std::size_t bytes) const {
  place = std::min(place, text_.size());
  std::size_t index = line_index(place);
  std::string_view whole = line(index);
  std::size_t offset = std::min(place - starts_.at(index), whole.size());
  base::Span span;
  span.file = file_;
  span.line = first_line_ + static_cast<int>(index);
  const std::size_t start = starts_.at(index);
  const std::size_t end = start + std::min(whole.size(), offset + std::min(bytes, whole.size()));
  span.column = static_cast<int>(code_points_before(start + offset) - code_points_before(start)) + 1;
  span.length = static_cast<int>(code_points_before(end) - code_points_before(start + offset));
  return span;
}

}  // namespace benchleaf::read
