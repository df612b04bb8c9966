// Expected: the rules of PDF 1.4 as qpdf checks them, and those of PDF/A-1 that can be seen in the bytes (ISO 19005-1, 6.1).
#include <string>

#include "page/crop_marks.h"
#include "page/drawing.h"
#include "page/packed.h"
#include "pdf/metadata.h"
#include "support/catch.h"
#include "trial.h"

namespace benchleaf::pdf {

namespace {

bool contains(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("qpdf finds nothing wrong with the file", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const Printed checked = run("qpdf --check " + file.path());
  INFO(checked.text);
  CHECK(checked.code == 0);
  CHECK(contains(checked.text, "PDF Version: 1.4"));
  CHECK(contains(checked.text, "No syntax or stream encoding errors found"));
  CHECK_FALSE(contains(checked.text, "WARNING"));
}

TEST_CASE("the file has a classic table and nothing newer than PDF 1.4", "[pdf]") {
  const page::FontSet fonts = open_test_fonts();
  const std::string bytes = written(make_trial(fonts).document, fonts);
  CHECK(bytes.substr(0, 9) == "%PDF-1.4\n");
  CHECK(contains(bytes, "\nxref\n0 "));
  CHECK_FALSE(contains(bytes, "/ObjStm"));
  CHECK_FALSE(contains(bytes, "/XRef"));
  CHECK(bytes.substr(bytes.size() - 6) == "%%EOF\n");
  CHECK_FALSE(contains(bytes, "/SMask"));
  CHECK_FALSE(contains(bytes, "/Encrypt"));
}

TEST_CASE("the same pages give the same bytes", "[pdf]") {
  const page::FontSet fonts = open_test_fonts();
  const std::string first = written(make_trial(fonts).document, fonts);
  const page::FontSet again = open_test_fonts();
  CHECK(first == written(make_trial(again).document, again));
}

TEST_CASE("other pages have another identity", "[pdf]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial = make_trial(fonts);
  const auto id_of = [](const std::string& bytes) { return bytes.substr(bytes.rfind("/ID ["), 75); };
  const std::string first = id_of(written(trial.document, fonts));
  trial.add_text(0, page::kPaginationArtifact, {60'000, 700'000}, "x");
  CHECK(first != id_of(written(trial.document, fonts)));
}

TEST_CASE("title, dates and page sizes are those of the document", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::string info = run("TZ=UTC pdfinfo -isodates -box " + file.path()).text;
  INFO(info);
  CHECK(contains(info, "Title:           A trial of µ and ≥\n"));
  CHECK(contains(info, "Subject:         Invented pages\n"));
  CHECK(contains(info, "CreationDate:    2026-11-01T00:00:00Z\n"));
  CHECK(contains(info, "Tagged:          yes\n"));
  CHECK(contains(info, "Suspects:        no\n"));
  CHECK(contains(info, "Pages:           4\n"));
  CHECK(contains(info, "Page size:       595.276 x 841.89 pts (A4)\n"));
  CHECK(contains(info, "TrimBox:             0.00     0.00   595.28   841.89\n"));
  const std::string xmp = run("pdfinfo -meta " + file.path()).text;
  CHECK(contains(xmp, "<rdf:li xml:lang=\"x-default\">A trial of µ and ≥</rdf:li>"));
  CHECK(contains(xmp, "<pdfaid:part>1</pdfaid:part>"));
  CHECK(contains(xmp, "<pdfuaid:part>1</pdfuaid:part>"));
}

TEST_CASE("crop marks stand round a trimmed page of the same size", "[pdf][tools]") {
  // 10 mm are 28.35 pt, less 3 mm of bleed 19.84 pt; boxes of PDF Reference 10.10.1, margin and bleed common practice.
  const page::FontSet fonts = open_test_fonts();
  page::Document document = make_trial(fonts).document;
  page::PathItem tab = std::get<page::PathItem>(page::ground({0, 0, page::from_mm(12), page::from_mm(10)}, {}).what);
  document.pages.front().items.push_back({page::kPaginationArtifact, tab});
  const std::size_t before = document.pages.front().items.size();
  page::add_crop_marks(document);
  const std::vector<page::Item> marked = page::items_of(document.pages.front());
  REQUIRE(marked.size() == before + 8);
  const page::PathItem bled = std::get<page::PathItem>(marked.at(before - 1).what);
  CHECK(bled.segments.front().to.x == page::from_mm(10) - page::from_mm(3));
  const TrialFile file(written(document, fonts));
  const std::string info = run("pdfinfo -box " + file.path()).text;
  INFO(info);
  CHECK(contains(info, "Page size:       651.968 x 898.582 pts"));
  CHECK(contains(info, "TrimBox:            28.35    28.35   623.62   870.24\n"));
  CHECK(contains(info, "BleedBox:           19.84    19.84   632.13   878.74\n"));
}

TEST_CASE("only days are dates", "[pdf]") {
  CHECK(is_iso_date("2026-11-01"));
  CHECK_FALSE(is_iso_date("2026-13-01"));
  CHECK_FALSE(is_iso_date("2026-11-00"));
  CHECK_FALSE(is_iso_date("26-11-01"));
  CHECK_FALSE(is_iso_date("2026/11/01"));
  CHECK_FALSE(is_iso_date("1 November"));
  CHECK_FALSE(is_iso_date(""));
}

TEST_CASE("markup in a title stays text", "[pdf]") {
  page::Document document;
  document.title = "Cells <7.9> & more\x01";
  CHECK(contains(xmp_packet(document), "Cells &lt;7.9&gt; &amp; more\uFFFD"));
}

}  // namespace benchleaf::pdf
