// In: any bytes. Out: nothing; aborts where a writer lets them become markup, a command or a broken file.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "base/utf8.h"
#include "fuzz/property.h"
#include "html/markup.h"
#include "pdf/syntax.h"
#include "report/json.h"
#include "report/print.h"

namespace {

using benchleaf::fuzz::must;
namespace report = benchleaf::report;

void check_html(std::string_view text) {
  const std::string words = benchleaf::html::words(text).bytes();
  must(words.find_first_of("<>") == std::string::npos, "words are never markup");
  must(!benchleaf::base::first_invalid_utf8(words), "words are UTF-8");
  const std::string slug = benchleaf::html::slug(text);
  must(slug.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos, "a slug is a plain name");
}

void check_pdf(std::string_view text) {
  std::string name, bytes, utf16;
  benchleaf::pdf::append_name(name, text);
  must(name.front() == '/' && name.find_first_of(" ()<>[]{}/%\n\r\t", 1) == std::string::npos, "a name is one name");
  benchleaf::pdf::append_bytes(bytes, text);
  must(bytes.front() == '(' && bytes.back() == ')', "a string stands in brackets");
  for (std::size_t i = 1; i + 1 < bytes.size(); ++i) {
    if (bytes.at(i) == '\\') {
      ++i;
      must(i + 1 < bytes.size(), "the closing bracket is not escaped");
    } else {
      must(bytes.at(i) != '(' && bytes.at(i) != ')', "brackets inside are escaped");
    }
  }
  benchleaf::pdf::append_utf16(utf16, text);
  must(utf16.size() % 4 == 0 && utf16.find_first_not_of("0123456789abcdefABCDEF") == std::string::npos, "digits of whole units");
}

void check_findings(std::string_view text) {
  benchleaf::base::FileTable files;
  const auto file = files.add(std::string(text.substr(0, 40)), std::string(text));
  report::Findings findings;
  findings.add(report::Rule::yaml_syntax, {file, 1, 1, 3}, std::string(text), std::string(text))
      .notes.push_back({{}, std::string(text)});
  const auto parsed = nlohmann::json::parse(report::findings_json(findings, files));
  must(parsed.at("findings").size() == 1, "one finding stays one");
  const std::string shown = report::findings_text(findings, files);
  const bool control = std::any_of(shown.begin(), shown.end(),
                                   [](char c) { return (static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7F; });
  must(!control, "nothing of the content commands the terminal");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text = benchleaf::fuzz::text_of(data, size);
  check_html(text);
  check_pdf(text);
  check_findings(text);
  return 0;
}
