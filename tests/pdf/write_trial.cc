// In: a path. Out: the trial book as a PDF file there, for checkers that are programs of their own.
#include <fstream>
#include <iostream>

#include "composer.h"
#include "pdf/writer.h"
#include "trial_book.h"

int main(int count, char** arguments) {
  using namespace benchleaf;
  if (count != 2) return 2;
  const page::FontSet fonts = pdf::open_test_fonts();
  report::Findings findings;
  const std::string bytes = pdf::write_pdf(pdf::make_trial(fonts).document, fonts, {pdf::read_test_profile()}, findings);
  for (const report::Finding& finding : findings.all()) std::cerr << finding.message << '\n';
  std::ofstream(arguments[1], std::ios::binary) << bytes;
  return findings.all().empty() ? 0 : 1;
}
