// In: the label of each page. Out: ranges of labels, which is how a PDF tells them: style and first number of each range.
#include "pdf/page_labels.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>

#include "base/ascii.h"
#include "pdf/tree.h"

namespace benchleaf::pdf {

namespace {

constexpr int kLargestRoman = 3999;
constexpr std::size_t kMostDigits = 6;

using RomanPart = std::pair<int, std::string_view>;
constexpr std::array<RomanPart, 13> kRomanParts = {{{1000, "m"},
                                                    {900, "cm"},
                                                    {500, "d"},
                                                    {400, "cd"},
                                                    {100, "c"},
                                                    {90, "xc"},
                                                    {50, "l"},
                                                    {40, "xl"},
                                                    {10, "x"},
                                                    {9, "ix"},
                                                    {5, "v"},
                                                    {4, "iv"},
                                                    {1, "i"}}};

std::optional<int> read_roman(std::string_view label) {
  int number = 0;
  std::string_view rest = label;
  for (const RomanPart& part : kRomanParts) {
    while (rest.substr(0, part.second.size()) == part.second) {
      number += part.first;
      rest.remove_prefix(part.second.size());
    }
  }
  if (number == 0 || !rest.empty() || roman(number) != label) return std::nullopt;  // `iiii` is no number
  return number;
}

std::optional<int> read_decimal(std::string_view label) {
  if (label.empty() || label.size() > kMostDigits || label.front() == '0') return std::nullopt;
  if (!std::all_of(label.begin(), label.end(), base::is_digit)) return std::nullopt;
  int number = 0;
  std::from_chars(label.data(), label.data() + label.size(), number);
  return number;
}

LabelRange range_of(const std::string& label, int page) {
  if (const auto number = read_decimal(label)) return {page, LabelRange::Style::decimal, *number, {}};
  if (const auto number = read_roman(label)) return {page, LabelRange::Style::roman, *number, {}};
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

std::string roman(int number) {
  std::string out;
  if (number < 1 || number > kLargestRoman) return out;
  for (const RomanPart& part : kRomanParts) {
    for (; number >= part.first; number -= part.first) out += part.second;
  }
  return out;
}

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
