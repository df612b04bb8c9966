// In: any bytes that have passed the look at their encoding, as the reader of pages sees to. Out: nothing; aborts where the
// reader of Markdown breaks its word.
#include "fuzz/property.h"
#include "read/markdown.h"
#include "read/source_text.h"
#include "read/yaml_bytes.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using benchleaf::fuzz::must;
  const std::string_view text = benchleaf::fuzz::text_of(data, size);
  benchleaf::report::Findings findings;
  if (!check_encoding(benchleaf::read::SourceText(text, 0), findings)) return 0;
  const auto page = benchleaf::read::read_markdown({text, 0, 1}, findings);
  must(page.whole || findings.has_errors(), "nothing is left out without a finding");
  int lines = 1;
  for (const char c : text) lines += c == '\n' ? 1 : 0;
  for (const auto& finding : findings.all()) must(finding.where.line >= 0 && finding.where.line <= lines, "a place lies in the page");
  return 0;
}
