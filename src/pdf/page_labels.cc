// In: the label of each page. Out: ranges of labels, which is how a PDF tells them: style and first number of each range.
#include "pdf/page_labels.h"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>

#include "base/ascii.h"
#include "page/roman.h"
#include "pdf/tree.h"

namespace benchleaf::pdf {

namespace {

constexpr std::size_t kMostDigits = 6;

std::optional<int> read_decimal(std::string_view label) {
  if (label.empty() || label.size() > kMostDigits || label.front() == '0') return std::nullopt;
  if (!std::all_of(label.begin(), label.end(), base::is_digit)) return std::nullopt;
  int number = 0;
  std::from_chars(label.data(), label.data() + label.size(), number);
  return number;
}

LabelRange range_of(const std::string& label, int page) {
  if (const auto number = read_decimal(label)) return {page, LabelRange::Style::decimal, *number, {}};
  if (const auto number = page::read_roman(label)) return {page, LabelRange::Style::roman, *number, {}};
  return {page, LabelRange::Style::none, 1, label};
}

/// Whether a page whose label alone would begin `next` belongs to the range already.
bool counts_on(const LabelRange& range, const LabelRange& next) {
  return range.style != LabelRange::Style::none && range.style == next.style &&
         next.start - range.start == next.first_page - range.first_page;
}

void append_range(std::string& out, const LabelRange& range) {
  out += "<<";
  if (range.style != LabelRange::Style::none) {
    out += range.style == LabelRange::Style::roman ? "/S /r" : "/S /D";
    if (range.start != 1) {
      out += " /St ";
      append_integer(out, range.start);
    }
  } else if (!range.prefix.empty()) {
    out += "/P ";
    append_text(out, range.prefix);
  }
  out += ">>";
}

}  // namespace

std::vector<LabelRange> label_ranges(const std::vector<page::Page>& pages) {
  std::vector<LabelRange> ranges;
  for (std::size_t page = 0; page < pages.size(); ++page) {
    LabelRange next = range_of(pages.at(page).label, static_cast<int>(page));
    if (ranges.empty() || !counts_on(ranges.back(), next)) ranges.push_back(std::move(next));
  }
  return ranges;
}

void write_page_labels(FileOutput& out, ObjectNumber root, const std::vector<LabelRange>& ranges) {
  write_tree(out, root,
             {"/Nums", ranges.size(), [&](std::string& bytes, std::size_t i) { append_integer(bytes, ranges.at(i).first_page); },
              [&](std::string& bytes, std::size_t i) { append_range(bytes, ranges.at(i)); }});
}

}  // namespace benchleaf::pdf
