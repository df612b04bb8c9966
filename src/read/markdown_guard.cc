// In: the lines of a page. Out: whether the Markdown parser may see them.
#include "read/markdown_guard.h"

#include <algorithm>
#include <string>

#include "read/markdown.h"

namespace benchleaf::read {

namespace {

using report::Rule;

/// Beginnings of HTML that the parser searches an end for, over and over; prose has no use for them.
constexpr std::size_t kMostHtmlStarts = 100;

/// Columns of a delimiter row (`|---|:-:|`), or 0 for any other line.
std::size_t delimiter_columns(std::string_view line) {
  std::size_t quotes = line.find_first_not_of("> \t");  // a table may stand in a quotation
  if (quotes == std::string_view::npos) return 0;
  line.remove_prefix(quotes);
  bool only_signs = line.find_first_not_of("|-: \t") == std::string_view::npos;
  const auto bars = static_cast<std::size_t>(std::count(line.begin(), line.end(), '|'));
  if (!only_signs || bars == 0 || line.find('-') == std::string_view::npos) return 0;
  line = line.substr(0, line.find_last_not_of(" \t") + 1);
  const std::size_t outer = (line.front() == '|' ? 1U : 0U) + (line.back() == '|' ? 1U : 0U);
  return bars + 1 - std::min(outer, bars);
}

bool is_blank(std::string_view line) { return line.find_first_not_of(" \t>") == std::string_view::npos; }

std::size_t count_of(std::string_view text, std::string_view what) {
  std::size_t count = 0;
  for (std::size_t i = text.find(what); i != std::string_view::npos; i = text.find(what, i + what.size())) ++count;
  return count;
}

/// The lines after `index` up to a blank one are the rows that a table there could have.
std::size_t rows_after(const SourceText& source, std::size_t index) {
  std::size_t end = index + 1;
  while (end < source.line_count() && !is_blank(source.line(end))) ++end;
  return end - index - 1;
}

bool check_tables(const SourceText& source, report::Findings& findings) {
  for (std::size_t i = 0; i < source.line_count(); ++i) {
    const std::size_t columns = delimiter_columns(source.line(i));
    if (columns == 0) continue;
    const std::size_t cells = columns * (rows_after(source, i) + 1);
    std::string found;
    if (columns > kMostTableColumns) {
      found = std::to_string(columns) + " columns, expected at most " + std::to_string(kMostTableColumns);
    } else if (cells > kMostTableCells) {
      found = std::to_string(cells) + " cells, expected at most " + std::to_string(kMostTableCells);
    }
    if (found.empty()) continue;
    findings.add(Rule::markdown_table_size, source.span(source.line_start(i), source.line(i).size()), "found a table of " + found,
                 "split the table");
    return false;
  }
  return true;
}

}  // namespace

bool check_markdown_size(const SourceText& source, report::Findings& findings) {
  if (source.text().size() > kMostPageBytes) {
    findings.add(
        Rule::markdown_size, source.whole_file(),
        "a page of " + std::to_string(source.text().size()) + " bytes, expected at most " + std::to_string(kMostPageBytes),
        "split the page");
    return false;
  }
  if (count_of(source.text(), "<!") + count_of(source.text(), "<?") > kMostHtmlStarts) {
    const std::size_t first = std::min(source.text().find("<!"), source.text().find("<?"));
    findings.add(Rule::markdown_html, source.span(first, 2), "found raw HTML, which pages do not use", "write it as Markdown");
    return false;
  }
  return check_tables(source, findings);
}

}  // namespace benchleaf::read
