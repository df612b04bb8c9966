#pragma once

#include <string>
#include <vector>

#include "page/display.h"
#include "pdf/file_output.h"

namespace benchleaf::pdf {

/// A run of pages whose labels count on: `iv`, `v`, `vi`. A run without style has one page with the prefix as its label.
struct LabelRange {
  enum class Style { none, roman, decimal };
  int first_page = 0;
  Style style = Style::none;
  int start = 1;
  std::string prefix;
};

/// The ranges that give every page its label.
std::vector<LabelRange> label_ranges(const std::vector<page::Page>& pages);

/// Writes the number tree of the ranges as the objects from `root` on.
void write_page_labels(FileOutput& out, ObjectNumber root, const std::vector<LabelRange>& ranges);

}  // namespace benchleaf::pdf
