// Writes the sample book's site into a folder, to look at it and to run outside checkers over it.
#include <filesystem>
#include <fstream>
#include <iostream>

#include "html/sample_book.h"
#include "html/site.h"

int main(int argc, char** argv) {
  if (argc != 2) {
    std::cerr << "usage: html_sample DIR\n";
    return 2;
  }
  benchleaf::report::Findings findings;
  for (const auto& [path, bytes] : benchleaf::html::render_site(benchleaf::html_tests::sample_book(), findings)) {
    const std::filesystem::path file = std::filesystem::path(argv[1]) / path;
    std::filesystem::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary) << bytes;
  }
  return 0;
}
