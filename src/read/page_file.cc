// In: the bytes of a page file. Out: its head and its body, or a finding.
#include "read/page_file.h"

#include "read/source_text.h"
#include "read/yaml_bytes.h"

namespace benchleaf::read {

PageFile split_page(std::string_view text, base::FileId file, report::Findings& findings) {
  PageFile page;
  const SourceText source(text, file);
  if (!check_encoding(source, findings)) return page;
  std::size_t end = 1;
  while (end < source.line_count() && source.line(end) != "---") ++end;
  if (source.line(0) != "---" || end == source.line_count()) {
    findings.add(report::Rule::markdown_head, source.span(0, source.line(0).size()),
                 "the page has no head, expected YAML between two lines ---", "begin with ---, id, title, lead, trust and ---");
    return page;
  }
  const std::size_t body = end + 1 < source.line_count() ? source.line_start(end + 1) : text.size();
  page.has_head = true;
  page.head = text.substr(source.line_start(1), source.line_start(end) - source.line_start(1));
  page.body = text.substr(body);
  page.body_line = static_cast<int>(end) + 2;
  return page;
}

}  // namespace benchleaf::read
