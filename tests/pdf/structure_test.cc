// Expected: the elements and words that the trial was made of, in the order in which they were placed. Reader: poppler's
// pdfinfo, and the rules of ua_rules.py.
#include <algorithm>
#include <chrono>
#include <string>
#include <vector>

#include "support/catch.h"
#include "trial.h"

namespace benchleaf::pdf {

namespace {

/// The structure with its texts, a line an element or text, without the blocks of attributes.
std::vector<std::string> structure_of(const std::string& path) {
  std::vector<std::string> lines;
  for (const std::string& line : lines_from("pdfinfo -struct-text " + path)) {
    const std::size_t begin = line.find_first_not_of(' ');
    if (begin != std::string::npos) lines.push_back(line.substr(begin));
  }
  return lines;
}

/// Whether the lines come in this order, other lines between them or not.
bool in_order(const std::vector<std::string>& lines, const std::vector<std::string>& wanted) {
  auto at = lines.begin();
  for (const std::string& line : wanted) {
    at = std::find(at, lines.end(), line);
    if (at == lines.end()) {
      UNSCOPED_INFO("missing, or before its turn: " << line);
      return false;
    }
    ++at;
  }
  return true;
}

std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += line + "\n";
  return text;
}

}  // namespace

TEST_CASE("a reader meets the elements in book order", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::vector<std::string> lines = structure_of(file.path());
  INFO(joined(lines));
  CHECK(in_order(
      lines, {"Document", "Part", "H1 (block)", "\"Office manual\"", "P (block)", "\"for invented cells\"", "TOC", "TOCI",
              "Reference (inline)", "Link (inline)", "\"Signs and spaces 1\"", "Part", "H1 (block)", "\"Signs and spaces\""}));
}

TEST_CASE("a fact stands in its sentence and carries its id", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::vector<std::string> lines = structure_of(file.path());
  INFO(joined(lines));
  CHECK(in_order(lines, {"P (block)", "\"A drain of \"", "Span \"cell/sr754w#size.diameter\" (inline)", "\"7.9\u2009mm\"",
                         "\"is not a diameter of 10 mm.\""}));
}

TEST_CASE("signs, ligatures and spaces that do not break come back", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::vector<std::string> lines = structure_of(file.path());
  INFO(joined(lines));
  CHECK(in_order(lines, {"\"An affluent office, a waffle and a fjord at ≥\u00A03\u2009µA, −5\u2009°C.\"", "\"⚠ →\""}));
}

TEST_CASE("a cell over two pages is one cell, an empty one keeps its column", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::vector<std::string> lines = structure_of(file.path());
  INFO(joined(lines));
  CHECK(in_order(lines, {"Table (block)", "THead", "TR", "TBody", "TR", "\"7.9\"", "TD:", "\"begun here \"", "\"ended there\"",
                         "TD:", "/Headers [(sizes-2)]", "TR", "\"9.5\"", "TD", "\"one\"", "TD", "\"two\""}));
  CHECK(std::count(lines.begin(), lines.end(), "\"Size Names\"") == 0);  // the repeated head is an artifact
}

TEST_CASE("heads, spans, lists and figures say what they are", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::vector<std::string> lines = structure_of(file.path());
  INFO(joined(lines));
  CHECK(in_order(lines, {"/ListNumbering /Decimal", "Lbl (block)", "\"1. \"", "LBody (block)", "\"Open the back.\""}));
  CHECK(in_order(lines, {"/Scope /Column", "\"Size\"", "/Scope /Column", "/ColSpan 2", "\"Names\"", "/Scope /Row"}));
}

TEST_CASE("the file keeps the rules of PDF/UA that can be checked", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const Printed checked = run("python3 tests/pdf/ua_rules.py " + file.path());
  INFO(checked.text);
  CHECK(checked.code == 0);
}

TEST_CASE("forty thousand elements", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial(fonts);
  constexpr int kPages = 100;
  constexpr int kRows = 50;
  constexpr int kCells = 7;
  for (int i = 0; i < kPages; ++i) {
    const int page = trial.add_page(std::to_string(i + 1));
    const page::TagId table = trial.add_tag(page::Role::table, 0);
    for (int row = 0; row < kRows; ++row) {
      const page::TagId line = trial.add_tag(page::Role::row, table);
      for (int cell = 0; cell < kCells; ++cell) {
        const page::TagId tag = trial.add_tag(page::Role::data_cell, line);
        trial.add_text(page, tag, {40'000 + 70'000 * cell, 60'000 + 14'000 * row}, std::to_string(1000 * row + cell));
      }
    }
  }
  REQUIRE(trial.document.tags.size() == 1 + kPages * (1 + kRows * (1 + kCells)));
  const auto start = std::chrono::steady_clock::now();
  const std::string bytes = written(trial.document, fonts);
  const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
  WARN(trial.document.tags.size() << " elements on " << kPages << " pages: " << taken.count() << " s, " << bytes.size() / 1024
                                  << " kB");
  const TrialFile file(bytes);
  CHECK(run("qpdf --check " + file.path()).code == 0);
}

}  // namespace benchleaf::pdf
